using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>What one file adds to the journal beside its contents: problems, and claims to be checked against other files.</summary>
internal sealed class FileScope(string file, Vocabulary vocabulary, DateOnly today)
{
    /// <summary>The file, from the journal's folder, with <c>/</c> between names.</summary>
    public string File { get; } = file;

    /// <summary>The words that the file may use: the built-in ones and the journal's own.</summary>
    public Vocabulary Vocabulary { get; } = vocabulary;

    /// <summary>The date after which an entry is in the future.</summary>
    public DateOnly Today { get; } = today;

    /// <summary>False where journal.yaml could not be read: it may have added words that nobody knows of.</summary>
    public bool IsVocabularyWhole { get; init; } = true;

    /// <summary>The file's text, where it could be had and may still be asked for.</summary>
    public string? Text { get; set; }

    /// <summary>The problems of the file.</summary>
    public ProblemLog Log { get; } = new();

    /// <summary>Ids that this file uses.</summary>
    public List<Mention> Mentions { get; } = [];

    /// <summary>Ids that this file defines.</summary>
    public List<Definition> Definitions { get; } = [];

    /// <summary>Ids that things of this file had before.</summary>
    public List<Definition> FormerNames { get; } = [];

    /// <summary>Hours worked.</summary>
    public List<ClockClaim> Clock { get; } = [];

    /// <summary>Parts finished.</summary>
    public List<FinishedClaim> Finished { get; } = [];

    /// <summary>Kits bought.</summary>
    public List<KitClaim> Kits { get; } = [];

    /// <summary>Dimensions and feeds as written, to be understood when all of the build is read.</summary>
    public List<WrittenValue> Values { get; } = [];

    /// <summary>What was looked at on the disk beside the file: pictures, there or not.</summary>
    public List<DiskLook> Looked { get; } = [];

    /// <summary>Whether a picture of it lies behind a link, which may lead elsewhere tomorrow.</summary>
    public bool IsBehindLinks { get; set; }

    /// <summary>The file's first character.</summary>
    public Place Start => new(File, 1, 1);
}

/// <summary>What an id is the name of.</summary>
internal enum IdKind
{
    Part,
    Tool,
    Lesson,
    Mistake,
    Snag,
    Entry,
    Operation,
    Build,

    /// <summary>A part or a tool.</summary>
    PartOrTool,
}

/// <summary>An id used, in a build where it counts within one.</summary>
internal sealed record Mention(IdKind Kind, Id<Build>? Build, string Id, Place Place);

/// <summary>An id defined, in a build where it counts within one.</summary>
internal sealed record Definition(IdKind Kind, Id<Build>? Build, string Id, Place Place);

/// <summary>The hours of one job on one date, with the stretches by the clock among them and where each stands.</summary>
internal sealed record ClockClaim(DateOnly Date, Minutes Time, IReadOnlyList<(Stretch Stretch, Place Place)> Stretches, Place Place);

/// <summary>The value of a key of a reading or a setting, which is known by the place of its map.</summary>
internal sealed record WrittenValue(Place Map, string Key, TextNode Value);

/// <summary>A part, or pieces of it, said to be finished.</summary>
internal sealed record FinishedClaim(DateOnly Date, Id<Entry> Entry, Finished Finished, Place Place);

/// <summary>A kit bought on an evening, and where that is said.</summary>
internal sealed record KitClaim(decimal Cost, Place Place);
