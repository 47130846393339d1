using System.Reflection;

namespace Journal.Core.Parsing.Problems;

/// <summary>Every problem that a journal can have: its code, severity, text and remedy.</summary>
public static class ProblemTable
{
    // Files.
    public static readonly ProblemKind NoJournal = Error("no-journal", "There is no journal.yaml here.", "Change to the journal's folder, give it with `--in`, or start one with `journal start`.");
    public static readonly ProblemKind NotReadable = Error("not-readable", "This file cannot be read: {0}", "Check its permissions, and whether another program is using it.");
    public static readonly ProblemKind NotUtf8 = Error("not-utf-8", "This file is not UTF-8 text: the byte here is not part of any character.", "Open it in an editor and save it again with the encoding UTF-8.");
    public static readonly ProblemKind FileTooLarge = Error("file-too-large", "This file has {0}; the limit is {1}.", "Split it in two.");
    public static readonly ProblemKind LinkNotFollowed = Warning("link-not-followed", "This is a link to another place on the disk. Links are not followed.", "Move the real folder or file into the journal.");
    public static readonly ProblemKind BuildAtTop = Error("build-at-top", "build.yaml is beside journal.yaml.", "Move it to a folder of its own; the folder's name is the build's id.");
    public static readonly ProblemKind BadFileName = Error("bad-file-name", "The name “{0}” cannot be used in an address.", "Rename it to lower-case words joined by hyphens, such as `{1}`.");
    public static readonly ProblemKind ReservedName = Error("reserved-name", "The name “{0}” is reserved by the site or by Windows.", "Rename it.");
    public static readonly ProblemKind SameAddress = Error("same-address", "This {0} has the same address as {1}.", "Rename one of them.");
    public static readonly ProblemKind TooManyProblems = Error("too-many-problems", "This file has more than {0} problems; the rest are not listed.", "Correct these, then check again.");
    public static readonly ProblemKind TooDeep = Error("folder-too-deep", "The folders here are more than {0} deep.", "Move them higher up.");

    // Front matter and YAML.
    public static readonly ProblemKind FrontMatterMissing = Error("front-matter-missing", "The entry has no front matter.", "Start the file with a line `---`, then the keys, then another line `---`.");
    public static readonly ProblemKind FrontMatterNotClosed = Error("front-matter-not-closed", "The front matter is not closed.", "Put a line `---` after its last key.");
    public static readonly ProblemKind FrontMatterEmpty = Error("front-matter-empty", "The front matter is empty.", "Give at least `operation` and `hours`, and `date` unless the file's name starts with it.");
    public static readonly ProblemKind NotYaml = Error("not-yaml", "This is not YAML: {0}", "Check the indentation and the brackets. Put text in double quotes if it contains `: ` or starts with a special character.");
    public static readonly ProblemKind NotKeys = Error("not-keys", "Keys with values are needed here.", "Write `key: value`, one per line.");
    public static readonly ProblemKind NotAList = Error("not-a-list", "A list is needed here.", "Start each item with `- `.");
    public static readonly ProblemKind YamlTooDeep = Error("yaml-too-deep", "This is nested more than {0} levels deep.", "No key needs that; look for a bracket that is not closed.");
    public static readonly ProblemKind YamlAlias = Error("yaml-alias", "Aliases (`*{0}`) are not allowed.", "Write the value in full. Put text that starts with `*` in double quotes.");
    public static readonly ProblemKind YamlSecondDocument = Error("yaml-second-document", "A second YAML document starts here.", "Remove the line `---`.");
    public static readonly ProblemKind UnknownKey = Error("unknown-key", "There is no key `{0}` here.", "{1}");
    public static readonly ProblemKind DuplicateKey = Error("duplicate-key", "The key `{0}` appears twice; the first is on line {1}.", "Keep one, or put both values in one list.");
    public static readonly ProblemKind CutShort = Warning("cut-short", "The value ends before ` #`: “{0}” and what follows is read as a comment.", "Put the whole value in double quotes.");

    // Forms.
    public static readonly ProblemKind Missing = Error("missing", "`{0}` is missing.", "{1}");
    public static readonly ProblemKind NotText = Error("not-text", "`{0}` needs a single value.", "Write it as plain text.");
    public static readonly ProblemKind NotAnId = Error("not-an-id", "“{0}” is not a valid id.", "Use lower-case words joined by hyphens, such as `{1}`.");
    public static readonly ProblemKind NotADate = Error("not-a-date", "“{0}” is not a date.", "Write year, month and day: `2025-10-03`.");
    public static readonly ProblemKind NotADateRange = Error("not-a-date-range", "“{0}” is not a range of days.", "Write the first and last day with a slash between: `2026-12-20/2027-01-03`.");
    public static readonly ProblemKind NotATime = Error("not-a-time", "“{0}” is not a time.", "Write `2h45`, `45m`, `2.75`, `2:45`, `PT2H45M` or, for hours at the bench, `19:10-21:55`.");
    public static readonly ProblemKind NotAMoment = Error("not-a-moment", "“{0}” is not a time in a video.", "Write minutes and seconds in quotes, such as `\"3:20\"`.");
    public static readonly ProblemKind NotPositive = Error("not-positive", "`{0}` is {1}; the minimum is one minute.", "Write a time such as `45m`.");
    public static readonly ProblemKind NotANumber = Error("not-a-number", "“{0}” is not a valid number for `{1}`.", "{2}");
    public static readonly ProblemKind NotAChoice = Error("not-a-choice", "“{0}” is not a valid `{1}`.", "{2}");
    public static readonly ProblemKind NotAnAddress = Error("not-an-address", "“{0}” is not a web address.", "Write it in full: `https://…`.");
    public static readonly ProblemKind UnknownTimeZone = Warning("unknown-time-zone", "This machine does not know the time zone “{0}” and uses its own.", "Write the IANA name, such as `Europe/Dublin`.");
    public static readonly ProblemKind NotAnUuid = Error("not-a-uuid", "“{0}” is not a UUID.", "Leave out `id`, or write all 32 digits, as `journal start` does.");
    public static readonly ProblemKind NotAFeature = Error("not-a-feature", "“{0}” is not a feature of a part.", "Write the part and the feature with a dot between: `quill.diameter`.");
    public static readonly ProblemKind NotAMark = Error("not-a-mark", "A mark needs a position (per cent of width and height) and a text.", "Write `{{at: [62, 40], text: drill guide}}`.");
    public static readonly ProblemKind GuessOrder = Error("guess-order", "The guess goes from {0} to {1} to {2}.", "Give `low`, `likely` and `high` from least to most.");
    public static readonly ProblemKind NoGuess = Error("empty-guess", "The guess is empty.", "Write hours, hours by operation, or `{{low: 6h, likely: 9h, high: 16h}}`.");

    // Where the site is sent to.
    public static readonly ProblemKind DestinationUnclear = Error("destination-unclear", "The destination `{0}` {1}.", "{2}");
    public static readonly ProblemKind SecretInJournal = Error("secret-in-journal", "This address contains a password or a token.", "Remove it, and change it if others have seen this file. `journal send` takes secrets from the environment or the usual credential files.");

    // Dates and hours.
    public static readonly ProblemKind DateMissing = Error("date-missing", "The entry has no date.", "Write `date: 2025-10-03`, or start the file's name with the date.");
    public static readonly ProblemKind DateDiffers = Error("date-differs", "`date` is {0}, but the file's name says {1}.", "Make them the same, or take the date out of the name.");
    public static readonly ProblemKind DateInFuture = Error("date-in-future", "{0} is in the future; today is {1}.", "Correct the date.");
    public static readonly ProblemKind HoursMissing = Warning("hours-missing", "The job has no hours.", "Write `hours: 1h30`; a rough figure is better than none.");
    public static readonly ProblemKind HoursBesideJobs = Error("hours-beside-jobs", "`{0}` is beside `jobs`, where it belongs to none of them.", "Move it into the right job.");
    public static readonly ProblemKind NoJobs = Error("no-jobs", "`jobs` is empty.", "List at least one job: `- {{part: head, operation: boring, hours: 1h30}}`.");
    public static readonly ProblemKind SetupTooLong = Error("setup-too-long", "`setup` is {0}, but the whole job took {1}.", "`setup` is part of `hours`. Correct one of them.");
    public static readonly ProblemKind DayTooLong = Error("day-too-long", "With this, {0} has {1} of work, more than 24 hours.", "Check the hours and the date.");
    public static readonly ProblemKind Overlap = Error("overlap", "{0} overlaps {1} in {2}, line {3}.", "Correct the times; if one job was on two parts, list both parts in that job.");
    public static readonly ProblemKind SameWorkTwice = Warning("same-work-twice", "The same part, operation and hours stand under {0} in {1}, line {2}.", "If both tell of the same work, delete one of them; if you did it twice, leave both.");

    // Ids.
    public static readonly ProblemKind UnknownPart = Error("unknown-part", "The build has no part `{0}`.", "{1}");
    public static readonly ProblemKind UnknownPartOf = Error("unknown-part", "There is no part `{0}`.", "{1}");
    public static readonly ProblemKind UnknownOperation = Error("unknown-operation", "There is no operation `{0}`.", "{1} New words go under `operations` in journal.yaml.");
    public static readonly ProblemKind UnknownCause = Error("unknown-cause", "There is no cause `{0}`.", "{1} New words go under `causes` in journal.yaml.");
    public static readonly ProblemKind UnknownMaterial = Error("unknown-material", "There is no material `{0}`.", "{1} The grade comes after the family; new families go under `materials` in journal.yaml.");
    public static readonly ProblemKind UnknownStock = Error("unknown-stock", "There is no form of stock `{0}`.", "{1} The size comes after the form: `round 32 x 180`.");
    public static readonly ProblemKind UnknownToolKind = Error("unknown-tool-kind", "There is no kind of tool `{0}`.", "{1} New words go under `tool-kinds` in journal.yaml.");
    public static readonly ProblemKind UnknownTool = Warning("unknown-tool", "The crib has no tool `{0}`; it counts as unlisted.", "{1} Or add it to tools.yaml.");
    public static readonly ProblemKind UnknownLesson = Error("unknown-lesson", "There is no lesson `{0}`.", "{1}");
    public static readonly ProblemKind UnknownMistake = Error("unknown-mistake", "The build has no mistake with the id `{0}`.", "{1} Give a mistake an id with `id:`.");
    public static readonly ProblemKind UnknownSnag = Error("unknown-snag", "The build has no snag `{0}`.", "{1}");
    public static readonly ProblemKind UnknownEntry = Error("unknown-entry", "There is no entry `{0}`.", "{1}");
    public static readonly ProblemKind UnknownTarget = Error("unknown-target", "`{0}` is neither a part of the build nor a tool.", "{1}");
    public static readonly ProblemKind UnknownJob = Error("unknown-job", "The entry has no job {0}; it has {1}.", "Jobs are counted from 1.");
    public static readonly ProblemKind UnknownLinkTarget = Error("unknown-link-target", "The link `{0}` leads nowhere.", "{1}");
    public static readonly ProblemKind AmbiguousEntry = Error("ambiguous-entry", "`{0}` matches {1} entries.", "Choose one: {2}.");
    public static readonly ProblemKind DuplicateId = Error("duplicate-id", "The {0} `{1}` is defined twice; the first is in {2}, line {3}.", "Give one of them another id.");
    public static readonly ProblemKind ClearedTwice = Warning("cleared-twice", "The snag `{0}` was already cleared, in {1}.", "If it came back, add it as a new snag.");
    public static readonly ProblemKind PartNotSaid = Warning("part-not-said", "The job has no part, so its time counts for the build as a whole.", "Write `part:` with an id from the parts list, or `part: whole`.");

    // Parts finished.
    public static readonly ProblemKind FinishedBeforeWork = Error("finished-before-work", "`{0}` is finished on {1}, before the first work on it on {2}.", "Correct one of the dates, or move `finished` to the last evening on the part.");
    public static readonly ProblemKind TooManyPieces = Error("too-many-pieces", "With this, {0} pieces of `{1}` are finished; the build needs {2}.", "Correct the number here or `quantity` in build.yaml.");
    public static readonly ProblemKind FinishedTwice = Warning("finished-twice", "`{0}` was already finished, in {1}.", "Once is enough. For rework, use `mends`.");

    public static readonly ProblemKind MoreLostThanWorked = Warning("more-lost-than-worked", "“{0}” means {1}, but the whole entry took {2}.", "If you mean minutes, write `{0}m`; if it is right, write `{0}h`.");

    // Costs.
    public static readonly ProblemKind KitPaidTwice = Warning("kit-paid-twice", "A kit is bought here for {0}, and `cost` in {1} is the same. Both are counted.", "Remove one of them, unless there were two kits.");

    // Readings and settings. What is wrong, and the remedy, come from the reader of dimensions.
    public static readonly ProblemKind NotADimension = Error("not-a-dimension", "“{0}” is not a valid `{1}`. {2}", "{3}");
    public static readonly ProblemKind NotAFit = Error("not-a-fit", "“{0}” is not a valid `{1}`. {2}", "{3}");
    public static readonly ProblemKind UnitMissing = Error("unit-missing", "“{0}” is not a valid `{1}`. {2}", "{3}");
    public static readonly ProblemKind FeedPerWhat = Warning("feed-per-what", "The `{1}` “{0}” is unclear. {2}", "{3}");
    public static readonly ProblemKind LikelySlip = Warning("likely-slip", "Check the `{1}` “{0}”. {2}", "{3}");
    public static readonly ProblemKind VerdictUnclear = Warning("verdict-unclear", "“{0}” does not say whether the setting worked.", "Write `worked`, `chattered` or `failed`; more words may follow.");

    // Text and pictures.
    public static readonly ProblemKind BodyTooLong = Error("text-too-long", "The text has {0} characters; the limit is {1}.", "Split the entry in two; each can have a date of its own.");
    public static readonly ProblemKind TextTooNested = Error("text-too-nested", "The text is nested too deeply here.", "Remove what is not meant as a list, quotation, link or HTML.");
    public static readonly ProblemKind TableTooLarge = Error("table-too-large", "The table is too large; the limit is {0} columns and {1} cells.", "Split it, or swap rows and columns.");
    public static readonly ProblemKind LinkRefused = Warning("link-refused", "The link `{0}` is not allowed; only its text is published.", "Links may go to `part:`, `tool:`, `lesson:`, `entry:`, `https://…` or `mailto:`.");
    public static readonly ProblemKind PictureMissing = Omission("picture-missing", "There is no picture “{0}”.", "{1}");
    public static readonly ProblemKind PictureOutside = Omission("picture-outside", "The picture “{0}” is outside the journal.", "Copy it into the build's `photos` folder.");
    public static readonly ProblemKind PictureFormat = Omission("picture-format", "The picture “{0}” has a format that cannot be read.", "Save it as JPEG (a phone's HEIC: share or export it as JPEG), PNG, WebP, GIF, BMP or TIFF.");
    public static readonly ProblemKind PictureBroken = Omission("picture-broken", "The picture “{0}” cannot be read: {1}", "Copy it again from the phone or camera.");
    public static readonly ProblemKind PictureWithoutWords = Warning("picture-without-words", "The picture “{0}” has no `caption` and no `alt`.", "Say in a few words what it shows; some readers cannot see it.");
    public static readonly ProblemKind HiddenTarget = Warning("hidden-target", "The link `{0}` leads to something unpublished; on the site it is plain text.", "Publish what it leads to, or remove the link.");

    private static readonly Lazy<Dictionary<string, ProblemKind>> ByCode = new(() => typeof(ProblemTable)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(field => field.GetValue(null)).OfType<ProblemKind>()
        .DistinctBy(kind => kind.Code)
        .ToDictionary(kind => kind.Code, StringComparer.Ordinal));

    /// <summary>The first kind of a code; null where there is none.</summary>
    public static ProblemKind? WithCode(string code) => ByCode.Value.GetValueOrDefault(code);

    private static ProblemKind Error(string code, string text, string remedy) => new(code, Severity.Error, text, remedy);

    private static ProblemKind Omission(string code, string text, string remedy) => new(code, Severity.Omission, text, remedy);

    private static ProblemKind Warning(string code, string text, string remedy) => new(code, Severity.Warning, text, remedy);
}
