using Journal.Core.Model;

namespace Journal.Cli.Searching;

/// <summary>Something of the journal that can be found by its words.</summary>
/// <param name="Kind">What it is: entry, lesson, reading, remark, part or tool.</param>
/// <param name="Id">By which the maker names it; null for remarks.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Texts">All that it says, the title left out.</param>
internal sealed record Thing(string Kind, string? Id, string Title, IReadOnlyList<string> Texts)
{
    /// <summary>The build it belongs to; null for what belongs to none.</summary>
    public Id<Build>? Build { get; init; }

    /// <summary>The evening that it is of; null for parts and tools.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>The entry that tells of it; null where none does.</summary>
    public EntryRef? Entry { get; init; }

    /// <summary>The parts it is about; null among them for the build as a whole.</summary>
    public IReadOnlyList<Id<Part>?> Parts { get; init; } = [];

    /// <summary>What was done.</summary>
    public IReadOnlyList<Id<Operation>> Operations { get; init; } = [];

    /// <summary>What it was done with.</summary>
    public IReadOnlyList<Id<Tool>> Tools { get; init; } = [];
}
