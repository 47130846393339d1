using System.Globalization;
using System.Text.RegularExpressions;

namespace Journal.Core.Import;

/// <summary>A date that can be read in several ways, and those ways.</summary>
/// <param name="Text">As it is written.</param>
/// <param name="CouldBe">The forms that it could have.</param>
public sealed record AmbiguousDate(string Text, IReadOnlyList<DateForm> CouldBe)
{
    /// <summary>The question, and how it is answered beforehand.</summary>
    public string Question => $"which number of “{Text}” is the day? Give the date format, such as {string.Join(" or ", CouldBe.Select(form => $"`--dates {form.Written}`"))}";
}

/// <summary>What a text says of a date: one, or one that can be read in several ways, or none.</summary>
/// <param name="Date">The date; null where there is none, or none that is certain.</param>
/// <param name="Open">The date that can be read in several ways; null where there is none.</param>
internal readonly record struct DateReading(DateOnly? Date, AmbiguousDate? Open);

/// <summary>
/// The forms of dates in an older log. Read without being told are ISO 8601, months by their names, and numbers that can be read in
/// one way only, such as <c>21/11/2023</c>; which of two numbers is the day is told by the maker and never guessed.
/// </summary>
public sealed partial class DateForms
{
    private static readonly DateForm Together = DateForm.Of("yyyymmdd")!;

    private readonly IReadOnlyList<DateForm> told;

    private DateForms(IReadOnlyList<DateForm> told, bool takesFileDates) => (this.told, TakesFileDates) = (told, takesFileDates);

    /// <summary>What is read without being told.</summary>
    public static DateForms Untold { get; } = new([], takesFileDates: false);

    /// <summary>Whether a note without a date is given that of its file.</summary>
    public bool TakesFileDates { get; }

    /// <summary>For the maker: the forms that are read.</summary>
    public string Written => string.Join(" or ", told.Append(DateForm.Iso).Select(form => $"`{form.Written}`"));

    /// <summary>The forms that texts describe, several with commas between, and <c>file</c> for the file's own date; null where one is no form.</summary>
    public static DateForms? Of(IReadOnlyList<string> texts)
    {
        var (forms, takesFileDates) = (new List<DateForm>(), false);
        foreach (var text in texts)
        {
            var open = ""; // A form may hold a comma itself: `mmm d, yyyy`.
            foreach (var piece in text.Split(','))
            {
                open = open.Length == 0 ? piece.TrimStart() : $"{open},{piece}";
                if (open.Trim() == "file")
                {
                    (open, takesFileDates) = ("", true);
                }
                else if (DateForm.Of(open.Trim()) is { } form)
                {
                    forms.Add(form);
                    open = "";
                }
            }

            if (open.Length > 0)
            {
                return null;
            }
        }

        return new DateForms(forms, takesFileDates);
    }

    /// <summary>These forms and one more.</summary>
    public DateForms With(DateForm form) => new([.. told, form], TakesFileDates);

    /// <summary>What a whole text says of a date.</summary>
    internal DateReading Read(string text) => Read(text.Trim(), out _);

    /// <summary>What is said of a date within a text; the first certain one, else the first that is open.</summary>
    internal DateReading FindIn(string text)
    {
        if ((DateForm.Iso.FindIn(text) ?? Together.FindIn(text) ?? told.Select(form => form.FindIn(text)).FirstOrDefault(date => date is not null)) is { } date)
        {
            return new DateReading(date, null);
        }

        var readings = Numbers().Matches(text).Concat(DayFirst().Matches(text)).Concat(MonthFirst().Matches(text)).Select(match => Read(match.Value, out _)).ToList();
        return readings.Find(reading => reading.Date is not null) is { Date: not null } certain ? certain : readings.Find(reading => reading.Open is not null);
    }

    private DateReading Read(string text, out DateOnly date)
    {
        if (DateForm.Iso.TryRead(text, out date) || Together.TryRead(text, out date))
        {
            return new DateReading(date, null);
        }

        foreach (var form in told)
        {
            if (form.TryRead(text, out date))
            {
                return new DateReading(date, null);
            }
        }

        // Where the maker has told how dates of this shape are written, no other way is thought of.
        var shape = ShapeOf(text);
        return told.Any(form => form.Shape == shape) ? default : Named(text) is { } named ? new DateReading(named, null) : Numbered(text);
    }

    private static DateOnly? Named(string text)
    {
        var match = Whole(DayFirst(), text) ?? Whole(MonthFirst(), text);
        return match is not null && MonthNames.Find(match.Groups["m"].Value) is { } month
            ? DateForm.DateOf(Number(match, "y") + (match.Groups["y"].Length == 2 ? 2000 : 0), month, Number(match, "d"))
            : null;
    }

    private static DateReading Numbered(string text)
    {
        if (Whole(Numbers(), text) is not { } match)
        {
            return default;
        }

        var sign = match.Groups["s"].Value;
        var forms = (match.Groups["a"].Length, match.Groups["c"].Length) switch
        {
            (4, <= 2) => [$"yyyy{sign}mm{sign}dd"],
            (<= 2, 4) => [$"dd{sign}mm{sign}yyyy", $"mm{sign}dd{sign}yyyy"],
            (<= 2, <= 2) => [$"dd{sign}mm{sign}yy", $"mm{sign}dd{sign}yy", $"yy{sign}mm{sign}dd"],
            _ => Array.Empty<string>(),
        };
        var spaceless = text.Replace(" ", "", StringComparison.Ordinal);
        var read = forms.Select(form => DateForm.Of(form)!).Select(form => (Form: form, Date: form.TryRead(sign == " " ? text : spaceless, out var date) ? date : (DateOnly?)null)).Where(one => one.Date is not null).ToList();
        return read.Select(one => one.Date).Distinct().Count() switch
        {
            0 => default,
            1 => new DateReading(read[0].Date, null),
            _ => new DateReading(null, new AmbiguousDate(text, [.. read.Select(one => one.Form)])),
        };
    }

    // Numbers of four digits, shorter numbers, and months by name, with the signs between them.
    private static string ShapeOf(string text) => Words().Replace(ShortNumbers().Replace(LongNumbers().Replace(text, "Y"), "n"), "M").Replace(" ", "", StringComparison.Ordinal);

    private static Match? Whole(Regex form, string text) => form.Match(text) is { Success: true } match && match.Length == text.Length ? match : null;

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<![\p{L}0-9]|[0-9][.,/-])(?<a>[0-9]{1,4})(?<s>[./ -]) ?(?<b>[0-9]{1,2})\k<s> ?(?<c>[0-9]{1,4})(?![\p{L}0-9]|[.,/-][0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Numbers();

    [GeneratedRegex(@"(?<![\p{L}0-9])(?<d>[0-9]{1,2})(?:st|nd|rd|th)?\.?[ -]?(?<m>\p{L}{3,})\.?,?[ -]?(?<y>[0-9]{4}|[0-9]{2})(?![\p{L}0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex DayFirst();

    [GeneratedRegex(@"(?<![\p{L}0-9])(?<m>\p{L}{3,})\.? (?<d>[0-9]{1,2})(?:st|nd|rd|th)?,? (?<y>[0-9]{4})(?![\p{L}0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex MonthFirst();

    [GeneratedRegex("[0-9]{4}", RegexOptions.CultureInvariant)]
    private static partial Regex LongNumbers();

    [GeneratedRegex("[0-9]{1,2}", RegexOptions.CultureInvariant)]
    private static partial Regex ShortNumbers();

    [GeneratedRegex(@"\p{L}{3,}", RegexOptions.CultureInvariant)]
    private static partial Regex Words();
}
