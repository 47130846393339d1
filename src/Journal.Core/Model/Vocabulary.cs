namespace Journal.Core.Model;

/// <summary>
/// The words that a journal knows: ours, from <c>shared/vocabulary.yaml</c>, and those that the maker added.
/// Every lookup takes an id or an alias and gives the one word that stands for the thing.
/// </summary>
public sealed record Vocabulary
{
    /// <summary>Operations.</summary>
    public required WordList<Operation> Operations { get; init; }

    /// <summary>Causes of mistakes.</summary>
    public required WordList<Cause> Causes { get; init; }

    /// <summary>Families of materials.</summary>
    public required WordList<MaterialFamily> Materials { get; init; }

    /// <summary>Forms of stock.</summary>
    public required WordList<StockForm> StockForms { get; init; }

    /// <summary>Kinds of tools.</summary>
    public required WordList<ToolKind> ToolKinds { get; init; }

    /// <summary>The operation with an id that is known to exist.</summary>
    public Operation Operation(Id<Operation> id) => Operations[id];
}
