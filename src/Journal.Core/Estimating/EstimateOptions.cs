using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>What an estimate is asked under: today, and “what if”.</summary>
public sealed record EstimateOptions
{
    /// <summary>The day of asking; later entries are not known yet, and nothing starts before it.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>The day the work shall start; else the plan's, else today.</summary>
    public DateOnly? Start { get; init; }

    /// <summary>Hours a week; else the plan's, else the journal's own pace.</summary>
    public decimal? HoursAWeek { get; init; }

    /// <summary>Parts to leave out.</summary>
    public IReadOnlyList<Id<Part>> Without { get; init; } = [];

    /// <summary>Parts to make twice: once more, from the beginning.</summary>
    public IReadOnlyList<Id<Part>> Twice { get; init; } = [];

    /// <summary>The seed of chance: the same seed gives the same estimate.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How many possible builds are drawn, at least 100.</summary>
    public int Draws { get; init; } = 10_000;
}
