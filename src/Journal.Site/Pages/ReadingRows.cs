using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A line of a part's inspection record.</summary>
public sealed record ReadingRowView(string Feature, string Required, string Actual, LinkView? With, LinkView Entry);

internal static class ReadingRows
{
    public static IReadOnlyList<ReadingRowView> Of(Book book, PartRef part) =>
    [
        .. book.Index.Readings[part].Select(measured => new ReadingRowView(
            measured.Reading.Feature,
            measured.Reading.Required ?? "",
            measured.Reading.Actual ?? "",
            measured.Reading.With is { } with ? book.Link(with) : null,
            new LinkView(Show.Date(measured.Entry.Date), Addresses.Of(measured.Entry.Ref)))),
    ];
}
