using System.Globalization;

namespace Journal.Core.Wording;

/// <summary>Numbers of things in words.</summary>
public static class Count
{
    /// <summary>“1 evening”, “45 evenings”, “no evenings”.</summary>
    /// <param name="count">How many; not below 0.</param>
    /// <param name="one">The word for one of them.</param>
    /// <param name="many">The word for several; left out, the word for one with an s.</param>
    public static string Of(int count, string one, string? many = null) => count switch
    {
        0 => $"no {many ?? one + "s"}",
        1 => $"1 {one}",
        _ => string.Create(CultureInfo.InvariantCulture, $"{count} {many ?? one + "s"}"),
    };

    /// <summary>“once”, “twice”, “3 times”.</summary>
    public static string Times(int count) => count switch
    {
        1 => "once",
        2 => "twice",
        _ => string.Create(CultureInfo.InvariantCulture, $"{count} times"),
    };

    /// <summary>A number for a cell; nothing for none.</summary>
    public static string Cell(int count) => count == 0 ? "" : count.ToString(CultureInfo.InvariantCulture);

    /// <summary>“head, arm and quill”.</summary>
    public static string List(IReadOnlyList<string> items) =>
        items.Count < 2 ? string.Concat(items) : $"{string.Join(", ", items.SkipLast(1))} and {items[^1]}";
}
