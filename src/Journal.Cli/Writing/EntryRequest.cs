namespace Journal.Cli.Writing;

/// <summary>What the options of <c>journal write</c> say of an entry. Null is what was not said: it is asked for, or taken from what the journal knows.</summary>
internal sealed record EntryRequest
{
    /// <summary>The id of the build; null for that of the stint, else the one under way.</summary>
    public string? Build { get; init; }

    /// <summary>The id of the part, or <c>whole</c>.</summary>
    public string? Part { get; init; }

    /// <summary>Words for the operations, which share the time equally; none where they were not said.</summary>
    public IReadOnlyList<string> Operations { get; init; } = [];

    /// <summary>How long it took, such as <c>1h30</c> or <c>19:10-20:40</c>; null for the time of the stint, or to ask.</summary>
    public string? Hours { get; init; }

    /// <summary>Ids of tools used; an empty list means none, and nothing is asked.</summary>
    public IReadOnlyList<string>? Tools { get; init; }

    /// <summary>The title; null for one made of the name of the file.</summary>
    public string? Title { get; init; }

    /// <summary>What went wrong, a sentence each; an empty list means nothing did, and nothing is asked.</summary>
    public IReadOnlyList<string>? Mistakes { get; init; }

    /// <summary>What to do next.</summary>
    public string? Next { get; init; }

    /// <summary>Whether to ask for a caption for each picture, and for no other words.</summary>
    public bool WantsCaptions { get; init; }

    /// <summary>A folder to take pictures of the evening from, beside those that are in the build's folder.</summary>
    public string? Photos { get; init; }

    /// <summary>The evening as it was told: a file, or <c>-</c> for standard input; null where it is asked for.</summary>
    public string? Account { get; init; }

    /// <summary>Whether what is sure is written without a question.</summary>
    public bool IsSure { get; init; }

    /// <summary>
    /// The evening it is about; null for tonight, which lasts until four in the morning, or for that of a stint not written
    /// up yet.
    /// </summary>
    public DateOnly? Evening { get; init; }
}
