using System.Globalization;
using Journal.Bench.Requests;
using Journal.Bench.Slates;

namespace Journal.Bench.Tonight;

/// <summary>What each form of the page carries beside what was said: the id of the deed, and when it was done.</summary>
/// <param name="Id">The id, made in the browser, or with the page where no script runs.</param>
/// <param name="At">When it was done, by our clock.</param>
internal readonly record struct Stamp(string Id, DateTimeOffset At)
{
    private const int ShortestId = 16;
    private const int LongestId = 64;

    /// <summary>A phone that was out of reach for longer has lost what it had, or its clock is wrong.</summary>
    private static readonly TimeSpan Oldest = TimeSpan.FromDays(60);

    /// <summary>
    /// The stamp of a form. The clocks of phones differ: they say when it was done and what they think that it is now, and the
    /// difference counts.
    /// </summary>
    /// <exception cref="RefusedException">It has no id.</exception>
    public static Stamp Of(Form form, DateTimeOffset now)
    {
        if (form["id"] is not { Length: >= ShortestId and <= LongestId } id || !id.All(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter == '-'))
        {
            throw new RefusedException("This page is from another time. Load it again, then send once more.");
        }

        var age = Milliseconds(form["now"]) - Milliseconds(form["at"]);
        return new Stamp(id, age is { } since ? now - TimeSpan.FromMilliseconds(Math.Clamp(since, 0, Oldest.TotalMilliseconds)) : now);
    }

    private static double? Milliseconds(string? text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : null;
}
