namespace Journal.Bench.Pages;

/// <summary>The plans of the journal.</summary>
/// <param name="Frame">What all pages have.</param>
/// <param name="Plans">The plans.</param>
public sealed record PlansPage(Frame Frame, IReadOnlyList<PlanRow> Plans);

/// <summary>A plan.</summary>
/// <param name="Address">Where it is.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Parts">How many parts it has, in words, and whether it was begun.</param>
public sealed record PlanRow(string Address, string Title, string Parts);

/// <summary>A plan with its guesses and its estimate.</summary>
public sealed record PlanPage
{
    /// <summary>What all pages have.</summary>
    public required Frame Frame { get; init; }

    /// <summary>The plan's title.</summary>
    public required string Title { get; init; }

    /// <summary>Its id in addresses.</summary>
    public required string Id { get; init; }

    /// <summary>Where its file is opened as text.</summary>
    public required string File { get; init; }

    /// <summary>Whether it is a build by now; its guesses stay as they were.</summary>
    public required bool IsBegun { get; init; }

    /// <summary>What came of the last form; null for nothing.</summary>
    public ToldView? Told { get; init; }

    /// <summary>The parts.</summary>
    public required IReadOnlyList<PlanPartForm> Parts { get; init; }

    /// <summary>The hours of the work on the build as a whole.</summary>
    public required PartHoursView Whole { get; init; }

    /// <summary>The estimate.</summary>
    public required EstimateView Estimate { get; init; }

    /// <summary>The address of the page's own script.</summary>
    public required string Script { get; init; }
}

/// <summary>A part in the table of a plan.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Detail">Pieces, operations, what it is like.</param>
/// <param name="Guess">The guess as it stands in the form.</param>
/// <param name="Was">The guess as it stands in the file.</param>
/// <param name="IsOut">Whether it is left out.</param>
/// <param name="Even">Its hours at even odds; a dash where nothing is known.</param>
/// <param name="Range">From once in ten times to nine times in ten.</param>
public sealed record PlanPartForm(string Id, string Title, string Detail, string Guess, string Was, bool IsOut, string Even, string Range);

/// <summary>An estimate in words.</summary>
/// <param name="Sentence">The odds; null where there is no estimate.</param>
/// <param name="Lines">What to know of it: differences, or why there is none.</param>
/// <param name="Parts">The hours of each part by its id, with those of the work on the whole under <c>whole</c>.</param>
public sealed record EstimateView(string? Sentence, IReadOnlyList<string> Lines, IReadOnlyList<PartHoursView> Parts);

/// <summary>The hours of a part.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Even">At even odds.</param>
/// <param name="Range">From once in ten times to nine times in ten.</param>
public sealed record PartHoursView(string Part, string Even, string Range);
