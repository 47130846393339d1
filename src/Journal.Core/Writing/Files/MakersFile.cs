using System.Text;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Files;

/// <summary>A file of the maker's, to be added to: its text, and the byte-order mark that it begins with, if it does.</summary>
/// <param name="Path">Where it lies on disk.</param>
/// <param name="Text">Its text without the mark.</param>
/// <param name="HasMark">Whether it begins with a byte-order mark.</param>
internal sealed record MakersFile(string Path, string Text, bool HasMark)
{
    private const int MostTries = 20;

    /// <summary>The file as it stands; null where it cannot be read as text.</summary>
    public static MakersFile? Read(string path)
    {
        var text = TextFile.Read(path, path, new ProblemLog());
        return text is null ? null : new MakersFile(path, text, BeginsWithMark(path));
    }

    /// <summary>
    /// Reads a file, adds to it and writes it back. Where someone saved the file meanwhile, it is read again and added to
    /// what they saved: nobody's words are lost.
    /// </summary>
    /// <param name="path">Where it lies on disk.</param>
    /// <param name="add">Adds to a text; it may be called several times.</param>
    /// <returns>The text as it now stands, or why nothing was written; null where the file cannot be read as text.</returns>
    /// <exception cref="IOException">Someone saves the file again and again.</exception>
    public static Added? Edit(string path, Func<string, Added> add) => Edit(path, add, (file, longer) => file.TryWrite(longer));

    /// <summary>The same with a way of one's own to write it, which answers false where the file is no longer as it was read.</summary>
    public static Added? Edit(string path, Func<string, Added> add, Func<MakersFile, string, bool> tryWrite)
    {
        for (var tries = 0; tries < MostTries; tries++)
        {
            if (Read(path) is not { } file)
            {
                return null;
            }

            var added = add(file.Text);
            if (added.Text is not { } longer || tryWrite(file, longer))
            {
                return added;
            }
        }

        throw new IOException($"{path} is saved by another program again and again. Let it come to rest, then try again.");
    }

    /// <summary>Puts another text in the place of this one; false, with nothing touched, where the file is no longer as it was read.</summary>
    public bool TryWrite(string text) => SafeFile.TryReplace(Path, Bytes(Text), Bytes(text));

    /// <summary>The file's bytes with another text.</summary>
    public byte[] Bytes(string text) => [.. HasMark ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(text)];

    private static bool BeginsWithMark(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        Span<byte> start = stackalloc byte[3];
        return stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length && start.SequenceEqual(Encoding.UTF8.Preamble);
    }
}
