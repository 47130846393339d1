using Journal.Core.Writing.Bench;

namespace Journal.Bench.Slates;

/// <summary>What stands on the slate now, read again when another command or we have written to it.</summary>
/// <param name="folder">The journal's folder.</param>
internal sealed class SlateNow(string folder)
{
    private readonly Lock guard = new();
    private (DateTime Written, long Length, Slate? Slate) seen;

    /// <summary>The slate.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public Slate Slate
    {
        get
        {
            lock (guard)
            {
                var file = new FileInfo(SlateFile.PathIn(folder));
                var stamp = file.Exists ? (file.LastWriteTimeUtc, file.Length) : default;
                if (seen.Slate is null || (seen.Written, seen.Length) != stamp)
                {
                    seen = (stamp.LastWriteTimeUtc, stamp.Length, SlateFile.Peek(folder));
                }

                return seen.Slate;
            }
        }
    }
}
