using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A line of the tooling bill.</summary>
public sealed record ToolRowView(
    string Id, string Title, string? Note, string? Link, string? Disclose, string Got, string Cost, string FirstUsed, string Jobs, string Hours, IReadOnlyList<LinkView> Parts, IReadOnlyList<LinkView> PointingHere);

/// <summary>Tools of a kind. No id that a maker gives has an underscore, so ours never meet a tool's.</summary>
public sealed record ToolGroupView(string Id, string Title, IReadOnlyList<ToolRowView> Tools);

/// <summary>The tooling bill: what it took to make all this.</summary>
public sealed record ToolingPage(PageFrame Frame, string Kind, IReadOnlyList<FactView> Facts, IReadOnlyList<ToolGroupView> Groups, string Currency)
{
    internal static ToolingPage Of(Book book)
    {
        var desk = new Desk(book, Addresses.Tooling);
        var shown = book.Tooling.Tools.Where(tool => book.Showing.Shows(tool.Id)).ToList();
        var block = new TitleBlockView { Title = "Tooling bill", Supplementary = book.Journal.Title, DocumentType = "Tooling bill", Identification = "tooling", Issued = desk.LatestDate(book.Journal.Entries) };
        var kinds = book.Journal.Vocabulary.ToolKinds.Ids.Select(id => (Id: (Id<ToolKind>?)id, book.Journal.Vocabulary.ToolKinds[id].Title)).Append((null, "Not in the crib"));
        return new ToolingPage(
            desk.Frame("tooling", "Tooling", $"The {Show.Count(shown.Count, "tool", "tools")} that it took, how each was got and what it was used for.", [Desk.FrontCrumb], block),
            $"Tooling bill · {Show.Count(shown.Count, "tool", "tools")}",
            FactsOf(book, shown),
            [.. kinds.Select(kind => new ToolGroupView(
                $"kind_{kind.Id?.Value ?? "unlisted"}", kind.Title, [.. shown.Where(tool => tool.Tool.Kind == kind.Id).Select(tool => Row(book, tool))])).Where(group => group.Tools.Count > 0)],
            book.Journal.Currency);
    }

    private static List<FactView> FactsOf(Book book, List<ToolFigure> shown)
    {
        var made = shown.Where(tool => tool.MinutesToMake > Minutes.Zero).ToList();
        return
        [
            new FactView("Spent", Show.Money(book.Tooling.Cost, book.Journal.Currency)),
            new FactView("Made here", Show.Number(made.Count), $"{Show.Hours(book.Tooling.MinutesToMake)} to make"),
            new FactView("Borrowed or hired", Show.Number(shown.Count(tool => tool.Got is Got.Borrowed or Got.Hired))),
            new FactView("Bought", Show.Number(shown.Count(tool => tool.Got == Got.Bought))),
        ];
    }

    private static ToolRowView Row(Book book, ToolFigure figure)
    {
        var tool = figure.Tool;
        var got = figure.Got?.ToWord() ?? "–";
        var need = tool.Need switch { Need.Essential => "essential", Need.Workaround => "a way round this workshop’s limits", _ => null };
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
            [.. figure.Parts.Where(book.Showing.Shows).Select(book.Link)],
            [.. book.BackLinks.To(tool.Id).Select(link => link.Entry).Distinct().Where(book.Showing.Shows).Select(book.Link)]);
    }
}
