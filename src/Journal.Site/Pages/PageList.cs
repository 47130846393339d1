using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A page to be made.</summary>
/// <param name="Address">Where it goes, from the root of the site.</param>
/// <param name="Template">The template that lays it out.</param>
/// <param name="Model">Makes what the template shows.</param>
internal sealed record PageOrder(string Address, string Template, Func<object> Model);

/// <summary>Every page of a site.</summary>
internal static class PageList
{
    public static IEnumerable<PageOrder> Of(Book book)
    {
        yield return new PageOrder(Addresses.Front, "front", () => FrontPage.Of(book));
        yield return new PageOrder(Addresses.Timeline, "timeline", () => TimelinePage.Of(book));
        foreach (var page in OfLessons(book))
        {
            yield return page;
        }

        yield return new PageOrder(Addresses.Tooling, "tooling", () => ToolingPage.Of(book));
        yield return new PageOrder(Addresses.Find, "find", () => FindPage.Of(book));
        yield return new PageOrder(Addresses.NotFound, "not-found", () => NotFoundPage.Of(book));
        foreach (var page in book.Journal.Builds.SelectMany(build => OfBuild(book, build)))
        {
            yield return page;
        }

        foreach (var plan in book.ShownPlans)
        {
            yield return new PageOrder(Addresses.Of(plan.Id), "plan", () => PlanPage.Of(book, plan));
        }

        foreach (var operation in book.ShownOperations)
        {
            yield return new PageOrder(Addresses.Of(operation), "operation", () => OperationPage.Of(book, operation));
        }
    }

    /// <summary>The lessons book: its pages by one thing and another, and a page for each lesson.</summary>
    public static IEnumerable<PageOrder> OfLessons(Book book) =>
    [
        .. Enum.GetValues<LessonOrder>().Select(order => new PageOrder(Addresses.Of(order), "lessons", () => LessonsPage.Of(book, order))),
        .. book.ShownLessons.Select(lesson => new PageOrder(Addresses.Of(lesson.Id), "lesson", () => LessonPage.Of(book, lesson))),
    ];

    private static IEnumerable<PageOrder> OfBuild(Book book, Build build)
    {
        yield return new PageOrder(Addresses.Of(build.Id), "build", () => BuildPage.Of(book, build));
        if (StoryPage.HasStory(book, build))
        {
            yield return new PageOrder(Addresses.Story(build.Id), "story", () => StoryPage.Of(book, build));
        }

        if (PhotosPage.HasPhotos(book, build))
        {
            yield return new PageOrder(Addresses.Photos(build.Id), "photos", () => PhotosPage.Of(book, build));
        }

        foreach (var part in build.Parts.Where(part => book.Showing.Shows(new PartRef(build.Id, part.Id))))
        {
            yield return new PageOrder(Addresses.Of(new PartRef(build.Id, part.Id)), "part", () => PartPage.Of(book, build, part));
        }

        foreach (var entry in build.Entries.Where(book.Showing.Shows))
        {
            yield return new PageOrder(Addresses.Of(entry.Ref), "entry", () => EntryPage.Of(book, build, entry));
        }
    }
}
