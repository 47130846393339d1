namespace Journal.Core.Model;

/// <summary>
/// When something may be shown: always, from a day on, or never. What is not shown still counts in the hours.
/// </summary>
public readonly record struct Publication
{
    private readonly DateOnly? after;

    private Publication(bool never, DateOnly? after)
    {
        IsNever = never;
        this.after = after;
    }

    /// <summary>Shown from the start; the default.</summary>
    public static Publication Always => default;

    /// <summary>Kept at home.</summary>
    public static Publication Never => new(never: true, after: null);

    /// <summary>Whether it stays at home for good.</summary>
    public bool IsNever { get; }

    /// <summary>Kept at home up to and including a day.</summary>
    public static Publication After(DateOnly day) => new(never: false, day);

    /// <summary>The day, later than this one, on which it can first be seen; null where nothing will change.</summary>
    public DateOnly? FirstSeenAfter(DateOnly today) => !IsNever && after is { } day && today <= day && day < DateOnly.MaxValue ? day.AddDays(1) : null;

    /// <summary>Whether it may be seen on a day.</summary>
    public bool AllowsOn(DateOnly today) => !IsNever && (after is null || today > after);
}
