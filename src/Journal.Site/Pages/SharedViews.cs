using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Html;
using Journal.Site.Text;

namespace Journal.Site.Pages;

/// <summary>Makes the views that many kinds of page share, for one page at one address. It is for one thread.</summary>
internal sealed class SharedViews(SiteFigures figures, string address) : ITextTargets
{
    private const int LatestShown = 8;

    /// <summary>The journal and its figures.</summary>
    public SiteFigures Figures { get; } = figures;

    /// <summary>The page's address from the root of the site.</summary>
    public string Address { get; } = address;

    /// <summary>The way up to the root.</summary>
    public string Root { get; } = Addresses.RootOf(address);

    /// <summary>What the page has around its contents.</summary>
    /// <param name="kind">The kind of page, for the style sheet.</param>
    /// <param name="title">The page's own title.</param>
    /// <param name="description">What it is about; put on one line and cut to 160 characters.</param>
    /// <param name="crumbs">The pages above it, the front page first.</param>
    /// <param name="titleBlock">The block at its foot; null where the page is no sheet.</param>
    public PageFrame Frame(string kind, string title, string description, IReadOnlyList<LinkView> crumbs, TitleBlockView? titleBlock = null) => new()
    {
        Title = title,
        Description = Show.Shorten(OneLine(description), 160),
        Root = Root,
        Kind = kind,
        Journal = Figures.Journal.Title,
        Maker = Figures.Journal.Maker,
        Ways = Ways(),
        Canonical = Figures.Journal.Address is { } home ? new Uri(home, Address).AbsoluteUri : null,
        Crumbs = crumbs,
        TitleBlock = titleBlock,
    };

    /// <summary>The address of a file of the site that leads there from this page: absolute where the site has an address.</summary>
    public string Reachable(string address) => Figures.Journal.Address is { } home ? new Uri(home, address).AbsoluteUri : Root + address;

    /// <summary>A picture for the card that others see where the page is shared: its address is absolute. Null where the site has no address.</summary>
    public PhotoView? Share(PhotoView? photo) => photo is null || Figures.Journal.Address is null ? null : photo with { Largest = Reachable(photo.Largest) };

    /// <summary>The front page, as the first of the pages above a page.</summary>
    public static LinkView FrontCrumb => new("Builds", Addresses.Front);

    /// <summary>A build's page, as one of the pages above a page.</summary>
    public static LinkView Crumb(Build build) => new(build.Title, Addresses.Of(build.Id));

    /// <summary>An entry as a line of a list; the entry must be shown.</summary>
    public EntryLineView Line(Entry entry) => Figures.Lines.Of(entry);

    /// <summary>The eight latest of some entries that are shown, newest first.</summary>
    public IReadOnlyList<EntryLineView> Latest(IEnumerable<Entry> entries) =>
        [.. entries.Where(Figures.Visibility.Shows).OrderByDescending(entry => entry.Date).ThenByDescending(entry => entry.Ref).Take(LatestShown).Select(Line)];

    /// <summary>A mistake with what it cost in time and money.</summary>
    /// <param name="cost">The mistake with its cost.</param>
    /// <param name="withPlace">Whether to link to the entry that tells of it; not on that entry's own page.</param>
    public RemarkView Mistake(MistakeCost cost, bool withPlace)
    {
        var mistake = cost.Mistake;
        var said = LessonRecord.Cost(cost.Minutes, cost.Money, Figures.Journal.Currency, Show.Hours).ToList();
        if (mistake.Outcome is { } outcome)
        {
            said.Add(outcome.InWords());
        }

        if (mistake.Pieces is { } pieces)
        {
            said.Add(Show.Count(pieces, "piece", "pieces"));
        }

        var heading = mistake.Cause is null ? "Mistake" : $"Mistake · {Casing.Lower(Figures.CauseTitle(mistake.Cause))}";
        var entry = cost.Ref.Entry;
        return new RemarkView(
            "mistake",
            heading,
            new LinkView(mistake.What, null),
            said.Count == 0 ? null : string.Join(" · ", said),
            withPlace && Figures.Visibility.Shows(entry) ? new LinkView(Show.Date(cost.On.Date), Addresses.Of(entry)) : null);
    }

    /// <summary>A lesson with its verdict and what it has cost so far, under a heading of the page's choice.</summary>
    public RemarkView Lesson(LessonFigure lesson, string heading)
    {
        var said = new List<string>();
        if (lesson.Lesson.Verdict is { } verdict)
        {
            said.Add(verdict.InWords());
        }

        if (lesson.Lesson.Better is { } better)
        {
            said.Add($"better: {Casing.Lower(better.TrimEnd('.'))}");
        }

        said.AddRange(LessonRecord.Of(lesson, Figures.Journal.Currency, Show.Hours));
        return new RemarkView("lesson", heading, Figures.Link(lesson.Id), said.Count == 0 ? null : string.Join(" · ", said));
    }

    /// <summary>A tool with a note; where none is given, that it is a workaround or not in the crib, if so.</summary>
    public ToolLineView ToolLine(Id<Tool> id, string? note = null)
    {
        var tool = Figures.Tool(id);
        note ??= tool.IsListed ? tool.Need == Need.Workaround ? "workaround for this workshop’s limits" : null : "not in the crib";
        return new ToolLineView(Figures.Link(id), note);
    }

    /// <summary>The balloons of all parts of a build, in the order of the parts list.</summary>
    public IReadOnlyList<BalloonView> Balloons(Build build)
    {
        var finished = Figures.StateOf(build.Id).Finished.Select(part => part.Part).ToHashSet();
        return [.. build.Parts.Select(part => Balloon(build, part, finished))];
    }

    /// <summary>The balloon of a part: finished, else started where a shown entry worked on it, else not started.</summary>
    /// <param name="build">The build.</param>
    /// <param name="part">The part.</param>
    /// <param name="finished">The parts of the build that are finished.</param>
    public BalloonView Balloon(Build build, Part part, IReadOnlySet<Id<Part>> finished)
    {
        var reference = new PartRef(build.Id, part.Id);
        var (state, words) = finished.Contains(part.Id) ? ("done", "finished") : Figures.Worked[reference].Any() ? ("begun", "started") : ("to-go", "not started");
        return new BalloonView(part.Item ?? "·", part.Title, Addresses.Of(reference), state, words);
    }

    /// <summary>The pictures of an entry that may be shown and could be read.</summary>
    public IEnumerable<PhotoView> Photos(Entry entry, bool isFirstOnPage = false)
    {
        foreach (var photo in entry.Photos.Where(Figures.Visibility.Shows))
        {
            if (Photo(photo, isFirstOnPage) is { } view)
            {
                isFirstOnPage = false;
                yield return view;
            }
        }
    }

    /// <summary>A picture in its sizes; null where it cannot be read. Whether it may be shown is not asked here.</summary>
    /// <param name="photo">The picture.</param>
    /// <param name="isFirstOnPage">Whether it is in view at once, and so loads without delay.</param>
    public PhotoView? Photo(Photo photo, bool isFirstOnPage) => Figures.PhotoOf(photo) is not { } published ? null : new PhotoView
    {
        Picture = PictureElement.Of(published, Root, Alt(photo), isLazy: !isFirstOnPage, PictureElement.SideBySide),
        Largest = published.Largest,
        Width = published.Width,
        Height = published.Height,
        Alt = Alt(photo),
        Ground = published.Ground,
        Caption = photo.Caption,
        Marks = [.. photo.Marks.Select(Mark)],
    };

    /// <summary>Cautions in the order given; a source that was not looked up says that it is from memory.</summary>
    public IReadOnlyList<CautionView> Cautions(IEnumerable<Core.Trade.Caution> cautions) =>
        [.. cautions.Select(caution => new CautionView(caution.Title, WhenOf(caution), caution.Happens, caution.Done, caution.IsLookedUp ? caution.Source : $"{caution.Source}, from memory"))];

    /// <summary>An entry's whole text.</summary>
    public SafeHtml Prose(Entry entry)
    {
        current = entry;
        return new BodyHtml(this).Render(entry.Body);
    }

    /// <summary>The paragraphs of an entry that tell how its lesson came about; null where none does.</summary>
    public SafeHtml? Story(Entry entry, LessonFigure lesson)
    {
        current = entry;
        var story = Figures.Story.In(LessonStory.WordsOf(lesson), entry.Body.Document);
        return story.Count > 0 && new BodyHtml(this).Render(entry.Body, story) is { IsEmpty: false } told ? told : null;
    }

    /// <summary>A lesson to read before a job, with the reason under it.</summary>
    public RemarkView ToRead(LessonToRead read)
    {
        var reasons = read.Parts.Select(part => $"on {Casing.Lower(Figures.Part(part).Title)}").ToList();
        if (read.Operations.Count == 0 && read.Named.Count > 0)
        {
            reasons.Add($"learned on {Figures.OperationWords(read.Lesson.On.Operations)}");
            reasons.AddRange(read.Named.Select(LessonRecord.Mentions));
        }

        reasons.AddRange(LessonRecord.Of(read.Lesson, Figures.Journal.Currency, Show.Hours));
        var on = read.Lesson.On.Parts.Select(part => Figures.Part(part).Title).ToList();
        var heading = on.Count == 0 ? Show.Date(read.Lesson.Date) : $"{string.Join(", ", on)} · {Show.Date(read.Lesson.Date)}";
        return new RemarkView("lesson", heading, Figures.Link(read.Lesson.Id), reasons.Count == 0 ? null : string.Join(" · ", reasons));
    }

    /// <inheritdoc/>
    public string? AddressOf(LinkTarget target)
    {
        var to = target.Kind switch
        {
            LinkKind.Part => Figures.Link(new PartRef(target.Build!.Value, new(target.Id))).Address,
            LinkKind.Tool => Figures.Link(new Id<Tool>(target.Id)).Address,
            LinkKind.Lesson => Figures.Link(new Id<Lesson>(target.Id)).Address,
            _ => Figures.Link(new EntryRef(target.Build!.Value, new(target.Id))).Address,
        };
        return to is null ? null : Root + to;
    }

    /// <inheritdoc/>
    public TextPicture? PictureOf(string written)
    {
        if (current is null || WrittenPath.From(current.File, written).Select(path => current.Photos.FirstOrDefault(photo => photo.File == path)).FirstOrDefault(photo => photo is not null) is not { } photo)
        {
            return null;
        }

        if (!Figures.Visibility.Shows(photo))
        {
            return new TextPicture(null, SafeHtml.Empty);
        }

        if (Figures.PhotoOf(photo) is not { } published)
        {
            return null;
        }

        return new TextPicture(Root + PictureElement.AddressOf(published), PictureElement.Of(published, Root, Alt(photo), isLazy: true, PictureElement.InText));
    }

    /// <summary>The date of the latest of some entries that is shown; null where none is.</summary>
    public DateView? LatestDate(IEnumerable<Entry> entries) =>
        entries.Where(Figures.Visibility.Shows).Select(entry => (DateOnly?)entry.Date).Max() is { } date ? DateView.Of(date) : null;

    // The materials that a caution is for, where it is not for all.
    private string? WhenOf(Core.Trade.Caution caution) => caution.Materials.Count == 0 ? null
        : string.Join(", ", caution.Materials.Select(id => Casing.Lower(Figures.Journal.Vocabulary.Materials[id].Title)));

    private Entry? current;

    private static string Alt(Photo photo)
    {
        var words = photo.Alt ?? photo.Caption ?? "";
        return photo.Marks.Count == 0 ? words : $"{words}; marked: {string.Join(", ", photo.Marks.Select((mark, i) => $"{Show.Number(i + 1)} {mark.Text}"))}";
    }

    // The balloon stands a fifth of the picture away from what it points to, towards the nearer corner.
    private static MarkView Mark(PhotoMark mark, int index)
    {
        static decimal Away(decimal at) => Math.Clamp(at < 50 ? at - 16 : at + 16, 5, 95);
        static string Text(decimal at) => at.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) + "%";
        return new MarkView(index + 1, Text(mark.Across), Text(mark.Down), Text(Away(mark.Across)), Text(Away(mark.Down)), mark.Text);
    }

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private List<WayView> Ways()
    {
        var ways = new List<WayView>
        {
            new("Builds", Addresses.Front, Address == Addresses.Front),
            new("Timeline", Addresses.Timeline, Address == Addresses.Timeline),
            new("Lessons", Addresses.Lessons, Address == Addresses.Lessons),
            new("Tooling", Addresses.Tooling, Address == Addresses.Tooling),
            new("Find", Addresses.Find, Address == Addresses.Find),
        };
        if (Figures.ShownPlans is [var plan, ..] && Figures.Journal.BegunAs(plan) is null)
        {
            ways.Add(new("Next", Addresses.Of(plan.Id), Address == Addresses.Of(plan.Id)));
        }

        return ways;
    }
}
