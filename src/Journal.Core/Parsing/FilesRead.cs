using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing;

/// <summary>
/// What was read of a journal's files, so that the next reading reads only those that changed since. A file is known by its
/// size and time; one that was seconds old when it was read is read again, and so is one that someone says was touched.
/// For one folder, and one reading after the other.
/// </summary>
public sealed class FilesRead
{
    private Dictionary<string, KeptFile> before = new(StringComparer.Ordinal);
    private Dictionary<string, KeptFile> now = new(StringComparer.Ordinal);

    /// <summary>Forgets what may have changed without another size or time.</summary>
    /// <param name="touched">Files and folders, relative to the journal, with <c>/</c>; null for all.</param>
    public void Forget(IReadOnlyCollection<string>? touched)
    {
        if (touched is null)
        {
            before.Clear();
            return;
        }

        foreach (var path in touched)
        {
            // What is no file that was read may be a folder that was moved with all that it holds.
            if (!before.Remove(path))
            {
                foreach (var inside in before.Keys.Where(file => file.StartsWith(path + '/', StringComparison.Ordinal)).ToList())
                {
                    before.Remove(inside);
                }
            }
        }
    }

    /// <summary>A file as it was read before; null where it must be read.</summary>
    /// <param name="file">The file, relative to the journal.</param>
    /// <param name="stamp">Its size and time now.</param>
    /// <param name="basis">What else it follows from.</param>
    internal KeptFile? Find(string file, FileStamp stamp, ReadingBasis basis) =>
        before.TryGetValue(file, out var kept) && kept.Stamp == stamp && kept.Basis == basis && kept.Scope.Looked.All(look => look.IsSame()) ? kept : null;

    /// <summary>Keeps a file that was read whole.</summary>
    internal void Keep(string file, KeptFile kept)
    {
        if (kept.Stamp.IsSettled && !kept.Scope.IsBehindLinks)
        {
            now[file] = kept;
        }
    }

    /// <summary>Ends a reading: files that it did not meet are not kept.</summary>
    internal void Finish() => (before, now) = (now, new(StringComparer.Ordinal));
}

/// <summary>A file as it was read.</summary>
/// <param name="Stamp">Its size and time then.</param>
/// <param name="Basis">What else it follows from.</param>
/// <param name="Value">What it gave: the head of a journal, a build with its parts list, the draft of an entry.</param>
/// <param name="Scope">What it adds to the journal beside.</param>
internal sealed record KeptFile(FileStamp Stamp, ReadingBasis Basis, object Value, FileScope Scope);

/// <summary>What the reading of a file follows from beside the file itself.</summary>
/// <param name="Today">The date after which an entry lies in the future.</param>
/// <param name="Head">What journal.yaml says; null for journal.yaml itself.</param>
/// <param name="Parts">The parts list of an entry's build.</param>
internal readonly record struct ReadingBasis(DateOnly Today, JournalHead? Head = null, PartsList? Parts = null);
