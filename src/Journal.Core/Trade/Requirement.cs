using System.Diagnostics.CodeAnalysis;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>In what way a drawing asks for something.</summary>
public enum RequirementKind
{
    /// <summary>A size without limits: there is no general tolerance.</summary>
    Size,

    /// <summary>A size between two limits, however they are written.</summary>
    Limits,

    /// <summary>No more than a size: run-out, squareness, taper.</summary>
    AtMost,

    /// <summary>No less than a size.</summary>
    AtLeast,

    /// <summary>To suit another feature.</summary>
    ToSuit,

    /// <summary>A thread, judged by a gauge.</summary>
    Thread,
}

/// <summary>
/// What a drawing asks for: <c>12 H7</c>, <c>ø12 h6</c>, <c>12 ±0.02</c>, <c>12 +0.018/0</c>, <c>11.98-12.02</c>,
/// <c>1/2 in</c>, <c>max 0.02</c>, <c>to suit quill.diameter</c>, <c>M6x1-6H</c>. All its lengths have one unit.
/// </summary>
public sealed record Requirement
{
    /// <summary>In what way it asks.</summary>
    public required RequirementKind Kind { get; init; }

    /// <summary>The unit of all its lengths: the one written, else the drawing's.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>
    /// The nominal size; between plain limits the middle of them. Null for <see cref="RequirementKind.AtMost"/>,
    /// <see cref="RequirementKind.AtLeast"/>, threads and what has to suit another feature.
    /// </summary>
    public Length? Nominal { get; init; }

    /// <summary>The least size allowed, included.</summary>
    public Length? Least { get; init; }

    /// <summary>The greatest size allowed, included.</summary>
    public Length? Greatest { get; init; }

    /// <summary>The tolerance class of ISO 286, where the limits come from one.</summary>
    public FitCode? Fit { get; init; }

    /// <summary>Whether the limits come from the drawing's general tolerance.</summary>
    public bool IsByGeneralTolerance { get; init; }

    /// <summary>The thread asked for.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>The feature to suit, as <c>part.feature</c>.</summary>
    public string? Suits { get; init; }

    /// <summary>What must be added to the size of the other feature at least, where it says so; negative for a smaller shaft.</summary>
    public Length? LeastBeyond { get; init; }

    /// <summary>What may be added to the size of the other feature at most, where it says so.</summary>
    public Length? GreatestBeyond { get; init; }

    /// <summary>The room between the limits; the whole of it for <see cref="RequirementKind.AtMost"/>. Null without limits.</summary>
    public Length? Tolerance => (Least, Greatest) switch
    {
        ({ } least, { } greatest) => greatest with { Value = greatest.Value - least.Value },
        (null, { } most) => most,
        _ => null,
    };

    /// <summary>Reads a requirement in one of the forms of a drawing.</summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="defaultUnit">The unit of the drawing.</param>
    /// <param name="generalTolerance">The drawing's general tolerance, plus and minus, for a bare number.</param>
    /// <param name="requirement">What the drawing asks for.</param>
    /// <param name="fault">What is wrong where it cannot be read.</param>
    public static bool TryParse(
        string text,
        LengthUnit defaultUnit,
        Length? generalTolerance,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault) =>
        RequirementText.TryParse(text, defaultUnit, generalTolerance, out requirement, out fault);
}
