using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>A line of the parts list.</summary>
/// <param name="Balloon">The part and how far it is.</param>
/// <param name="Made">Material and stock; empty where neither is given.</param>
/// <param name="Pieces">How many are made, such as <c>4 off</c>; empty for one.</param>
/// <param name="SetUps">How many set-ups it took; a dash where no work was done.</param>
/// <param name="Hours">Hours and minutes; a dash for none.</param>
public sealed record PartLineView(BalloonView Balloon, string Made, string Pieces, string SetUps, string Hours);

/// <summary>A line of the costs.</summary>
/// <param name="What">The kind of purchase.</param>
/// <param name="Cost">The sum with its currency.</param>
public sealed record CostLineView(string What, string Cost);

/// <summary>A milestone.</summary>
public sealed record MilestoneView(DateView Date, LinkView Entry);

/// <summary>The page of one build: how far it is, what it took, and what one would need to follow it.</summary>
public sealed record BuildPage(
    PageFrame Frame,
    string Kind,
    string? Stamp,
    string StampKind,
    string? Gist,
    IReadOnlyList<FactView> Facts,
    IReadOnlyList<PartLineView> Parts,
    string General,
    string SetUps,
    string Hours,
    PhotoView? Photo,
    string? Next,
    IReadOnlyList<SnagView> Snags,
    IReadOnlyList<string> SnagsCleared,
    IReadOnlyList<ToolLineView> Essential,
    IReadOnlyList<ToolLineView> Handy,
    IReadOnlyList<ToolLineView> Workarounds,
    IReadOnlyList<ToolLineView> Fixtures,
    IReadOnlyList<EntryLineView> Latest,
    IReadOnlyList<EntryLineView> Entries,
    ChartView ByPart,
    ChartView ByOperation,
    ChartView ByKind,
    ChartView? AgainstGuess,
    ChartView? Gathered,
    IReadOnlyList<MilestoneView> Milestones,
    IReadOnlyList<TrialView> Trials,
    IReadOnlyList<ReadingRowView> Out,
    IReadOnlyList<MateRowView> Mates,
    IReadOnlyList<CostLineView> Costs,
    string CostTotal,
    IReadOnlyList<VideoView> Videos,
    string? Story,
    string? Gallery,
    string? Estimate,
    OutcomeView? Outcome)
{
    /// <summary>The page of a build. Hours, and what is worked out from them, count hidden evenings; nothing else does.</summary>
    internal static BuildPage Of(SiteFigures figures, Build build)
    {
        var views = new SharedViews(figures, Addresses.Of(build.Id));
        var (hours, timeline, state) = (
            figures.Hours.Builds.First(one => one.Build == build.Id),
            figures.Timeline.Builds.First(one => one.Build == build.Id),
            figures.State.Builds.First(one => one.Build == build.Id));
        var (costs, tooling) = (figures.Costs.Builds.First(one => one.Build == build.Id), figures.Tooling.Builds.First(one => one.Build == build.Id));
        var shown = build.Entries.Where(figures.Visibility.Shows).ToList();
        var block = new TitleBlockView
        {
            Title = build.Title,
            Supplementary = build.Drawings is { } drawings ? $"Drawings: {drawings}" : null,
            DocumentType = "Build",
            Status = StatusWords(build.Status),
            Identification = build.Id.Value,
            Issued = views.LatestDate(build.Entries),
            Sheet = Show.Number(1),
        };
        return new BuildPage(
            views.Frame("build", build.Title, $"{build.Title}: {Show.Count(shown.Count, "entry", "entries")}, {Show.Hours(hours.Minutes)} at the bench, {Show.Count(build.Parts.Count, "part", "parts")}.", [SharedViews.FrontCrumb], block),
            KindOf(build, timeline),
            build.Status == BuildStatus.UnderWay ? null : StatusWords(build.Status),
            build.Status.ToWord(),
            GistOf(figures, build),
            FactsOf(figures, build, hours, timeline, state, costs),
            PartsOf(figures, views, build, hours, timeline, state),
            Show.HoursOrDash(hours.General.Minutes),
            Show.Number(timeline.Parts.Sum(part => part.SetUps)),
            Show.Hours(hours.Minutes),
            PictureOf(views, shown),
            state.Next is { } next && figures.Visibility.Shows(next.Entry) && build.Status != BuildStatus.Finished ? next.Text : null,
            [.. state.Snags.Where(snag => figures.Visibility.Shows(snag.Entry)).Select(snag => new SnagView(new LinkView(snag.Snag.Text, Addresses.Of(snag.Entry)), DateView.Of(snag.Date)))],
            ClearedSnags(shown, state),
            ToolLines(figures, views, tooling.Essential),
            ToolLines(figures, views, tooling.Handy),
            ToolLines(figures, views, tooling.Workarounds),
            [.. tooling.Fixtures.Where(one => figures.Visibility.Shows(one.Tool)).Select(one => views.ToolLine(one.Tool, FixtureWords(figures, build, one)))],
            views.Latest(build.Entries),
            [.. shown.Select(views.Line)],
            HoursByPart(figures, build, hours),
            HoursByOperation(figures, "by-operation", build.Title, hours.Work),
            HoursByKind("by-kind", build.Title, hours.Work),
            GuessByPart(figures, build, hours),
            GatheredOf(figures, views, build.Title, timeline),
            [.. timeline.Milestones.Where(one => figures.Visibility.Shows(one.Entry)).Select(one => new MilestoneView(DateView.Of(one.Date), new LinkView(one.Text, Addresses.Of(one.Entry))))],
            [.. timeline.Trials.Where(one => figures.Visibility.Shows(one.Entry)).Select(one => EntryPage.TrialOf(figures, one))],
            ReadingRows.OutIn(figures, build),
            MateRows.Of(figures, build),
            [.. costs.Kinds.Select(kind => new CostLineView(kind.What.Title(), Show.Money(kind.Cost, figures.Journal.Currency)))],
            Show.Money(costs.Total, figures.Journal.Currency),
            VideoView.Of(figures, build),
            StoryPage.HasStory(figures, build) ? Addresses.Story(build.Id) : null,
            PhotosPage.HasPhotos(figures, build) ? Addresses.Photos(build.Id) : null,
            figures.ShownPlans.FirstOrDefault(plan => plan.Id.Value == build.Id.Value) is { } plan ? Addresses.Of(plan.Id) : null,
            OutcomeView.Of(figures, build));
    }

    /// <summary>How far a build is, as a word that begins a sentence.</summary>
    internal static string StatusWords(BuildStatus status) => status switch
    {
        BuildStatus.Planned => "Planned",
        BuildStatus.UnderWay => "Under way",
        BuildStatus.Finished => "Finished",
        _ => "Laid aside",
    };

    /// <summary>The build in a sentence: the <c>story</c> of the first shown entry that has one; null where none has.</summary>
    internal static string? GistOf(SiteFigures figures, Build build) =>
        build.Entries.Where(figures.Visibility.Shows).Select(entry => entry.Story).FirstOrDefault(story => story is not null);

    /// <summary>A bar for each kind of time, the longest first.</summary>
    /// <param name="id">The chart's id on its page.</param>
    /// <param name="about">Whose hours they are, in words for those who cannot see the chart.</param>
    /// <param name="work">The time.</param>
    internal static ChartView HoursByKind(string id, string about, Work work) => BarChart.Draw(
        id,
        "What the hours went into",
        $"Hours of {about} by kind of time.",
        [.. work.Kinds.OrderByDescending(kind => kind.Minutes).Select(kind => new Bar(KindWords(kind.What), kind.Minutes))],
        "Kind of time");

    /// <summary>A bar for each operation, the longest first, with a link to its page where it has one.</summary>
    /// <param name="figures">The figures of the site.</param>
    /// <param name="id">The chart's id on its page.</param>
    /// <param name="about">Whose hours they are, in words for those who cannot see the chart.</param>
    /// <param name="work">The time.</param>
    internal static ChartView HoursByOperation(SiteFigures figures, string id, string about, Work work)
    {
        var pages = figures.ShownOperations.ToHashSet();
        return BarChart.Draw(
            id,
            "Hours by operation",
            $"Hours of {about} by operation.",
            [.. work.Operations.Select(time => new Bar(figures.Operation(time.What).Title, time.Minutes, pages.Contains(time.What) ? Addresses.Of(time.What) : null))],
            "Operation");
    }

    /// <summary>The total hours over time with the shown milestones; null without any days of work.</summary>
    /// <param name="figures">The figures of the site.</param>
    /// <param name="views">The page that shows it.</param>
    /// <param name="about">Whose hours they are, in words for those who cannot see the chart.</param>
    /// <param name="timeline">The days.</param>
    internal static ChartView? GatheredOf(SiteFigures figures, SharedViews views, string about, BuildTimeline timeline) => timeline.Gathered.Count == 0 ? null : GatheredChart.Draw(
        "gathered",
        "Total hours over time",
        $"Total hours of {about} from {Show.PlainDate(timeline.First!.Value)} to {Show.PlainDate(timeline.Last!.Value)}: {Show.Hours(timeline.Gathered[^1].Total)} in all.",
        [.. timeline.Gathered.Select(day => new GatheredHours(day.Date, day.Total))],
        Marks(figures, timeline),
        views.Root);

    /// <summary>The milestones of shown entries, in order, with links to them.</summary>
    internal static IReadOnlyList<MilestoneMark> Marks(SiteFigures figures, BuildTimeline timeline) =>
        [.. timeline.Milestones.Where(one => figures.Visibility.Shows(one.Entry)).Select(one => new MilestoneMark(one.Date, one.Text, Addresses.Of(one.Entry)))];

    /// <summary>A kind of time as a word that begins a sentence.</summary>
    internal static string KindWords(TimeKind kind) => Titles.FromId(kind.ToWord());

    private static string KindOf(Build build, BuildTimeline timeline)
    {
        var days = (timeline.First, timeline.Last, build.Status) switch
        {
            (null, _, _) => build.Started is { } started ? $"Started {Show.PlainDate(started)}" : null,
            ({ } first, { } last, BuildStatus.Finished) => $"{Show.PlainDate(first)} to {Show.PlainDate(last)}",
            ({ } first, _, _) => $"{StatusWords(build.Status)} since {Show.PlainDate(build.Started ?? first)}",
        };
        return string.Join(" · ", new[] { "Build", days, build.Units == LengthUnit.Inch ? "inch" : "mm" }.OfType<string>());
    }

    private static List<FactView> FactsOf(SiteFigures figures, Build build, BuildHours hours, BuildTimeline timeline, BuildState state, BuildCosts costs)
    {
        var facts = new List<FactView> { new("Hours", Show.Hours(hours.Minutes)) };
        var guessed = build.Parts.Sum(part => part.Guess?.ForAll(part.Quantity).MeanMinutes ?? 0) + build.Whole.Values.Sum(time => time.Count);
        if (guessed > 0)
        {
            facts.Add(new FactView("Guessed", Show.Hours(new Minutes((int)Math.Round(guessed))), build.Status == BuildStatus.Finished ? $"took {Show.Ratio(hours.Minutes.Count / guessed)} times the guess" : null));
        }

        facts.Add(new FactView("Parts", $"{Show.Number(state.Finished.Count)} of {Show.Number(build.Parts.Count)}"));
        facts.Add(new FactView("Set-ups", Show.Number(timeline.Parts.Sum(part => part.SetUps))));
        var mistakes = figures.Lessons.Mistakes.Where(cost => cost.Ref.Entry.Build == build.Id).ToList();
        facts.Add(new FactView("Mistakes", Show.Number(mistakes.Count), $"{Show.Hours(mistakes.Sum(cost => cost.Minutes))} lost"));
        facts.Add(new FactView("Spent", Show.Money(costs.Total, figures.Journal.Currency)));
        if (timeline.Pace is { } pace)
        {
            facts.Add(new FactView("Pace", Show.Hours(new Minutes((int)Math.Round(pace.HoursAWeek * 60))), "a week"));
        }

        return facts;
    }

    private static IReadOnlyList<PartLineView> PartsOf(SiteFigures figures, SharedViews views, Build build, BuildHours hours, BuildTimeline timeline, BuildState state)
    {
        var taken = hours.Parts.ToDictionary(part => part.Part, part => part.Minutes);
        var setUps = timeline.Parts.ToDictionary(part => part.Part, part => part.SetUps);
        var finished = state.Finished.Select(part => part.Part).ToHashSet();
        return
        [
            .. build.Parts.Select(part => new PartLineView(
                views.Balloon(build, part, finished),
                string.Join(", ", new[] { part.Material is { } material ? PartPage.MaterialWords(figures, material) : null, PartPage.StockWords(figures, part) }.OfType<string>()),
                part.Quantity == 1 ? "" : $"{Show.Number(part.Quantity)} off",
                setUps.TryGetValue(part.Id, out var count) ? Show.Number(count) : "–",
                Show.HoursOrDash(taken.GetValueOrDefault(part.Id)))),
        ];
    }

    // The first picture of the latest milestone that has one, else of the latest entry.
    private static PhotoView? PictureOf(SharedViews views, List<Entry> shown) =>
        shown.AsEnumerable().Reverse().OrderByDescending(entry => entry.Milestone is not null).SelectMany(entry => views.Photos(entry, isFirstOnPage: true)).FirstOrDefault();

    private static IReadOnlyList<string> ClearedSnags(List<Entry> shown, BuildState state)
    {
        var open = state.Snags.Select(snag => snag.Snag.Id).ToHashSet();
        return [.. shown.SelectMany(entry => entry.Snags).Where(snag => !open.Contains(snag.Id)).Select(snag => snag.Text)];
    }

    private static IReadOnlyList<ToolLineView> ToolLines(SiteFigures figures, SharedViews views, IReadOnlyList<Id<Tool>> tools) =>
        [.. tools.Where(figures.Visibility.Shows).Select(id => views.ToolLine(id))];

    private static string FixtureWords(SiteFigures figures, Build build, FixtureServed fixture)
    {
        var parts = fixture.Parts.ToList();
        var served = parts.Count == 0 ? null : $"served {(parts.Count <= 2 ? string.Join(" and ", parts.Select(part => Casing.Lower(figures.Part(new PartRef(build.Id, part)).Title))) : $"{Show.Number(parts.Count)} parts")}";
        var cost = fixture.MinutesToMake > Minutes.Zero ? $"{Show.Hours(fixture.MinutesToMake)} to make" : null;
        return string.Join(", ", new[] { cost, served }.OfType<string>());
    }

    private static ChartView HoursByPart(SiteFigures figures, Build build, BuildHours hours)
    {
        var bars = hours.Parts.Where(part => part.Minutes > Minutes.Zero)
            .Select(part => figures.LinkWithItem(new PartRef(build.Id, part.Part)) is var link ? new Bar(link.Text, part.Minutes, link.Address) : null!);
        var general = hours.General.Minutes;
        var all = general > Minutes.Zero ? bars.Append(new Bar("Build as a whole", general)) : bars;
        return BarChart.Draw("by-part", "Hours by part", $"Hours of {build.Title} by part; work on the build as a whole has its own bar.", [.. all.OrderByDescending(bar => bar.Time)]);
    }

    private static ChartView? GuessByPart(SiteFigures figures, Build build, BuildHours hours)
    {
        var taken = hours.Parts.ToDictionary(part => part.Part, part => part.Minutes);
        var bars = build.Parts.Where(part => part.Guess is not null)
            .Select(part => figures.LinkWithItem(new PartRef(build.Id, part.Id)) is var link
                ? new TakenAndGuess(link.Text, taken.GetValueOrDefault(part.Id), new Minutes((int)Math.Round(part.Guess!.ForAll(part.Quantity).MeanMinutes)), link.Address)
                : null!)
            .ToList();
        return bars.Count == 0 ? null : GuessChart.Draw("against-guess", "Hours taken against hours guessed", "Bars: hours taken. Lines below them: the guess made before the work.", bars);
    }
}
