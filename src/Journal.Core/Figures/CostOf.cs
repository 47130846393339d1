using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>The money that went into one of several things.</summary>
/// <typeparam name="T">What the money is told for.</typeparam>
/// <param name="What">The thing.</param>
/// <param name="Cost">The money, in the journal's currency.</param>
public sealed record CostOf<T>(T What, decimal Cost);

/// <summary>Something bought, with the entry that tells of it.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Date">The entry's date.</param>
/// <param name="Purchase">The purchase as written.</param>
public sealed record DatedPurchase(EntryRef Entry, DateOnly Date, Purchase Purchase)
{
    /// <summary>What the money went into; a mistake, whatever was bought because of it.</summary>
    public CostKind Kind => Purchase.Because is not null ? CostKind.Mistake : Purchase.Kind switch
    {
        PurchaseKind.Kit => CostKind.Kit,
        PurchaseKind.Stock => CostKind.Stock,
        PurchaseKind.Hardware => CostKind.Hardware,
        PurchaseKind.Tooling => CostKind.Tooling,
        PurchaseKind.Service => CostKind.Service,
        _ => CostKind.Consumable,
    };
}

/// <summary>Sums of money by one thing or another.</summary>
internal static class CostOf
{
    /// <summary>Costs by key, in the order in which the keys first appear.</summary>
    public static IEnumerable<CostOf<TKey>> By<TItem, TKey>(IEnumerable<TItem> items, Func<TItem, TKey> key, Func<TItem, decimal> cost)
        where TKey : notnull =>
        items.AggregateBy(key, 0m, (sum, item) => sum + cost(item)).Select(pair => new CostOf<TKey>(pair.Key, pair.Value));
}
