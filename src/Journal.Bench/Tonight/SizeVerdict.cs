using Journal.Bench.Pages;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Bench.Tonight;

/// <summary>How a size lies, in words that can be read from where the lathe stands.</summary>
internal static class SizeVerdict
{
    /// <summary>The verdict on a size.</summary>
    public static VerdictView Of(ReadingToCome judged)
    {
        var figure = judged.Figure;
        var (look, word) = (figure.Within, figure.Gauging) switch
        {
            (true, null) => ("in", "In limits"),
            (true, _) => ("in", "Goes"),
            (false, null) => ("out", Beyond(figure)),
            (false, _) => ("out", "Does not go"),
            _ => ("open", "No limits known"),
        };
        string?[] detail = [SizeOf(figure), LimitsOf(figure), OffBy(figure), .. figure.Notes, judged.Fault is { } slip ? $"{slip.What} {slip.Remedy}" : null];
        return new VerdictView(look, word, string.Join(" · ", detail.OfType<string>()));
    }

    private static string Beyond(ReadingFigure figure) =>
        figure.Actual?.Value > figure.Greatest?.Value ? $"Out: {Gap(figure.Actual, figure.Greatest)} too large"
            : figure.Actual?.Value < figure.Least?.Value ? $"Out: {Gap(figure.Least, figure.Actual)} too small"
            : "Out of limits";

    private static Length Gap(Length? more, Length? less) => new(more!.Value.Value - less!.Value.Value, more.Value.Unit);

    private static string? SizeOf(ReadingFigure figure) => figure.Actual is { } size ? $"{figure.Feature} {size.Shown}" : figure.ActualText;

    private static string? LimitsOf(ReadingFigure figure) => (figure.Least, figure.Greatest) switch
    {
        ({ } least, { } greatest) => $"limits {least.Shown.Value} to {greatest.Shown}",
        ({ } least, null) => $"at least {least.Shown}",
        (null, { } greatest) => $"at most {greatest.Shown}",
        _ => figure.RequiredText is { } required ? $"required {required}" : null,
    };

    private static string? OffBy(ReadingFigure figure) => figure.Deviation switch
    {
        { Value: > 0 } above => $"{above.Shown} over nominal",
        { Value: < 0 } below => $"{(below with { Value = -below.Value }).Shown} under nominal",
        { } => "on nominal",
        null => null,
    };
}
