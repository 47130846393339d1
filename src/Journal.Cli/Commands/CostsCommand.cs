using System.CommandLine;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary><c>journal costs</c>: what was spent.</summary>
internal static class CostsCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) => new FigureCommand
    {
        Name = "costs",
        Description = "What was spent on each build: kit, stock, hardware, tooling, mistakes.",
        Example = "journal costs --format json",
        Table = (journal, print) => CostsTable.Print(journal, Costs.Of(journal), print),
        Csv = journal => new CsvTable(
            ["build", "kind", "cost"],
            Costs.Of(journal).Builds.SelectMany(build => build.Kinds, (build, kind) => new object?[] { build.Build, kind.What.ToWord(), kind.Cost })),
        Json = journal => Shape(Costs.Of(journal)),
    }.Create(terminal);

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
