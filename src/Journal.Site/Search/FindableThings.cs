using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Pages;

namespace Journal.Site.Search;

/// <summary>Everything that a search can find. What is not shown on the pages is not in it.</summary>
internal static class FindableThings
{
    public static IReadOnlyList<Findable> Of(Book book) =>
    [
        .. book.Journal.Builds.Select(build => OfBuild(book, build)),
        .. book.ShownPlans.Select(plan => OfPlan(book, plan)),
        .. book.Journal.Builds.SelectMany(build => build.Parts.Where(part => book.Showing.Shows(new PartRef(build.Id, part.Id))), (build, part) => OfPart(book, build, part)),
        .. book.Tooling.Tools.Where(tool => book.Showing.Shows(tool.Id)).Select(tool => OfTool(book, tool)),
        .. book.ShownOperations.Select(operation => OfOperation(book, operation)),
        .. book.Lessons.All.Where(lesson => book.Showing.Shows(lesson.Id)).Select(lesson => OfLesson(book, lesson)),
        .. book.Journal.Builds.SelectMany(build => build.Entries.Where(book.Showing.Shows).Reverse(), (build, entry) => OfEntry(book, build, entry)),
    ];

    private static Findable OfBuild(Book book, Build build) => new(
        FindKind.Build,
        build.Title,
        Addresses.Of(build.Id),
        BuildPage.StatusWords(build.Status),
        Sentences([BuildPage.GistOf(book, build), .. build.Videos.Select(video => video.Title)]));

    private static Findable OfPlan(Book book, Plan plan) => new(
        FindKind.Plan,
        plan.Title,
        Addresses.Of(plan.Id),
        "Estimate sheet",
        Sentences([PlanPage.GistOf(book, book.Forecast(plan)), plan.Parts.Count == 0 ? null : $"Parts: {string.Join(", ", plan.Parts.Select(part => Show.Lower(part.Title)))}"]));

    private static Findable OfPart(Book book, Build build, Part part)
    {
        var reference = new PartRef(build.Id, part.Id);
        var jobs = book.Worked[reference].Where(book.Showing.Shows).SelectMany(entry => entry.Jobs).Where(job => job.Parts.Any(share => share.Part == part.Id)).ToList();
        return new Findable(
            FindKind.Part,
            part.Title,
            Addresses.Of(reference),
            part.Item is { } item ? $"Item {item} of {build.Title}" : build.Title,
            Sentences(
            [
                part.Material is { } material ? PartPage.MaterialWords(book, material) : null,
                PartPage.StockWords(book, part),
                jobs.Count == 0 ? null : $"Made by {book.OperationWords(jobs.SelectMany(job => job.Operations).Distinct())}",
                TitlesOf(book, "With", jobs.SelectMany(job => job.Made.Concat(job.Tools))),
            ]));
    }

    private static Findable OfTool(Book book, ToolFigure figure)
    {
        var parts = figure.Parts.Where(book.Showing.Shows).Select(part => book.Part(part).Title).Distinct().ToList();
        return new Findable(
            FindKind.Tool,
            figure.Tool.Title,
            Addresses.Of(figure.Id),
            figure.Tool.Kind is { } kind ? book.Journal.Vocabulary.ToolKinds[kind].Title : "Not in the crib",
            Sentences(
            [
                figure.Got is { } got ? Titles.FromId(got.ToWord()) : null,
                figure.Operations.Count == 0 ? null : $"Used for {book.OperationWords(figure.Operations)}",
                parts.Count == 0 ? null : $"On {string.Join(", ", parts)}",
            ]));
    }

    private static Findable OfOperation(Book book, Id<Operation> id)
    {
        var operations = book.Journal.Vocabulary.Operations;
        var spellings = operations.Spellings.Where(spelling => spelling != id.Value && operations.TryFind(spelling, out var meant) && meant == id);
        var parts = book.Index.Jobs[id].Where(job => book.Showing.Shows(job.Entry)).SelectMany(job => job.Job.Parts, (job, share) => new PartRef(job.Entry.Build, share.Part))
            .Distinct().Where(book.Showing.Shows).Select(part => book.Part(part).Title).Distinct().ToList();
        return new Findable(
            FindKind.Operation,
            operations[id].Title,
            Addresses.Of(id),
            BuildPage.KindWords(operations[id].Kind),
            Sentences([string.Join(", ", spellings.Select(Titles.FromId)), parts.Count == 0 ? null : $"On {string.Join(", ", parts)}"]));
    }

    private static Findable OfLesson(Book book, LessonFigure lesson) => new(
        FindKind.Lesson,
        lesson.Lesson.Text,
        Addresses.Of(lesson.Id),
        $"{book.Operation(lesson.On.Operations[0]).Title}, {Show.Date(lesson.Date)}",
        Sentences([lesson.Own?.Mistake.What, lesson.Lesson.Better, .. lesson.On.Parts.Where(book.Showing.Shows).Select(part => book.Part(part).Title)]));

    private static Findable OfEntry(Book book, Build build, Entry entry)
    {
        var parts = entry.Jobs.SelectMany(job => job.Parts).Select(share => new PartRef(entry.Build, share.Part)).Distinct().Where(book.Showing.Shows);
        var (text, ownWords) = Findable.TextOf(
            PlainText.Of(entry.Body.Document),
            Sentences(
            [
                entry.Milestone,
                entry.Story,
                .. entry.Mistakes.Select(mistake => mistake.What),
                .. entry.Lessons.Select(lesson => lesson.Text),
                .. entry.Snags.Select(snag => snag.Text),
                .. entry.Trials.Select(trial => trial.Result),
                .. entry.Readings.Select(reading => reading.Feature),
                .. entry.Photos.Where(book.Showing.Shows).Select(photo => photo.Caption ?? photo.Alt),
                .. entry.Bought.Select(bought => bought.What),
                entry.Departure,
                entry.Next,
                .. entry.Jobs.Select(job => job.Held),
                .. entry.Jobs.Select(job => job.Datum),
                string.Join(", ", parts.Select(part => book.Part(part).Title)),
                Show.Upper(book.OperationWords(entry.Jobs.SelectMany(job => job.Operations).Distinct())),
                TitlesOf(book, "With", entry.Jobs.SelectMany(job => job.Made.Concat(job.Tools))),
            ]));
        return new Findable(FindKind.Entry, entry.Title, Addresses.Of(entry.Ref), $"{build.Title}, {Show.Date(entry.Date)}", text, ownWords);
    }

    private static string? TitlesOf(Book book, string before, IEnumerable<Id<Tool>> tools)
    {
        var titles = tools.Distinct().Where(book.Showing.Shows).Select(id => Show.Lower(book.Tool(id).Title)).ToList();
        return titles.Count == 0 ? null : $"{before} {string.Join(", ", titles)}";
    }

    private static string Sentences(IEnumerable<string?> texts) => string.Join(' ', texts
        .Where(text => !string.IsNullOrWhiteSpace(text))
        .Select(text => PlainText.OneLine(text!))
        .Distinct()
        .Select(text => char.IsPunctuation(text[^1]) ? text : text + "."));
}
