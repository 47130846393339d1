using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>How an entry points to a thing.</summary>
public enum LinkReason
{
    /// <summary>A link in its text.</summary>
    Text,

    /// <summary>It applied the lesson.</summary>
    Heeded,

    /// <summary>A mistake of it repeats the lesson.</summary>
    Repeats,

    /// <summary>A job of it mends a mistake told there.</summary>
    Mends,

    /// <summary>It found a mistake that was made there.</summary>
    MadeOn,
}

/// <summary>An entry that points to a thing.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Date">Its date.</param>
/// <param name="Reason">How it points there.</param>
public sealed record BackLink(EntryRef Entry, DateOnly Date, LinkReason Reason);

/// <summary>
/// What points to each part, tool, lesson and entry, by date, then build and entry; each entry once for each reason. An
/// entry's pointing to itself is left out, and so is working on a part or with a tool: routes and tooling tell that.
/// </summary>
public sealed class BackLinks
{
    private readonly Dictionary<LinkTarget, List<BackLink>> links = [];

    private BackLinks(MakerJournal journal)
    {
        var entries = journal.Entries;
        var mistakes = new MistakeIndex(entries);
        foreach (var entry in entries)
        {
            foreach (var (target, reason) in Targets(entry, mistakes).Distinct().Where(link => link.Target != ToEntry(entry.Ref)))
            {
                if (!links.TryGetValue(target, out var known))
                {
                    links[target] = known = [];
                }

                known.Add(new BackLink(entry.Ref, entry.Date, reason));
            }
        }
    }

    /// <summary>The back-links of a journal.</summary>
    public static BackLinks Of(MakerJournal journal) => new(journal);

    /// <summary>What points to a part.</summary>
    public IReadOnlyList<BackLink> To(PartRef part) => To(new LinkTarget(LinkKind.Part, part.Build, part.Part.Value));

    /// <summary>What points to a tool.</summary>
    public IReadOnlyList<BackLink> To(Id<Tool> tool) => To(new LinkTarget(LinkKind.Tool, null, tool.Value));

    /// <summary>What points to a lesson.</summary>
    public IReadOnlyList<BackLink> To(Id<Lesson> lesson) => To(ToLesson(lesson));

    /// <summary>What points to an entry.</summary>
    public IReadOnlyList<BackLink> To(EntryRef entry) => To(ToEntry(entry));

    private static LinkTarget ToEntry(EntryRef entry) => new(LinkKind.Entry, entry.Build, entry.Entry.Value);

    private static LinkTarget ToLesson(Id<Lesson> lesson) => new(LinkKind.Lesson, null, lesson.Value);

    private static IEnumerable<(LinkTarget Target, LinkReason Reason)> Targets(Entry entry, MistakeIndex mistakes) =>
    [
        .. entry.Body.Links.Where(link => link.Target is not null).Select(link => (link.Target!.Value, LinkReason.Text)),
        .. entry.Heeded.Select(lesson => (ToLesson(lesson), LinkReason.Heeded)),
        .. entry.Mistakes.Where(mistake => mistake.Repeats is not null).Select(mistake => (ToLesson(mistake.Repeats!.Value), LinkReason.Repeats)),
        .. entry.Jobs.Select(job => job.Mends is { } id ? mistakes.Find(entry.Build, id) : null).OfType<MistakeRef>()
            .Select(mistake => (ToEntry(mistake.Entry), LinkReason.Mends)),
        .. entry.Mistakes.Where(mistake => mistake.MadeOn is not null)
            .Select(mistake => (ToEntry(new EntryRef(entry.Build, mistake.MadeOn!.Value)), LinkReason.MadeOn)),
    ];

    private List<BackLink> To(LinkTarget target) => links.GetValueOrDefault(target) ?? [];
}
