using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>By what geometry an operation takes metal off.</summary>
public enum CutKind
{
    /// <summary>Not by one of those below, or not in a way that speed, feed and depth tell.</summary>
    Other,

    /// <summary>The work turns and a single point cuts; also boring, where the point turns.</summary>
    Turning,

    /// <summary>A turning cutter is fed along the work.</summary>
    Milling,

    /// <summary>A drill makes a hole in the solid.</summary>
    Drilling,
}

/// <summary>The geometry of the vocabulary's operations.</summary>
public static class CutKinds
{
    private static readonly HashSet<string> Turning =
    [
        "facing", "turning", "taper-turning", "form-turning", "eccentric-turning", "between-centres", "boring", "line-boring", "parting-off", "grooving",
    ];

    private static readonly HashSet<string> Milling = ["milling", "fly-cutting", "slotting", "slitting", "keyway-cutting", "gear-cutting"];

    private static readonly HashSet<string> Drilling = ["drilling", "drilling-in-place"];

    /// <summary>The geometry of an operation; <see cref="CutKind.Other"/> for words that the maker added.</summary>
    public static CutKind Of(Id<Operation> operation) =>
        Turning.Contains(operation.Value) ? CutKind.Turning
        : Milling.Contains(operation.Value) ? CutKind.Milling
        : Drilling.Contains(operation.Value) ? CutKind.Drilling
        : CutKind.Other;
}
