using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>
/// A mistake's place in the journal: the entry that tells of it and its number there, from 1. Every mistake has one,
/// also those without an id.
/// </summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Number">Its number in the entry, from 1.</param>
public readonly record struct MistakeRef(EntryRef Entry, int Number);

/// <summary>Finds the mistake that an id means: the one with that id in the same build (docs/figures.md, What mistakes cost).</summary>
internal sealed class MistakeIndex
{
    private readonly Dictionary<(Id<Build>, Id<Mistake>), MistakeRef> inBuild = [];

    /// <summary>An index of entries; of mistakes with the same id in one build the first counts.</summary>
    public MistakeIndex(IEnumerable<Entry> entries)
    {
        foreach (var entry in entries)
        {
            foreach (var (index, mistake) in entry.Mistakes.Index())
            {
                if (mistake.Id is { } id)
                {
                    inBuild.TryAdd((entry.Build, id), new MistakeRef(entry.Ref, index + 1));
                }
            }
        }
    }

    /// <summary>The mistake that an entry of a build means by an id; null where no mistake of that build has it.</summary>
    public MistakeRef? Find(Id<Build> from, Id<Mistake> id) =>
        inBuild.TryGetValue((from, id), out var found) ? found : null;
}
