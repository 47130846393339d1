namespace Journal.Core.Model;

/// <summary>Where a build stands.</summary>
public enum BuildStatus
{
    /// <summary>Nothing made yet.</summary>
    Planned,

    /// <summary>Being made.</summary>
    UnderWay,

    /// <summary>Finished; every part counts as finished.</summary>
    Finished,

    /// <summary>Put aside for now.</summary>
    LaidAside,
}

/// <summary>One thing being made, from first sketch to running.</summary>
/// <remarks>Lists are kept as arrays, as those of a <see cref="Job"/> are.</remarks>
public sealed record Build
{
    /// <summary>The folder's name.</summary>
    public required Id<Build> Id { get; init; }

    /// <summary>The build's title.</summary>
    public required string Title { get; init; }

    /// <summary>The build's folder, relative to the journal.</summary>
    public required string Folder { get; init; }

    /// <summary>Where the build stands.</summary>
    public BuildStatus Status { get; init; } = BuildStatus.UnderWay;

    /// <summary>The day it was begun, where given.</summary>
    public DateOnly? Started { get; init; }

    /// <summary>The unit of the drawings.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Millimetre;

    /// <summary>What the kit cost, in the journal's currency.</summary>
    public decimal? Cost { get; init; }

    /// <summary>What drawings there are.</summary>
    public string? Drawings { get; init; }

    /// <summary>The drawing's general tolerance, plus and minus, more than zero; in the build's unit unless another is written.</summary>
    public Length? GeneralTolerance { get; init; }

    /// <summary>Hours a week that an estimate shall reckon with; null for the journal's own pace.</summary>
    public decimal? HoursAWeek { get; init; }

    /// <summary>Days away from the bench; never published.</summary>
    public IReadOnlyList<DateRange> Away { get; init => field = value.ToArray(); } = [];

    /// <summary>The parts list in the order of the file.</summary>
    public IReadOnlyList<Part> Parts { get; init => field = value.ToArray(); } = [];

    /// <summary>Guesses for work on the build as a whole, by operation.</summary>
    public IReadOnlyDictionary<Id<Operation>, Minutes> Whole { get; init; } = new Dictionary<Id<Operation>, Minutes>();

    /// <summary>Ids that it had before; their addresses on the site lead to it still.</summary>
    public IReadOnlyList<string> Formerly { get; init; } = [];

    /// <summary>Features that must fit each other.</summary>
    public IReadOnlyList<Mate> Mates { get; init => field = value.ToArray(); } = [];

    /// <summary>Videos about the build.</summary>
    public IReadOnlyList<Video> Videos { get; init => field = value.ToArray(); } = [];

    /// <summary>The entries by date, then id.</summary>
    public IReadOnlyList<Entry> Entries { get; init => field = value.ToArray(); } = [];

    /// <summary>Whether the parts list has a part.</summary>
    public bool HasPart(Id<Part> id) => Parts.Any(part => part.Id == id);
}

/// <summary>A feature of a part, such as <c>head.bore</c>.</summary>
public sealed record Feature(Id<Part> Part, string Name)
{
    /// <summary>The feature as the maker writes it.</summary>
    public override string ToString() => $"{Part}.{Name}";
}

/// <summary>A hole and a shaft that must fit each other.</summary>
public sealed record Mate(Feature Hole, Feature Shaft);

/// <summary>A video about the build, on a host of the maker's choice.</summary>
public sealed record Video
{
    /// <summary>Where it can be seen.</summary>
    public required Uri Url { get; init; }

    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>The parts it shows.</summary>
    public IReadOnlyList<Id<Part>> CoversParts { get; init; } = [];

    /// <summary>The stretches of the build it shows.</summary>
    public IReadOnlyList<DateRange> CoversDays { get; init; } = [];

    /// <summary>Its chapters in order.</summary>
    public IReadOnlyList<Chapter> Chapters { get; init; } = [];
}

/// <summary>A chapter of a video, with the second at which it begins.</summary>
public sealed record Chapter(int AtSecond, string Title);
