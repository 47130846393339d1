using System.Text;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Writing.Files;

/// <summary>A file of the maker's, to be added to: its text, and the byte-order mark that it begins with, if it does.</summary>
/// <param name="Path">Where it lies on disk.</param>
/// <param name="Text">Its text without the mark.</param>
/// <param name="HasMark">Whether it begins with a byte-order mark.</param>
internal sealed record MakersFile(string Path, string Text, bool HasMark)
{
    /// <summary>The file as it stands; null where it cannot be read as text.</summary>
    public static MakersFile? Read(string path)
    {
        var text = TextFile.Read(path, path, new ProblemLog());
        return text is null ? null : new MakersFile(path, text, BeginsWithMark(path));
    }

    /// <summary>Puts a longer text in the place of this one, with the same mark.</summary>
    public void Write(string text) => SafeFile.Replace(Path, Bytes(text));

    /// <summary>The file's bytes with another text.</summary>
    public byte[] Bytes(string text) => [.. HasMark ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(text)];

    private static bool BeginsWithMark(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        Span<byte> start = stackalloc byte[3];
        return stream.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length && start.SequenceEqual(Encoding.UTF8.Preamble);
    }
}
