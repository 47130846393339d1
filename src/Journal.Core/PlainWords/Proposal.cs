using Journal.Core.Model;

namespace Journal.Core.PlainWords;

/// <summary>A piece of the account, in UTF-16 offsets: the start, and the end that is no longer part of it.</summary>
public readonly record struct Span(int Start, int End);

/// <summary>What an account of an evening says, as keys of an entry, each with the words that it came from. Nothing of it is written anywhere.</summary>
public sealed record Proposal
{
    /// <summary>The work in the order told.</summary>
    public IReadOnlyList<ProposedJob> Jobs { get; init; } = [];

    /// <summary>The time of the whole evening, where the words give it.</summary>
    public Minutes? Total { get; init; }

    /// <summary>Where the total was said.</summary>
    public IReadOnlyList<Span> TotalWords { get; init; } = [];

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<ProposedMistake> Mistakes { get; init; } = [];

    /// <summary>New lessons.</summary>
    public IReadOnlyList<ProposedText> Lessons { get; init; } = [];

    /// <summary>Known lessons that were heeded.</summary>
    public IReadOnlyList<Known<Lesson>> Heeded { get; init; } = [];

    /// <summary>Earlier mistakes that were put right.</summary>
    public IReadOnlyList<Known<Mistake>> Mends { get; init; } = [];

    /// <summary>Sizes measured.</summary>
    public IReadOnlyList<ProposedReading> Readings { get; init; } = [];

    /// <summary>Speeds, feeds and depths.</summary>
    public IReadOnlyList<ProposedSetting> Settings { get; init; } = [];

    /// <summary>Parts finished, or pieces of them.</summary>
    public IReadOnlyList<ProposedFinish> Finished { get; init; } = [];

    /// <summary>What was bought.</summary>
    public IReadOnlyList<ProposedPurchase> Bought { get; init; } = [];

    /// <summary>Tools, jigs and fixtures made.</summary>
    public IReadOnlyList<ProposedTool> Made { get; init; } = [];

    /// <summary>New snags.</summary>
    public IReadOnlyList<ProposedText> Snags { get; init; } = [];

    /// <summary>Open snags that were put right.</summary>
    public IReadOnlyList<Known<Snag>> Cleared { get; init; } = [];

    /// <summary>Runs.</summary>
    public IReadOnlyList<ProposedTrial> Trials { get; init; } = [];

    /// <summary>What to do next, and how the machine was left.</summary>
    public ProposedText? Next { get; init; }

    /// <summary>Parts that the build does not list.</summary>
    public IReadOnlyList<ProposedText> NewParts { get; init; } = [];

    /// <summary>Tools that the crib does not list.</summary>
    public IReadOnlyList<ProposedText> NewTools { get; init; } = [];

    /// <summary>What was said but is not sure enough to propose, each with a question.</summary>
    public IReadOnlyList<Question> Questions { get; init; } = [];
}

/// <summary>A job.</summary>
public sealed record ProposedJob
{
    /// <summary>The parts; empty where none was named.</summary>
    public IReadOnlyList<Id<Part>> Parts { get; init; } = [];

    /// <summary>The operations; empty where only the part and its time were said.</summary>
    public IReadOnlyList<Id<Operation>> Operations { get; init; } = [];

    /// <summary>Its time, setting up included, where the words give it.</summary>
    public Minutes? Time { get; init; }

    /// <summary>The share of the time that went into setting up.</summary>
    public Minutes? SetUp { get; init; }

    /// <summary>How the work was held, in the maker's words.</summary>
    public string? Held { get; init; }

    /// <summary>What everything was measured from, in the maker's words.</summary>
    public string? Datum { get; init; }

    /// <summary>Tools of the crib.</summary>
    public IReadOnlyList<Id<Tool>> Tools { get; init; } = [];

    /// <summary>An earlier mistake that the job puts right.</summary>
    public Id<Mistake>? Mends { get; init; }

    /// <summary>Where it was said.</summary>
    public IReadOnlyList<Span> Words { get; init; } = [];
}

/// <summary>A mistake.</summary>
public sealed record ProposedMistake(string What, Span Words)
{
    /// <summary>Why, where the words say so.</summary>
    public Id<Cause>? Cause { get; init; }

    /// <summary>Time lost.</summary>
    public Minutes? Lost { get; init; }

    /// <summary>What became of the part.</summary>
    public Outcome? Outcome { get; init; }

    /// <summary>A lesson known before and not heeded.</summary>
    public Id<Lesson>? Repeats { get; init; }
}

/// <summary>Something in the maker's own words.</summary>
public sealed record ProposedText(string Text, Span Words);

/// <summary>A thing that the journal knows, and where it was spoken of.</summary>
public sealed record Known<T>(Id<T> Id, Span Words);

/// <summary>A measured size; the required one where it was said too. Both keep the unit and the digits said.</summary>
public sealed record ProposedReading(Id<Part>? Part, string Feature, Length Actual, string? Required, Span Words);

/// <summary>Speed, depth and feed of a cut; at least one of them.</summary>
public sealed record ProposedSetting(Span Words)
{
    /// <summary>Revolutions per minute.</summary>
    public decimal? Rpm { get; init; }

    /// <summary>Depth of cut.</summary>
    public Length? Depth { get; init; }

    /// <summary>The feed in the journal's form, such as <c>0.004 in/rev</c>.</summary>
    public string? Feed { get; init; }

    /// <summary>How it went, in a word of the settings' verdicts.</summary>
    public string? Verdict { get; init; }
}

/// <summary>A part finished; null pieces mean all of it.</summary>
public sealed record ProposedFinish(Id<Part> Part, int? Pieces, Span Words);

/// <summary>A purchase; the cost where it was said.</summary>
public sealed record ProposedPurchase(string What, decimal? Cost, Span Words);

/// <summary>A tool, jig or fixture.</summary>
public sealed record ProposedTool(string Title, string Kind, Span Words);

/// <summary>A run, and how long.</summary>
public sealed record ProposedTrial(string On, Minutes? Time, Span Words);

/// <summary>A question about words that were not sure enough.</summary>
public sealed record Question(string Text, Span Words)
{
    /// <summary>The time that no job was found for, where that is what is asked.</summary>
    public Minutes? Time { get; init; }
}
