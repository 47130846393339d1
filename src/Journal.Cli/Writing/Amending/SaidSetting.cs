using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing.Amending;

/// <summary>A setting in one line: <c>480 rpm, feed 0.1 mm/rev, depth 0.5, verdict good</c>.</summary>
internal static class SaidSetting
{
    /// <summary>What to write instead of a line that is none.</summary>
    public const string Form = "Write keys with their values and commas between them, such as `480 rpm, depth 0.5, verdict good`.";

    private static readonly string[] Keys = ["diameter", "rpm", "feed", "teeth", "width", "depth", "material", "cutter", "machine", "coolant", "verdict", "note"];

    /// <summary>The setting; null where the line is none.</summary>
    public static NewSetting? Read(string line)
    {
        var pairs = line.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Pair).ToList();
        return pairs.Count == 0 || pairs.Contains(null) || pairs.DistinctBy(pair => pair!.Value.Key).Count() < pairs.Count ? null : new NewSetting([.. pairs.Select(pair => pair!.Value)]);
    }

    private static (string Key, string Value)? Pair(string piece)
    {
        var words = piece.Split(' ', 2, StringSplitOptions.TrimEntries);
        return words is [var key, { Length: > 0 } value] && Keys.Contains(key.TrimEnd(':')) ? (key.TrimEnd(':'), value)
            : words is [var number, "rpm"] ? ("rpm", number)
            : null;
    }
}
