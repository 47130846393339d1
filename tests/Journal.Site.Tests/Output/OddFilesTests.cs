using System.Diagnostics;
using System.Net.Sockets;
using Journal.Cli.Tests;
using Journal.Site.Publishing;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Output;

/// <summary>Pipes, sockets, links and crowds of files in a journal and in a maker's look: publishing neither waits for them nor shows them.</summary>
public sealed class OddFilesTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task Publish_WithPipesSocketsAndLinks_DoesNotHangAndGivesWhatItGivesWithoutThem()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare();
        SiteOutcome Publish(string to, string look) => SitePublisher.Publish(new PublishOrder(journal.Folder, elsewhere.PathOf(to), Journals.Today, elsewhere.PathOf(look)) { Cache = elsewhere.PathOf("cache") });
        elsewhere.With("look/extra.txt", "more").With("plain/extra.txt", "more");
        Publish("plain-site", "plain");
        await Pipe(journal.PathOf("drill/photos.jpg"), journal.PathOf("drill/notes.txt"), journal.PathOf("plans/pipe.txt"), elsewhere.PathOf("look/style.txt"));
        File.CreateSymbolicLink(journal.PathOf("drill/zero.jpg"), "/dev/zero");
        File.CreateSymbolicLink(elsewhere.PathOf("look/zero.txt"), "/dev/zero");
        Directory.CreateSymbolicLink(elsewhere.PathOf("look/round"), elsewhere.PathOf("look"));
        Directory.CreateSymbolicLink(journal.PathOf("drill/round"), journal.Folder);
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(journal.PathOf("drill/socket.jpg")));

        var first = await Task.Run(() => Publish("site", "look")).WaitAsync(Patience);
        var again = await Task.Run(() => Publish("site", "look")).WaitAsync(Patience);

        Assert.True(first.Published is not null && again.Published is not null);
        var (wanted, found) = (new SiteOnDisk(elsewhere.PathOf("plain-site")).Hashes, new SiteOnDisk(elsewhere.PathOf("site")).Hashes);
        Assert.Equal(["style.txt"], found.Keys.Except(wanted.Keys));
        Assert.All(wanted.Where(file => file.Key != ".published-site.json"), file => Assert.Equal(file.Value, found[file.Key]));
    }

    [Fact]
    public async Task Check_PipesAndLinksToDevicesWithNamesThatAreRead_ShowsNoLineOfThem()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var journal = JournalOnDisk.Small();
        File.CreateSymbolicLink(journal.PathOf("drill/2025-09-30-zero.md"), "/dev/zero");
        File.Delete(journal.PathOf("journal.yaml"));
        await Pipe(journal.PathOf("journal.yaml"), journal.PathOf("drill/2025-09-30-pipe.md"));

        var answer = await Task.Run(() => journal.AskToday("check")).WaitAsync(Patience);

        Assert.Equal(1, answer.Status);
        Assert.Contains("drill/2025-09-30-zero.md", answer.Out, StringComparison.Ordinal);
        Assert.Contains("It is a pipe, not a file", answer.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(".site.publishing", "no publish wrote it")]
    [InlineData("site/.published-site.json", "is damaged")]
    public async Task Publish_WherePipesHaveNamesOfItsOwn_RefusesAndLeavesThem(string name, string why)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var journal = JournalOnDisk.Small();
        Directory.CreateDirectory(journal.PathOf("site"));
        await Pipe(journal.PathOf(name));

        var answer = await Task.Run(() => journal.AskToday("publish", "--to", "site")).WaitAsync(Patience);

        Assert.Equal(3, answer.Status);
        Assert.Contains(why, answer.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(journal.PathOf(name)));
    }

    [Fact]
    public void Publish_WithThousandsOfOtherFiles_DoesNotMindThem()
    {
        using var journal = JournalOnDisk.Small();
        var plain = journal.Publish().Hashes;
        Directory.CreateDirectory(journal.PathOf("drill/photos"));
        for (var i = 0; i < 5000; i++)
        {
            File.WriteAllBytes(journal.PathOf($"drill/photos/{i}.jpg"), []);
        }

        var watch = Stopwatch.StartNew();
        var site = journal.Publish();

        Assert.Equal(plain, site.Hashes);
        Assert.True(watch.Elapsed < Patience, $"took {watch.Elapsed}");
    }

    [Fact]
    public void Addresses_OfOddNames_DifferByMoreThanCase()
    {
        using var journal = JournalOnDisk.Small()
            .WithPicture("drill/Photos/A\nb.PNG", 10).WithPicture("drill/Photos/a\nb.png", 20).WithPicture("drill/Photos/\u202Ee\u0301 🔩.png", 30).WithPicture("drill/Photos/é 🔩.png", 40).WithPicture("drill/Photos/CON.png", 50)
            .WithEntry("drill/2025-09-29-names.md", "photos:\n  - {file: \"Photos/A\\nb.PNG\", alt: A}\n  - {file: \"Photos/a\\nb.png\", alt: A}\n  - {file: \"Photos/\\u202Ee\\u0301 🔩.png\", alt: A}\n  - {file: \"Photos/é 🔩.png\", alt: A}\n  - {file: Photos/CON.png, alt: A}");

        var files = journal.Publish().Files;

        Assert.Equal(files.Count, files.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(files, file => Assert.Matches("^[a-z0-9/.-]+$", file));
        Assert.DoesNotContain(files.SelectMany(file => file.Split('/')).Select(step => step.Split('.')[0]), step => step is "con" or "nul" or "aux" or "prn");
        Assert.Equal(5, files.Where(file => file.StartsWith("photos/", StringComparison.Ordinal)).Select(file => file.Split('-')[0]).Distinct().Count());
    }

    private static async Task Pipe(params string[] paths)
    {
        foreach (var path in paths)
        {
            using var made = Process.Start("mkfifo", [path]);
            await made.WaitForExitAsync();
        }
    }
}
