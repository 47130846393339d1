using System.Text;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Site.Pages;

/// <summary>A part's chapter of the short story.</summary>
/// <param name="Balloon">The part and how far it is; null for what belongs to no part.</param>
/// <param name="Title">The part's title, or words for what belongs to none.</param>
/// <param name="Steps">Its steps by date; at least one.</param>
public sealed record StoryPartView(BalloonView? Balloon, string Title, IReadOnlyList<StoryStepView> Steps);

/// <summary>A step of the story.</summary>
/// <param name="Sentence">What was done, as the entry's <c>story</c> says it.</param>
/// <param name="Entry">The entry, by its date.</param>
/// <param name="Photo">Its first picture that can be shown; null where there is none.</param>
public sealed record StoryStepView(string Sentence, LinkView Entry, PhotoView? Photo);

/// <summary>The short story of a build: part by part, a sentence and a picture for each step.</summary>
public sealed record StoryPage(PageFrame Frame, string Kind, string Title, IReadOnlyList<StoryPartView> Parts, string Outline)
{
    /// <summary>Whether a shown entry of the build has a <c>story</c>; else there is no page.</summary>
    internal static bool HasStory(SiteFigures figures, Build build) => build.Entries.Any(entry => entry.Story is not null && figures.Visibility.Shows(entry));

    /// <summary>The story of a build, with the outline beside it as plain text.</summary>
    internal static StoryPage Of(SiteFigures figures, Build build)
    {
        var views = new SharedViews(figures, Addresses.Story(build.Id));
        var hours = figures.HoursOf(build.Id).Minutes;
        var block = new TitleBlockView { Title = build.Title, Supplementary = "The short story", DocumentType = "Story", Identification = $"{build.Id}/story", Issued = views.LatestDate(build.Entries) };
        return new StoryPage(
            views.Frame("story", $"{build.Title}, the short story", $"How {Casing.Lower(build.Title)} was made, in a sentence a step.", [SharedViews.FrontCrumb, SharedViews.Crumb(build)], block),
            $"The short story · {Show.Hours(hours)} at the bench",
            build.Title,
            PartsOf(figures, views, build),
            Addresses.StoryText(build.Id));
    }

    /// <summary>The story as an outline to read from.</summary>
    internal static string Text(SiteFigures figures, Build build)
    {
        var text = new StringBuilder();
        text.Append(build.Title).Append('\n').Append('=', build.Title.Length).Append('\n');
        foreach (var part in PartsOf(figures, new SharedViews(figures, Addresses.Story(build.Id)), build))
        {
            text.Append('\n').Append(part.Title).Append('\n');
            foreach (var step in part.Steps)
            {
                text.Append("  ").Append(step.Entry.Text).Append("  ").Append(step.Sentence).Append('\n');
            }
        }

        return text.ToString();
    }

    // An entry tells of the first part that it worked on. What belongs to no part opens the story where it happened
    // before any part was begun, and else ends it.
    private static List<StoryPartView> PartsOf(SiteFigures figures, SharedViews views, Build build)
    {
        var finished = figures.StateOf(build.Id).Finished.Select(one => one.Part).ToHashSet();
        var told = build.Entries.Where(entry => entry.Story is not null && figures.Visibility.Shows(entry)).ToList();
        var beginning = told.TakeWhile(entry => PartOf(entry) is null).ToList();
        var byPart = told.Skip(beginning.Count).ToLookup(entry => PartOf(entry));
        var chapters = byPart.Where(group => group.Key is not null)
            .Select(group => (Part: (Part?)figures.Part(new PartRef(build.Id, group.Key!.Value)), Entries: (IEnumerable<Entry>)group))
            .Prepend((Part: null, Entries: beginning))
            .Append((Part: null, Entries: byPart[null]));
        return
        [
            .. chapters.Where(chapter => chapter.Entries.Any()).Select(chapter => new StoryPartView(
                chapter.Part is { } part ? views.Balloon(build, part, finished) : null,
                chapter.Part?.Title ?? (ReferenceEquals(chapter.Entries, beginning) ? "The beginning" : "Build as a whole"),
                [.. chapter.Entries.Select(entry => Step(views, entry))])),
        ];
    }

    private static Id<Part>? PartOf(Entry entry) => entry.Jobs.SelectMany(job => job.Parts).Select(share => (Id<Part>?)share.Part).FirstOrDefault();

    private static StoryStepView Step(SharedViews views, Entry entry) =>
        new(entry.Story!, new LinkView(Show.Date(entry.Date), Addresses.Of(entry.Ref)), views.Photos(entry).FirstOrDefault());
}
