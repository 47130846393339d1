using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>
/// A mistake's place in the journal: the entry that tells of it and its number there, from 1. Every mistake has one,
/// also those without an id.
/// </summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Number">Its number in the entry, from 1.</param>
public readonly record struct MistakeRef(EntryRef Entry, int Number);

/// <summary>Finds the mistake that an id means: one of the same build first, else the earliest of the journal.</summary>
internal sealed class MistakeIndex
{
    private readonly Dictionary<(Id<Build>, Id<Mistake>), MistakeRef> inBuild = [];
    private readonly Dictionary<Id<Mistake>, MistakeRef> anywhere = [];

    public MistakeIndex(IEnumerable<Entry> entries)
    {
        foreach (var entry in entries)
        {
            foreach (var (index, mistake) in entry.Mistakes.Index())
            {
                if (mistake.Id is { } id)
                {
                    var at = new MistakeRef(entry.Ref, index + 1);
                    inBuild.TryAdd((entry.Build, id), at);
                    anywhere.TryAdd(id, at);
                }
            }
        }
    }

    /// <summary>The mistake that an entry of a build means by an id; null where nothing has that id.</summary>
    public MistakeRef? Find(Id<Build> from, Id<Mistake> id) =>
        inBuild.TryGetValue((from, id), out var near) ? near
        : anywhere.TryGetValue(id, out var far) ? far
        : null;
}
