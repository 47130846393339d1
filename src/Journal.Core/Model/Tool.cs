namespace Journal.Core.Model;

/// <summary>How a tool came to the shop.</summary>
public enum Got
{
    /// <summary>It was there already.</summary>
    Had,

    /// <summary>Paid for.</summary>
    Bought,

    /// <summary>Made in the shop.</summary>
    Made,

    /// <summary>To be given back.</summary>
    Borrowed,

    /// <summary>A present.</summary>
    Given,

    /// <summary>Paid for by the day.</summary>
    Hired,
}

/// <summary>How much another maker would need the tool.</summary>
public enum Need
{
    /// <summary>Saves time.</summary>
    Handy,

    /// <summary>The job cannot be done without it.</summary>
    Essential,

    /// <summary>Made up for a limit of this workshop.</summary>
    Workaround,
}

/// <summary>Anything used and not consumed: machine, cutter, gauge, work-holding, fixture.</summary>
public sealed record Tool
{
    /// <summary>The tool's id, unique in the journal.</summary>
    public required Id<Tool> Id { get; init; }

    /// <summary>The tool's title.</summary>
    public required string Title { get; init; }

    /// <summary>What sort of tool it is, in a word of the vocabulary; null where the crib does not list it.</summary>
    public Id<ToolKind>? Kind { get; init; }

    /// <summary>How it came to the shop.</summary>
    public Got? Got { get; init; }

    /// <summary>What it cost, in the journal's currency.</summary>
    public decimal? Cost { get; init; }

    /// <summary>Since when it has been in the shop.</summary>
    public DateOnly? Since { get; init; }

    /// <summary>How much another maker would need it.</summary>
    public Need Need { get; init; }

    /// <summary>The smallest step that a measuring tool shows; where it is left out, recognised words of the title may tell.</summary>
    public Length? Resolution { get; init; }

    /// <summary>Where to see or get it.</summary>
    public Uri? Link { get; init; }

    /// <summary>What readers should know beside the link, such as <c>gift</c>.</summary>
    public string? Disclose { get; init; }

    /// <summary>Whom it is borrowed from; never published.</summary>
    public string? BorrowedFrom { get; init; }

    /// <summary>The day it is due back; never published.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>Ids that it had before; their addresses on the site lead to it still.</summary>
    public IReadOnlyList<string> Formerly { get; init; } = [];

    /// <summary>The entry that defined it with <c>made</c>; null for what the crib lists.</summary>
    public EntryRef? DefinedIn { get; init; }

    /// <summary>Whether it is in the crib or defined by an entry; false for an id that entries merely mention.</summary>
    public bool IsListed { get; init; } = true;
}

/// <summary>A sort of tool.</summary>
public sealed record ToolKind(Id<ToolKind> Id, string Title);
