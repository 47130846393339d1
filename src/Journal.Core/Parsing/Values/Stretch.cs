using System.Globalization;
using System.Text.RegularExpressions;
using Journal.Core.Model;

namespace Journal.Core.Parsing.Values;

/// <summary>
/// A stretch by the clock, such as <c>19:10-21:55</c>, in minutes from the midnight that begins the entry's date.
/// One that ends earlier than it begins runs past midnight; its time belongs to the entry's date all the same.
/// </summary>
internal readonly partial record struct Stretch(int Start, int End)
{
    private const int Day = 24 * 60;

    /// <summary>How long it is.</summary>
    public Minutes Time => new(End - Start);

    /// <summary>Reads <c>19:10-21:55</c>, with a hyphen or an en dash; an end before the start is on the next day.</summary>
    public static bool TryParse(string text, out Stretch stretch)
    {
        stretch = default;
        if (Form().Match(text.Trim()) is not { Success: true } match)
        {
            return false;
        }

        var (start, end) = (Read(match, "h1", "m1"), Read(match, "h2", "m2"));
        if (start >= Day || end > Day)
        {
            return false;
        }

        stretch = new Stretch(start, end < start ? end + Day : end);
        return true;
    }

    /// <summary>Whether two stretches share a minute; one may end when the other starts.</summary>
    public bool Overlaps(Stretch other) => Start < other.End && other.Start < End;

    public override string ToString() => $"{Clock(Start)}-{Clock(End)}";

    private static string Clock(int minutes) =>
        string.Create(CultureInfo.InvariantCulture, $"{(minutes > Day ? minutes - Day : minutes) / 60:00}:{minutes % 60:00}");

    private static int Read(Match match, string hours, string minutes) =>
        int.Parse(match.Groups[hours].ValueSpan, CultureInfo.InvariantCulture) * 60 + int.Parse(match.Groups[minutes].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<h1>[0-9]{1,2}):(?<m1>[0-5][0-9]) ?[-\u2013] ?(?<h2>[0-9]{1,2}):(?<m2>[0-5][0-9])$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
