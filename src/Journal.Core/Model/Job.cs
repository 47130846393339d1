namespace Journal.Core.Model;

/// <summary>Work on one part or several, with one operation or several, for some time.</summary>
/// <remarks>Its lists are kept as arrays: every figure goes through all of them, and arrays are gone through fastest.</remarks>
public sealed record Job
{
    /// <summary>Its number in the entry, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The parts it was for with their weights; empty for work on the build as a whole.</summary>
    public IReadOnlyList<PartShare> Parts { get; init => field = value.ToArray(); } = [];

    /// <summary>The operations, which share the time equally; at least one.</summary>
    public required IReadOnlyList<Id<Operation>> Operations { get; init => field = value.ToArray(); }

    /// <summary>The time it took, set-up included; more than zero.</summary>
    public required Minutes Time { get; init; }

    /// <summary>The part of the time that went into setting up.</summary>
    public Minutes SetUp { get; init; }

    /// <summary>How the work was held.</summary>
    public string? Held { get; init; }

    /// <summary>What everything was measured from.</summary>
    public string? Datum { get; init; }

    /// <summary>The tools used.</summary>
    public IReadOnlyList<Id<Tool>> Tools { get; init => field = value.ToArray(); } = [];

    /// <summary>Tools, jigs and fixtures that the job made.</summary>
    public IReadOnlyList<Id<Tool>> Made { get; init => field = value.ToArray(); } = [];

    /// <summary>The mistake that the job puts right.</summary>
    public Id<Mistake>? Mends { get; init; }

    /// <summary>Whether it was work on the build as a whole.</summary>
    public bool IsGeneral => Parts.Count == 0;
}

/// <summary>A part's weight in a job; more than zero.</summary>
public sealed record PartShare(Id<Part> Part, decimal Weight);
