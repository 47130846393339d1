using Journal.Core.Model;
using Journal.Core.Parsing.Values;

namespace Journal.Core.Writing.Entries;

/// <summary>Hours as makers say them on the command line, held against the forms that entries know.</summary>
public static class HoursText
{
    /// <summary>The hours as they go into an entry; null where they mean nothing.</summary>
    public static string? Read(string text)
    {
        var words = text.Trim();
        return Duration.TryParse(words, out _, out _) || (Stretch.TryParse(words, out var stretch) && stretch.Time > Minutes.Zero) ? words : null;
    }

    /// <summary>The time that they mean; none where they mean nothing.</summary>
    public static Minutes TimeOf(string text) =>
        Duration.TryParse(text.Trim(), out var time, out _) ? time : Stretch.TryParse(text.Trim(), out var stretch) ? stretch.Time : Minutes.Zero;

    /// <summary>Whether they say how long, and not from when to when.</summary>
    public static bool IsDuration(string text) => Duration.TryParse(text.Trim(), out _, out _);

    /// <summary>Whether they are no more than a day has.</summary>
    public static bool IsOfOneDay(string text) => !Duration.TryParse(text.Trim(), out var time, out _) || time.Count <= 24 * 60;

    /// <summary>What is wrong with hours that mean nothing, or too much.</summary>
    public static string WhyNot(string text) => Read(text) is not null ? $"`{text}` is more than a day. Write minutes as `45m`." : $"`{text}` is not a time. Write `1h30`, `45m`, `1.5`, `1:30` or `19:10-20:40`.";
}
