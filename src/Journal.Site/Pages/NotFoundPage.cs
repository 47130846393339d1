namespace Journal.Site.Pages;

/// <summary>The page for what was not found.</summary>
public sealed record NotFoundPage(PageFrame Frame)
{
    /// <summary>The page with addresses that hold wherever the server shows it.</summary>
    internal static NotFoundPage Of(SiteFigures figures)
    {
        var views = new SharedViews(figures, Addresses.NotFound);
        var frame = views.Frame("not-found", "Page not found", "There is no page at this address.", []);

        // A server shows this page at whatever address was asked for, so the way to the root must not depend on it; nor
        // must it name the host, or a preview elsewhere would fetch from there.
        return new NotFoundPage(frame with { Root = figures.Journal.Address?.AbsolutePath ?? "", Canonical = null });
    }
}
