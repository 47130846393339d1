using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>What was spent, for people.</summary>
internal static class CostsTable
{
    /// <summary>A lead, then for each build its costs by kind and by part.</summary>
    public static void Print(MakerJournal journal, Costs costs, Printout print)
    {
        var titles = new TitleBook(journal);
        if (costs.Kinds.Count == 0)
        {
            print.Say("Nothing spent yet. Put what you buy under `bought` in an entry, and the kit's price under `cost` in build.yaml.");
            return;
        }

        var most = costs.Kinds.MaxBy(kind => kind.Cost)!;
        var share = costs.Total == 0 ? "" : $"; {Fraction.InWords((double)(most.Cost / costs.Total))} of it for {(most.What == CostKind.Kit ? "kits" : Casing.Lower(most.What.Title()))}";
        print.Say($"{Written.Money(costs.Total)} {costs.Currency} on {Count.Of(costs.Builds.Count(build => build.Kinds.Count > 0), "build")}{share}.");
        foreach (var build in costs.Builds)
        {
            PrintBuild(build, costs.Currency, titles, print);
        }
    }

    private static void PrintBuild(BuildCosts build, string currency, TitleBook titles, Printout print)
    {
        print.Heading(titles.Of(build.Build));
        if (build.Kinds.Count == 0)
        {
            print.Say("Nothing spent yet.");
            return;
        }

        print.Table(
            [Column.Words("What for"), Column.Figures(currency)],
            build.Kinds.Select(kind => new[] { kind.What.Title(), Written.Money(kind.Cost) }),
            ["Total", Written.Money(build.Total)]);
        if (build.Parts.Count > 0)
        {
            print.Gap();
            print.Table(
                [Column.Words("Of this, by part"), Column.Figures(currency)],
                build.Parts.Select(part => new[] { titles.Of(new PartRef(build.Build, part.What)), Written.Money(part.Cost) }));
        }
    }
}
