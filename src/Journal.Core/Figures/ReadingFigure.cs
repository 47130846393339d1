using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>What a gauge said.</summary>
public enum Gauging
{
    /// <summary>The gauge passed it: it is right.</summary>
    Go,

    /// <summary>The gauge refused it.</summary>
    NoGo,
}

/// <summary>A reading judged against what the drawing asks for. All its lengths are in <see cref="Unit"/>.</summary>
public sealed record ReadingFigure
{
    /// <summary>The build.</summary>
    public required Id<Build> Build { get; init; }

    /// <summary>The part; null for the build as a whole.</summary>
    public required Id<Part>? Part { get; init; }

    /// <summary>The entry that wrote it down.</summary>
    public required Id<Entry> Entry { get; init; }

    /// <summary>The evening it was measured.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The feature, as written.</summary>
    public required string Feature { get; init; }

    /// <summary>What the drawing asks for, as written; where left out, as an earlier reading of the feature has it.</summary>
    public string? RequiredText { get; init; }

    /// <summary>The same, understood; null where it is left out or faulty.</summary>
    public Requirement? Requirement { get; init; }

    /// <summary>The unit of every length here: the one written, else the build's.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>The nominal size; for what has to suit another feature, that one's size as built.</summary>
    public Length? Nominal { get; init; }

    /// <summary>The least size allowed.</summary>
    public Length? Least { get; init; }

    /// <summary>The greatest size allowed.</summary>
    public Length? Greatest { get; init; }

    /// <summary>What was measured, as written.</summary>
    public string? ActualText { get; init; }

    /// <summary>What was measured, as a length.</summary>
    public Length? Actual { get; init; }

    /// <summary>What the gauge said, where one was used.</summary>
    public Gauging? Gauging { get; init; }

    /// <summary>Actual less nominal.</summary>
    public Length? Deviation { get; init; }

    /// <summary>Whether it lies within the limits, themselves included; null where nothing tells.</summary>
    public bool? Within { get; init; }

    /// <summary>
    /// The share of the tolerance used: 0 in the middle of the limits, 1 at a limit, more outside. For a size with a
    /// greatest value only, the share of that value. Null without limits.
    /// </summary>
    public decimal? Share { get; init; }

    /// <summary>The tool it was measured with.</summary>
    public Id<Tool>? With { get; init; }

    /// <summary>Whether no later reading of the feature exists: what the part is now.</summary>
    public bool IsLatest { get; init; }

    /// <summary>Remarks: a tool too coarse for the tolerance, a mate not measured yet.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>For a reading that is out: the mistake that tells of it, where there is one.</summary>
    public Mistake? Mistake { get; init; }

    /// <summary>For a reading that is out: where the part leaves the drawing on purpose, as its entry says.</summary>
    public string? Departure { get; init; }

    /// <summary>For a reading that is out: the later entry that found the feature right.</summary>
    public Id<Entry>? RightIn { get; init; }

    /// <summary>Where it stands.</summary>
    public required Place Place { get; init; }

    /// <summary>What became of a part that is out, in the maker's word.</summary>
    public Outcome? Became => Mistake?.Outcome;

    /// <summary>Whether it is out of limits.</summary>
    public bool IsOut => Within == false;
}

/// <summary>All readings of a journal, judged.</summary>
/// <param name="All">
/// By build, then in the order of the parts list (work on the whole last), then by feature in the order first measured, then by date.
/// </param>
/// <param name="Findings">What cannot be understood, and likely slips.</param>
public sealed record ReadingFigures(IReadOnlyList<ReadingFigure> All, IReadOnlyList<Finding> Findings)
{
    /// <summary>The inspection record of a part, in the order of <see cref="All"/>.</summary>
    public IEnumerable<ReadingFigure> OfPart(Id<Build> build, Id<Part> part) => All.Where(reading => reading.Build == build && reading.Part == part);

    /// <summary>All of a build that is or was out of limits.</summary>
    public IEnumerable<ReadingFigure> OutIn(Id<Build> build) => All.Where(reading => reading.Build == build && reading.IsOut);
}
