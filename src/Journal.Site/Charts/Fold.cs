namespace Journal.Site.Charts;

/// <summary>What a picture shows one by one, and what it leaves to its table so that it stays readable.</summary>
/// <param name="Shown">Shown one by one, in the order given.</param>
/// <param name="Rest">Left over.</param>
internal sealed record Fold<T>(IReadOnlyList<T> Shown, IReadOnlyList<T> Rest)
{
    /// <summary>The most rows of a picture, the one for the rest included.</summary>
    public const int MostRows = 24;

    /// <summary>Shows the greatest, in the order given.</summary>
    public static Fold<T> Greatest(IReadOnlyList<T> items, Func<T, double> size)
    {
        if (items.Count <= MostRows)
        {
            return new Fold<T>(items, []);
        }

        var kept = Enumerable.Range(0, items.Count).OrderByDescending(i => size(items[i])).Take(MostRows - 1).ToHashSet();
        return new Fold<T>([.. items.Where((_, i) => kept.Contains(i))], [.. items.Where((_, i) => !kept.Contains(i))]);
    }

    /// <summary>Shows the last.</summary>
    public static Fold<T> Latest(IReadOnlyList<T> items)
    {
        var older = items.Count <= MostRows ? 0 : items.Count - MostRows + 1;
        return new Fold<T>([.. items.Skip(older)], [.. items.Take(older)]);
    }

    /// <summary>Writes at the foot how many more there are; gives the height that it took.</summary>
    public double DrawRest(Picture picture, double top)
    {
        if (Rest.Count == 0)
        {
            return 0;
        }

        picture.Text("faint", 0, top + 14, $"and {ChartText.Count(Rest.Count)} more, in the table");
        return 22;
    }
}
