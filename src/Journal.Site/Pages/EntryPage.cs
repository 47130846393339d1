using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Templates;

namespace Journal.Site.Pages;

/// <summary>A job in the table of an entry.</summary>
public sealed record JobView(
    IReadOnlyList<LinkView> Parts, IReadOnlyList<LinkView> Operations, string Hours, string SetUp, string? Datum, string? Held, IReadOnlyList<LinkView> Made, LinkView? Mends);

/// <summary>A purchase of an evening.</summary>
public sealed record PurchaseView(string What, string Cost);

/// <summary>A snag of an evening that was put right since.</summary>
/// <param name="Text">What was to be put right.</param>
/// <param name="Evening">The evening that did; its address is null where it is not shown.</param>
public sealed record SnagPutRightView(string Text, LinkView Evening);

/// <summary>The page of one entry. Nothing on it is a total over the journal, so that one edit touches few pages.</summary>
public sealed record EntryPage(
    PageFrame Frame,
    DateView Date,
    string Hours,
    IReadOnlyList<JobView> Jobs,
    IReadOnlyList<CautionView> Cautions,
    Html Prose,
    IReadOnlyList<PhotoView> Photos,
    string? Milestone,
    string? Departure,
    IReadOnlyList<RemarkView> Remarks,
    string? Next,
    IReadOnlyList<ReadingRowView> Readings,
    IReadOnlyList<SettingView> Settings,
    IReadOnlyList<TrialView> Trials,
    IReadOnlyList<LinkView> Finished,
    IReadOnlyList<string> Snags,
    IReadOnlyList<SnagPutRightView> SnagsPutRight,
    IReadOnlyList<string> Cleared,
    IReadOnlyList<ToolLineView> Tools,
    IReadOnlyList<PurchaseView> Bought,
    IReadOnlyList<LinkView> Heeded,
    IReadOnlyList<EntryLineView> PointingHere,
    LinkView? Before,
    LinkView? After,
    IReadOnlyList<PartStepsView> PartSteps,
    IReadOnlyList<VideoView> Videos) : IShowsWords
{
    private List<ShownWords> words = [];

    IReadOnlyList<ShownWords> IShowsWords.Words => words;

    internal static EntryPage Of(Book book, Build build, Entry entry)
    {
        var desk = new Desk(book, Addresses.Of(entry.Ref));
        var parts = PartsOf(entry).Where(book.Showing.Shows).ToList();
        var mistakes = book.Index.Mistakes[entry.Ref].ToList();
        var block = new TitleBlockView
        {
            Title = entry.Title,
            Supplementary = build.Title,
            DocumentType = "Entry",
            Identification = entry.Ref.ToString(),
            Issued = DateView.Of(entry.Date),
        };
        var (before, after) = book.Index.Beside(entry.Ref);
        var frame = desk.Frame("entry", entry.Title, DescriptionOf(book, build, entry), [Desk.FrontCrumb, Desk.Crumb(build), .. parts.Count == 1 ? [book.LinkWithItem(parts[0])] : Array.Empty<LinkView>()], block);
        return new EntryPage(
            frame with { ShareType = "article", SharePicture = desk.Share(desk.Photos(entry).FirstOrDefault()), StructuredData = StructuredData.Article(desk, build, entry, frame.Description) },
            DateView.InFull(entry.Date),
            Show.Hours(entry.Time),
            [.. entry.Jobs.Select(job => JobOf(book, entry, job))],
            desk.Cautions(Core.Figures.Cautions.FewOf(Core.Figures.Cautions.For(build, entry))),
            desk.Prose(entry),
            [.. PhotosBesideText(desk, entry)],
            entry.Milestone,
            entry.Departure,
            [.. RemarksOf(book, desk, entry, mistakes)],
            entry.Next,
            ReadingRows.Of(book, entry),
            SettingRows.Of(book, entry),
            [.. entry.Trials.Select(trial => TrialOf(book, new DatedTrial(entry.Date, trial, entry.Ref)))],
            [.. entry.Finished.Select(finished => FinishedOf(book, build, finished))],
            [.. entry.Snags.Where(snag => book.Index.ClearedIn(build.Id, snag.Id) is null).Select(snag => snag.Text)],
            [.. SnagsPutRightOf(book, build, entry)],
            [.. entry.Cleared.Select(id => SnagText(book, build, id)).OfType<string>()],
            [.. ToolsOf(book, desk, entry)],
            [.. entry.Bought.Select(bought => new PurchaseView(bought.What, Show.Money(bought.Cost, book.Journal.Currency)))],
            [.. entry.Heeded.Where(book.Showing.Shows).Select(book.Link)],
            [.. book.BackLinks.To(entry.Ref).Where(link => book.Showing.Shows(link.Entry)).Select(link => link.Entry).Distinct().Select(link => desk.Line(book.Entry(link)))],
            before is { } earlier ? book.Link(earlier) : null,
            after is { } later ? book.Link(later) : null,
            [.. parts.Select(part => PartStepsView.Of(book, part, entry)).OfType<PartStepsView>()],
            VideoView.Of(book, build, entry))
        {
            words = desk.Words,
        };
    }

    internal static TrialView TrialOf(Book book, DatedTrial trial)
    {
        var details = new[] { trial.Trial.Pressure, trial.Trial.Speed, trial.Trial.Time is { } time ? Show.Hours(time) : null };
        return new TrialView(DateView.Of(trial.Date), book.Link(trial.Entry), $"On {trial.Trial.On}", string.Join(" · ", details.OfType<string>()), trial.Trial.Result);
    }

    private static IEnumerable<PartRef> PartsOf(Entry entry) => entry.Jobs.SelectMany(job => job.Parts).Select(share => new PartRef(entry.Build, share.Part)).Distinct();

    private static string DescriptionOf(Book book, Build build, Entry entry)
    {
        var words = entry.Story ?? (entry.Mistakes.Count > 0 ? entry.Mistakes[0].What : null) ?? entry.Next;
        var about = $"{build.Title}: {book.OperationWords(entry.Jobs.SelectMany(job => job.Operations).Distinct())}, {Show.Hours(entry.Time)} at the bench.";
        return words is null ? about : $"{about} {words}";
    }

    private static JobView JobOf(Book book, Entry entry, Job job)
    {
        var mends = job.Mends is { } id && book.Index.ToldIn(entry.Build, id) is { } told && told != entry.Ref && book.Showing.Shows(told) ? book.Entry(told) : null;
        return new JobView(
            [.. job.Parts.Select(share => new PartRef(entry.Build, share.Part)).Select(book.LinkWithItem)],
            [.. job.Operations.Select(book.Link)],
            Show.Hours(job.Time),
            Show.HoursOrDash(job.SetUp),
            job.Datum,
            job.Held,
            [.. job.Made.Select(book.Link)],
            mends is null ? null : new LinkView($"Puts right what went wrong on {Show.Date(mends.Date)}", Addresses.Of(mends.Ref)));
    }

    private static IEnumerable<PhotoView> PhotosBesideText(Desk desk, Entry entry)
    {
        var prose = entry.Body.Text;
        var beside = entry with { Photos = [.. entry.Photos.Where(photo => !prose.Contains(photo.File[(photo.File.LastIndexOf('/') + 1)..], StringComparison.Ordinal))] };
        return desk.Photos(beside, isFirstOnPage: true);
    }

    private static IEnumerable<RemarkView> RemarksOf(Book book, Desk desk, Entry entry, List<MistakeCost> mistakes)
    {
        var told = new HashSet<Id<Lesson>>();
        foreach (var cost in mistakes)
        {
            yield return desk.Mistake(cost, withPlace: false);
            if (cost.Mistake.Lesson is { } lesson && told.Add(lesson))
            {
                yield return new RemarkView("lesson", "Lesson", book.Link(lesson), VerdictOf(book.Lesson(lesson).Lesson));
            }

            if (cost.Mistake.Repeats is { } repeats && book.Showing.Shows(repeats))
            {
                yield return new RemarkView("lesson", "Known already", book.Link(repeats), null);
            }
        }

        foreach (var lesson in entry.Lessons.Where(lesson => told.Add(lesson.Id)))
        {
            yield return new RemarkView("lesson", "Lesson", book.Link(lesson.Id), VerdictOf(lesson));
        }
    }

    private static string? VerdictOf(Lesson lesson) => (lesson.Verdict, lesson.Better) switch
    {
        (null, null) => null,
        ({ } verdict, null) => Desk.VerdictWords(verdict),
        (null, { } better) => $"better: {Show.Lower(better)}",
        ({ } verdict, { } better) => $"{Desk.VerdictWords(verdict)} · better: {Show.Lower(better)}",
    };

    private static LinkView FinishedOf(Book book, Build build, Finished finished)
    {
        var link = book.LinkWithItem(new PartRef(build.Id, finished.Part));
        return finished.Pieces is { } pieces ? link with { Text = $"{link.Text}, {Show.Count(pieces, "piece", "pieces")}" } : link;
    }

    private static IEnumerable<SnagPutRightView> SnagsPutRightOf(Book book, Build build, Entry entry) =>
        from snag in entry.Snags
        let cleared = book.Index.ClearedIn(build.Id, snag.Id)
        where cleared is not null && cleared != entry.Ref
        select new SnagPutRightView(snag.Text, book.Showing.Shows(cleared.Value) ? new LinkView(Show.Date(book.Entry(cleared.Value).Date), Addresses.Of(cleared.Value)) : new LinkView("since", null));

    private static string? SnagText(Book book, Build build, Id<Snag> id) =>
        book.Index.Snag(build.Id, id) is var (entry, text) && book.Showing.Shows(entry) ? text : null;

    private static IEnumerable<ToolLineView> ToolsOf(Book book, Desk desk, Entry entry)
    {
        var made = entry.Jobs.SelectMany(job => job.Made).ToHashSet();
        return entry.Jobs.SelectMany(job => job.Made.Concat(job.Tools)).Distinct().Where(book.Showing.Shows)
            .Select(id => desk.ToolLine(id, made.Contains(id) ? "made this evening" : null));
    }
}

/// <summary>The entries before and after this one on the same part.</summary>
public sealed record PartStepsView(string Part, LinkView? Before, LinkView? After)
{
    internal static PartStepsView? Of(Book book, PartRef part, Entry entry)
    {
        var (before, after) = book.Index.Beside(entry.Ref, part);
        return before is null && after is null
            ? null
            : new PartStepsView(book.Part(part).Title, before is { } earlier ? book.Link(earlier) : null, after is { } later ? book.Link(later) : null);
    }
}
