using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>Sums of time by one thing or another, in one pass.</summary>
internal static class Sums
{
    /// <summary>Times by key, in the order in which the keys first appear.</summary>
    public static IEnumerable<TimeOf<TKey>> By<TItem, TKey>(IEnumerable<TItem> items, Func<TItem, TKey> key, Func<TItem, Minutes> time)
        where TKey : notnull =>
        items.AggregateBy(key, Minutes.Zero, (sum, item) => sum + time(item)).Select(pair => new TimeOf<TKey>(pair.Key, pair.Value));

    /// <summary>The rank of each word of a list, from 0.</summary>
    public static IReadOnlyDictionary<Id<T>, int> Ranks<T>(this WordList<T> words)
        where T : class =>
        words.Ids.Index().ToDictionary(word => word.Item, word => word.Index);

    /// <summary>The rank of a word; what the list does not have comes last.</summary>
    public static int RankOf<T>(this IReadOnlyDictionary<Id<T>, int> ranks, Id<T>? word) =>
        word is { } id && ranks.TryGetValue(id, out var rank) ? rank : int.MaxValue;
}
