using System.Globalization;
using Journal.Bench.Slates;
using Journal.Core.Model;

namespace Journal.Bench.Pictures;

/// <summary>Balloons as lines that can be typed: <c>40 62 The bore</c>, per cent across and down, then what it points at.</summary>
internal static class MarkLines
{
    /// <summary>The lines.</summary>
    public static string Of(IReadOnlyList<PhotoMark> marks) =>
        string.Join('\n', marks.Select(mark => string.Create(CultureInfo.InvariantCulture, $"{mark.Across:0.##} {mark.Down:0.##} {mark.Text}")));

    /// <summary>The balloons.</summary>
    /// <exception cref="RefusedException">A line says none.</exception>
    public static IReadOnlyList<PhotoMark> Read(string lines) => [.. lines.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(ReadLine)];

    private static PhotoMark ReadLine(string line) =>
        line.Split((char[]?)null, 3, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) is [var across, var down, var text] && PerCent(across) is { } x && PerCent(down) is { } y
            ? new PhotoMark(x, y, text)
            : throw new RefusedException($"“{line}” is no balloon. Write how far across and how far down in per cent, then what it points at, such as `40 62 The bore`.");

    private static decimal? PerCent(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value is >= 0 and <= 100 ? Math.Round(value, 2) : null;
}
