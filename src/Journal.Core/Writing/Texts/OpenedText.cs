using System.Security.Cryptography;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Files;

namespace Journal.Core.Writing.Texts;

/// <summary>What came of saving a text.</summary>
/// <param name="IsSaved">Whether the file holds it now.</param>
/// <param name="Now">The file as it stands now; null where it cannot be read, or is gone.</param>
public readonly record struct TextSaving(bool IsSaved, OpenedText? Now);

/// <summary>A file of the journal, opened as text.</summary>
/// <param name="Text">Its text without a byte-order mark.</param>
/// <param name="Digest">By which it is known to be as it was opened: of its bytes, SHA-256.</param>
public sealed record OpenedText(string Text, string Digest)
{
    private const int MostTries = 20;

    /// <summary>Opens a file.</summary>
    /// <param name="journal">The journal's folder.</param>
    /// <param name="file">The file, relative to it.</param>
    /// <returns>Null where it cannot be read as text, or is too large.</returns>
    public static OpenedText? Open(string journal, string file) => MakersFile.Read(PathOf(journal, file)) is { } read ? Of(read) : null;

    /// <summary>
    /// Saves what was typed: to the byte, with the byte-order mark and the line ends that the file has. For those who hold the
    /// slate: no other command writes meanwhile. Where another program has saved the file since it was opened, nothing is
    /// written.
    /// </summary>
    /// <param name="slate">The slate, in one's hands.</param>
    /// <param name="journal">The journal's folder.</param>
    /// <param name="file">The file, relative to it.</param>
    /// <param name="seen">The digest of the file as it was opened, or as it was shown beside what was typed.</param>
    /// <param name="typed">What was typed.</param>
    /// <exception cref="IOException">The disk is full, or another program saves the file again and again.</exception>
    /// <exception cref="UnauthorizedAccessException">The file is write-protected.</exception>
    public static TextSaving Save(SlateFile slate, string journal, string file, string seen, string typed)
    {
        ArgumentNullException.ThrowIfNull(slate);
        for (var tries = 0; tries < MostTries; tries++)
        {
            if (!File.Exists(PathOf(journal, file)) || MakersFile.Read(PathOf(journal, file)) is not { } there)
            {
                return new TextSaving(false, null);
            }

            var opened = Of(there);
            if (opened.Digest != seen)
            {
                return new TextSaving(LineEnds.AreAlike(there.Text, typed), opened);
            }

            var kept = LineEnds.Kept(there.Text, typed);
            if (kept == there.Text || there.TryWrite(kept))
            {
                return new TextSaving(true, Of(there with { Text = kept }));
            }
        }

        throw new IOException($"{file} is saved by another program again and again. Let it come to rest, then try again.");
    }

    private static OpenedText Of(MakersFile file) => new(file.Text, Convert.ToHexStringLower(SHA256.HashData(file.Bytes(file.Text))));

    private static string PathOf(string journal, string file) => Path.Combine(journal, file.Replace('/', Path.DirectorySeparatorChar));
}
