namespace Journal.Site.Pages;

/// <summary>A page at an address that a thing had before it was renamed: it leads to the new one.</summary>
/// <param name="Frame">What every page has around its own contents; it says where to go.</param>
/// <param name="To">The page as it is now.</param>
public sealed record MovedPage(PageFrame Frame, LinkView To)
{
    /// <summary>The template that lays it out.</summary>
    internal const string Template = "moved";

    /// <summary>The page at an earlier address that leads to the one of today, both from the root of the site.</summary>
    internal static MovedPage Of(SiteFigures figures, string address, string to)
    {
        var (old, now) = (new SharedViews(figures, address), new SharedViews(figures, to));
        var frame = old.Frame(Template, "Moved", "This page has another address now.", []);
        return new MovedPage(frame with { Canonical = now.Frame(Template, "", "", []).Canonical, MovedTo = to }, new LinkView("The page where it is now", to));
    }
}
