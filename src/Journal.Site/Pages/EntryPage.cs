using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Html;

namespace Journal.Site.Pages;

/// <summary>A job in the table of an entry.</summary>
/// <param name="Parts">The parts it was on; none for the build as a whole.</param>
/// <param name="Operations">What was done.</param>
/// <param name="Hours">Hours and minutes; a dash for none.</param>
/// <param name="SetUp">Of these the setting up; a dash for none.</param>
/// <param name="Datum">What everything was measured from, in the maker's words; null where the job does not say.</param>
/// <param name="Held">How the work was held, in the maker's words; null where the job does not say.</param>
/// <param name="Made">The tools, jigs and fixtures that it made.</param>
/// <param name="Mends">The entry with the mistake that it puts right; null where there is none, it is this entry, or it is not shown.</param>
public sealed record JobView(
    IReadOnlyList<LinkView> Parts, IReadOnlyList<LinkView> Operations, string Hours, string SetUp, string? Datum, string? Held, IReadOnlyList<LinkView> Made, LinkView? Mends);

/// <summary>A purchase of an evening.</summary>
/// <param name="What">What was bought, in the maker's words.</param>
/// <param name="Cost">The price with its currency.</param>
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
    SafeHtml Prose,
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
    IReadOnlyList<VideoView> Videos)
{
    /// <summary>The page of an entry, which must be shown, of its build.</summary>
    internal static EntryPage Of(SiteFigures figures, Build build, Entry entry)
    {
        var views = new SharedViews(figures, Addresses.Of(entry.Ref));
        var parts = PartsOf(entry).ToList();
        var mistakes = figures.Index.Mistakes[entry.Ref].ToList();
        var block = new TitleBlockView
        {
            Title = entry.Title,
            Supplementary = build.Title,
            DocumentType = "Entry",
            Identification = entry.Ref.ToString(),
            Issued = DateView.Of(entry.Date),
        };
        var (before, after) = figures.Index.Beside(entry.Ref);
        var frame = views.Frame("entry", entry.Title, DescriptionOf(figures, build, entry), [SharedViews.FrontCrumb, SharedViews.Crumb(build), .. parts.Count == 1 ? [figures.LinkWithItem(parts[0])] : Array.Empty<LinkView>()], block);
        return new EntryPage(
            frame with { ShareType = "article", SharePicture = views.Share(views.Photos(entry).FirstOrDefault()), StructuredData = StructuredData.Article(views, build, entry, frame.Description) },
            DateView.InFull(entry.Date),
            Show.HoursOrDash(entry.Time),
            [.. entry.Jobs.Select(job => JobOf(figures, entry, job))],
            views.Cautions(Core.Figures.Cautions.FewOf(Core.Figures.Cautions.For(build, entry))),
            views.Prose(entry),
            [.. PhotosBesideText(views, entry)],
            entry.Milestone,
            entry.Departure,
            [.. RemarksOf(figures, views, entry, mistakes)],
            entry.Next,
            ReadingRows.Of(figures, entry),
            SettingRows.Of(figures, entry),
            [.. entry.Trials.Select(trial => TrialOf(figures, new DatedTrial(entry.Date, trial, entry.Ref)))],
            [.. entry.Finished.Select(finished => FinishedOf(figures, build, finished))],
            [.. entry.Snags.Where(snag => figures.Index.ClearedIn(build.Id, snag.Id) is null).Select(snag => snag.Text)],
            [.. SnagsPutRightOf(figures, build, entry)],
            [.. entry.Cleared.Select(id => SnagText(figures, build, id)).OfType<string>()],
            [.. ToolsOf(figures, views, entry)],
            [.. entry.Bought.Select(bought => new PurchaseView(bought.What, Show.Money(bought.Cost, figures.Journal.Currency)))],
            [.. entry.Heeded.Where(figures.Visibility.Shows).Select(figures.Link)],
            [.. figures.BackLinks.To(entry.Ref).Where(link => figures.Visibility.Shows(link.Entry)).Select(link => link.Entry).Distinct().Select(link => views.Line(figures.Entry(link)))],
            before is { } earlier ? figures.Link(earlier) : null,
            after is { } later ? figures.Link(later) : null,
            [.. parts.Select(part => PartStepsView.Of(figures, part, entry)).OfType<PartStepsView>()],
            VideoView.Of(figures, build, entry));
    }

    /// <summary>A run with its pressure, speed and time, as far as the entry gives them.</summary>
    internal static TrialView TrialOf(SiteFigures figures, DatedTrial trial)
    {
        var details = new[] { trial.Trial.Pressure, trial.Trial.Speed, trial.Trial.Time is { } time ? Show.Hours(time) : null };
        return new TrialView(DateView.Of(trial.Date), figures.Link(trial.Entry), Casing.Capital(TrialText.On(trial.Trial)), string.Join(" · ", details.OfType<string>()), trial.Trial.Result);
    }

    private static IEnumerable<PartRef> PartsOf(Entry entry) => entry.Jobs.SelectMany(job => job.Parts).Select(share => new PartRef(entry.Build, share.Part)).Distinct();

    private static string DescriptionOf(SiteFigures figures, Build build, Entry entry)
    {
        var words = entry.Story ?? (entry.Mistakes.Count > 0 ? entry.Mistakes[0].What : null) ?? entry.Next;
        var about = $"{build.Title}: {figures.OperationWords(entry.Jobs.SelectMany(job => job.Operations).Distinct())}{(entry.Time == Minutes.Zero ? "" : $", {Show.Hours(entry.Time)} at the bench")}.";
        return words is null ? about : $"{about} {words}";
    }

    private static JobView JobOf(SiteFigures figures, Entry entry, Job job)
    {
        var mends = job.Mends is { } id && figures.Index.ToldIn(entry.Build, id) is { } told && told != entry.Ref && figures.Visibility.Shows(told) ? figures.Entry(told) : null;
        return new JobView(
            [.. job.Parts.Select(share => new PartRef(entry.Build, share.Part)).Select(figures.LinkWithItem)],
            [.. job.Operations.Select(figures.Link)],
            Show.HoursOrDash(job.Time),
            Show.HoursOrDash(job.SetUp),
            job.Datum,
            job.Held,
            [.. job.Made.Select(figures.Link)],
            mends is null ? null : new LinkView($"Puts right what went wrong on {Show.Date(mends.Date)}", Addresses.Of(mends.Ref)));
    }

    private static IEnumerable<PhotoView> PhotosBesideText(SharedViews views, Entry entry)
    {
        var prose = entry.Body.Text;
        var beside = entry with { Photos = [.. entry.Photos.Where(photo => !prose.Contains(photo.File[(photo.File.LastIndexOf('/') + 1)..], StringComparison.Ordinal))] };
        return views.Photos(beside, isFirstOnPage: true);
    }

    private static IEnumerable<RemarkView> RemarksOf(SiteFigures figures, SharedViews views, Entry entry, List<MistakeCost> mistakes)
    {
        var told = new HashSet<Id<Lesson>>();
        foreach (var cost in mistakes)
        {
            yield return views.Mistake(cost, withPlace: false);
            if (cost.Mistake.Lesson is { } lesson && told.Add(lesson))
            {
                yield return new RemarkView("lesson", "Lesson", figures.Link(lesson), VerdictOf(figures.Lesson(lesson).Lesson));
            }

            if (cost.Mistake.Repeats is { } repeats && figures.Visibility.Shows(repeats))
            {
                yield return new RemarkView("lesson", "Known already", figures.Link(repeats), null);
            }
        }

        foreach (var lesson in entry.Lessons.Where(lesson => told.Add(lesson.Id)))
        {
            yield return new RemarkView("lesson", "Lesson", figures.Link(lesson.Id), VerdictOf(lesson));
        }
    }

    private static string? VerdictOf(Lesson lesson) => (lesson.Verdict, lesson.Better) switch
    {
        (null, null) => null,
        ({ } verdict, null) => verdict.InWords(),
        (null, { } better) => $"better: {Casing.Lower(better)}",
        ({ } verdict, { } better) => $"{verdict.InWords()} · better: {Casing.Lower(better)}",
    };

    private static LinkView FinishedOf(SiteFigures figures, Build build, Finished finished)
    {
        var link = figures.LinkWithItem(new PartRef(build.Id, finished.Part));
        return finished.Pieces is { } pieces ? link with { Text = $"{link.Text}, {Show.Count(pieces, "piece", "pieces")}" } : link;
    }

    private static IEnumerable<SnagPutRightView> SnagsPutRightOf(SiteFigures figures, Build build, Entry entry) =>
        from snag in entry.Snags
        let cleared = figures.Index.ClearedIn(build.Id, snag.Id)
        where cleared is not null && cleared != entry.Ref
        select new SnagPutRightView(snag.Text, figures.Visibility.Shows(cleared.Value) ? new LinkView(Show.Date(figures.Entry(cleared.Value).Date), Addresses.Of(cleared.Value)) : new LinkView("since", null));

    private static string? SnagText(SiteFigures figures, Build build, Id<Snag> id) =>
        figures.Index.Snag(build.Id, id) is var (entry, text) && figures.Visibility.Shows(entry) ? text : null;

    private static IEnumerable<ToolLineView> ToolsOf(SiteFigures figures, SharedViews views, Entry entry)
    {
        var made = entry.Jobs.SelectMany(job => job.Made).ToHashSet();
        return entry.Jobs.SelectMany(job => job.Made.Concat(job.Tools)).Distinct().Where(figures.Visibility.Shows)
            .Select(id => views.ToolLine(id, made.Contains(id) ? "made this evening" : null));
    }
}

/// <summary>The entries before and after this one on the same part.</summary>
/// <param name="Part">The part's title.</param>
/// <param name="Before">The shown entry before; null where this is the first.</param>
/// <param name="After">The shown entry after; null where this is the last.</param>
public sealed record PartStepsView(string Part, LinkView? Before, LinkView? After)
{
    /// <summary>Links to the entries beside this one on a part; null where this is its only shown entry.</summary>
    internal static PartStepsView? Of(SiteFigures figures, PartRef part, Entry entry)
    {
        var (before, after) = figures.Index.Beside(entry.Ref, part);
        return before is null && after is null
            ? null
            : new PartStepsView(figures.Part(part).Title, before is { } earlier ? figures.Link(earlier) : null, after is { } later ? figures.Link(later) : null);
    }
}
