using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Files;

namespace Journal.Core.Writing.Names;

/// <summary>
/// A change of many files as one step. All that will be is written down first, in <c>.bench/change.json</c>; from then on it
/// is finished, by this command or, after a crash, by the next one that reads or writes the journal.
/// </summary>
public static class UnfinishedChange
{
    /// <summary>Makes a change; nothing is changed where a file is not any more what it was when the change was worked out.</summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="change">The change.</param>
    /// <param name="slate">The slate, in one's hands: no other command writes meanwhile.</param>
    /// <returns>The file that was changed meanwhile; null where all went well.</returns>
    /// <exception cref="IOException">The disk does not take it.</exception>
    /// <exception cref="UnauthorizedAccessException">A file is write-protected.</exception>
    public static string? Make(string folder, NameChange change, SlateFile slate)
    {
        var files = change.Files.Select(file => (Change: file, Path: PathOf(folder, file.File))).ToList();
        foreach (var (file, path) in files)
        {
            if (MakersFile.Read(path) is not { } makers || makers.Text != file.Old)
            {
                return file.File;
            }

            if (BehindLinks.FileOf(path).IsReadOnly)
            {
                throw new UnauthorizedAccessException($"{path} is write-protected; nothing was changed.");
            }
        }

        var record = new ChangeRecord(
            [.. files.Select(file => new RecordedFile(file.Change.File, Digest(Bytes(file.Change, file.Change.Old)), Bytes(file.Change, file.Change.New)))],
            [.. change.Moves]);
        SafeFile.Replace(RecordIn(folder), JsonSerializer.SerializeToUtf8Bytes(record, ChangeJson.Default.ChangeRecord));
        Finish(folder, record, slate);
        return null;
    }

    /// <summary>Whether a change was begun and not finished.</summary>
    public static bool IsThere(string folder) => File.Exists(RecordIn(folder));

    /// <summary>Finishes a change that was begun; does nothing where there is none.</summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="slate">The slate, in one's hands.</param>
    /// <exception cref="IOException">A file was changed in between and keeps its old names; the rest is finished.</exception>
    public static void Settle(string folder, SlateFile slate)
    {
        if (!IsThere(folder))
        {
            return;
        }

        ChangeRecord record;
        try
        {
            record = JsonSerializer.Deserialize(File.ReadAllBytes(RecordIn(folder)), ChangeJson.Default.ChangeRecord) ?? throw new JsonException("it is empty");
        }
        catch (JsonException e)
        {
            throw new IOException($"{RecordIn(folder)} cannot be read ({e.Message}). It holds a change of names that was interrupted. Keep a copy of it, delete it, and see `journal check`.", e);
        }

        Finish(folder, record, slate);
    }

    private static void Finish(string folder, ChangeRecord record, SlateFile slate)
    {
        var changed = record.Files.Where(file => !Put(folder, file, record.Moves)).Select(file => file.File).ToList();
        foreach (var move in record.Moves)
        {
            Move(PathOf(folder, move.From), PathOf(folder, move.To));
        }

        if (record.Moves.Count > 0)
        {
            slate.Keep(Moved(slate.Slate, record.Moves[0]));
        }

        File.Delete(RecordIn(folder));
        if (changed.Count > 0)
        {
            throw new IOException($"A change of names that was interrupted is finished now, but {string.Join(", ", changed)} had been changed in between and keeps the old names. `journal check` shows where; change them by hand.");
        }
    }

    // False where someone has changed it since.
    private static bool Put(string folder, RecordedFile file, IReadOnlyList<PathMove> moves)
    {
        var path = PathOf(folder, file.File);
        if (!File.Exists(path) && moves.FirstOrDefault(move => file.File == move.From || file.File.StartsWith($"{move.From}/", StringComparison.Ordinal)) is { } moved)
        {
            path = PathOf(folder, moved.To + file.File[moved.From.Length..]);
        }

        if (!File.Exists(path))
        {
            return false;
        }

        var bytes = File.ReadAllBytes(path);
        return Digest(bytes) == file.Before ? SafeFile.TryReplace(path, bytes, file.After) : bytes.AsSpan().SequenceEqual(file.After);
    }

    private static void Move(string from, string to)
    {
        if (Directory.Exists(from) && !Path.Exists(to))
        {
            Directory.Move(from, to);
        }
        else if (File.Exists(from) && !Path.Exists(to))
        {
            File.Move(from, to);
        }
    }

    // What was chalked up for a build follows it.
    private static Slate Moved(Slate slate, PathMove build)
    {
        string Name(string path) => path[(path.LastIndexOf('/') + 1)..];
        return slate with
        {
            Stint = slate.Stint is { } stint && stint.Build == Name(build.From) ? stint with { Build = Name(build.To) } : slate.Stint,
            Unwritten = slate.Unwritten is { } entry && entry.File.StartsWith($"{build.From}/", StringComparison.Ordinal) ? entry with { File = build.To + entry.File[build.From.Length..] } : slate.Unwritten,
        };
    }

    private static byte[] Bytes(FileChange file, string text) => new MakersFile("", "", file.HasMark).Bytes(text);

    private static string PathOf(string folder, string file) => Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar));

    private static string RecordIn(string folder) => Path.Combine(folder, SlateFile.Folder, "change.json");

    private static string Digest(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}

/// <summary>A change as it stands on disk.</summary>
/// <param name="Files">The files.</param>
/// <param name="Moves">What gets another name.</param>
internal sealed record ChangeRecord(IReadOnlyList<RecordedFile> Files, IReadOnlyList<PathMove> Moves);

/// <summary>A file of a change.</summary>
/// <param name="File">The file, from the journal's folder.</param>
/// <param name="Before">The digest of what it held.</param>
/// <param name="After">What it will hold.</param>
internal sealed record RecordedFile(string File, string Before, byte[] After);

/// <summary>A change as JSON.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(ChangeRecord))]
internal sealed partial class ChangeJson : JsonSerializerContext;
