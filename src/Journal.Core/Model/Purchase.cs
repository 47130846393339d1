namespace Journal.Core.Model;

/// <summary>What money was spent on.</summary>
public enum PurchaseKind
{
    /// <summary>The kit of castings and drawings.</summary>
    Kit,

    /// <summary>Material to be made into parts.</summary>
    Stock,

    /// <summary>Screws, bearings, springs.</summary>
    Hardware,

    /// <summary>Used up in the making.</summary>
    Consumable,

    /// <summary>Tools.</summary>
    Tooling,

    /// <summary>Work done by others.</summary>
    Service,
}

/// <summary>Something bought for the build.</summary>
public sealed record Purchase
{
    /// <summary>What it was.</summary>
    public required string What { get; init; }

    /// <summary>What it cost, in the journal's currency.</summary>
    public required decimal Cost { get; init; }

    /// <summary>What kind of spending it was.</summary>
    public PurchaseKind Kind { get; init; } = PurchaseKind.Consumable;

    /// <summary>The part it was for.</summary>
    public Id<Part>? ForPart { get; init; }

    /// <summary>The tool it was for.</summary>
    public Id<Tool>? ForTool { get; init; }

    /// <summary>The mistake that made it necessary.</summary>
    public Id<Mistake>? Because { get; init; }
}
