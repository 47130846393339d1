namespace Journal.Core.Model;

/// <summary>A measured dimension beside the required one, both as written.</summary>
public sealed record MeasuredReading
{
    /// <summary>The feature measured, such as <c>bore</c>.</summary>
    public required string Feature { get; init; }

    /// <summary>The part it belongs to; null for the build as a whole.</summary>
    public Id<Part>? Part { get; init; }

    /// <summary>What the drawing asks for, as written.</summary>
    public string? Required { get; init; }

    /// <summary>What was measured, as written.</summary>
    public string? Actual { get; init; }

    /// <summary>The tool it was measured with.</summary>
    public Id<Tool>? With { get; init; }

    /// <summary>Where it stands.</summary>
    public Place Place { get; init; }
}

/// <summary>Speed, feed and depth that were used, and how it went, as written.</summary>
public sealed record Setting
{
    /// <summary>The number of the job it belongs to, from 1.</summary>
    public int Job { get; init; } = 1;

    /// <summary>Diameter of the work in turning, of the cutter in milling and drilling.</summary>
    public string? Diameter { get; init; }

    /// <summary>Spindle speed in revolutions per minute.</summary>
    public decimal? Rpm { get; init; }

    /// <summary>The feed with its unit, or <c>hand</c>.</summary>
    public string? Feed { get; init; }

    /// <summary>The number of teeth of the cutter.</summary>
    public int? Teeth { get; init; }

    /// <summary>The width of cut.</summary>
    public string? Width { get; init; }

    /// <summary>The depth of cut.</summary>
    public string? Depth { get; init; }

    /// <summary>What was cut; else the part's material.</summary>
    public Material? Material { get; init; }

    /// <summary>What it was cut with.</summary>
    public string? Cutter { get; init; }

    /// <summary>The machine, an id from the crib.</summary>
    public Id<Tool>? Machine { get; init; }

    /// <summary>What kept it cool.</summary>
    public string? Coolant { get; init; }

    /// <summary>How it went, in the maker's word.</summary>
    public string? Verdict { get; init; }

    /// <summary>A remark.</summary>
    public string? Note { get; init; }

    /// <summary>Where it stands.</summary>
    public Place Place { get; init; }
}
