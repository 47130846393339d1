namespace Journal.Bench.Pages;

/// <summary>An evening being written up.</summary>
public sealed record WriteUpPage
{
    /// <summary>What all pages have.</summary>
    public required Frame Frame { get; init; }

    /// <summary>What stands in the way, such as a switch that is on; null for nothing.</summary>
    public string? Trouble { get; init; }

    /// <summary>What came of the last form; null for nothing.</summary>
    public ToldView? Told { get; init; }

    /// <summary>Other evenings that wait, and other ways to write this one.</summary>
    public IReadOnlyList<Way> Others { get; init; } = [];

    /// <summary>The write-up; null where there is nothing to write.</summary>
    public WriteUpView? Writing { get; init; }
}

/// <summary>What a write-up shows.</summary>
public sealed record WriteUpView
{
    /// <summary>The evening in full.</summary>
    public required string Evening { get; init; }

    /// <summary>The same as ISO 8601 has it.</summary>
    public required string Date { get; init; }

    /// <summary>The build.</summary>
    public required string Build { get; init; }

    /// <summary>Whether it is another job, for an entry of its own.</summary>
    public required bool IsAnother { get; init; }

    /// <summary>The file that is written.</summary>
    public required string File { get; init; }

    /// <summary>The entry's jobs that stand already, in words; null for a new entry.</summary>
    public string? Standing { get; init; }

    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>The jobs.</summary>
    public required IReadOnlyList<JobForm> Jobs { get; init; }

    /// <summary>Tools with commas between.</summary>
    public required string Tools { get; init; }

    /// <summary>What to do next.</summary>
    public required string Next { get; init; }

    /// <summary>What else was understood.</summary>
    public required IReadOnlyList<UnderstoodView> Understood { get; init; }

    /// <summary>The remarks as they were made.</summary>
    public required IReadOnlyList<NotedView> Remarks { get; init; }

    /// <summary>What was said and cannot be written as a key, with why.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    /// <summary>The text of the entry.</summary>
    public required string Text { get; init; }

    /// <summary>The digest of the entry's file; empty for a new one.</summary>
    public required string Seen { get; init; }

    /// <summary>By which it is known whether more is noted meanwhile.</summary>
    public required string Noted { get; init; }

    /// <summary>Parts to choose from.</summary>
    public required IReadOnlyList<ChoiceView> Parts { get; init; }

    /// <summary>Operations to choose from.</summary>
    public required IReadOnlyList<ChoiceView> Operations { get; init; }

    /// <summary>The problems of the text.</summary>
    public required IReadOnlyList<ProblemView> Problems { get; init; }

    /// <summary>Where the site will show it.</summary>
    public required string Preview { get; init; }

    /// <summary>The address of the editor's script.</summary>
    public required string Editor { get; init; }

    /// <summary>The address of the page's own script.</summary>
    public required string Script { get; init; }
}

/// <summary>A job in the form.</summary>
/// <param name="Number">Its number, from 0.</param>
/// <param name="Because">The words that it was understood from; null for what is usual.</param>
/// <param name="IsIn">Whether it goes into the entry.</param>
/// <param name="Part">Parts.</param>
/// <param name="Operation">Operations.</param>
/// <param name="Hours">How long it took.</param>
/// <param name="SetUp">Of that, setting up.</param>
/// <param name="Held">How the work was held.</param>
/// <param name="Datum">What everything was measured from.</param>
/// <param name="Mends">The mistake that it puts right.</param>
public sealed record JobForm(int Number, string? Because, bool IsIn, string Part, string Operation, string Hours, string SetUp, string Held, string Datum, string Mends);

/// <summary>Something that was understood from the remarks.</summary>
/// <param name="Name">Its name in the form.</param>
/// <param name="Key">What it is, such as <c>mistake</c>.</param>
/// <param name="Value">What it says.</param>
/// <param name="Because">The words that it was understood from.</param>
/// <param name="IsIn">Whether it goes into the entry.</param>
public sealed record UnderstoodView(string Name, string Key, string Value, string? Because, bool IsIn);

/// <summary>A remark.</summary>
/// <param name="Time">The time of day.</param>
/// <param name="Text">What it says.</param>
public sealed record NotedView(string Time, string Text);
