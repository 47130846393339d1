using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Site.Pages;

/// <summary>The pictures of a part.</summary>
/// <param name="Id">The group's id on its page.</param>
/// <param name="Part">The part sheet; the build as a whole has no link.</param>
/// <param name="Photos">The pictures by date; at least one.</param>
public sealed record PhotoGroupView(string Id, LinkView Part, IReadOnlyList<PhotoView> Photos);

/// <summary>The gallery of a build: every picture that is shown, by part, in the order in which work on the parts began.</summary>
public sealed record PhotosPage(PageFrame Frame, string Kind, IReadOnlyList<PhotoGroupView> Groups)
{
    /// <summary>Whether a shown entry has a picture that is shown and could be read; else there is no gallery.</summary>
    internal static bool HasPhotos(SiteFigures figures, Build build) =>
        build.Entries.Where(figures.Visibility.Shows).Any(entry => entry.Photos.Any(photo => figures.Visibility.Shows(photo) && figures.PhotoOf(photo) is not null));

    /// <summary>The gallery of a build. A picture belongs to the first part that its entry worked on.</summary>
    internal static PhotosPage Of(SiteFigures figures, Build build)
    {
        var views = new SharedViews(figures, Addresses.Photos(build.Id));
        var groups = build.Entries.Where(figures.Visibility.Shows)
            .GroupBy(entry => entry.Jobs.SelectMany(job => job.Parts).Select(share => (PartRef?)new PartRef(build.Id, share.Part)).FirstOrDefault())
            .Select((group, i) => new PhotoGroupView(
                group.Key?.Part.Value is { } part ? $"of-{part}" : "of-the-whole",
                group.Key is { } reference ? figures.LinkWithItem(reference) : new LinkView("Build as a whole", null),
                [.. group.SelectMany(entry => views.Photos(entry, isFirstOnPage: false).Select(photo => photo with { From = new LinkView(Show.Date(entry.Date), Addresses.Of(entry.Ref)) }))]))
            .Where(group => group.Photos.Count > 0)
            .ToList();
        var count = groups.Sum(group => group.Photos.Count);
        var block = new TitleBlockView { Title = build.Title, Supplementary = "Photos", DocumentType = "Photos", Identification = $"{build.Id}/photos", Issued = views.LatestDate(build.Entries) };
        return new PhotosPage(
            views.Frame("photos", $"{build.Title}, photos", $"{Show.Count(count, "photo", "photos")} of {Casing.Lower(build.Title)}, by part.", [SharedViews.FrontCrumb, SharedViews.Crumb(build)], block),
            $"Photos · {Show.Count(count, "photo", "photos")}",
            groups);
    }
}
