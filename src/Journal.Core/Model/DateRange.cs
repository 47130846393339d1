namespace Journal.Core.Model;

/// <summary>
/// Days from the first to the last, both included: away “from the 20th to the 3rd” means that
/// nothing is made on the 3rd either.
/// </summary>
public sealed record DateRange
{
    /// <summary>The days from one to another; a single day is its own first and last.</summary>
    /// <exception cref="ArgumentException">The last day comes before the first.</exception>
    public DateRange(DateOnly first, DateOnly last)
    {
        if (last < first)
        {
            throw new ArgumentException("The last day comes before the first.", nameof(last));
        }

        First = first;
        Last = last;
    }

    /// <summary>The first day.</summary>
    public DateOnly First { get; }

    /// <summary>The last day, included.</summary>
    public DateOnly Last { get; }

    /// <summary>How many days, at least 1.</summary>
    public int Days => Last.DayNumber - First.DayNumber + 1;

    /// <summary>Whether a day lies in the range.</summary>
    public bool Contains(DateOnly day) => First <= day && day <= Last;
}
