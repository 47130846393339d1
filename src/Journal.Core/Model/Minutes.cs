using System.Globalization;

namespace Journal.Core.Model;

/// <summary>
/// Time at the bench in whole minutes, never negative. Sums of many evenings stay exact because nothing
/// is ever held as a fraction of an hour.
/// </summary>
public readonly record struct Minutes : IComparable<Minutes>
{
    /// <summary>No time at all.</summary>
    public static readonly Minutes Zero;

    /// <summary>A whole number of minutes, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is negative.</exception>
    public Minutes(int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        Count = count;
    }

    /// <summary>The number of minutes.</summary>
    public int Count { get; }

    /// <summary>The same time in hours, for charts and division; sums stay in minutes.</summary>
    public double InHours => Count / 60.0;

    /// <summary>Adds two times.</summary>
    public static Minutes operator +(Minutes left, Minutes right) => new(checked(left.Count + right.Count));

    /// <summary>What is left of a time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More is taken away than there is.</exception>
    public static Minutes operator -(Minutes left, Minutes right) => new(left.Count - right.Count);

    /// <summary>Whether one time is shorter.</summary>
    public static bool operator <(Minutes left, Minutes right) => left.Count < right.Count;

    /// <summary>Whether one time is longer.</summary>
    public static bool operator >(Minutes left, Minutes right) => left.Count > right.Count;

    /// <summary>Whether one time is no longer than the other.</summary>
    public static bool operator <=(Minutes left, Minutes right) => left.Count <= right.Count;

    /// <summary>Whether one time is no shorter than the other.</summary>
    public static bool operator >=(Minutes left, Minutes right) => left.Count >= right.Count;

    /// <summary>Adds two times.</summary>
    public static Minutes Add(Minutes left, Minutes right) => left + right;

    /// <summary>What is left of a time.</summary>
    public static Minutes Subtract(Minutes left, Minutes right) => left - right;

    /// <summary>
    /// Shares this time in proportion to weights so that the shares add up to it exactly: whole parts first,
    /// then one minute each to the largest remainders, ties to the first named.
    /// </summary>
    /// <param name="weights">One weight for each share, 0 or more, and not all of them 0.</param>
    public IReadOnlyList<Minutes> Share(IReadOnlyList<decimal> weights)
    {
        if (weights.Count == 1)
        {
            return [this];
        }

        var (count, total) = (Count, weights.Sum());
        var remainders = weights.Select(weight => count * weight % total).ToArray();
        var whole = weights.Select((weight, i) => (int)((count * weight - remainders[i]) / total)).ToArray();
        var left = count - whole.Sum();
        var byRemainder = Enumerable.Range(0, whole.Length).OrderByDescending(i => remainders[i]).ThenBy(i => i);
        foreach (var i in byRemainder.Take(left))
        {
            whole[i]++;
        }

        return [.. whole.Select(count => new Minutes(count))];
    }

    /// <summary>Shares this time equally among a number of things, exactly: minutes left over go to the first. Among none there are no shares.</summary>
    public IReadOnlyList<Minutes> ShareEqually(int count)
    {
        if (count is 0 or 1)
        {
            return count == 0 ? [] : [this];
        }

        var (whole, left) = (Count / count, Count % count);
        return [.. Enumerable.Range(0, count).Select(at => new Minutes(at < left ? whole + 1 : whole))];
    }

    /// <inheritdoc/>
    public int CompareTo(Minutes other) => Count.CompareTo(other.Count);

    /// <summary>The time as a maker writes it: <c>2h45</c>, <c>45m</c>, <c>3h</c>.</summary>
    public override string ToString() => (Count / 60, Count % 60) switch
    {
        (0, var minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes}m"),
        (var hours, 0) => string.Create(CultureInfo.InvariantCulture, $"{hours}h"),
        var (hours, minutes) => string.Create(CultureInfo.InvariantCulture, $"{hours}h{minutes:00}"),
    };
}

/// <summary>Sums of times.</summary>
public static class MinutesSums
{
    /// <summary>The sum of many times; none give zero.</summary>
    public static Minutes Sum(this IEnumerable<Minutes> times) => times.Aggregate(Minutes.Zero, (sum, time) => sum + time);

    /// <summary>The sum of the times that the items hold.</summary>
    public static Minutes Sum<T>(this IEnumerable<T> items, Func<T, Minutes> time) => items.Select(time).Sum();
}
