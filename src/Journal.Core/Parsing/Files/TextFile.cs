using System.Globalization;
using System.Text;
using System.Text.Unicode;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using Microsoft.Win32.SafeHandles;

namespace Journal.Core.Parsing.Files;

/// <summary>A text file of the journal: UTF-8, with or without a byte-order mark, of bounded size.</summary>
internal static class TextFile
{
    /// <summary>The most that is read of any file.</summary>
    public const long LargestFile = 512 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The file's text without its byte-order mark; null, with a problem, where it cannot be had.</summary>
    public static string? Read(string path, string file, ProblemLog log)
    {
        var start = new Place(file, 1, 1);
        try
        {
            if (new FileInfo(path).Length == 0)
            {
                // Pipes and devices have no length either; opening one could wait for ever.
                return UnixFile.IsPipe(path) ? throw new IOException("It is a pipe, not a file.") : "";
            }

            using var handle = File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            var length = RandomAccess.GetLength(handle);
            if (length > LargestFile)
            {
                log.Add(ProblemTable.FileTooLarge, start, Size(length), Size(LargestFile));
                return null;
            }

            var bytes = new byte[length];
            return Decode(bytes.AsSpan(0, ReadAll(handle, bytes)), file, log);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            log.Add(ProblemTable.NotReadable, start, e.Message);
            return null;
        }
    }

    // Less than there seemed to be where someone shortens the file meanwhile.
    private static int ReadAll(SafeFileHandle handle, Span<byte> bytes)
    {
        var count = 0;
        while (count < bytes.Length && RandomAccess.Read(handle, bytes[count..], count) is > 0 and var more)
        {
            count += more;
        }

        return count;
    }

    private static string? Decode(ReadOnlySpan<byte> bytes, string file, ProblemLog log)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble))
        {
            bytes = bytes[Encoding.UTF8.Preamble.Length..];
        }

        if (Utf8.IsValid(bytes) && !bytes.Contains((byte)0))
        {
            return Strict.GetString(bytes);
        }

        log.Add(ProblemTable.NotUtf8, PlaceBehind(bytes, LengthOfText(bytes), file));
        return null;
    }

    // Up to the first byte that is not UTF-8, or the first NUL: no text holds one, but UTF-16 is full of them.
    private static int LengthOfText(ReadOnlySpan<byte> bytes)
    {
        Utf8.ToUtf16(bytes, new char[bytes.Length], out var good, out _, replaceInvalidSequences: false);
        return bytes[..good].IndexOf((byte)0) is >= 0 and var nul ? nul : good;
    }

    private static Place PlaceBehind(ReadOnlySpan<byte> bytes, int good, string file)
    {
        var before = Strict.GetString(bytes[..good]);
        return new LineStarts(before, file, firstLine: 1).At(before.Length);
    }

    private static string Size(long bytes) =>
        bytes < 1024 * 1024
            ? string.Create(CultureInfo.InvariantCulture, $"{bytes / 1024.0:0.#} KiB")
            : string.Create(CultureInfo.InvariantCulture, $"{bytes / 1024.0 / 1024.0:0.#} MiB");
}
