using System.Security.Cryptography;
using System.Text;
using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Files;
using Journal.Site.Output;

namespace Journal.Site.Publishing;

/// <summary>The record of a site's last publish on disk; it is whole or not used.</summary>
internal sealed class RecordFile
{
    private const int LongestKnown = 100_000;
    private readonly string path;

    /// <summary>The record of a site in a cache.</summary>
    public RecordFile(string cache, string site) =>
        path = Path.Combine(cache, "published", Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(site)))[..24] + ".record");

    /// <summary>The record; null where there is none that can be used.</summary>
    public PublishRecord? Read()
    {
        try
        {
            if (!File.Exists(path))
            {
                return null;
            }

            var bytes = File.ReadAllBytes(path);
            var content = bytes.AsMemory(0, bytes.Length - SHA256.HashSizeInBytes);
            if (!SHA256.HashData(content.Span).AsSpan().SequenceEqual(bytes.AsSpan(content.Length)))
            {
                return null;
            }

            using var reader = new BinaryReader(new MemoryStream(bytes, 0, content.Length));
            return ReadRecord(reader);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or FormatException or InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>Writes what a publish saw and made; where that fails there is no record, and the next one makes all anew.</summary>
    public void Write(Survey survey, JournalReading reading, Published published, SiteFolder site)
    {
        if (survey.Sources is { } sources && FileStamps.OfSite(site.Target) is { } files)
        {
            Write(PublishRecord.Of(survey, sources, reading, published, files));
        }
    }

    private void Write(PublishRecord record)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.Delete(path);
            using var bytes = new MemoryStream();
            using var writer = new BinaryWriter(bytes);
            WriteRecord(writer, record);
            writer.Flush();
            writer.Write(SHA256.HashData(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)));
            writer.Flush();
            var draft = $"{path}.{Environment.ProcessId}.draft";
            DiskFile.Write(draft, bytes.GetBuffer().AsSpan(0, (int)bytes.Length));
            File.Move(draft, path, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A cache that cannot be written costs time and nothing else.
        }
    }

    /// <summary>Forgets the record: the site is about to change.</summary>
    public void Forget()
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What it says of the site's files will not fit any more, so it will not be used.
        }
    }

    private static void WriteRecord(BinaryWriter to, PublishRecord record)
    {
        to.Write(record.Look);
        to.Write(record.Folder);
        to.Write(record.Today.DayNumber);
        to.Write(record.SameUntil.DayNumber);
        to.Write(record.Surveyed);
        to.Write(record.IsAllSeen);
        WriteStamps(to, record.Sources);
        WriteStamps(to, record.Site);
        WriteProblems(to, record.Problems);
        var published = record.Published;
        foreach (var count in (int[])[published.Builds, published.Entries, published.Pages, published.Pictures, published.Files])
        {
            to.Write(count);
        }

        WriteProblems(to, published.Problems);
    }

    private static PublishRecord ReadRecord(BinaryReader from) => new()
    {
        Look = from.ReadString(),
        Folder = from.ReadString(),
        Today = DateOnly.FromDayNumber(from.ReadInt32()),
        SameUntil = DateOnly.FromDayNumber(from.ReadInt32()),
        Surveyed = from.ReadInt64(),
        IsAllSeen = from.ReadBoolean(),
        Sources = ReadStamps(from),
        Site = ReadStamps(from),
        Problems = ReadProblems(from),
        Published = new Published(from.ReadInt32(), from.ReadInt32(), from.ReadInt32(), from.ReadInt32(), from.ReadInt32(), 0, "", ReadProblems(from)),
    };

    private static void WriteStamps(BinaryWriter to, IReadOnlyDictionary<string, FileStamp> stamps) => WriteList(to, stamps, file =>
    {
        to.Write(file.Key);
        to.Write(file.Value.Length);
        to.Write(file.Value.Modified);
        to.Write((ulong)(file.Value.Contents >> 64));
        to.Write((ulong)file.Value.Contents);
    });

    private static Dictionary<string, FileStamp> ReadStamps(BinaryReader from) =>
        ReadList(from, () => KeyValuePair.Create(from.ReadString(), new FileStamp(from.ReadInt64(), from.ReadInt64(), new UInt128(from.ReadUInt64(), from.ReadUInt64())))).ToDictionary(StringComparer.Ordinal);

    private static void WriteProblems(BinaryWriter to, IReadOnlyList<Problem> problems) => WriteList(to, problems, problem =>
    {
        to.Write(problem.Kind.Code);
        to.Write(problem.Place.File);
        to.Write(problem.Place.Line);
        to.Write(problem.Place.Column);
        to.Write(problem.Message);
        to.Write(problem.Remedy);
    });

    private static List<Problem> ReadProblems(BinaryReader from) => ReadList(from, () => new Problem(
        ProblemTable.WithCode(from.ReadString()) ?? throw new FormatException("No problem has that code."),
        new Place(from.ReadString(), from.ReadInt32(), from.ReadInt32()),
        from.ReadString(),
        from.ReadString()));

    private static void WriteList<T>(BinaryWriter to, IReadOnlyCollection<T> list, Action<T> write)
    {
        to.Write(list.Count);
        foreach (var one in list)
        {
            write(one);
        }
    }

    private static List<T> ReadList<T>(BinaryReader from, Func<T> read)
    {
        var count = from.ReadInt32();
        var list = new List<T>(Math.Min(count, LongestKnown)); // Another program's record may say anything here.
        for (var at = 0; at < count; at++)
        {
            list.Add(read());
        }

        return list;
    }
}
