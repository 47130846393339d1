using System.Reflection;

namespace Journal.Core.Parsing.Problems;

/// <summary>
/// Every problem that a journal can have: its code, severity, text and remedy. The comments say when it is reported, where the
/// text does not, and what fills the numbered gaps of text and remedy, in the order of <see cref="ProblemKind.At"/>.
/// </summary>
public static class ProblemTable
{
    // Files.
    /// <summary>The folder has no journal.yaml, so nothing else in it is read.</summary>
    public static readonly ProblemKind NoJournal = Error("no-journal", "There is no journal.yaml here.", "Change to the journal's folder, give it with `--in`, or start one with `journal start`.");
    /// <summary>The system refuses to read a file or folder. {0} is its message.</summary>
    public static readonly ProblemKind NotReadable = Error("not-readable", "This file cannot be read: {0}", "Check its permissions, and whether another program is using it.");
    /// <summary>At the first byte that is not UTF-8, or that is zero, as half of the bytes of UTF-16 are.</summary>
    public static readonly ProblemKind NotUtf8 = Error("not-utf-8", "This file is not UTF-8 text: the byte here is not part of any character.", "Open it in an editor and save it again with the encoding UTF-8.");
    /// <summary>A text file is larger than 512 KiB. {0} is its size, {1} the limit, both with a unit.</summary>
    public static readonly ProblemKind FileTooLarge = Error("file-too-large", "This file has {0}; the limit is {1}.", "Split it in two.");
    /// <summary>A symbolic link among the folders and files that would be read.</summary>
    public static readonly ProblemKind LinkNotFollowed = Warning("link-not-followed", "This is a link to another place on the disk. Links are not followed.", "Move the real folder or file into the journal.");
    /// <summary>The top folder cannot be a build: a build takes its id from the name of its folder.</summary>
    public static readonly ProblemKind BuildAtTop = Error("build-at-top", "build.yaml is beside journal.yaml.", "Move it to a folder of its own; the folder's name is the build's id.");
    /// <summary>A build's folder, a plan or an entry has a name that is no id. {0} is the name, {1} one that is allowed.</summary>
    public static readonly ProblemKind BadFileName = Error("bad-file-name", "The name “{0}” cannot be used in an address.", "Rename it to lower-case words joined by hyphens, such as `{1}`.");
    /// <summary>{0} is the name: one that Windows keeps for a device, one that the site has at its top, or <c>whole</c> as a part's id.</summary>
    public static readonly ProblemKind ReservedName = Error("reserved-name", "The name “{0}” is reserved by the site or by Windows.", "Rename it.");
    /// <summary>
    /// A second build with the same folder name, or a second entry of a build with the same file name; it is not read. {0} is
    /// <c>build</c> or <c>entry</c>, {1} the file of the first.
    /// </summary>
    public static readonly ProblemKind SameAddress = Error("same-address", "This {0} has the same address as {1}.", "Rename one of them.");
    /// <summary>The last problem of a file. {0} is how many are listed, 500.</summary>
    public static readonly ProblemKind TooManyProblems = Error("too-many-problems", "This file has more than {0} problems; the rest are not listed.", "Correct these, then check again.");
    /// <summary>Folders below this one are not read. {0} is the limit, 24.</summary>
    public static readonly ProblemKind TooDeep = Error("folder-too-deep", "The folders here are more than {0} deep.", "Move them higher up.");

    // Front matter and YAML.
    /// <summary>The first line of an entry is not <c>---</c>.</summary>
    public static readonly ProblemKind FrontMatterMissing = Error("front-matter-missing", "The entry has no front matter.", "Start the file with a line `---`, then the keys, then another line `---`.");
    /// <summary>An entry has no second line <c>---</c>.</summary>
    public static readonly ProblemKind FrontMatterNotClosed = Error("front-matter-not-closed", "The front matter is not closed.", "Put a line `---` after its last key.");
    /// <summary>There is no key between the two lines <c>---</c> of an entry.</summary>
    public static readonly ProblemKind FrontMatterEmpty = Error("front-matter-empty", "The front matter is empty.", "Give at least `operation` and `hours`, and `date` unless the file's name starts with it.");
    /// <summary>{0} is what is wrong, in plain words.</summary>
    public static readonly ProblemKind NotYaml = Error("not-yaml", "This is not YAML: {0}", "Check the indentation and the brackets. Put text in double quotes if it contains `: ` or starts with a special character.");
    /// <summary>A list or a single value stands where keys must be.</summary>
    public static readonly ProblemKind NotKeys = Error("not-keys", "Keys with values are needed here.", "Write `key: value`, one per line.");
    /// <summary>tools.yaml holds keys or a single value.</summary>
    public static readonly ProblemKind NotAList = Error("not-a-list", "A list is needed here.", "Start each item with `- `.");
    /// <summary>{0} is the limit, 32.</summary>
    public static readonly ProblemKind YamlTooDeep = Error("yaml-too-deep", "This is nested more than {0} levels deep.", "No key needs that; look for a bracket that is not closed.");
    /// <summary>{0} is the name after the <c>*</c>.</summary>
    public static readonly ProblemKind YamlAlias = Error("yaml-alias", "Aliases (`*{0}`) are not allowed.", "Write the value in full. Put text that starts with `*` in double quotes.");
    /// <summary>The file holds more than one document; none of it is read.</summary>
    public static readonly ProblemKind YamlSecondDocument = Error("yaml-second-document", "A second YAML document starts here.", "Remove the line `---`.");
    /// <summary>{0} is the key, {1} the nearest that are known here.</summary>
    public static readonly ProblemKind UnknownKey = Error("unknown-key", "There is no key `{0}` here.", "{1}");
    /// <summary>At the second of two keys of the same name, which is not read. {0} is the key, {1} the line of the first.</summary>
    public static readonly ProblemKind DuplicateKey = Error("duplicate-key", "The key `{0}` appears twice; the first is on line {1}.", "Keep one, or put both values in one list.");
    /// <summary>
    /// A value without quotes has a number sign after a blank, and YAML takes the rest of the line as a comment. {0} is what
    /// is lost.
    /// </summary>
    public static readonly ProblemKind CutShort = Warning("cut-short", "The value ends before ` #`: “{0}” and what follows is read as a comment.", "Put the whole value in double quotes.");

    // Forms.
    /// <summary>{0} is a key that must be there, {1} what to write.</summary>
    public static readonly ProblemKind Missing = Error("missing", "`{0}` is missing.", "{1}");
    /// <summary>A list or keys stand where one text belongs. {0} is the key.</summary>
    public static readonly ProblemKind NotText = Error("not-text", "`{0}` needs a single value.", "Write it as plain text.");
    /// <summary>{0} is what was written, {1} an id made of it.</summary>
    public static readonly ProblemKind NotAnId = Error("not-an-id", "“{0}” is not a valid id.", "Use lower-case words joined by hyphens, such as `{1}`.");
    /// <summary>{0} is what was written.</summary>
    public static readonly ProblemKind NotADate = Error("not-a-date", "“{0}” is not a date.", "Write year, month and day: `2025-10-03`.");
    /// <summary>{0} is what was written.</summary>
    public static readonly ProblemKind NotADateRange = Error("not-a-date-range", "“{0}” is not a range of days.", "Write the first and last day with a slash between: `2026-12-20/2027-01-03`.");
    /// <summary>{0} is what was written; it has none of the forms of a time.</summary>
    public static readonly ProblemKind NotATime = Error("not-a-time", "“{0}” is not a time.", "Write `2h45`, `45m`, `2.75`, `2:45`, `PT2H45M` or, for hours at the bench, `19:10-21:55`.");
    /// <summary>A chapter of a video does not say when it begins. {0} is what was written.</summary>
    public static readonly ProblemKind NotAMoment = Error("not-a-moment", "“{0}” is not a time in a video.", "Write minutes and seconds in quotes, such as `\"3:20\"`.");
    /// <summary>A time is less than a minute where one must have been worked or guessed. {0} is the key, {1} the time as written.</summary>
    public static readonly ProblemKind NotPositive = Error("not-positive", "`{0}` is {1}; the minimum is one minute.", "Write a time such as `45m`.");
    /// <summary>Not a number, or one outside its limits. {0} is what was written, {1} the key, {2} what to write.</summary>
    public static readonly ProblemKind NotANumber = Error("not-a-number", "“{0}” is not a valid number for `{1}`.", "{2}");
    /// <summary>
    /// Not one of the words, or not of the form, that a key allows. {0} is what was written, {1} the key, {2} what to write
    /// or the nearest words.
    /// </summary>
    public static readonly ProblemKind NotAChoice = Error("not-a-choice", "“{0}” is not a valid `{1}`.", "{2}");
    /// <summary>Not an absolute address of http or https. {0} is what was written.</summary>
    public static readonly ProblemKind NotAnAddress = Error("not-an-address", "“{0}” is not a web address.", "Write it in full: `https://…`.");
    /// <summary>The name has the right form, and the system does not know it. {0} is the name.</summary>
    public static readonly ProblemKind UnknownTimeZone = Warning("unknown-time-zone", "This machine does not know the time zone “{0}” and uses its own.", "Write the IANA name, such as `Europe/Dublin`.");
    /// <summary><c>id</c> in journal.yaml. {0} is what was written.</summary>
    public static readonly ProblemKind NotAnUuid = Error("not-a-uuid", "“{0}” is not a UUID.", "Leave out `id`, or write all 32 digits, as `journal start` does.");
    /// <summary>A mate's hole or shaft has no part before the point, or no feature after it. {0} is what was written.</summary>
    public static readonly ProblemKind NotAFeature = Error("not-a-feature", "“{0}” is not a feature of a part.", "Write the part and the feature with a dot between: `quill.diameter`.");
    /// <summary>A mark on a picture lacks one of its two places, which go from 0 to 100, or its text.</summary>
    public static readonly ProblemKind NotAMark = Error("not-a-mark", "A mark needs a position (per cent of width and height) and a text.", "Write `{{at: [62, 40], text: drill guide}}`.");
    /// <summary>{0}, {1} and {2} are <c>low</c>, <c>likely</c> and <c>high</c>.</summary>
    public static readonly ProblemKind GuessOrder = Error("guess-order", "The guess goes from {0} to {1} to {2}.", "Give `low`, `likely` and `high` from least to most.");
    /// <summary><c>guess</c> or <c>reguess</c> is a pair of braces with nothing in it.</summary>
    public static readonly ProblemKind NoGuess = Error("empty-guess", "The guess is empty.", "Write hours, hours by operation, or `{{low: 6h, likely: 9h, high: 16h}}`.");

    // Where the site is sent to.
    /// <summary>
    /// A destination of <c>journal send</c> has no place, several, or a key of another kind. {0} is its name, {1} what is
    /// wrong, {2} what to do.
    /// </summary>
    public static readonly ProblemKind DestinationUnclear = Error("destination-unclear", "The destination `{0}` {1}.", "{2}");
    /// <summary>Its place has a user with a password, or a token, in it. The problem does not repeat them.</summary>
    public static readonly ProblemKind SecretInJournal = Error("secret-in-journal", "This address contains a password or a token.", "Remove it, and change it if others have seen this file. `journal send` takes secrets from the environment or the usual credential files.");

    // Dates and hours.
    /// <summary>Neither <c>date</c> nor the name of the file gives a date; the entry is not read further.</summary>
    public static readonly ProblemKind DateMissing = Error("date-missing", "The entry has no date.", "Write `date: 2025-10-03`, or start the file's name with the date.");
    /// <summary>{0} is <c>date</c>, {1} the date in the name of the file.</summary>
    public static readonly ProblemKind DateDiffers = Error("date-differs", "`date` is {0}, but the file's name says {1}.", "Make them the same, or take the date out of the name.");
    /// <summary>{0} is the entry's date, {1} today where the bench is.</summary>
    public static readonly ProblemKind DateInFuture = Error("date-in-future", "{0} is in the future; today is {1}.", "Correct the date.");
    /// <summary>The job counts no time.</summary>
    public static readonly ProblemKind HoursMissing = Warning("hours-missing", "The job has no hours.", "Write `hours: 1h30`; a rough figure is better than none.");
    /// <summary>A key of one job stands beside <c>jobs</c> and is no default for all of them. {0} is the key.</summary>
    public static readonly ProblemKind HoursBesideJobs = Error("hours-beside-jobs", "`{0}` is beside `jobs`, where it belongs to none of them.", "Move it into the right job.");
    /// <summary><c>jobs</c> is a list without items.</summary>
    public static readonly ProblemKind NoJobs = Error("no-jobs", "`jobs` is empty.", "List at least one job: `- {{part: head, operation: boring, hours: 1h30}}`.");
    /// <summary>{0} is the time of setting up, {1} that of the whole job, which is taken for both.</summary>
    public static readonly ProblemKind SetupTooLong = Error("setup-too-long", "`setup` is {0}, but the whole job took {1}.", "`setup` is part of `hours`. Correct one of them.");
    /// <summary>At the job with which the entries of one date, in all builds, pass 24 hours. {0} is the date, {1} the time so far.</summary>
    public static readonly ProblemKind DayTooLong = Error("day-too-long", "With this, {0} has {1} of work, more than 24 hours.", "Check the hours and the date.");
    /// <summary>
    /// Two jobs of one date, of one build or two, overlap by the clock. {0} and {1} are their times, {2} and {3} the file and
    /// line of the first.
    /// </summary>
    public static readonly ProblemKind Overlap = Error("overlap", "{0} overlaps {1} in {2}, line {3}.", "Correct the times; if one job was on two parts, list both parts in that job.");
    /// <summary>
    /// Two entries of a build have a job of the same date, parts, operations and hours. {0} is the date, {1} and {2} the file
    /// and line of the first.
    /// </summary>
    public static readonly ProblemKind SameWorkTwice = Warning("same-work-twice", "The same part, operation and hours stand under {0} in {1}, line {2}.", "If both tell of the same work, delete one of them; if you did it twice, leave both.");

    // Ids.
    /// <summary>{0} is the id, {1} the nearest of the build's parts.</summary>
    public static readonly ProblemKind UnknownPart = Error("unknown-part", "The build has no part `{0}`.", "{1}");
    /// <summary>A part of another build, as <c>build/part</c>. {0} is what was written, {1} the nearest of all parts, or the form to write.</summary>
    public static readonly ProblemKind UnknownPartOf = Error("unknown-part", "There is no part `{0}`.", "{1}");
    /// <summary>{0} is the word, {1} the nearest that are known.</summary>
    public static readonly ProblemKind UnknownOperation = Error("unknown-operation", "There is no operation `{0}`.", "{1} New words go under `operations` in journal.yaml.");
    /// <summary>{0} is the word, {1} the nearest that are known.</summary>
    public static readonly ProblemKind UnknownCause = Error("unknown-cause", "There is no cause `{0}`.", "{1} New words go under `causes` in journal.yaml.");
    /// <summary>{0} is the first word of the material, {1} the nearest families.</summary>
    public static readonly ProblemKind UnknownMaterial = Error("unknown-material", "There is no material `{0}`.", "{1} The grade comes after the family; new families go under `materials` in journal.yaml.");
    /// <summary>{0} is the first word of the stock, {1} the nearest forms.</summary>
    public static readonly ProblemKind UnknownStock = Error("unknown-stock", "There is no form of stock `{0}`.", "{1} The size comes after the form: `round 32 x 180`.");
    /// <summary>{0} is the word, {1} the nearest that are known.</summary>
    public static readonly ProblemKind UnknownToolKind = Error("unknown-tool-kind", "There is no kind of tool `{0}`.", "{1} New words go under `tool-kinds` in journal.yaml.");
    /// <summary>{0} is the id, {1} the nearest in the crib.</summary>
    public static readonly ProblemKind UnknownTool = Warning("unknown-tool", "The crib has no tool `{0}`; it counts as unlisted.", "{1} Or add it to tools.yaml.");
    /// <summary>{0} is the id, {1} the nearest lessons of the journal.</summary>
    public static readonly ProblemKind UnknownLesson = Error("unknown-lesson", "There is no lesson `{0}`.", "{1}");
    /// <summary>{0} is the id, {1} the nearest that the build's mistakes have.</summary>
    public static readonly ProblemKind UnknownMistake = Error("unknown-mistake", "The build has no mistake with the id `{0}`.", "{1} Give a mistake an id with `id:`.");
    /// <summary>{0} is the id, {1} the nearest snags of the build.</summary>
    public static readonly ProblemKind UnknownSnag = Error("unknown-snag", "The build has no snag `{0}`.", "{1}");
    /// <summary>{0} is the id, {1} the nearest entries of the build.</summary>
    public static readonly ProblemKind UnknownEntry = Error("unknown-entry", "There is no entry `{0}`.", "{1}");
    /// <summary>A purchase is for something unknown. {0} is the id, {1} the nearest parts and tools.</summary>
    public static readonly ProblemKind UnknownTarget = Error("unknown-target", "`{0}` is neither a part of the build nor a tool.", "{1}");
    /// <summary>A mistake, lesson or setting names a job by a number too high. {0} is the number, {1} how many jobs the entry has.</summary>
    public static readonly ProblemKind UnknownJob = Error("unknown-job", "The entry has no job {0}; it has {1}.", "Jobs are counted from 1.");
    /// <summary>A link in the text of an entry. {0} is the link as written, {1} the nearest things that it could mean.</summary>
    public static readonly ProblemKind UnknownLinkTarget = Error("unknown-link-target", "The link `{0}` leads nowhere.", "{1}");
    /// <summary>A link by date, where the build has several entries of that date. {0} is the link, {1} their number, {2} the links by id.</summary>
    public static readonly ProblemKind AmbiguousEntry = Error("ambiguous-entry", "`{0}` matches {1} entries.", "Choose one: {2}.");
    /// <summary>
    /// At the second of two things of one kind with the same id. {0} is the kind, {1} the id, {2} and {3} the file and line
    /// of the first.
    /// </summary>
    public static readonly ProblemKind DuplicateId = Error("duplicate-id", "The {0} `{1}` is defined twice; the first is in {2}, line {3}.", "Give one of them another id.");
    /// <summary>{0} is the snag, {1} the entry that cleared it first.</summary>
    public static readonly ProblemKind FormerNameTaken = Warning("former-name-taken", "`{0}` is the name of another {1} now, so old links to it lead there.", "Remove it from `formerly`, or give the other {1} another name.");
    public static readonly ProblemKind ClearedTwice = Warning("cleared-twice", "The snag `{0}` was already cleared, in {1}.", "If it came back, add it as a new snag.");
    /// <summary>Only in a build with a parts list.</summary>
    public static readonly ProblemKind PartNotSaid = Warning("part-not-said", "The job has no part, so its time counts for the build as a whole.", "Write `part:` with an id from the parts list, or `part: whole`.");

    // Parts finished.
    /// <summary>{0} is the part, {1} the date on which it is said to be finished, {2} that of the first job on it.</summary>
    public static readonly ProblemKind FinishedBeforeWork = Error("finished-before-work", "`{0}` is finished on {1}, before the first work on it on {2}.", "Correct one of the dates, or move `finished` to the last evening on the part.");
    /// <summary>{0} is how many pieces are finished with these, {1} the part, {2} how many the build needs.</summary>
    public static readonly ProblemKind TooManyPieces = Error("too-many-pieces", "With this, {0} pieces of `{1}` are finished; the build needs {2}.", "Correct the number here or `quantity` in build.yaml.");
    /// <summary>All pieces were finished already. {0} is the part, {1} the entry that finished the last of them.</summary>
    public static readonly ProblemKind FinishedTwice = Warning("finished-twice", "`{0}` was already finished, in {1}.", "Once is enough. For rework, use `mends`.");

    /// <summary>
    /// <c>lost</c> is a bare number, which means hours. {0} is the number, {1} the time that it stands for, {2} the time of
    /// the entry.
    /// </summary>
    public static readonly ProblemKind MoreLostThanWorked = Warning("more-lost-than-worked", "“{0}” means {1}, but the whole entry took {2}.", "If you mean minutes, write `{0}m`; if it is right, write `{0}h`.");

    // Costs.
    /// <summary>{0} is the price, in the journal's currency, {1} the build.yaml that gives it too.</summary>
    public static readonly ProblemKind KitPaidTwice = Warning("kit-paid-twice", "A kit is bought here for {0}, and `cost` in {1} is the same. Both are counted.", "Remove one of them, unless there were two kits.");

    // Readings and settings. What is wrong, and the remedy, come from the reader of dimensions.
    /// <summary>A size, speed or feed. {0} is what was written, {1} the key, {2} what is wrong, {3} what to write.</summary>
    public static readonly ProblemKind NotADimension = Error("not-a-dimension", "“{0}” is not a valid `{1}`. {2}", "{3}");
    /// <summary>A fit with a letter, a grade or both that ISO 286 does not have. The gaps are those of <see cref="NotADimension"/>.</summary>
    public static readonly ProblemKind NotAFit = Error("not-a-fit", "“{0}” is not a valid `{1}`. {2}", "{3}");
    /// <summary>A number that needs a unit. The gaps are those of <see cref="NotADimension"/>.</summary>
    public static readonly ProblemKind UnitMissing = Error("unit-missing", "“{0}” is not a valid `{1}`. {2}", "{3}");
    /// <summary>A feed that does not say whether it is for a minute, a turn or a tooth. The gaps are those of <see cref="NotADimension"/>.</summary>
    public static readonly ProblemKind FeedPerWhat = Warning("feed-per-what", "The `{1}` “{0}” is unclear. {2}", "{3}");
    /// <summary>
    /// A size measured that is about 10 or 25.4 times too large or too small for what is required. The gaps are those of
    /// <see cref="NotADimension"/>.
    /// </summary>
    public static readonly ProblemKind LikelySlip = Warning("likely-slip", "Check the `{1}` “{0}”. {2}", "{3}");
    /// <summary>{0} is the verdict as written; the setting counts as tried, and neither as worked nor as failed.</summary>
    public static readonly ProblemKind VerdictUnclear = Warning("verdict-unclear", "“{0}” does not say whether the setting worked.", "Write `worked`, `chattered` or `failed`; more words may follow.");

    // Text and pictures.
    /// <summary>{0} is the length of an entry's text in UTF-16 units, {1} the limit, 65,536. The text is left out.</summary>
    public static readonly ProblemKind BodyTooLong = Error("text-too-long", "The text has {0} characters; the limit is {1}.", "Split the entry in two; each can have a date of its own.");
    /// <summary>Lists, quotations, brackets or HTML are nested too deeply to lay out in good time. The text is left out.</summary>
    public static readonly ProblemKind TextTooNested = Error("text-too-nested", "The text is nested too deeply here.", "Remove what is not meant as a list, quotation, link or HTML.");
    /// <summary>{0} is the limit of columns, 64, {1} that of cells, 20,000. The text is left out.</summary>
    public static readonly ProblemKind TableTooLarge = Error("table-too-large", "The table is too large; the limit is {0} columns and {1} cells.", "Split it, or swap rows and columns.");
    /// <summary>{0} is the address as written, such as one of <c>javascript:</c>.</summary>
    public static readonly ProblemKind LinkRefused = Warning("link-refused", "The link `{0}` is not allowed; only its text is published.", "Links may go to `part:`, `tool:`, `lesson:`, `entry:`, `https://…` or `mailto:`.");
    /// <summary>{0} is the file as written, {1} what to do.</summary>
    public static readonly ProblemKind PictureMissing = Omission("picture-missing", "There is no picture “{0}”.", "{1}");
    /// <summary>The picture has a web address, or a path that leads out of the journal, links followed. {0} is what was written.</summary>
    public static readonly ProblemKind PictureOutside = Omission("picture-outside", "The picture “{0}” is outside the journal.", "Copy it into the build's `photos` folder.");
    /// <summary>The ending of the name is none of those known. {0} is the file as written.</summary>
    public static readonly ProblemKind PictureFormat = Omission("picture-format", "The picture “{0}” has a format that cannot be read.", "Save it as JPEG (a phone's HEIC: share or export it as JPEG), PNG, WebP, GIF, BMP or TIFF.");
    /// <summary>{0} is the file as written, {1} what is wrong with it, in half a sentence.</summary>
    public static readonly ProblemKind PictureBroken = Omission("picture-broken", "The picture “{0}” cannot be read: {1}", "Copy it again from the phone or camera.");
    /// <summary>{0} is the file as written.</summary>
    public static readonly ProblemKind PictureWithoutWords = Warning("picture-without-words", "The picture “{0}” has no `caption` and no `alt`.", "Say in a few words what it shows; some readers cannot see it.");
    /// <summary>{0} is the link as written, in an entry that is shown on the day of the check.</summary>
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
