using Journal.Core.Model;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads what plans and builds say of the maker's weeks.</summary>
internal static class Pace
{
    public static decimal? HoursAWeek(Fields fields) =>
        fields.Number("hours-a-week", 0.1m, "Write hours such as `6`, up to 168; leave it out for the journal's own pace.", most: 168);

    public static IReadOnlyList<DateRange> Away(Fields fields) =>
        [.. fields.Items("away").Select(node => fields.Range(node, "away")).OfType<DateRange>()];
}
