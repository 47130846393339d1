using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A page to be made.</summary>
/// <param name="Address">Where it goes, from the root of the site.</param>
/// <param name="Template">The template that lays it out.</param>
/// <param name="Model">Makes what the template shows.</param>
internal sealed record PageOrder(string Address, string Template, Func<object> Model)
{
    /// <summary>Whether the site has it, where only its pictures tell, which take long to make.</summary>
    public Func<bool> IsThere { get; init; } = static () => true;
}

/// <summary>Every page of a site.</summary>
internal static class PageList
{
    /// <summary>The pages, and at former addresses those that lead to them.</summary>
    public static IEnumerable<PageOrder> Of(SiteFigures figures)
    {
        List<PageOrder> pages = [.. Pages(figures)];
        return pages.Concat(FormerAddresses.Of(figures, pages));
    }

    private static IEnumerable<PageOrder> Pages(SiteFigures figures)
    {
        yield return new PageOrder(Addresses.Front, "front", () => FrontPage.Of(figures));
        yield return new PageOrder(Addresses.Timeline, "timeline", () => TimelinePage.Of(figures));
        foreach (var page in OfLessons(figures))
        {
            yield return page;
        }

        yield return new PageOrder(Addresses.Tooling, "tooling", () => ToolingPage.Of(figures));
        yield return new PageOrder(Addresses.Find, "find", () => FindPage.Of(figures));
        yield return new PageOrder(Addresses.NotFound, "not-found", () => NotFoundPage.Of(figures));
        foreach (var page in figures.Journal.Builds.SelectMany(build => OfBuild(figures, build)))
        {
            yield return page;
        }

        foreach (var plan in figures.ShownPlans)
        {
            yield return new PageOrder(Addresses.Of(plan.Id), "plan", () => PlanPage.Of(figures, plan));
        }

        foreach (var operation in figures.ShownOperations)
        {
            yield return new PageOrder(Addresses.Of(operation), "operation", () => OperationPage.Of(figures, operation));
        }
    }

    /// <summary>The lessons book: its pages by one thing and another, and a page for each lesson.</summary>
    public static IEnumerable<PageOrder> OfLessons(SiteFigures figures) =>
    [
        .. Enum.GetValues<LessonOrder>().Select(order => new PageOrder(Addresses.Of(order), "lessons", () => LessonsPage.Of(figures, order))),
        .. figures.ShownLessons.Select(lesson => new PageOrder(Addresses.Of(lesson.Id), "lesson", () => LessonPage.Of(figures, lesson))),
    ];

    private static IEnumerable<PageOrder> OfBuild(SiteFigures figures, Build build)
    {
        yield return new PageOrder(Addresses.Of(build.Id), "build", () => BuildPage.Of(figures, build));
        if (StoryPage.HasStory(figures, build))
        {
            yield return new PageOrder(Addresses.Story(build.Id), "story", () => StoryPage.Of(figures, build));
        }

        yield return new PageOrder(Addresses.Photos(build.Id), "photos", () => PhotosPage.Of(figures, build)) { IsThere = () => PhotosPage.HasPhotos(figures, build) };

        foreach (var part in build.Parts)
        {
            yield return new PageOrder(Addresses.Of(new PartRef(build.Id, part.Id)), "part", () => PartPage.Of(figures, build, part));
        }

        foreach (var entry in build.Entries.Where(figures.Visibility.Shows))
        {
            yield return new PageOrder(Addresses.Of(entry.Ref), "entry", () => EntryPage.Of(figures, build, entry));
        }
    }
}
