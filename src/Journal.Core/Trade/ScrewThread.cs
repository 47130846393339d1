using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>A screw thread that a drawing asks for. A gauge decides whether it is right, not this table.</summary>
public sealed record ScrewThread
{
    /// <summary>The designation as the trade writes it: <c>M6</c>, <c>1/4-20 UNC</c>, <c>2 BA</c>.</summary>
    public required string Designation { get; init; }

    /// <summary>The family, such as <c>ISO metric, coarse pitch</c>.</summary>
    public required string Series { get; init; }

    /// <summary>The major diameter, where the tables know the thread.</summary>
    public Length? Major { get; init; }

    /// <summary>The pitch in millimetres, of metric and British Association threads.</summary>
    public decimal? Pitch { get; init; }

    /// <summary>Threads to the inch.</summary>
    public decimal? ThreadsPerInch { get; init; }

    /// <summary>The tolerance class behind it, such as <c>6H</c> or <c>2B</c>.</summary>
    public string? Tolerance { get; init; }

    /// <summary>Whether it is left-handed.</summary>
    public bool IsLeftHanded { get; init; }
}
