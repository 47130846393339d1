using System.Security.Cryptography;
using System.Text;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Files;
using Journal.Site.Search;
using Journal.Site.Templates;
using Journal.Site.Text;

namespace Journal.Site.Republishing;

/// <summary>
/// The record of a site's last publish on disk, in two files: what every publish asks, and the find index, which only a
/// change of words asks for. Both are whole or not used.
/// </summary>
internal sealed class RecordFile
{
    private const int LongestKnown = 100_000;
    private readonly string path;

    /// <summary>The record of a site in a cache.</summary>
    public RecordFile(string cache, string site) =>
        path = Path.Combine(cache, "published", Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(site)))[..24]);

    /// <summary>The record; null where there is none that can be used.</summary>
    public PublishRecord? Read() => Read(path + ".record", ReadRecord);

    /// <summary>The find index that goes with a record; null where there is none that can be used, or that of another publish.</summary>
    public FindIndex? ReadIndex(PublishRecord record) => Read(path + ".words", from => from.ReadInt64() == record.Surveyed ? ReadIndex(from) : null);

    /// <summary>Writes both; where that fails there is none.</summary>
    public void Write(PublishRecord record, FindIndex index)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.Delete(path + ".record");
            Write(path + ".words", writer =>
            {
                writer.Write(record.Surveyed);
                WriteIndex(writer, index);
            });
            Write(path + ".record", writer => WriteRecord(writer, record));
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
            File.Delete(path + ".record");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What it says of the site's files will not fit any more, so it will not be used.
        }
    }

    private static T? Read<T>(string file, Func<BinaryReader, T?> read)
        where T : class
    {
        try
        {
            if (!File.Exists(file))
            {
                return null;
            }

            var bytes = File.ReadAllBytes(file);
            var content = bytes.AsMemory(0, bytes.Length - SHA256.HashSizeInBytes);
            if (!SHA256.HashData(content.Span).AsSpan().SequenceEqual(bytes.AsSpan(content.Length)))
            {
                return null;
            }

            using var reader = new BinaryReader(new MemoryStream(bytes, 0, content.Length));
            return read(reader);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or FormatException or InvalidOperationException)
        {
            return null;
        }
    }

    private static void Write(string file, Action<BinaryWriter> write)
    {
        using var bytes = new MemoryStream();
        using var writer = new BinaryWriter(bytes);
        write(writer);
        writer.Flush();
        writer.Write(SHA256.HashData(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)));
        writer.Flush();
        var draft = $"{file}.{Environment.ProcessId}.draft";
        DiskFile.Write(draft, bytes.GetBuffer().AsSpan(0, (int)bytes.Length));
        File.Move(draft, file, overwrite: true);
    }

    private static void WriteRecord(BinaryWriter to, PublishRecord record)
    {
        to.Write(record.Look);
        to.Write(record.Folder);
        to.Write(record.Today.DayNumber);
        to.Write(record.SameUntil.DayNumber);
        to.Write(record.Surveyed);
        to.Write(record.Home);
        WriteStamps(to, record.Sources);
        WriteStamps(to, record.Site);
        WriteProblems(to, record.Problems);
        var published = record.Published;
        foreach (var count in (int[])[published.Builds, published.Entries, published.Pages, published.Pictures, published.Files])
        {
            to.Write(count);
        }

        WriteProblems(to, published.Problems);
        to.Write(record.Story.Texts);
        WriteList(to, [.. record.Story.Counted], term =>
        {
            to.Write(term.Key);
            to.Write(term.Value);
        });
        WriteList(to, record.Entries, entry =>
        {
            to.Write(entry.Key);
            to.Write(entry.Value.Facts);
            to.Write(entry.Value.Address);
            WriteList(to, entry.Value.Slots, slot => WriteSlot(to, slot));
        });
    }

    private static PublishRecord ReadRecord(BinaryReader from) => new()
    {
        Look = from.ReadString(),
        Folder = from.ReadString(),
        Today = DateOnly.FromDayNumber(from.ReadInt32()),
        SameUntil = DateOnly.FromDayNumber(from.ReadInt32()),
        Surveyed = from.ReadInt64(),
        Home = from.ReadString(),
        Sources = ReadStamps(from),
        Site = ReadStamps(from),
        Problems = ReadProblems(from),
        Published = new Published(from.ReadInt32(), from.ReadInt32(), from.ReadInt32(), from.ReadInt32(), from.ReadInt32(), 0, "", ReadProblems(from)),
        Story = LessonStory.As(from.ReadInt32(), ReadList(from, () => KeyValuePair.Create(from.ReadString(), from.ReadInt32()))),
        Entries = ReadList(from, () => (File: from.ReadString(), Entry: new EntrySlots(from.ReadString(), from.ReadString(), ReadList(from, () => ReadSlot(from)))))
            .ToDictionary(entry => entry.File, entry => entry.Entry, StringComparer.Ordinal),
    };

    private static void WriteSlot(BinaryWriter to, WordSlot slot)
    {
        to.Write(slot.Address);
        to.Write(slot.Offset);
        to.Write(slot.Length);
        to.Write((byte)slot.Kind);
        to.Write(slot.About);
        WriteList(to, slot.Answers.Links, link =>
        {
            to.Write(link.Key);
            WriteMaybe(to, link.Value);
        });
        WriteList(to, slot.Answers.Pictures, picture =>
        {
            to.Write(picture.Key);
            to.Write(picture.Value is not null);
            if (picture.Value is { } shown)
            {
                WriteMaybe(to, shown.Address);
                to.Write(shown.Html.ToString());
            }
        });
    }

    private static WordSlot ReadSlot(BinaryReader from) => new(
        from.ReadString(),
        from.ReadInt32(),
        from.ReadInt32(),
        (SlotKind)from.ReadByte(),
        from.ReadString(),
        new TextAnswers(
            ReadList(from, () => KeyValuePair.Create(from.ReadString(), ReadMaybe(from))).ToDictionary(StringComparer.Ordinal),
            ReadList(from, () => KeyValuePair.Create(from.ReadString(), from.ReadBoolean() ? new TextPicture(ReadMaybe(from), new SafeHtml(from.ReadString())) : null)).ToDictionary(StringComparer.Ordinal)));

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

    private static void WriteIndex(BinaryWriter to, FindIndex index)
    {
        WriteList(to, index.Rows, row =>
        {
            to.Write((byte)row.Kind);
            to.Write(row.Title);
            to.Write(row.Address);
            to.Write(row.About);
            to.Write7BitEncodedInt(row.Length);
            to.Write7BitEncodedInt(row.OwnWords);
        });
        WriteList(to, index.Pieces, piece =>
        {
            to.Write(piece.Name);
            to.Write(piece.First);
            to.Write(piece.Count);
            to.Write(piece.Stamp);
        });
        WriteList(to, index.Words.InOrder, word =>
        {
            to.Write(word.Word);
            to.Write7BitEncodedInt(word.Holders.Count);
            var last = 0;
            foreach (var number in word.Holders)
            {
                to.Write7BitEncodedInt(number - last);
                last = number;
            }
        });
    }

    private static FindIndex ReadIndex(BinaryReader from) => new(
        ReadList(from, () => new FindRow((FindKind)from.ReadByte(), from.ReadString(), from.ReadString(), from.ReadString(), from.Read7BitEncodedInt(), from.Read7BitEncodedInt())),
        ReadList(from, () => new FindPiece(from.ReadString(), from.ReadInt32(), from.ReadInt32(), from.ReadString())),
        HeldWords.As(ReadList(from, () => (from.ReadString(), ReadHolders(from)))));

    private static List<int> ReadHolders(BinaryReader from)
    {
        var (left, last) = (from.Read7BitEncodedInt(), 0);
        var holders = new List<int>(left);
        for (; left > 0; left--)
        {
            last += from.Read7BitEncodedInt();
            holders.Add(last);
        }

        return holders;
    }

    private static void WriteMaybe(BinaryWriter to, string? text)
    {
        to.Write(text is not null);
        if (text is not null)
        {
            to.Write(text);
        }
    }

    private static string? ReadMaybe(BinaryReader from) => from.ReadBoolean() ? from.ReadString() : null;

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
