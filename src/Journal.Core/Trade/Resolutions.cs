using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>
/// What a measuring tool can tell apart. The crib's own <c>resolution</c> comes first; for a tool without one, words of its
/// title tell what such tools usually read to (common practice; a shop's own tool may be better or worse).
/// </summary>
public static class Resolutions
{
    /// <summary>
    /// A tool can judge a tolerance if it reads to a tenth of it (the one-tenth rule, common practice).
    /// </summary>
    public const decimal ShareOfTolerance = 0.1m;

    /// <summary>Words of a title with the step in millimetres and in inches; the first that fits counts.</summary>
    private static readonly (string Word, decimal Millimetres, decimal Inches)[] Usual =
    [
        ("tenths", 0.002m, 0.0001m),
        ("micromet", 0.01m, 0.001m),
        ("telescop", 0.01m, 0.001m),
        ("small-hole", 0.01m, 0.001m),
        ("small hole", 0.01m, 0.001m),
        ("bore gauge", 0.01m, 0.001m),
        ("indicator", 0.01m, 0.001m),
        ("dial gauge", 0.01m, 0.001m),
        ("dial-gauge", 0.01m, 0.001m),
        ("caliper", 0.02m, 0.001m),
        ("calliper", 0.02m, 0.001m),
        ("vernier", 0.02m, 0.001m),
        ("depth gauge", 0.02m, 0.001m),
        ("depth-gauge", 0.02m, 0.001m),
        ("height gauge", 0.02m, 0.001m),
        ("height-gauge", 0.02m, 0.001m),
        ("steel rule", 0.5m, 0.015625m),
        ("steel-rule", 0.5m, 0.015625m),
        ("ruler", 0.5m, 0.015625m),
        ("tape measure", 1m, 0.0625m),
    ];

    /// <summary>The smallest step that a tool shows, in the unit asked for; null where nothing tells.</summary>
    public static Length? Of(Tool tool, LengthUnit unit)
    {
        if (tool.Resolution is { } given)
        {
            return given.In(unit);
        }

        var usual = Array.Find(Usual, entry => Says(tool.Title, entry.Word) || Says(tool.Id.Value, entry.Word));
        return usual.Word is null ? null : new(unit == LengthUnit.Inch ? usual.Inches : usual.Millimetres, unit);
    }

    /// <summary>Whether a step is fine enough to judge a tolerance.</summary>
    public static bool CanJudge(Length step, Length tolerance) => step.Millimetres <= tolerance.Millimetres * ShareOfTolerance;

    private static bool Says(string name, string word) => name.Contains(word, StringComparison.OrdinalIgnoreCase);
}
