using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>What a caution is about, where nothing in a journal may switch it off.</summary>
public enum CautionKind
{
    /// <summary>May be left out by whoever knows better.</summary>
    Other,

    /// <summary>Pressure: local codes and competent inspection decide.</summary>
    Pressure,

    /// <summary>Steam.</summary>
    Steam,

    /// <summary>Gas.</summary>
    Gas,

    /// <summary>Mains electricity.</summary>
    Mains,
}

/// <summary>A safety note that belongs to operations, materials or words.</summary>
public sealed record Caution
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>The note in one line.</summary>
    public required string Title { get; init; }

    /// <summary>What can happen.</summary>
    public required string Happens { get; init; }

    /// <summary>What is usually done.</summary>
    public required string Done { get; init; }

    /// <summary>The published source, with number and clause.</summary>
    public required string Source { get; init; }

    /// <summary>Whether the source was read; else it is from memory.</summary>
    public required bool IsLookedUp { get; init; }

    /// <summary>Whether it may be left out.</summary>
    public required CautionKind Kind { get; init; }

    /// <summary>Operations that call for it.</summary>
    public IReadOnlyList<Id<Operation>> Operations { get; init; } = [];

    /// <summary>Materials that call for it, on their own or together with the operations.</summary>
    public IReadOnlyList<Id<MaterialFamily>> Materials { get; init; } = [];

    /// <summary>Words in a text that call for it, in lower case.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>By its id alone.</summary>
    public override int GetHashCode() => Id.GetHashCode(StringComparison.Ordinal);

    /// <summary>
    /// Whether work calls for it: operation and material together where it names both, either where it names one.
    /// </summary>
    /// <param name="operations">What was done.</param>
    /// <param name="materials">What it was done to.</param>
    public bool IsCalledForBy(IReadOnlyCollection<Id<Operation>> operations, IReadOnlyCollection<Id<MaterialFamily>> materials)
    {
        return (Operations.Count, Materials.Count) switch
        {
            (0, 0) => false,
            (_, 0) => Operations.Any(operations.Contains),
            (0, _) => Materials.Any(materials.Contains),
            _ => Operations.Any(operations.Contains) && Materials.Any(materials.Contains),
        };
    }
}
