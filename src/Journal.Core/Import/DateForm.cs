using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Core.Import;

/// <summary>
/// How dates are written in an older log: <c>d</c>, <c>m</c> and <c>y</c> for day, month and year, such as
/// <c>dd.mm.yyyy</c>. Which number is the day is told by the maker and never guessed.
/// </summary>
public sealed partial class DateForm
{
    private readonly Regex form;

    private DateForm(string written, Regex form) => (Written, this.form) = (written, form);

    /// <summary>ISO 8601: the one form that needs no telling.</summary>
    public static DateForm Iso { get; } = Of("yyyy-mm-dd")!;

    /// <summary>As the maker wrote it.</summary>
    public string Written { get; }

    /// <summary>Which numbers of four digits (<c>Y</c>), shorter numbers (<c>n</c>) and names (<c>M</c>) it has, with the signs between.</summary>
    internal string Shape => Pieces().Replace(Written.ToLowerInvariant(), piece => piece.Value switch
    {
        "yyyy" => "Y",
        "mmm" => "M",
        " " => "",
        [var letter, ..] when char.IsAsciiLetterLower(letter) => "n",
        var sign => sign,
    });

    /// <summary>The form that a text describes; null where it is none.</summary>
    public static DateForm? Of(string written)
    {
        var (pattern, seen) = (new StringBuilder(), new List<char>());
        foreach (var piece in Pieces().Matches(written.ToLowerInvariant()).Select(match => match.Value))
        {
            var group = piece switch
            {
                "d" or "dd" => "(?<d>[0-9]{1,2})",
                "m" or "mm" => "(?<m>[0-9]{1,2})",
                "mmm" => @"(?<m>\p{L}{3,})\.?",
                "yy" => "(?<y>[0-9]{2})",
                "yyyy" => "(?<y>[0-9]{4})",
                _ => char.IsAsciiLetterLower(piece[0]) ? null : piece == " " ? "[ ]+" : Regex.Escape(piece),
            };
            if (group is null)
            {
                return null;
            }

            if (char.IsAsciiLetterLower(piece[0]))
            {
                seen.Add(piece[0]);
            }

            // Without anything between them, digits are counted.
            pattern.Append(piece is "dd" or "mm" && !written.Any(letter => !char.IsAsciiLetter(letter)) ? group.Replace("{1,2}", "{2}", StringComparison.Ordinal) : group);
        }

        return seen.Order().SequenceEqual("dmy") ? new DateForm(written, new Regex(pattern.ToString(), RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.NonBacktracking)) : null;
    }

    /// <summary>The date that a text is.</summary>
    public bool TryRead(string text, out DateOnly date)
    {
        date = default;
        return form.Match(text.Trim()) is { Success: true } match && match.Length == text.Trim().Length && TryRead(match, out date);
    }

    /// <summary>The first date within a text; null where there is none.</summary>
    public DateOnly? FindIn(string text)
    {
        foreach (Match match in form.Matches(text))
        {
            var isAlone = (match.Index == 0 || !char.IsAsciiDigit(text[match.Index - 1])) && (match.Index + match.Length == text.Length || !char.IsAsciiDigit(text[match.Index + match.Length]));
            if (isAlone && TryRead(match, out var date))
            {
                return date;
            }
        }

        return null;
    }

    private static bool TryRead(Match match, out DateOnly date)
    {
        date = default;
        var month = char.IsAsciiDigit(match.Groups["m"].ValueSpan[0]) ? Number(match, "m") : MonthNames.Find(match.Groups["m"].Value);
        if (DateOf(Number(match, "y") + (match.Groups["y"].Length == 2 ? 2000 : 0), month ?? 0, Number(match, "d")) is not { } found)
        {
            return false;
        }

        date = found;
        return true;
    }

    /// <summary>A date of its numbers; null where there is no such day, or none since 1900.</summary>
    internal static DateOnly? DateOf(int year, int month, int day) =>
        year < 1900 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month) ? null : new DateOnly(year, month, day);

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex("d+|m+|y+|.", RegexOptions.CultureInvariant)]
    private static partial Regex Pieces();
}
