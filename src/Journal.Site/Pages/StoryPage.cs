using System.Text;
using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A part's chapter of the short story.</summary>
public sealed record StoryPartView(BalloonView? Balloon, string Title, IReadOnlyList<StoryStepView> Steps);

/// <summary>A step of the story: a sentence, and a picture where there is one.</summary>
public sealed record StoryStepView(string Sentence, LinkView Entry, PhotoView? Photo);

/// <summary>The short story of a build: part by part, a sentence and a picture for each step.</summary>
public sealed record StoryPage(PageFrame Frame, string Kind, string Title, IReadOnlyList<StoryPartView> Parts, string Outline)
{
    internal static bool HasStory(Book book, Build build) => build.Entries.Any(entry => entry.Story is not null && book.Showing.Shows(entry));

    internal static StoryPage Of(Book book, Build build)
    {
        var desk = new Desk(book, Addresses.Story(build.Id));
        var hours = book.HoursOf(build.Id).Minutes;
        var block = new TitleBlockView { Title = build.Title, Supplementary = "The short story", DocumentType = "Story", Identification = $"{build.Id}/story", Issued = desk.LatestDate(build.Entries) };
        return new StoryPage(
            desk.Frame("story", $"{build.Title}, the short story", $"How {Show.Lower(build.Title)} was made, in a sentence a step.", [Desk.FrontCrumb, Desk.Crumb(build)], block),
            $"The short story · {Show.Hours(hours)} at the bench",
            build.Title,
            PartsOf(book, desk, build),
            Addresses.StoryText(build.Id));
    }

    /// <summary>The story as an outline to read from.</summary>
    internal static string Text(Book book, Build build)
    {
        var text = new StringBuilder();
        text.Append(build.Title).Append('\n').Append('=', build.Title.Length).Append('\n');
        foreach (var part in PartsOf(book, new Desk(book, Addresses.Story(build.Id)), build))
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
    private static List<StoryPartView> PartsOf(Book book, Desk desk, Build build)
    {
        var finished = book.StateOf(build.Id).Finished.Select(one => one.Part).ToHashSet();
        var told = build.Entries.Where(entry => entry.Story is not null && book.Showing.Shows(entry)).ToList();
        var beginning = told.TakeWhile(entry => PartOf(book, entry) is null).ToList();
        var byPart = told.Skip(beginning.Count).ToLookup(entry => PartOf(book, entry));
        var chapters = byPart.Where(group => group.Key is not null)
            .Select(group => (Part: (Part?)book.Part(new PartRef(build.Id, group.Key!.Value)), Entries: (IEnumerable<Entry>)group))
            .Prepend((Part: null, Entries: beginning))
            .Append((Part: null, Entries: byPart[null]));
        return
        [
            .. chapters.Where(chapter => chapter.Entries.Any()).Select(chapter => new StoryPartView(
                chapter.Part is { } part ? desk.Balloon(build, part, finished) : null,
                chapter.Part?.Title ?? (ReferenceEquals(chapter.Entries, beginning) ? "The beginning" : "The whole"),
                [.. chapter.Entries.Select(entry => Step(desk, entry))])),
        ];
    }

    private static Id<Part>? PartOf(Book book, Entry entry) => entry.Jobs.SelectMany(job => job.Parts).Select(share => (Id<Part>?)share.Part)
        .FirstOrDefault(part => book.Showing.Shows(new PartRef(entry.Build, part!.Value)));

    private static StoryStepView Step(Desk desk, Entry entry) =>
        new(entry.Story!, new LinkView(Show.Date(entry.Date), Addresses.Of(entry.Ref)), desk.Photos(entry).FirstOrDefault());
}
