using System.Globalization;
using System.Text;
using Journal.Core.Model;
using Journal.Core.Reading.Problems;

namespace Journal.Core.Reading.Files;

/// <summary>A text file of the journal: UTF-8, with or without a byte-order mark, of bounded size.</summary>
internal static class TextFile
{
    /// <summary>The most that is read of any file.</summary>
    public const long LargestFile = 1024 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The file's text without its byte-order mark; null, with a problem, where it cannot be had.</summary>
    public static string? Read(string path, string file, ProblemLog log)
    {
        var start = new Place(file, 1, 1);
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            if (stream.Length > LargestFile)
            {
                log.Add(ProblemTable.FileTooLarge, start, Size(stream.Length), Size(LargestFile));
                return null;
            }

            var bytes = new byte[stream.Length];
            var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return Decode(bytes.AsSpan(0, count), file, log);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            log.Add(ProblemTable.NotReadable, start, e.Message);
            return null;
        }
    }

    private static string? Decode(ReadOnlySpan<byte> bytes, string file, ProblemLog log)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble))
        {
            bytes = bytes[Encoding.UTF8.Preamble.Length..];
        }

        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            log.Add(ProblemTable.NotUtf8, FirstBadPlace(bytes, file));
            return null;
        }
    }

    private static Place FirstBadPlace(ReadOnlySpan<byte> bytes, string file)
    {
        System.Text.Unicode.Utf8.ToUtf16(bytes, new char[bytes.Length], out var good, out _, replaceInvalidSequences: false);
        var before = Strict.GetString(bytes[..good]);
        var line = 1 + before.Count(c => c == '\n');
        return new Place(file, line, before.Length - before.LastIndexOf('\n'));
    }

    private static string Size(long bytes) =>
        bytes < 1024 * 1024
            ? string.Create(CultureInfo.InvariantCulture, $"{bytes / 1024.0:0.#} KiB")
            : string.Create(CultureInfo.InvariantCulture, $"{bytes / 1024.0 / 1024.0:0.#} MiB");
}
