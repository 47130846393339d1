namespace Journal.Core.Model;

/// <summary>One line of a build's parts list.</summary>
public sealed record Part
{
    /// <summary>The part's id, unique in its build.</summary>
    public required Id<Part> Id { get; init; }

    /// <summary>The part's title.</summary>
    public required string Title { get; init; }

    /// <summary>The number in the drawing's item balloon, where there is one.</summary>
    public string? Item { get; init; }

    /// <summary>How many the build needs, at least 1.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>What it is made of.</summary>
    public Material? Material { get; init; }

    /// <summary>What it is made from.</summary>
    public Stock? Stock { get; init; }

    /// <summary>Where the stock came from, such as <c>kit</c>.</summary>
    public string? Supplied { get; init; }

    /// <summary>The sheet that shows it.</summary>
    public string? Drawing { get; init; }

    /// <summary>The operations foreseen, in plans mostly.</summary>
    public IReadOnlyList<Id<Operation>> Operations { get; init; } = [];

    /// <summary>The maker's own number before the work; for all pieces of it unless the plan says by the piece.</summary>
    public Guess? Guess { get; init; }

    /// <summary>The maker's second number, once the work was known better.</summary>
    public Guess? Reguess { get; init; }

    /// <summary>The guess that counts for what is left: the second where there is one. What a guess was worth is judged by the first.</summary>
    public Guess? CurrentGuess => Reguess ?? Guess;

    /// <summary>Ids that it had before; their addresses on the site lead to it still.</summary>
    public IReadOnlyList<string> Formerly { get; init; } = [];

    /// <summary>A part made before that this one is like.</summary>
    public PartRef? Like { get; init; }
}

/// <summary>A part of a certain build.</summary>
public readonly record struct PartRef(Id<Build> Build, Id<Part> Part)
{
    /// <summary>The part of a name as <see cref="ToString"/> writes it.</summary>
    /// <param name="name">A build's id, a slash and a part's id.</param>
    /// <exception cref="FormatException">It has no slash.</exception>
    public static PartRef Parse(string name) => name.IndexOf('/', StringComparison.Ordinal) is >= 0 and var slash
        ? new PartRef(new(name[..slash]), new(name[(slash + 1)..]))
        : throw new FormatException($"“{name}” is not a build and a part of it.");

    /// <summary>The part as the maker names it: <c>build/part</c>.</summary>
    public override string ToString() => $"{Build}/{Part}";
}

/// <summary>
/// The maker's own hours for a part before the work: a number, a number for each operation, or low, likely and high.
/// </summary>
public sealed record Guess
{
    /// <summary>The likely time: the number given, or the sum over the operations.</summary>
    public required Minutes Likely { get; init; }

    /// <summary>The low end of a three-point guess.</summary>
    public Minutes? Low { get; init; }

    /// <summary>The high end of a three-point guess.</summary>
    public Minutes? High { get; init; }

    /// <summary>The times by operation, in the order given, where the guess was made so.</summary>
    public IReadOnlyList<(Id<Operation> Operation, Minutes Time)> ByOperation { get; init; } = [];

    /// <summary>Whether it is for one piece of several, as a guess under <c>operations</c> is; else it is for all of them.</summary>
    public bool ForOnePiece { get; init; }

    /// <summary>The same guess for all of so many pieces, each taking as long as the first.</summary>
    public Guess ForAll(int pieces) => !ForOnePiece || pieces == 1 ? this with { ForOnePiece = false } : new Guess
    {
        Likely = new(Likely.Count * pieces),
        Low = Low is { } low ? new(low.Count * pieces) : null,
        High = High is { } high ? new(high.Count * pieces) : null,
        ByOperation = [.. ByOperation.Select(one => (one.Operation, new Minutes(one.Time.Count * pieces)))],
    };

    /// <summary>
    /// The expected time in minutes: the number itself, or (low + 4 likely + high) / 6 of a three-point guess
    /// (Malcolm, Roseboom, Clark and Fazar, <i>Operations Research</i> 7, 1959).
    /// </summary>
    public double MeanMinutes => Low is { } low && High is { } high
        ? (low.Count + 4.0 * Likely.Count + high.Count) / 6.0
        : Likely.Count;
}
