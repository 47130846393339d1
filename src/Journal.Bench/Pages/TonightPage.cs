namespace Journal.Bench.Pages;

/// <summary>Tonight at the bench, on the phone.</summary>
public sealed record TonightPage
{
    /// <summary>What all pages have.</summary>
    public required Frame Frame { get; init; }

    /// <summary>The evening in full.</summary>
    public required string Evening { get; init; }

    /// <summary>What came of the last form; null for nothing.</summary>
    public ToldView? Told { get; init; }

    /// <summary>What stands in the way, such as a file that cannot be read; null for nothing.</summary>
    public string? Trouble { get; init; }

    /// <summary>Where the maker was; null in a journal without builds.</summary>
    public WhereView? Where { get; init; }

    /// <summary>The switch; null in a journal without builds.</summary>
    public SwitchView? Switch { get; init; }

    /// <summary>What to read before the job.</summary>
    public required BeforeView Before { get; init; }

    /// <summary>Features whose size is known or required, the likeliest first.</summary>
    public IReadOnlyList<FeatureView> Features { get; init; } = [];

    /// <summary>Parts, for sizes of other features.</summary>
    public IReadOnlyList<ChoiceView> Parts { get; init; } = [];

    /// <summary>Causes, those of this maker's mistakes first.</summary>
    public IReadOnlyList<ChoiceView> Causes { get; init; } = [];

    /// <summary>Parts that are not finished.</summary>
    public IReadOnlyList<ToFinishView> ToFinish { get; init; } = [];

    /// <summary>The journal's currency.</summary>
    public required string Currency { get; init; }

    /// <summary>What was noted tonight, in order.</summary>
    public IReadOnlyList<JotView> SoFar { get; init; } = [];

    /// <summary>Hours of tonight that stand in an entry already; null for none.</summary>
    public string? Written { get; init; }

    /// <summary>Remarks of other evenings that wait for an entry; null for none.</summary>
    public string? Waiting { get; init; }
}

/// <summary>What came of something that was sent.</summary>
/// <param name="Said">The sentence.</param>
/// <param name="IsDone">Whether it is kept.</param>
/// <param name="Verdict">Of a size: how it lies; null for anything else.</param>
public sealed record ToldView(string Said, bool IsDone, VerdictView? Verdict);

/// <summary>How a size lies within its limits.</summary>
/// <param name="Class">For the look: <c>in</c>, <c>out</c> or <c>open</c>.</param>
/// <param name="Word">In a word or two, to be read from afar.</param>
/// <param name="Detail">By how much, and between what.</param>
public sealed record VerdictView(string Class, string Word, string Detail);

/// <summary>Where the maker was.</summary>
/// <param name="Build">The build.</param>
/// <param name="Next">The next step; null where none is said.</param>
/// <param name="NextSince">The day it was noted.</param>
/// <param name="Held">How the work was left standing; null where that is not said.</param>
/// <param name="Datum">What everything was measured from; null where that is not said.</param>
/// <param name="Snags">What is still to put right.</param>
/// <param name="SnagsInWords">How many of these there are.</param>
public sealed record WhereView(string Build, string? Next, string? NextSince, string? Held, string? Datum, IReadOnlyList<TickView> Snags, string SnagsInWords);

/// <summary>Something that can be ticked: a snag put right, a lesson heeded.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Text">What it says.</param>
/// <param name="Beside">What belongs to it; null for nothing.</param>
/// <param name="Jot">The remark that ticks it; null where it is not ticked.</param>
public sealed record TickView(string Id, string Text, string? Beside, string? Jot);

/// <summary>The switch.</summary>
public sealed record SwitchView
{
    /// <summary><c>off</c>, <c>on</c>, <c>paused</c> or <c>forgotten</c>.</summary>
    public required string State { get; init; }

    /// <summary>The job that runs; null for none.</summary>
    public string? Job { get; init; }

    /// <summary>When it began.</summary>
    public string? Began { get; init; }

    /// <summary>The time at the bench so far.</summary>
    public string? Time { get; init; }

    /// <summary>The same in whole seconds, from which a script counts on.</summary>
    public long Seconds { get; init; }

    /// <summary>For one that was forgotten: the last sign of the maker, as a time of day; null for none.</summary>
    public string? LastSign { get; init; }

    /// <summary>The build that a stint is for.</summary>
    public required string Build { get; init; }

    /// <summary>Last time's job; null before the first.</summary>
    public JobChoiceView? Last { get; init; }

    /// <summary>The likeliest parts, the last first.</summary>
    public required IReadOnlyList<ChoiceView> Parts { get; init; }

    /// <summary>The other parts.</summary>
    public required IReadOnlyList<ChoiceView> OtherParts { get; init; }

    /// <summary>The likeliest operations, the last first.</summary>
    public required IReadOnlyList<ChoiceView> Operations { get; init; }

    /// <summary>The other operations.</summary>
    public required IReadOnlyList<ChoiceView> OtherOperations { get; init; }
}

/// <summary>Something to choose.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What it is called.</param>
/// <param name="IsChosen">Whether it is chosen at first.</param>
public sealed record ChoiceView(string Id, string Title, bool IsChosen = false);

/// <summary>A job to choose.</summary>
/// <param name="Part">The part's id, or <c>whole</c>.</param>
/// <param name="Operation">The operation's id; empty where it is not known.</param>
/// <param name="Title">The job in words.</param>
public sealed record JobChoiceView(string Part, string Operation, string Title);

/// <summary>What to read before a job.</summary>
/// <param name="Job">The job in words; empty where none is known.</param>
/// <param name="Lessons">The lessons that matter most.</param>
/// <param name="More">Other lessons.</param>
/// <param name="MoreInWords">How many of these there are.</param>
/// <param name="Cautions">Cautions.</param>
public sealed record BeforeView(string Job, IReadOnlyList<TickView> Lessons, IReadOnlyList<TickView> More, string MoreInWords, IReadOnlyList<CautionNote> Cautions);

/// <summary>A caution.</summary>
/// <param name="Title">In one line.</param>
/// <param name="Happens">What can happen.</param>
/// <param name="Done">What is usually done.</param>
public sealed record CautionNote(string Title, string Happens, string Done);

/// <summary>A feature that can be measured.</summary>
/// <param name="Id">The part and the feature.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Required">What the drawing asks for; empty where that is not known.</param>
public sealed record FeatureView(string Id, string Title, string Required);

/// <summary>A part that can be finished.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Pieces">How many pieces are to go.</param>
public sealed record ToFinishView(string Id, string Title, int Pieces);

/// <summary>Something that was noted tonight.</summary>
public sealed record JotView
{
    /// <summary>Its id; null for one from the terminal, which is changed there.</summary>
    public string? Id { get; init; }

    /// <summary>The time of day.</summary>
    public required string Time { get; init; }

    /// <summary>What it says.</summary>
    public required string Text { get; init; }

    /// <summary>The form that says it anew: the last step of its address; empty where it is only taken back.</summary>
    public required string Form { get; init; }

    /// <summary>The fields of that form.</summary>
    public IReadOnlyList<FieldView> Fields { get; init; } = [];

    /// <summary>Of a size: how it lies; null for anything else.</summary>
    public VerdictView? Verdict { get; init; }
}

/// <summary>A field of a form.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Label">What it is called; empty for one that is not seen.</param>
/// <param name="Value">What stands in it.</param>
/// <param name="IsLong">Whether it takes sentences.</param>
public sealed record FieldView(string Name, string Label, string Value, bool IsLong = false);
