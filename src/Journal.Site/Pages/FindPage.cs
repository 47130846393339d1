namespace Journal.Site.Pages;

/// <summary>The page that searches, and where to look without it.</summary>
public sealed record FindPage(PageFrame Frame, IReadOnlyList<LinkView> Lists)
{
    /// <summary>The page with the lists for a browser without scripts.</summary>
    internal static FindPage Of(SiteFigures figures)
    {
        var views = new SharedViews(figures, Addresses.Find);
        return new FindPage(
            views.Frame("find", "Find", "Search entries, parts, lessons, tools, operations and estimates.", [SharedViews.FrontCrumb]),
            [
                .. figures.Journal.Builds.Where(build => build.Entries.Any(figures.Visibility.Shows)).Select(build => new LinkView($"{build.Title}: parts and entries", Addresses.Of(build.Id))),
                .. figures.ShownPlans.Select(plan => new LinkView($"{plan.Title}: estimate sheet", Addresses.Of(plan.Id))),
                new LinkView("Timeline", Addresses.Timeline),
                new LinkView("Lessons", Addresses.Lessons),
                new LinkView("Tooling", Addresses.Tooling),
                .. figures.ShownOperations.Select(figures.Link),
            ]);
    }
}
