namespace Journal.Cli.Writing;

/// <summary>What the maker said beforehand about tonight's entry; null for what shall be asked or is known.</summary>
internal sealed record EntryRequest
{
    public string? Build { get; init; }

    public string? Part { get; init; }

    public IReadOnlyList<string> Operations { get; init; } = [];

    public string? Hours { get; init; }

    public IReadOnlyList<string>? Tools { get; init; }

    public string? Title { get; init; }

    public IReadOnlyList<string>? Mistakes { get; init; }

    public string? Next { get; init; }

    public bool WantsCaptions { get; init; }

    public string? Photos { get; init; }

    /// <summary>The evening as it was told: a file, or <c>-</c> for standard input; null where it is asked for.</summary>
    public string? Account { get; init; }

    /// <summary>Whether what is sure is written without a question.</summary>
    public bool IsSure { get; init; }

    public DateOnly? Evening { get; init; }
}
