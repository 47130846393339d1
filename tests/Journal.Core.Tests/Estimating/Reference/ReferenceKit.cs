namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>A job in plain arrays: its minutes are shared over the parts by weight, then over the operations equally; without parts it is work on the whole.</summary>
internal sealed record KitJob(int Minutes, string[] Operations, (string Part, int Weight)[] Parts);

/// <summary>An evening: its jobs, and what was finished (null pieces: all that were left).</summary>
internal sealed record KitEntry(DateOnly Day, string Name, KitJob[] Jobs, (string Part, int? Pieces)[] Finished);

/// <summary>
/// A guess in minutes: one number; low, likely and high; or a number for each of <paramref name="Operations"/>.
/// </summary>
internal sealed record KitGuess(int[] Minutes, string[] Operations, bool IsForOnePiece = false)
{
    /// <summary>What counts of it, in hours; of all pieces or of one, as it was written.</summary>
    public double Hours => Operations.Length == 0 && Minutes.Length == 3
        ? (Minutes[0] + 4.0 * Minutes[1] + Minutes[2]) / 6 / 60
        : Minutes.Sum() / 60.0;
}

/// <summary>A line of a parts list.</summary>
internal sealed record KitPart(string Id)
{
    public int Pieces { get; init; } = 1;

    /// <summary>Those foreseen.</summary>
    public string[] Operations { get; init; } = [];

    public KitGuess? Guess { get; init; }

    public KitGuess? SecondGuess { get; init; }

    public (string Build, string Part)? Like { get; init; }
}

/// <summary>A build or, without entries, a plan.</summary>
internal sealed record KitBuild(string Id)
{
    public bool IsFinished { get; init; }

    public KitPart[] Parts { get; init; } = [];

    /// <summary>Guesses for work on the whole, in minutes.</summary>
    public (string Operation, int Minutes)[] Whole { get; init; } = [];

    /// <summary>By date, then name.</summary>
    public KitEntry[] Entries { get; init; } = [];

    public double? HoursAWeek { get; init; }

    public DateOnly? Start { get; init; }

    public (DateOnly First, DateOnly Last)[] Away { get; init; } = [];
}

/// <summary>A maker's builds, what is to be estimated, and what was asked.</summary>
internal sealed record Kit(string Name, DateOnly Today, KitBuild[] Builds, KitBuild Subject)
{
    /// <summary>Whether the subject is a plan; else it is one of the builds.</summary>
    public bool IsPlan => !Builds.Contains(Subject);

    public DateOnly? Start { get; init; }

    public double? HoursAWeek { get; init; }

    public string[] Without { get; init; } = [];

    /// <summary>The seed of the program and of the reference, one for each kit, so that chance errs in each of them in its own way.</summary>
    public int Seed { get; init; } = 1;
}
