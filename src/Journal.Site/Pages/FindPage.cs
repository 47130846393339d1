namespace Journal.Site.Pages;

/// <summary>The page that searches, and where to look without it.</summary>
public sealed record FindPage(PageFrame Frame, IReadOnlyList<LinkView> Lists)
{
    internal static FindPage Of(Book book)
    {
        var desk = new Desk(book, Addresses.Find);
        return new FindPage(
            desk.Frame("find", "Find", "Search entries, parts, lessons, tools, operations and estimates.", [Desk.FrontCrumb]),
            [
                .. book.Journal.Builds.Where(build => build.Entries.Any(book.Showing.Shows)).Select(build => new LinkView($"{build.Title}: parts and entries", Addresses.Of(build.Id))),
                .. book.ShownPlans.Select(plan => new LinkView($"{plan.Title}: estimate sheet", Addresses.Of(plan.Id))),
                new LinkView("Timeline", Addresses.Timeline),
                new LinkView("Lessons", Addresses.Lessons),
                new LinkView("Tooling", Addresses.Tooling),
                .. book.ShownOperations.Select(book.Link),
            ]);
    }
}
