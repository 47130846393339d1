using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What money went into. What was bought because of a mistake counts there alone.</summary>
public enum CostKind
{
    /// <summary>The kit of castings and drawings.</summary>
    Kit,

    /// <summary>Material to be made into parts.</summary>
    Stock,

    /// <summary>Screws, bearings, springs.</summary>
    Hardware,

    /// <summary>Used up in the making.</summary>
    Consumable,

    /// <summary>Tools.</summary>
    Tooling,

    /// <summary>Work done by others.</summary>
    Service,

    /// <summary>Bought because of a mistake, whether stock, tool or anything else.</summary>
    Mistake,
}

/// <summary>What was spent (docs/figures.md, Costs), in the journal's currency. Prices in the crib are not purchases of a build.</summary>
/// <param name="Currency">An ISO 4217 code.</param>
/// <param name="Builds">The builds by id.</param>
/// <param name="Kinds">All builds together, in the order of <see cref="CostKind"/>; kinds without purchases are left out.</param>
/// <param name="Total">All of it.</param>
public sealed record Costs(string Currency, IReadOnlyList<BuildCosts> Builds, IReadOnlyList<CostOf<CostKind>> Kinds, decimal Total)
{
    /// <summary>The costs of a journal.</summary>
    public static Costs Of(MakerJournal journal)
    {
        List<BuildCosts> builds = [.. journal.Builds.Select(BuildCosts.Of)];
        var kinds = CostOf.By(builds.SelectMany(build => build.Kinds), kind => kind.What, kind => kind.Cost);
        return new Costs(journal.Currency, builds, [.. kinds.OrderBy(kind => kind.What)], builds.Sum(build => build.Total));
    }
}

/// <summary>What was spent on a build.</summary>
/// <param name="Build">The build.</param>
/// <param name="Kit">What the build says the kit cost; null where it says nothing.</param>
/// <param name="Kinds">By kind, the kit's own price included; they add up to <see cref="Total"/>.</param>
/// <param name="Parts">What was bought for a part, mistakes included, in the order of first purchase.</param>
/// <param name="Purchases">Every purchase in order.</param>
public sealed record BuildCosts(
    Id<Build> Build,
    decimal? Kit,
    IReadOnlyList<CostOf<CostKind>> Kinds,
    IReadOnlyList<CostOf<Id<Part>>> Parts,
    IReadOnlyList<DatedPurchase> Purchases)
{
    /// <summary>All that was spent on the build.</summary>
    public decimal Total => Kinds.Sum(kind => kind.Cost);

    /// <summary>The purchases of a build's entries and the price that build.yaml gives for its kit.</summary>
    internal static BuildCosts Of(Build build)
    {
        IReadOnlyList<DatedPurchase> purchases =
            [.. build.Entries.SelectMany(entry => entry.Bought, (entry, purchase) => new DatedPurchase(entry.Ref, entry.Date, purchase))];
        var spent = purchases.Select(bought => new CostOf<CostKind>(bought.Kind, bought.Purchase.Cost));
        if (build.Cost is { } kit)
        {
            spent = spent.Prepend(new CostOf<CostKind>(CostKind.Kit, kit));
        }

        var forParts = purchases.Where(bought => bought.Purchase.ForPart is not null);
        return new BuildCosts(
            build.Id,
            build.Cost,
            [.. CostOf.By(spent, cost => cost.What, cost => cost.Cost).OrderBy(cost => cost.What)],
            [.. CostOf.By(forParts, bought => bought.Purchase.ForPart!.Value, bought => bought.Purchase.Cost)],
            purchases);
    }
}
