using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A line of a part's inspection record.</summary>
public sealed record ReadingRowView(string Feature, string Required, string Actual, LinkView? With, LinkView Entry);

internal static class ReadingRows
{
    public static IReadOnlyList<ReadingRowView> Of(Book book, PartRef part) =>
    [
        .. book.ShownEntries.Where(entry => entry.Build == part.Build)
            .SelectMany(entry => entry.Readings, (entry, reading) => (entry, reading))
            .Where(measured => measured.reading.Part == part.Part)
            .Select(measured => new ReadingRowView(
                measured.reading.Feature,
                measured.reading.Required ?? "",
                measured.reading.Actual ?? "",
                measured.reading.With is { } with ? book.Link(with) : null,
                new LinkView(Show.Date(measured.entry.Date), Addresses.Of(measured.entry.Ref)))),
    ];
}
