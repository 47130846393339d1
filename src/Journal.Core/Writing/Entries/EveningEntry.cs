using System.Text;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>What came of writing: the file that holds it, or why nothing was written.</summary>
/// <param name="File">The file from the journal's folder; null where nothing was written.</param>
/// <param name="WhyNot">For the maker: what stands in the way, and what to do.</param>
public readonly record struct Written(string? File, string WhyNot)
{
    /// <summary>Keys that the entry had already and kept as they were, with what was not written.</summary>
    public IReadOnlyList<(string Key, string Value)> LeftOut { get; init; } = [];
}

/// <summary>A stint that was ended.</summary>
/// <param name="Time">The time at the bench.</param>
/// <param name="File">The entry that has it, from the journal's folder; null where it left none.</param>
public readonly record struct EndedStint(Minutes Time, string? File);

/// <summary>Writes an evening's work into the journal: into its entry where that can be done by adding, else into one of its own.</summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="build">The build that it is for.</param>
/// <param name="slate">The slate, in one's hands.</param>
public sealed class EveningEntry(string folder, Build build, SlateFile slate)
{
    /// <summary>
    /// Puts a stint's job into the evening's entry. An entry in the short form, with one job, is left as it is; the
    /// stint then gets an entry of its own.
    /// </summary>
    public string PutStint(DateOnly evening, NewJob job, string? action = null)
    {
        foreach (var entry in build.Entries.Where(entry => entry.Date == evening).Reverse())
        {
            var added = Add(
                entry.File,
                text => text.Has("jobs") ? text.Items("jobs", [job.ToYaml()]) : Added.Refused("It has one job, in the short form."),
                text => Takes(entry.File, text.IsWordless ? new StintEntry(entry.File, evening) : null, action));
            if (added is { Text: not null })
            {
                return entry.File;
            }
        }

        return Create(evening, job, NewEntry.OfStint(evening, job), name => Takes(name, new StintEntry(name, evening), action));
    }

    /// <summary>
    /// Ends the stint that the slate has and puts its job into its evening's entry; one of less than half a minute leaves none.
    /// </summary>
    /// <param name="job">The stint's job; its hours are reckoned here.</param>
    /// <param name="end">When it ended.</param>
    /// <param name="clock">The clock over the bench.</param>
    /// <param name="action">The id of what was asked for from the bench page; null where nothing was.</param>
    public EndedStint EndStint(NewJob job, DateTimeOffset end, BenchClock clock, string? action = null)
    {
        var stint = slate.Slate.Stint!;
        var time = stint.TimeUntil(end);
        if (time > Minutes.Zero)
        {
            return new EndedStint(time, PutStint(clock.Evening(stint.Began), job with { Hours = time.ToString() }, action));
        }

        var ended = slate.Slate with { Stint = null };
        slate.Keep(action is null ? ended : ended.WithDone(action));
        return new EndedStint(time, null);
    }

    /// <summary>Writes a new entry; never over another, so a second one that evening has a name of its own.</summary>
    /// <param name="evening">The evening.</param>
    /// <param name="jobs">The work in its order; at least one job.</param>
    /// <param name="words">What else is said.</param>
    /// <param name="jotsOf">The evening whose remarks are in it and leave the slate; null for none.</param>
    /// <param name="takesStint">Whether the stint that is running is in it and leaves the slate.</param>
    public string Write(DateOnly evening, IReadOnlyList<NewJob> jobs, WriteUp words, DateOnly? jotsOf, bool takesStint = false) =>
        Create(evening, jobs[0], NewEntry.Of(evening, jobs, words), name => new Handover(name, "", takesStint, jotsOf, slate.Slate.Unwritten) { JotsFor = build.Id.Value });

    /// <summary>Whether an entry that is there says something under a key.</summary>
    public static bool Says(string folder, string file, string key) =>
        MakersFile.Read(Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar))) is { } there && new EntryText(there.Text).Has(key);

    /// <summary>The jobs of an entry's file as it stands now; none where it cannot be read.</summary>
    public static IReadOnlyList<NewJob> JobsIn(string folder, string file) =>
        MakersFile.Read(Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar))) is { } there ? new EntryText(there.Text).Jobs() : [];

    /// <summary>Writes up an entry that is there: adds what it does not say yet, and touches nothing that it does.</summary>
    public Written WriteUp(StintEntry entry, WriteUp words, DateOnly? jotsOf)
    {
        IReadOnlyList<(string, string)> leftOut = [];
        var added = Add(
            entry.File,
            text =>
            {
                (var longer, leftOut) = WithWords(text, words);
                return longer;
            },
            _ => new Handover(entry.File, "", TakesStint: false, jotsOf, slate.Slate.Unwritten is { } other && other.File != entry.File ? other : null) { JotsFor = build.Id.Value });
        return added switch
        {
            null => new Written(null, $"{entry.File} cannot be read."),
            { Text: null } refused => new Written(null, $"{entry.File}: {refused.WhyNot}"),
            _ => new Written(entry.File, "") { LeftOut = leftOut },
        };
    }

    /// <summary>The text of an entry with what it does not say yet, and what it says already and keeps.</summary>
    internal static (Added Text, IReadOnlyList<(string Key, string Value)> LeftOut) WithWords(EntryText text, WriteUp words)
    {
        (string Key, string Value)[] keys = [.. words.Title is null ? [] : new[] { ("title", YamlText.Of(words.Title)) }, .. words.Keys()];
        IReadOnlyList<(string, string)> leftOut = [.. keys.Where(pair => text.Has(pair.Key))];
        var added = text.Keys(keys);
        foreach (var (key, items) in words.Lists)
        {
            added = added.Text is { } longer ? new EntryText(longer).Items(key, items) : added;
        }

        return (added.Text is { } whole ? Added.As(new EntryText(whole).WithAccount(words.Account).WithLines(NewEntry.Text(words.Remarks)).Text) : added, leftOut);
    }

    // Adds to an entry and takes from the slate what went into it.
    private Added? Add(string file, Func<EntryText, Added> add, Func<EntryText, Handover> handover) => MakersFile.Edit(
        PathOf(file),
        text => add(new EntryText(text)),
        (read, longer) => slate.Replace(handover(new EntryText(read.Text)), read.Bytes(read.Text), read.Bytes(longer)));

    private string Create(DateOnly evening, NewJob job, string text, Func<string, Handover> handover)
    {
        var taken = new HashSet<string>(build.Entries.Select(entry => entry.Id.Value), StringComparer.Ordinal);
        while (true)
        {
            var name = NewEntry.Name(evening, job, one => taken.Contains(one) || File.Exists(PathOf(InBuild(one))));
            if (slate.Create(handover(InBuild(name)), Encoding.UTF8.GetBytes(text)))
            {
                return InBuild(name);
            }

            taken.Add(name);
        }
    }

    private static Handover Takes(string file, StintEntry? unwritten, string? action) => new(file, "", TakesStint: true, null, unwritten) { Action = action };

    private string InBuild(string name) => $"{build.Folder}/{name}.md";

    private string PathOf(string file) => Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar));
}
