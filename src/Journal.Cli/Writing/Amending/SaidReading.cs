using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing.Amending;

/// <summary>A reading in one line: <c>bore 12 H7 = 12.009 with bore-gauge</c>, or <c>bore 12.009</c>.</summary>
internal static class SaidReading
{
    private const string With = " with ";

    /// <summary>What to write instead of a line that is none.</summary>
    public const string Form = "Write what was measured and the size, such as `bore 12.009`; with what the drawing asks for, `bore 12 H7 = 12.009`; and `with bore-gauge` behind it where you want.";

    /// <summary>The reading; null where the line is none.</summary>
    public static NewReading? Read(string line)
    {
        var (said, tool) = line.LastIndexOf(With, StringComparison.Ordinal) is > 0 and var at ? (line[..at].Trim(), line[(at + With.Length)..].Trim()) : (line.Trim(), null);
        var equals = said.LastIndexOf('=');
        var (left, actual) = equals < 0 ? (said, null) : (said[..equals].Trim(), said[(equals + 1)..].Trim());
        var space = left.IndexOf(' ', StringComparison.Ordinal);
        var (feature, rest) = space < 0 ? (left, null) : (left[..space].TrimEnd(':'), left[(space + 1)..].Trim());
        return (actual ?? rest) is { Length: > 0 } size && feature.Length > 0 && tool is not ""
            ? new NewReading(feature, actual is null ? null : rest, size, tool)
            : null;
    }
}
