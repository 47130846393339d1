namespace Journal.Core.Model;

/// <summary>One write-up, usually one evening's work.</summary>
/// <remarks>Lists are kept as arrays, as those of a <see cref="Job"/> are.</remarks>
public sealed record Entry
{
    /// <summary>The file's name without <c>.md</c>, unique in its build.</summary>
    public required Id<Entry> Id { get; init; }

    /// <summary>The build it belongs to.</summary>
    public required Id<Build> Build { get; init; }

    /// <summary>The file, relative to the journal.</summary>
    public required string File { get; init; }

    /// <summary>The entry's title.</summary>
    public required string Title { get; init; }

    /// <summary>The evening it tells of.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The work done, in the order written; at least one.</summary>
    public required IReadOnlyList<Job> Jobs { get; init => field = value.ToArray(); }

    /// <summary>The text.</summary>
    public required Body Body { get; init; }

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<Mistake> Mistakes { get; init => field = value.ToArray(); } = [];

    /// <summary>Every lesson learned in this entry, from mistakes and without, in the order of the file.</summary>
    public IReadOnlyList<Lesson> Lessons { get; init => field = value.ToArray(); } = [];

    /// <summary>Lessons that were applied.</summary>
    public IReadOnlyList<Id<Lesson>> Heeded { get; init => field = value.ToArray(); } = [];

    /// <summary>Parts, or pieces of them, finished this evening.</summary>
    public IReadOnlyList<Finished> Finished { get; init => field = value.ToArray(); } = [];

    /// <summary>What to do next and how the machine was left.</summary>
    public string? Next { get; init; }

    /// <summary>Things still to put right.</summary>
    public IReadOnlyList<Snag> Snags { get; init => field = value.ToArray(); } = [];

    /// <summary>Snags put right.</summary>
    public IReadOnlyList<Id<Snag>> Cleared { get; init => field = value.ToArray(); } = [];

    /// <summary>Test runs, and how they went.</summary>
    public IReadOnlyList<Trial> Trials { get; init => field = value.ToArray(); } = [];

    /// <summary>Dimensions measured.</summary>
    public IReadOnlyList<MeasuredReading> Readings { get; init => field = value.ToArray(); } = [];

    /// <summary>Speeds, feeds and depths used.</summary>
    public IReadOnlyList<Setting> Settings { get; init => field = value.ToArray(); } = [];

    /// <summary>A day worth remembering, in a few words.</summary>
    public string? Milestone { get; init; }

    /// <summary>One sentence for the build's short story.</summary>
    public string? Story { get; init; }

    /// <summary>What was bought.</summary>
    public IReadOnlyList<Purchase> Bought { get; init => field = value.ToArray(); } = [];

    /// <summary>Where the part differs from the drawing on purpose, and why.</summary>
    public string? Departure { get; init; }

    /// <summary>Pictures listed, and those that stand in the text alone after them.</summary>
    public IReadOnlyList<Photo> Photos { get; init => field = value.ToArray(); } = [];

    /// <summary>When the entry may be shown.</summary>
    public Publication Publish { get; init; }

    /// <summary>The time of all jobs.</summary>
    public Minutes Time => Jobs.Sum(job => job.Time);

    /// <summary>The entry within the journal.</summary>
    public EntryRef Ref => new(Build, Id);

    /// <summary>By its name alone: entries stand in many sets, and their texts are long.</summary>
    public override int GetHashCode() => Ref.GetHashCode();
}

/// <summary>An entry of a certain build.</summary>
public readonly record struct EntryRef(Id<Build> Build, Id<Entry> Entry) : IComparable<EntryRef>
{
    /// <inheritdoc/>
    public int CompareTo(EntryRef other) => Build.CompareTo(other.Build) is not 0 and var byBuild ? byBuild : Entry.CompareTo(other.Entry);

    /// <summary>By the entry alone: two builds seldom have entries of one name.</summary>
    public override int GetHashCode() => Entry.GetHashCode();

    /// <summary>The entry as the maker names it: <c>build/entry</c>.</summary>
    public override string ToString() => $"{Build}/{Entry}";
}

/// <summary>A part finished, or some pieces of it; null pieces mean all that were left.</summary>
public sealed record Finished(Id<Part> Part, int? Pieces);

/// <summary>Something still to put right.</summary>
public sealed record Snag(Id<Snag> Id, string Text);

/// <summary>A run on air, steam, power or by hand, and how it went.</summary>
public sealed record Trial
{
    /// <summary>What it ran on.</summary>
    public required string On { get; init; }

    /// <summary>The pressure with its unit, as written.</summary>
    public string? Pressure { get; init; }

    /// <summary>The speed with its unit, as written.</summary>
    public string? Speed { get; init; }

    /// <summary>How long it ran.</summary>
    public Minutes? Time { get; init; }

    /// <summary>How it went.</summary>
    public string? Result { get; init; }
}

/// <summary>A picture of an entry.</summary>
public sealed record Photo
{
    /// <summary>The file, relative to the build's folder, with <c>/</c>.</summary>
    public required string File { get; init; }

    /// <summary>What it shows, for those who see it.</summary>
    public string? Caption { get; init; }

    /// <summary>What it shows, for those who do not; the caption serves where it is left out.</summary>
    public string? Alt { get; init; }

    /// <summary>Numbered item balloons on the picture.</summary>
    public IReadOnlyList<PhotoMark> Marks { get; init; } = [];

    /// <summary>When it may be shown.</summary>
    public Publication Publish { get; init; }
}

/// <summary>An item balloon on a picture, in per cent of its width and height, 0 to 100.</summary>
public sealed record PhotoMark(decimal Across, decimal Down, string Text);
