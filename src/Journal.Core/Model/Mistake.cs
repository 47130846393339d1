namespace Journal.Core.Model;

/// <summary>What becomes of a part after a mistake: the dispositions of ISO 9000:2015, 3.12.</summary>
public enum Outcome
{
    /// <summary>Worked again until it conforms.</summary>
    Rework,

    /// <summary>Made fit for use, though not as drawn.</summary>
    Repair,

    /// <summary>Thrown away.</summary>
    Scrap,

    /// <summary>Thrown away and made again.</summary>
    Remade,

    /// <summary>Used as it is: a concession in the standard's words.</summary>
    UsedAsIs,
}

/// <summary>What went wrong, why, what it cost and what became of the part.</summary>
public sealed record Mistake
{
    /// <summary>Its id where given: by it a later job says that it mends it, and a purchase that it was because of it.</summary>
    public Id<Mistake>? Id { get; init; }

    /// <summary>What went wrong.</summary>
    public required string What { get; init; }

    /// <summary>Why, in a word of the vocabulary.</summary>
    public Id<Cause>? Cause { get; init; }

    /// <summary>Time lost at once; the jobs that mend it come on top.</summary>
    public Minutes Lost { get; init; }

    /// <summary>What became of the part.</summary>
    public Outcome? Outcome { get; init; }

    /// <summary>How many pieces it touched.</summary>
    public int? Pieces { get; init; }

    /// <summary>The entry where it was made, if it was found later.</summary>
    public Id<Entry>? MadeOn { get; init; }

    /// <summary>The lesson that it taught.</summary>
    public Id<Lesson>? Lesson { get; init; }

    /// <summary>A lesson known already and not heeded.</summary>
    public Id<Lesson>? Repeats { get; init; }

    /// <summary>The number of the job it belongs to, from 1.</summary>
    public int Job { get; init; } = 1;
}

/// <summary>A reason why things go wrong.</summary>
public sealed record Cause(Id<Cause> Id, string Title);
