using System.Globalization;
using System.Security.Cryptography;

namespace Journal.Cli.Tests.Publishing;

/// <summary>A journal of as many entries as a test asks for, with room beside it for sites and a cache.</summary>
internal sealed class LargerJournal : IDisposable
{
    private readonly JournalOnDisk place = JournalOnDisk.Bare();
    private readonly int entries;
    private DateTime clock = new(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    public LargerJournal(int entries)
    {
        this.entries = entries;
        place.With("book/journal.yaml", "title: The Lean-to\nmaker: Wren\naddress: https://bench.example/\n")
            .With("book/tools.yaml", "- {id: lathe, title: Small lathe, kind: machine, got: had}\n")
            .With("book/drill/build.yaml", "title: Bench drill\nparts: [{id: head}, {id: quill}, {id: table}]\n");
        Tell("at first");
    }

    public string Folder => PathOf("book");

    public string Site => PathOf("out/site");

    public string Cache => PathOf("cache");

    public string PathOf(string path) => Path.Combine(place.Folder, path);

    /// <summary>
    /// Writes the text of so many entries, all where it is not said; a title that is told changes more pages than its own.
    /// Each time a minute later, long ago: what was written just now no publish trusts to stay.
    /// </summary>
    public void Tell(string words, int? some = null, bool inTitles = true)
    {
        clock += TimeSpan.FromMinutes(1);
        for (var i = 0; i < (some ?? entries); i++)
        {
            var date = new DateOnly(2010, 1, 1).AddDays(i * 2).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            var part = new[] { "head", "quill", "table" }[i % 3];
            var file = $"book/drill/{date}-{part}.md";
            place.With(
                file,
                $"---\ntitle: Evening {i}{(inTitles ? ", " + words : "")}\npart: {part}\noperation: turning\nhours: 1h{10 + (i % 40)}\ntools: lathe\n"
                + $"lessons: {{id: lesson-{i}, text: Keep the work cool the {i}. time.}}\n---\nIt went well, {words}.\n\n{string.Concat(Enumerable.Repeat("A long evening, told at length. ", 30))}\n");
            File.SetLastWriteTimeUtc(PathOf(file), clock);
        }
    }

    /// <summary>Adds a file beside the book.</summary>
    public LargerJournal With(string file, string text)
    {
        place.With(file, text);
        return this;
    }

    /// <summary>Begins to publish into <see cref="Site"/>, or to do something else.</summary>
    public RunningProgram Begin(params string[] words) =>
        RunningProgram.Start(Folder, Cache, words.Length > 0 ? words : ["publish", "--to", Site]);

    /// <summary>Publishes and says how it went.</summary>
    public async Task<Answer> Publish()
    {
        using var program = Begin();
        return await program.End();
    }

    /// <summary>The site as a publish from nothing, elsewhere and with no cache, makes it now.</summary>
    public async Task<IReadOnlyDictionary<string, string>> Clean()
    {
        var elsewhere = PathOf(Guid.NewGuid().ToString("N"));
        using var program = RunningProgram.Start(Folder, Path.Combine(elsewhere, "cache"), "publish", "--to", Path.Combine(elsewhere, "site"));
        var answer = await program.End();
        Assert.True(answer.Status == 0, answer.Error);
        var hashes = HashesOf(Path.Combine(elsewhere, "site"));
        Directory.Delete(elsewhere, recursive: true);
        return hashes;
    }

    /// <summary>Every file of a folder with the hash of its bytes; none where there is no folder.</summary>
    public static IReadOnlyDictionary<string, string> HashesOf(string folder) => !Directory.Exists(folder)
        ? new Dictionary<string, string>()
        : Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(
            path => Path.GetRelativePath(folder, path), path => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path))), StringComparer.Ordinal);

    /// <summary>Whether the site is byte for byte another.</summary>
    public bool Stands(IReadOnlyDictionary<string, string> other)
    {
        var here = HashesOf(Site);
        return here.Count == other.Count && here.All(file => other.TryGetValue(file.Key, out var hash) && hash == file.Value);
    }

    /// <summary>What lies beside the site.</summary>
    public IReadOnlyList<string> BesideTheSite() =>
        [.. Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(Site)!).Select(path => Path.GetFileName(path)).Where(name => name != "site")];

    /// <inheritdoc/>
    public void Dispose() => place.Dispose();
}
