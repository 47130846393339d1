using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary><c>journal costs</c>: what was spent.</summary>
internal static class CostsCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var part = PartOption.Create();
        return (Of(null) with { Options = [part], Narrowed = asked => Of(asked.GetValue(part)) }).Create(terminal);
    }

    private static FigureCommand Of(string? part) => new()
    {
        Name = "costs",
        Description = "What was spent on each build: kit, stock, hardware, tooling, mistakes.",
        Example = "journal costs --format json",
        By = Narrows.Build | Narrows.Dates,
        Objection = journal => PartOption.Objection(part, journal),
        Table = (journal, print) => CostsTable.Print(journal, For(part, journal), print),
        Csv = journal => new CsvTable(
            ["build", "kind", "cost"],
            For(part, journal).Builds.SelectMany(build => build.Kinds, (build, kind) => new object?[] { build.Build, kind.What.ToWord(), kind.Cost })),
        Json = journal => Shape(For(part, journal)),
    };

    private static Costs For(string? part, MakerJournal journal) =>
        Costs.Of(part is null ? journal : Excerpt.BoughtFor(journal, (build, one) => PartOption.Takes(part, build, one)));

    private static object Shape(Costs costs) => new
    {
        Builds = costs.Builds.Select(build => new
        {
            build.Build,
            build.Total,
            build.Kit,
            Kinds = Kinds(build.Kinds),
            Parts = build.Parts.Select(part => new { Part = part.What, part.Cost }),
            Purchases = build.Purchases.Select(bought => new
            {
                bought.Date,
                bought.Entry.Entry,
                bought.Purchase.What,
                bought.Purchase.Cost,
                Kind = bought.Kind.ToWord(),
                For = bought.Purchase.ForPart?.Value ?? bought.Purchase.ForTool?.Value,
                bought.Purchase.Because,
            }),
        }),
        costs.Currency,
        costs.Total,
        Kinds = Kinds(costs.Kinds),
    };

    private static IEnumerable<object> Kinds(IEnumerable<CostOf<CostKind>> kinds) => kinds.Select(kind => new { Kind = kind.What.ToWord(), kind.Cost });
}
