using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>The pictures of a part.</summary>
public sealed record PhotoGroupView(string Id, LinkView Part, IReadOnlyList<PhotoView> Photos);

/// <summary>The gallery of a build: every picture that is shown, by part, in the order in which they were taken up.</summary>
public sealed record PhotosPage(PageFrame Frame, string Kind, IReadOnlyList<PhotoGroupView> Groups)
{
    internal static bool HasPhotos(Book book, Build build) =>
        build.Entries.Where(book.Showing.Shows).Any(entry => entry.Photos.Any(photo => book.Showing.Shows(photo) && book.Photos.ContainsKey(photo.File)));

    internal static PhotosPage Of(Book book, Build build)
    {
        var desk = new Desk(book, Addresses.Photos(build.Id));
        var groups = build.Entries.Where(book.Showing.Shows)
            .GroupBy(entry => entry.Jobs.SelectMany(job => job.Parts).Select(share => (PartRef?)new PartRef(build.Id, share.Part)).FirstOrDefault(part => book.Showing.Shows(part!.Value)))
            .Select((group, i) => new PhotoGroupView(
                group.Key?.Part.Value is { } part ? $"of-{part}" : "of-the-whole",
                group.Key is { } reference ? book.LinkWithItem(reference) : new LinkView("The build as a whole", null),
                [.. group.SelectMany(entry => desk.Photos(entry, isFirstOnPage: false).Select(photo => photo with { From = new LinkView(Show.Date(entry.Date), Addresses.Of(entry.Ref)) }))]))
            .Where(group => group.Photos.Count > 0)
            .ToList();
        var count = groups.Sum(group => group.Photos.Count);
        var block = new TitleBlockView { Title = build.Title, Supplementary = "Photos", DocumentType = "Photos", Identification = $"{build.Id}/photos", Issued = desk.LatestDate(build.Entries) };
        return new PhotosPage(
            desk.Frame("photos", $"{build.Title}, photos", $"{Show.Count(count, "photo", "photos")} of {Show.Lower(build.Title)}, by part.", [Desk.FrontCrumb, Desk.Crumb(build)], block),
            $"Photos · {Show.Count(count, "photo", "photos")}",
            groups);
    }
}
