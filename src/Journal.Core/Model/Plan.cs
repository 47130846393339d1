namespace Journal.Core.Model;

/// <summary>The next build before it starts.</summary>
public sealed record Plan
{
    /// <summary>The file's name without <c>.yaml</c>.</summary>
    public required Id<Plan> Id { get; init; }

    /// <summary>The plan's title.</summary>
    public required string Title { get; init; }

    /// <summary>The file, relative to the journal.</summary>
    public required string File { get; init; }

    /// <summary>The day the work shall start.</summary>
    public DateOnly? Start { get; init; }

    /// <summary>Hours a week; null for the journal's own pace.</summary>
    public decimal? HoursAWeek { get; init; }

    /// <summary>Days away from the bench; never published.</summary>
    public IReadOnlyList<DateRange> Away { get; init; } = [];

    /// <summary>The parts foreseen.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>Guesses for work on the build as a whole, by operation, in the order given.</summary>
    public IReadOnlyDictionary<Id<Operation>, Minutes> Whole { get; init; } = new Dictionary<Id<Operation>, Minutes>();

    /// <summary>When the plan may be shown.</summary>
    public Publication Publish { get; init; }
}
