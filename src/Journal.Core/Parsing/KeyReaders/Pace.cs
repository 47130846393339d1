using Journal.Core.Model;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads what plans and builds say of the maker's weeks.</summary>
internal static class Pace
{
    /// <summary>Hours in a usual week, 0.1 to 168; null for the journal's own pace.</summary>
    public static decimal? HoursAWeek(Fields fields) =>
        fields.Number("hours-a-week", 0.1m, "Write hours such as `6`, up to 168; leave it out for the journal's own pace.", most: 168);

    /// <summary>Days away, first and last included.</summary>
    public static IReadOnlyList<DateRange> Away(Fields fields) =>
        [.. fields.Items("away").Select(node => fields.Range(node, "away")).OfType<DateRange>()];
}
