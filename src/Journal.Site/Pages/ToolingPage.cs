using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A line of the tooling bill.</summary>
/// <param name="Id">The tool's id, by which pages link to the line.</param>
/// <param name="Title">Its title.</param>
/// <param name="Note">That it is essential or a workaround; null where it is neither.</param>
/// <param name="Link">A web address that the maker gives for it; null for none.</param>
/// <param name="Disclose">What readers should know beside the link, such as <c>gift</c>; null for nothing.</param>
/// <param name="Got">How it came to the shop; for one made here how long that took; a dash where that is not known.</param>
/// <param name="Cost">Its price, without the currency; a dash where that is not known.</param>
/// <param name="FirstUsed">The date of the first job with it; a dash before that.</param>
/// <param name="Jobs">How many jobs used it.</param>
/// <param name="Hours">The whole time of those jobs; a dash for none.</param>
/// <param name="Parts">The parts that it was used on or made for.</param>
/// <param name="PointingHere">The shown entries that link to it.</param>
public sealed record ToolRowView(
    string Id, string Title, string? Note, string? Link, string? Disclose, string Got, string Cost, string FirstUsed, string Jobs, string Hours, IReadOnlyList<LinkView> Parts, IReadOnlyList<LinkView> PointingHere)
{
    /// <summary>Ids that it had before: links to them still lead here.</summary>
    public IReadOnlyList<string> Formerly { get; init; } = [];
}

/// <summary>Tools of a kind. No id that a maker gives has an underscore, so ours never meet a tool's.</summary>
public sealed record ToolGroupView(string Id, string Title, IReadOnlyList<ToolRowView> Tools);

/// <summary>The tooling bill: what it took to make all this.</summary>
public sealed record ToolingPage(PageFrame Frame, string Kind, IReadOnlyList<FactView> Facts, IReadOnlyList<ToolGroupView> Groups, string Currency)
{
    /// <summary>The tooling bill of all tools that are shown, by kind in the order of the vocabulary; kinds without tools are left out.</summary>
    internal static ToolingPage Of(SiteFigures figures)
    {
        var views = new SharedViews(figures, Addresses.Tooling);
        var shown = figures.Tooling.Tools.Where(tool => figures.Visibility.Shows(tool.Id)).ToList();
        var block = new TitleBlockView { Title = "Tooling bill", Supplementary = figures.Journal.Title, DocumentType = "Tooling bill", Identification = "tooling", Issued = views.LatestDate(figures.Journal.Entries) };
        var kinds = figures.Journal.Vocabulary.ToolKinds.Ids.Select(id => (Id: (Id<ToolKind>?)id, figures.Journal.Vocabulary.ToolKinds[id].Title)).Append((null, "Not in the crib"));
        return new ToolingPage(
            views.Frame("tooling", "Tooling", $"{Show.Count(shown.Count, "tool", "tools")}: how each was got and what it was used for.", [SharedViews.FrontCrumb], block),
            $"Tooling bill · {Show.Count(shown.Count, "tool", "tools")}",
            FactsOf(figures, shown),
            [.. kinds.Select(kind => new ToolGroupView(
                $"kind_{kind.Id?.Value ?? "unlisted"}", kind.Title, [.. shown.Where(tool => tool.Tool.Kind == kind.Id).Select(tool => Row(figures, tool))])).Where(group => group.Tools.Count > 0)],
            figures.Journal.Currency);
    }

    private static List<FactView> FactsOf(SiteFigures figures, List<ToolFigure> shown)
    {
        var made = shown.Where(tool => tool.MinutesToMake > Minutes.Zero).ToList();
        return
        [
            new FactView("Spent", Show.Money(figures.Tooling.Cost, figures.Journal.Currency)),
            new FactView("Made here", Show.Number(made.Count), $"{Show.Hours(figures.Tooling.MinutesToMake)} to make"),
            new FactView("Borrowed or hired", Show.Number(shown.Count(tool => tool.Got is Got.Borrowed or Got.Hired))),
            new FactView("Bought", Show.Number(shown.Count(tool => tool.Got == Got.Bought))),
        ];
    }

    private static ToolRowView Row(SiteFigures figures, ToolFigure figure)
    {
        var tool = figure.Tool;
        var got = figure.Got?.ToWord() ?? "–";
        var need = tool.Need switch { Need.Essential => "essential", Need.Workaround => "workaround for this workshop’s limits", _ => null };
        return new ToolRowView(
            tool.Id.Value,
            tool.Title,
            need,
            tool.Link?.AbsoluteUri,
            tool.Disclose,
            figure.MinutesToMake > Minutes.Zero ? $"made, {Show.Hours(figure.MinutesToMake)}" : got,
            figure.Cost is { } cost ? Show.Sum(cost) : "–",
            figure.FirstUsed is { } first ? Show.Date(first) : "–",
            Show.Number(figure.Jobs),
            Show.HoursOrDash(figure.Minutes),
            [.. figure.Parts.Select(figures.Link)],
            [.. figures.BackLinks.To(tool.Id).Select(link => link.Entry).Distinct().Where(figures.Visibility.Shows).Select(figures.Link)])
        {
            Formerly = [.. tool.Formerly.Where(old => figures.Journal.Tools.All(one => one.Id.Value != old))],
        };
    }
}
