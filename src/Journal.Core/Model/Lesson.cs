namespace Journal.Core.Model;

/// <summary>What the maker says of a way of working.</summary>
public enum Verdict
{
    /// <summary>Do it so again.</summary>
    DoAgain,

    /// <summary>It worked, but there is a better way.</summary>
    WorkedBut,

    /// <summary>Not again.</summary>
    NeverAgain,
}

/// <summary>What to do, or not to do, next time.</summary>
public sealed record Lesson
{
    /// <summary>Its id, unique in the journal; <c>build-entry-n</c> where none is given.</summary>
    public required Id<Lesson> Id { get; init; }

    /// <summary>The lesson in the maker's words.</summary>
    public required string Text { get; init; }

    /// <summary>The entry that learned it.</summary>
    public required EntryRef Entry { get; init; }

    /// <summary>The number of the job that it was learned on, from 1.</summary>
    public int Job { get; init; } = 1;

    /// <summary>Whether it came from a mistake.</summary>
    public bool FromMistake { get; init; }

    /// <summary>Ids that it had before; their addresses on the site lead to it still.</summary>
    public IReadOnlyList<string> Formerly { get; init; } = [];

    /// <summary>The maker's verdict on what was done.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>What would have been better.</summary>
    public string? Better { get; init; }
}
