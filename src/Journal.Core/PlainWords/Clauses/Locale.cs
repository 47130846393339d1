using Journal.Core.PlainWords.Quantities;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>Where the maker lives, as far as the journal's time zone tells, and what that says of his words.</summary>
internal static class Locale
{
    private static readonly string[] BritishInEurope = ["Europe/London", "Europe/Dublin", "Europe/Belfast", "Europe/Jersey", "Europe/Guernsey", "Europe/Isle_of_Man", "Europe/Gibraltar", "Europe/Malta"];

    /// <summary>On the continent of Europe “half nine” may be half an hour before nine, as in the maker's own tongue (common practice).</summary>
    public static HalfHour HalfHourOf(string? timeZone) =>
        timeZone is not null && timeZone.StartsWith("Europe/", StringComparison.Ordinal) && !BritishInEurope.Contains(timeZone) ? HalfHour.Unsure : HalfHour.Past;
}
