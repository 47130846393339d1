namespace Journal.Core.Parsing.KeyReaders;

/// <summary>The keys of every file of a journal, in the order of the design. A key that is not here is refused.</summary>
internal static class Keys
{
    /// <summary>The keys of journal.yaml.</summary>
    public static readonly string[] Journal = ["title", "id", "maker", "units", "currency", "time-zone", "address", "operations", "causes", "materials", "tool-kinds", "destinations"];

    /// <summary>The keys of a destination, each naming what kind it is; a folder has none.</summary>
    public static readonly string[] DestinationKinds = ["sftp", "git", "s3"];

    /// <summary>The keys of a destination of any kind.</summary>
    public static readonly string[] Destination =
        ["folder", .. DestinationKinds, "port", "user", "key", "host-key", "known-hosts", "branch", "region", "service", "profile"];

    /// <summary>The keys of a word of the journal's own.</summary>
    public static readonly string[] NewWord = ["id", "title"];

    /// <summary>The keys of an operation of the journal's own.</summary>
    public static readonly string[] NewOperation = [.. NewWord, "kind", "formerly"];

    /// <summary>The keys of build.yaml.</summary>
    public static readonly string[] Build =
        ["title", "status", "started", "units", "cost", "drawings", "general-tolerance", "hours-a-week", "away", "parts", "whole", "mates", "videos", "formerly"];

    /// <summary>The same in builds and plans, so that a plan's parts list can become a build's as it stands.</summary>
    public static readonly string[] Part =
        ["id", "item", "title", "material", "stock", "supplied", "drawing", "quantity", "guess", "reguess", "operations", "like", "formerly"];

    /// <summary>The keys of a pair of features that must fit.</summary>
    public static readonly string[] Mate = ["hole", "shaft"];

    /// <summary>The keys of a video.</summary>
    public static readonly string[] Video = ["url", "title", "covers", "chapters"];

    /// <summary>The keys of a chapter of a video.</summary>
    public static readonly string[] Chapter = ["at", "title"];

    /// <summary>The keys of a guess of three numbers, all required.</summary>
    public static readonly string[] ThreePoints = ["low", "likely", "high"];

    /// <summary>The keys of a tool.</summary>
    public static readonly string[] Tool = ["id", "title", "kind", "got", "cost", "since", "need", "resolution", "link", "disclose", "borrowed-from", "due", "formerly"];

    /// <summary>The keys of a plan.</summary>
    public static readonly string[] Plan = ["title", "start", "hours-a-week", "away", "parts", "whole", "publish"];

    /// <summary>Keys that say something of one job; beside <c>jobs</c> only some of them are defaults.</summary>
    public static readonly string[] Job = ["part", "operation", "hours", "setup", "held", "datum", "tools", "made", "mends"];

    /// <summary>The keys of an entry that its jobs take over where they have none of their own.</summary>
    public static readonly string[] JobDefaults = ["part", "operation", "held", "datum", "tools"];

    /// <summary>The keys of an entry.</summary>
    public static readonly string[] Entry =
    [
        "title", "date", "jobs", .. Job, "mistakes", "lessons", "heeded", "finished", "next", "snags", "cleared", "trials", "readings",
        "settings", "milestone", "story", "bought", "departure", "photos", "publish",
    ];

    /// <summary>The keys of a mistake.</summary>
    public static readonly string[] Mistake = ["what", "id", "cause", "lost", "outcome", "pieces", "made-on", "lesson", "repeats", "job"];

    /// <summary>The keys of a mistake's lesson.</summary>
    public static readonly string[] MistakesLesson = ["id", "text", "verdict", "better", "formerly"];

    /// <summary>The keys of a lesson learned without a mistake.</summary>
    public static readonly string[] Lesson = ["id", "text", "verdict", "better", "job", "formerly"];

    /// <summary>The keys of a snag.</summary>
    public static readonly string[] Snag = ["id", "text"];

    /// <summary>The keys of a trial.</summary>
    public static readonly string[] Trial = ["on", "pressure", "speed", "minutes", "result"];

    /// <summary>The keys of a reading.</summary>
    public static readonly string[] Reading = ["feature", "required", "actual", "with", "part", "job"];

    /// <summary>The keys of a setting.</summary>
    public static readonly string[] Setting =
        ["diameter", "rpm", "feed", "teeth", "width", "depth", "material", "cutter", "machine", "coolant", "verdict", "note", "job"];

    /// <summary>The keys of a purchase.</summary>
    public static readonly string[] Purchase = ["what", "cost", "kind", "for", "because"];

    /// <summary>The keys of a photo.</summary>
    public static readonly string[] Photo = ["file", "caption", "alt", "marks", "publish"];

    /// <summary>The keys of a mark on a photo.</summary>
    public static readonly string[] Mark = ["at", "text"];

    /// <summary>The keys that belong to one kind of destination.</summary>
    public static string[] OfDestination(string kind) => kind switch
    {
        "sftp" => ["sftp", "folder", "port", "user", "key", "host-key", "known-hosts"],
        "git" => ["git", "folder", "branch"],
        "s3" => ["s3", "folder", "region", "service", "profile"],
        _ => ["folder"],
    };
}
