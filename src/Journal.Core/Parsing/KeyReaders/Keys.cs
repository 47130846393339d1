namespace Journal.Core.Parsing.KeyReaders;

/// <summary>The keys of every file of a journal, in the order of the design. A key that is not here is refused.</summary>
internal static class Keys
{
    public static readonly string[] Journal = ["title", "id", "maker", "units", "currency", "time-zone", "address", "operations", "causes", "materials", "tool-kinds", "destinations"];

    public static readonly string[] DestinationKinds = ["sftp", "git", "s3"];

    public static readonly string[] Destination =
        ["folder", .. DestinationKinds, "port", "user", "key", "host-key", "known-hosts", "branch", "region", "service", "profile"];

    public static readonly string[] NewWord = ["id", "title"];

    public static readonly string[] NewOperation = [.. NewWord, "kind", "formerly"];

    public static readonly string[] Build =
        ["title", "status", "started", "units", "cost", "drawings", "general-tolerance", "hours-a-week", "away", "parts", "whole", "mates", "videos", "formerly"];

    /// <summary>The same in builds and plans, so that a plan's parts list can become a build's as it stands.</summary>
    public static readonly string[] Part =
        ["id", "item", "title", "material", "stock", "supplied", "drawing", "quantity", "guess", "reguess", "operations", "like", "formerly"];

    public static readonly string[] Mate = ["hole", "shaft"];

    public static readonly string[] Video = ["url", "title", "covers", "chapters"];

    public static readonly string[] Chapter = ["at", "title"];

    public static readonly string[] ThreePoints = ["low", "likely", "high"];

    public static readonly string[] Tool = ["id", "title", "kind", "got", "cost", "since", "need", "resolution", "link", "disclose", "borrowed-from", "due", "formerly"];

    public static readonly string[] Plan = ["title", "start", "hours-a-week", "away", "parts", "whole", "publish"];

    /// <summary>Keys that say something of one job; beside <c>jobs</c> only some of them are defaults.</summary>
    public static readonly string[] Job = ["part", "operation", "hours", "setup", "held", "datum", "tools", "made", "mends"];

    public static readonly string[] JobDefaults = ["part", "operation", "held", "datum", "tools"];

    public static readonly string[] Entry =
    [
        "title", "date", "jobs", .. Job, "mistakes", "lessons", "heeded", "finished", "next", "snags", "cleared", "trials", "readings",
        "settings", "milestone", "story", "bought", "departure", "photos", "publish",
    ];

    public static readonly string[] Mistake = ["what", "id", "cause", "lost", "outcome", "pieces", "made-on", "lesson", "repeats", "job"];

    public static readonly string[] MistakesLesson = ["id", "text", "verdict", "better", "formerly"];

    public static readonly string[] Lesson = ["id", "text", "verdict", "better", "job", "formerly"];

    public static readonly string[] Snag = ["id", "text"];

    public static readonly string[] Trial = ["on", "pressure", "speed", "minutes", "result"];

    public static readonly string[] Reading = ["feature", "required", "actual", "with", "part", "job"];

    public static readonly string[] Setting =
        ["diameter", "rpm", "feed", "teeth", "width", "depth", "material", "cutter", "machine", "coolant", "verdict", "note", "job"];

    public static readonly string[] Purchase = ["what", "cost", "kind", "for", "because"];

    public static readonly string[] Photo = ["file", "caption", "alt", "marks", "publish"];

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
