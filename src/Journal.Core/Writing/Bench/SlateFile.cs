using System.Security.Cryptography;
using System.Text.Json;
using Journal.Core.Parsing.Files;
using Journal.Core.Writing.Files;

namespace Journal.Core.Writing.Bench;

/// <summary>
/// The slate on disk: <c>.bench/slate.json</c> in the journal's folder, which no reading of the journal looks into.
/// It is written as a whole and forced to the disk, so that it outlives a crash or a reboot.
/// </summary>
public sealed class SlateFile : IDisposable
{
    /// <summary>The folder of what the program keeps between commands.</summary>
    public const string Folder = ".bench";

    private readonly string journal;
    private readonly FileStream hold;

    private SlateFile(string journal, FileStream hold) => (this.journal, this.hold, Slate) = (journal, hold, Read(journal));

    /// <summary>What stands on it.</summary>
    public Slate Slate { get; private set; }

    private string Path => PathIn(journal);

    /// <summary>
    /// Takes the slate into one's hands; no other command writes to the journal meanwhile. What a crash left half done
    /// is put right.
    /// </summary>
    /// <param name="journal">The journal's folder.</param>
    /// <param name="tell">Is told once for whom it waits, if that takes longer than a moment.</param>
    /// <exception cref="IOException">Another command has had it for a minute.</exception>
    public static SlateFile Take(string journal, Action<string>? tell = null)
    {
        SafeFile.MakeFolder(System.IO.Path.GetFullPath(System.IO.Path.Combine(journal, Folder)));
#pragma warning disable CA2000 // The slate that is returned lets go of it.
        var hold = WritingLock.Take(System.IO.Path.Combine(journal, Folder, "writing"), tell);
#pragma warning restore CA2000
        try
        {
            var file = new SlateFile(journal, hold);
            file.Settle();
            Names.UnfinishedChange.Settle(journal, file);
            return file;
        }
        catch
        {
            hold.Dispose();
            throw;
        }
    }

    /// <summary>What stands on the slate, for those who only look.</summary>
    public static Slate Peek(string journal) => Read(journal);

    /// <summary>Puts another slate in the place of this one.</summary>
    public void Keep(Slate slate)
    {
        SafeFile.Replace(Path, JsonSerializer.SerializeToUtf8Bytes(slate, SlateJson.Default.Slate));
        Slate = slate;
    }

    /// <summary>
    /// Makes a file of the journal and takes from the slate what went into it, as one step: a crash at any moment leaves
    /// both as they were, or is settled by the next command.
    /// </summary>
    /// <param name="handover">What is written and taken; its digest is worked out here.</param>
    /// <param name="bytes">The file's content.</param>
    /// <returns>False, with nothing changed, where there is such a file.</returns>
    public bool Create(Handover handover, byte[] bytes) =>
        !File.Exists(PathOf(handover)) && HandOver(handover, bytes, path => SafeFile.TryCreate(path, bytes));

    /// <summary>The same with a file that is there and still holds what was read from it.</summary>
    /// <param name="handover">What is written and taken; its digest is worked out here.</param>
    /// <param name="read">What was read from the file.</param>
    /// <param name="bytes">What shall stand in it.</param>
    /// <returns>False, with nothing changed, where someone saved the file meanwhile.</returns>
    public bool Replace(Handover handover, byte[] read, byte[] bytes) =>
        HandOver(handover, bytes, path => SafeFile.TryReplace(path, read, bytes));

    private bool HandOver(Handover handover, byte[] bytes, Func<string, bool> tryWrite)
    {
        Keep(Slate with { Handover = handover with { Sha256 = Digest(bytes) } });
        if (!tryWrite(PathOf(handover)))
        {
            Keep(Slate with { Handover = null });
            return false;
        }

        Settle();
        return true;
    }

    private string PathOf(Handover handover) => System.IO.Path.Combine(journal, handover.File.Replace('/', System.IO.Path.DirectorySeparatorChar));

    /// <inheritdoc/>
    public void Dispose() => hold.Dispose();

    private void Settle()
    {
        if (Slate.Handover is not { } handover)
        {
            return;
        }

        var path = PathOf(handover);
        var isWritten = File.Exists(path) && Digest(File.ReadAllBytes(path)) == handover.Sha256;
        Keep(isWritten ? After(Slate, handover) : Slate with { Handover = null });
    }

    private static Slate After(Slate slate, Handover handover)
    {
        var done = handover.Action is { } action ? slate.WithDone(action) : slate;
        return done with
        {
            Stint = handover.TakesStint ? null : slate.Stint,
            Jots = [.. slate.Jots.Where(jot => !handover.Takes(jot))],
            Unwritten = handover.Unwritten,
            Handover = null,
        };
    }

    private static Slate Read(string journal)
    {
        try
        {
            var slate = JsonSerializer.Deserialize(Bytes(PathIn(journal)), SlateJson.Default.Slate) ?? new Slate();
            return IsWhole(slate) ? slate : throw new JsonException("something is missing, or a date is impossible");
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return new Slate();
        }
        catch (JsonException e)
        {
            throw new IOException($"{PathIn(journal)} cannot be read ({e.Message}). Copy what you want to keep from it, then delete it.", e);
        }
    }

    private static byte[] Bytes(string path) =>
        UnixFile.IsPipe(path) ? throw new JsonException("it is a pipe, not a file") : File.ReadAllBytes(path);

    // What reads JSON lets null through where nothing may be missing.
    private static bool IsWhole(Slate slate) =>
        slate.Jots.All(jot => jot is { Text: not null } && IsOfOurTime(jot.At) && jot.Keys.Values.All(value => value is not null))
        && slate.Done.All(action => action is not null)
        && (slate.Stint is not { } stint || (stint.Build is not null && IsOfOurTime(stint.Began) && stint.Pauses.All(IsWhole)))
        && slate.Unwritten is null or { File: not null }
        && slate.Handover is null or { File: not null, Sha256: not null, Unwritten: null or { File: not null } };

    private static bool IsWhole(Pause? pause) => pause is not null && IsOfOurTime(pause.From) && (pause.To is not { } to || IsOfOurTime(to));

    private static bool IsOfOurTime(DateTimeOffset instant) => instant.Year is > 1900 and < 2200;

    /// <summary>Where the slate of a journal lies.</summary>
    public static string PathIn(string journal) => System.IO.Path.Combine(journal, Folder, "slate.json");

    private static string Digest(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
