using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Pages;

namespace Journal.Site.Search;

/// <summary>Everything that a search can find. What is not shown on the pages is not in it.</summary>
internal static class FindableThings
{
    /// <summary>
    /// All of them, in the order in which things that match equally well are listed: builds, plans, parts, tools, operations,
    /// lessons, then entries, the newest of each build first.
    /// </summary>
    public static IReadOnlyList<Findable> Of(SiteFigures figures) =>
    [
        .. figures.Journal.Builds.Select(build => OfBuild(figures, build)),
        .. figures.ShownPlans.Select(plan => OfPlan(figures, plan)),
        .. figures.Journal.Builds.SelectMany(build => build.Parts, (build, part) => OfPart(figures, build, part)),
        .. figures.Tooling.Tools.Where(tool => figures.Visibility.Shows(tool.Id)).Select(tool => OfTool(figures, tool)),
        .. figures.ShownOperations.Select(operation => OfOperation(figures, operation)),
        .. figures.Lessons.All.Where(lesson => figures.Visibility.Shows(lesson.Id)).Select(lesson => OfLesson(figures, lesson)),
        .. figures.Journal.Builds.SelectMany(build => build.Entries.Where(figures.Visibility.Shows).Reverse(), (build, entry) => OfEntry(figures, build, entry)),
    ];

    private static Findable OfBuild(SiteFigures figures, Build build) => new(
        FindKind.Build,
        build.Title,
        Addresses.Of(build.Id),
        BuildPage.StatusWords(build.Status),
        Sentences([BuildPage.GistOf(figures, build), .. build.Videos.Select(video => video.Title)]));

    private static Findable OfPlan(SiteFigures figures, Plan plan) => new(
        FindKind.Plan,
        plan.Title,
        Addresses.Of(plan.Id),
        "Estimate sheet",
        Sentences([PlanPage.GistOf(figures, figures.Forecast(plan)), plan.Parts.Count == 0 ? null : $"Parts: {string.Join(", ", plan.Parts.Select(part => Casing.Lower(part.Title)))}"]));

    private static Findable OfPart(SiteFigures figures, Build build, Part part)
    {
        var reference = new PartRef(build.Id, part.Id);
        var jobs = figures.Worked[reference].Where(figures.Visibility.Shows).SelectMany(entry => entry.Jobs).Where(job => job.Parts.Any(share => share.Part == part.Id)).ToList();
        return new Findable(
            FindKind.Part,
            part.Title,
            Addresses.Of(reference),
            part.Item is { } item ? $"Item {item} of {build.Title}" : build.Title,
            Sentences(
            [
                part.Material is { } material ? PartPage.MaterialWords(figures, material) : null,
                PartPage.StockWords(figures, part),
                jobs.Count == 0 ? null : $"Made by {figures.OperationWords(jobs.SelectMany(job => job.Operations).Distinct())}",
                TitlesOf(figures, "With", jobs.SelectMany(job => job.Made.Concat(job.Tools))),
            ]));
    }

    private static Findable OfTool(SiteFigures figures, ToolFigure figure)
    {
        var parts = figure.Parts.Select(part => figures.Part(part).Title).Distinct().ToList();
        return new Findable(
            FindKind.Tool,
            figure.Tool.Title,
            Addresses.Of(figure.Id),
            figure.Tool.Kind is { } kind ? figures.Journal.Vocabulary.ToolKinds[kind].Title : "Not in the crib",
            Sentences(
            [
                figure.Got is { } got ? Titles.FromId(got.ToWord()) : null,
                figure.Operations.Count == 0 ? null : $"Used for {figures.OperationWords(figure.Operations)}",
                parts.Count == 0 ? null : $"On {string.Join(", ", parts)}",
            ]));
    }

    private static Findable OfOperation(SiteFigures figures, Id<Operation> id)
    {
        var operations = figures.Journal.Vocabulary.Operations;
        var spellings = operations.Spellings.Where(spelling => spelling != id.Value && operations.TryFind(spelling, out var meant) && meant == id);
        var parts = figures.Index.Jobs[id].Where(job => figures.Visibility.Shows(job.Entry)).SelectMany(job => job.Job.Parts, (job, share) => new PartRef(job.Entry.Build, share.Part))
            .Distinct().Select(part => figures.Part(part).Title).Distinct().ToList();
        return new Findable(
            FindKind.Operation,
            operations[id].Title,
            Addresses.Of(id),
            BuildPage.KindWords(operations[id].Kind),
            Sentences([string.Join(", ", spellings.Select(Titles.FromId)), parts.Count == 0 ? null : $"On {string.Join(", ", parts)}"]));
    }

    private static Findable OfLesson(SiteFigures figures, LessonFigure lesson) => new(
        FindKind.Lesson,
        lesson.Lesson.Text,
        Addresses.Of(lesson.Id),
        $"{figures.Operation(lesson.On.Operations[0]).Title}, {Show.Date(lesson.Date)}",
        Sentences([lesson.Own?.Mistake.What, lesson.Lesson.Better, .. lesson.On.Parts.Select(part => figures.Part(part).Title)]));

    private static Findable OfEntry(SiteFigures figures, Build build, Entry entry)
    {
        var parts = entry.Jobs.SelectMany(job => job.Parts).Select(share => new PartRef(entry.Build, share.Part)).Distinct();
        var text = Sentences(
        [
            PlainText.Of(entry.Body.Document),
            entry.Milestone,
            entry.Story,
            .. entry.Mistakes.Select(mistake => mistake.What),
            .. entry.Lessons.Select(lesson => lesson.Text),
            .. entry.Snags.Select(snag => snag.Text),
            .. entry.Trials.Select(trial => trial.Result),
            .. entry.Readings.Select(reading => reading.Feature),
            .. entry.Photos.Where(figures.Visibility.Shows).Select(photo => photo.Caption ?? photo.Alt),
            .. entry.Bought.Select(bought => bought.What),
            entry.Departure,
            entry.Next,
            .. entry.Jobs.Select(job => job.Held),
            .. entry.Jobs.Select(job => job.Datum),
            string.Join(", ", parts.Select(part => figures.Part(part).Title)),
            Casing.Capital(figures.OperationWords(entry.Jobs.SelectMany(job => job.Operations).Distinct())),
            TitlesOf(figures, "With", entry.Jobs.SelectMany(job => job.Made.Concat(job.Tools))),
        ]);
        return new Findable(FindKind.Entry, entry.Title, Addresses.Of(entry.Ref), $"{build.Title}, {Show.Date(entry.Date)}", text);
    }

    private static string? TitlesOf(SiteFigures figures, string before, IEnumerable<Id<Tool>> tools)
    {
        var titles = tools.Distinct().Where(figures.Visibility.Shows).Select(id => Casing.Lower(figures.Tool(id).Title)).ToList();
        return titles.Count == 0 ? null : $"{before} {string.Join(", ", titles)}";
    }

    private static string Sentences(IEnumerable<string?> texts) => string.Join(' ', texts
        .Where(text => !string.IsNullOrWhiteSpace(text))
        .Select(text => PlainText.OneLine(text!))
        .Distinct()
        .Select(text => char.IsPunctuation(text[^1]) ? text : text + "."));
}
