using CsCheck;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class CostsTests
{
    [Fact]
    public void Of_KitAndPurchases_SumsByKindPartAndBuild()
    {
        var drill = Sample.Build(
            "drill",
            Sample.Entry("2025-09-06") with
            {
                Bought =
                [
                    new Purchase { What = "the missing casting", Cost = 18, Kind = PurchaseKind.Kit },
                    new Purchase { What = "bar", Cost = 9.20m, Kind = PurchaseKind.Stock, ForPart = new("quill") },
                ],
            },
            Sample.Entry("2025-10-05") with
            {
                Bought = [new Purchase { What = "bar again", Cost = 9.20m, Kind = PurchaseKind.Stock, ForPart = new("quill"), Because = new("wrong-hand") }],
            }) with { Cost = 240 };
        var vice = Sample.Build("vice", Sample.Entry("2025-11-02") with { Bought = [new Purchase { What = "cutting oil", Cost = 6.50m }] });

        var costs = Costs.Of(Sample.Journal(drill, vice) with { Currency = "GBP" });

        Assert.Equal("GBP", costs.Currency);
        Assert.Equal([(CostKind.Kit, 258m), (CostKind.Stock, 9.20m), (CostKind.Mistake, 9.20m)], Kinds(costs.Builds[0].Kinds));
        Assert.Equal([("quill", 18.40m)], costs.Builds[0].Parts.Select(part => (part.What.Value, part.Cost)));
        Assert.Equal([276.40m, 6.50m], costs.Builds.Select(build => build.Total));
        Assert.Equal([(CostKind.Kit, 258m), (CostKind.Stock, 9.20m), (CostKind.Consumable, 6.50m), (CostKind.Mistake, 9.20m)], Kinds(costs.Kinds));
        Assert.Equal(282.90m, costs.Total);
    }

    [Fact]
    public void Of_BuildThatCostNothing_HasNoKinds()
    {
        var costs = Costs.Of(Sample.Journal(Sample.Build("vice")));

        Assert.Empty(costs.Builds[0].Kinds);
        Assert.Equal(0, costs.Total);
    }

    [Theory]
    [InlineData(PurchaseKind.Kit, CostKind.Kit)]
    [InlineData(PurchaseKind.Stock, CostKind.Stock)]
    [InlineData(PurchaseKind.Hardware, CostKind.Hardware)]
    [InlineData(PurchaseKind.Consumable, CostKind.Consumable)]
    [InlineData(PurchaseKind.Tooling, CostKind.Tooling)]
    [InlineData(PurchaseKind.Service, CostKind.Service)]
    public void Kind_PurchaseWithoutAMistake_IsItsOwn(PurchaseKind bought, CostKind counted) =>
        Assert.Equal(counted, new DatedPurchase(default, default, new Purchase { What = "something", Cost = 1, Kind = bought }).Kind);

    [Fact]
    public void Of_AnyJournal_AddsUpToWhatWasPaid() => Generated.Journals.Sample(journal =>
    {
        var costs = Costs.Of(journal);
        var paid = journal.Builds.Sum(build => (build.Cost ?? 0) + build.Entries.SelectMany(entry => entry.Bought).Sum(purchase => purchase.Cost));

        Assert.Equal(paid, costs.Total);
        Assert.Equal(paid, costs.Kinds.Sum(kind => kind.Cost));
    });

    private static IEnumerable<(CostKind, decimal)> Kinds(IEnumerable<CostOf<CostKind>> kinds) => kinds.Select(kind => (kind.What, kind.Cost));
}
