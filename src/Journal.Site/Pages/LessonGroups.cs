using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Site.Pages;

/// <summary>Lessons under one heading of the figures.</summary>
internal sealed record LessonGroup(string Id, LinkView Heading, IReadOnlyList<LessonFigure> Lessons);

/// <summary>The headings of each page of the lessons figures, in order. A lesson of several parts or tools stands under each.</summary>
internal static class LessonGroups
{
    /// <summary>The headings of one page.</summary>
    public static IEnumerable<LessonGroup> Of(SiteFigures figures, LessonOrder order) => order switch
    {
        LessonOrder.Operation => ByOperation(figures),
        LessonOrder.Cause => ByCause(figures),
        LessonOrder.Part => ByPart(figures),
        LessonOrder.Tool => ByTool(figures),
        LessonOrder.Cost => ByCost(figures),
        _ => ByDate(figures),
    };

    private static IEnumerable<LessonGroup> ByOperation(SiteFigures figures)
    {
        var shown = figures.ShownOperations.ToHashSet();
        return figures.ShownLessons.GroupBy(lesson => lesson.On.Operations[0])
            .OrderBy(group => figures.Operation(group.Key).Title, StringComparer.Ordinal)
            .Select(group => new LessonGroup(group.Key.Value, shown.Contains(group.Key) ? figures.Link(group.Key) : new LinkView(figures.Operation(group.Key).Title, null), [.. group]));
    }

    private static IEnumerable<LessonGroup> ByCause(SiteFigures figures)
    {
        var byCause = figures.ShownLessons.Where(lesson => lesson.Own is not null).ToLookup(lesson => lesson.Cause);
        foreach (var cause in figures.Lessons.CausesByMinutes.Where(cause => byCause.Contains(cause.Cause)))
        {
            yield return new LessonGroup(cause.Cause?.Value ?? "cause-not-said", new LinkView(figures.CauseTitle(cause.Cause), null), [.. byCause[cause.Cause]]);
        }

        yield return new LessonGroup("no-mistake", new LinkView("Learned without a mistake", null), [.. figures.ShownLessons.Where(lesson => lesson.Own is null)]);
    }

    private static IEnumerable<LessonGroup> ByPart(SiteFigures figures)
    {
        var byPart = figures.ShownLessons.SelectMany(lesson => lesson.On.Parts, (lesson, part) => (lesson, part)).ToLookup(pair => pair.part, pair => pair.lesson);
        foreach (var build in figures.Journal.Builds)
        {
            foreach (var part in build.Parts.Select(part => new PartRef(build.Id, part.Id)))
            {
                yield return new LessonGroup($"{part.Build}-{part.Part}", Named(figures.Link(part), build), [.. byPart[part]]);
            }

            var whole = figures.ShownLessons.Where(lesson => lesson.Entry.Build == build.Id && lesson.On.Parts.Count == 0);
            yield return new LessonGroup($"{build.Id}-as-a-whole", new LinkView($"{build.Title} as a whole", Addresses.Of(build.Id)), [.. whole]);
        }

        static LinkView Named(LinkView part, Build build) => part with { Text = $"{part.Text}, {Casing.Lower(build.Title)}" };
    }

    private static IEnumerable<LessonGroup> ByTool(SiteFigures figures)
    {
        var byTool = figures.ShownLessons.SelectMany(lesson => lesson.On.Tools.Distinct(), (lesson, tool) => (lesson, tool)).ToLookup(pair => pair.tool, pair => pair.lesson);
        foreach (var tool in figures.Tooling.Tools.Select(tool => tool.Id).Where(figures.Visibility.Shows).OrderBy(id => figures.Tool(id).Title, StringComparer.OrdinalIgnoreCase).ThenBy(id => id))
        {
            yield return new LessonGroup(tool.Value, figures.Link(tool), [.. byTool[tool]]);
        }

        yield return new LessonGroup("no-tool", new LinkView("No tool named", null), [.. figures.ShownLessons.Where(lesson => lesson.On.Tools.Count == 0)]);
    }

    private static IEnumerable<LessonGroup> ByCost(SiteFigures figures)
    {
        (string Id, string Title, int Least)[] bands =
        [
            ("evenings", "Three hours or more", 180), ("hours", "One to three hours", 60), ("under-an-hour", "Under an hour", 1), ("nothing", "No time lost", 0),
        ];
        var byBand = figures.ShownLessons.ToLookup(lesson => bands.First(band => lesson.MinutesLost.Count >= band.Least).Id);
        return bands.Select(band => new LessonGroup(band.Id, new LinkView(band.Title, null), [.. byBand[band.Id]]));
    }

    private static IEnumerable<LessonGroup> ByDate(SiteFigures figures) => figures.ShownLessons
        .GroupBy(lesson => CalendarMonth.Of(lesson.Date))
        .OrderByDescending(group => group.Max(lesson => lesson.Date))
        .Select(group => new LessonGroup($"month-{group.Key}", new LinkView(Show.Month(group.First().Date), null), [.. group]));
}
