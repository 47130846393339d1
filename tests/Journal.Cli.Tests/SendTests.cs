using System.Diagnostics;
using System.Text.RegularExpressions;
using Journal.Cli.Output;
using Journal.Site.Sending;

namespace Journal.Cli.Tests;

public sealed class SendTests : IDisposable
{
    private readonly JournalOnDisk journal = JournalOnDisk.Bare();

    public SendTests()
    {
        using var small = JournalOnDisk.Small();
        foreach (var file in Directory.EnumerateFiles(small.Folder, "*", SearchOption.AllDirectories))
        {
            journal.With(Path.Combine("journal", Path.GetRelativePath(small.Folder, file)), File.ReadAllText(file));
        }

        journal.With("journal/journal.yaml", "title: The Lean-to\ndestinations:\n  disk: {folder: ../www}\n");
    }

    private string Www => Path.Combine(journal.Folder, "www");

    [Fact]
    public void Send_AfterPublish_BringsTheSite_AndThenNothing()
    {
        Publish();

        var first = journal.Ask("send", "disk");
        var second = journal.Ask("send", "disk");

        Assert.Equal((0, ""), (first.Status, first.Error));
        Assert.Matches(@"^Sent \d+ files, [0-9.]+ kB, to `disk`\.\n$", first.Out);
        Assert.True(File.Exists(Path.Combine(Www, "drill", "entry", "2025-09-06-head.html")));
        Assert.Equal("`disk` is up to date; nothing to send.\n", second.Out);
    }

    [Fact]
    public void EntryTakenOut_IsTakenAwayThere()
    {
        Publish();
        journal.Ask("send", "disk");
        File.Delete(Path.Combine(journal.Folder, "journal/drill/2025-09-07-second.md"));

        Assert.Contains("Publish first", journal.Ask("send", "disk").Error, StringComparison.Ordinal);
        Publish();
        var sent = journal.Ask("send", "disk");

        Assert.Matches("deleted [0-9]+ files? that the site no longer has", sent.Out.ReplaceLineEndings(" "));
        Assert.False(File.Exists(Path.Combine(Www, "drill", "entry", "2025-09-07-second.html")));
    }

    [Fact]
    public void SiteOfAnotherJournal_IsRefused()
    {
        Publish();
        journal.Ask("send", "disk");
        var before = Directory.EnumerateFiles(Www, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToList();
        journal.With("other/journal.yaml", "title: Another\n").With("other/drill/build.yaml", "title: Drill\nparts: [head]\n");
        journal.Ask("publish", "--in", "other", "--to", "site2");

        var refused = journal.Ask("send", "disk", "--site", "site2");

        Assert.Equal(3, refused.Status);
        Assert.Contains("belongs to another journal. Give this one’s with `--site`", refused.Error, StringComparison.Ordinal);
        Assert.Equal(before, Directory.EnumerateFiles(Www, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void DryRun_ListsAndSendsNothing()
    {
        Publish();

        var answer = journal.Ask("send", "disk", "--dry-run");

        Assert.Equal(0, answer.Status);
        Assert.Contains("send  drill/entry/2025-09-06-head.html", answer.Lines);
        Assert.StartsWith("Would send ", answer.Lines[^1], StringComparison.Ordinal);
        Assert.False(Directory.Exists(Www));
    }

    [Fact]
    public void JournalChangedSincePublish_IsRefused()
    {
        Publish();
        File.SetLastWriteTimeUtc(Path.Combine(journal.Folder, "journal/drill/build.yaml"), DateTime.UtcNow.AddSeconds(2));

        var answer = journal.Ask("send", "disk");

        Assert.Equal(3, answer.Status);
        Assert.Contains("The site is older than the journal: drill/build.yaml was changed since.", answer.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Www));
    }

    [Fact]
    public void JournalChangedInWhatTheSiteDoesNotShow_IsWellAfterAnotherPublish()
    {
        Publish();
        journal.With("journal/journal.yaml", "# a remark\ntitle: The Lean-to\ndestinations:\n  disk: {folder: ../www}\n");
        Assert.Equal(3, journal.Ask("send", "disk").Status);

        Publish();

        Assert.Equal(0, journal.Ask("send", "disk").Status);
    }

    [Fact]
    public void JournalWithErrors_IsRefused()
    {
        Publish();
        journal.With("journal/drill/2025-10-01-slip.md", "---\npart: head\noperation: borring\nhours: 1h\n---\n");

        var answer = journal.Ask("send", "disk");

        Assert.Equal((1, ""), (answer.Status, answer.Out));
        Assert.Contains("There is no operation `borring`.", answer.Error, StringComparison.Ordinal);
        Assert.EndsWith("Nothing was sent.\n", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void NoSite_IsSaid()
    {
        var answer = journal.Ask("send", "disk");

        Assert.Equal(3, answer.Status);
        Assert.Contains("There is no published site", answer.Error, StringComparison.Ordinal);
        journal.With("site/.published-site.json", "{");
        answer = journal.Ask("send", "disk");
        Assert.Equal(3, answer.Status);
        Assert.Contains("is damaged", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownDestination_NamesTheNearest()
    {
        Publish();

        var answer = journal.Ask("send", "disc");

        Assert.Equal(2, answer.Status);
        Assert.Contains("Did you mean `disk`?", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Destinations_AreNowhereInTheSite()
    {
        journal.With("journal/journal.yaml", "title: The Lean-to\ndestinations:\n  disk: {folder: ../www}\n  host: {sftp: secret-host.example, user: secret-user, key: ~/secret-key}\n");
        Publish();

        Assert.All(
            Directory.EnumerateFiles(Path.Combine(journal.Folder, "site"), "*", SearchOption.AllDirectories),
            file => Assert.DoesNotContain("secret-", File.ReadAllText(file), StringComparison.Ordinal));
    }

    [Fact]
    public void Secrets_OfTheEnvironment_AreNotShownWhenTheyFail()
    {
        journal.With("journal/journal.yaml", "title: The Lean-to\ndestinations:\n  store: {s3: bench, service: \"http://127.0.0.1:9\"}\n");
        Publish();

        var answer = RunAsProcess(new() { ["AWS_ACCESS_KEY_ID"] = "the-id", ["AWS_SECRET_ACCESS_KEY"] = "hush-hush" }, "send", "store");

        Assert.Equal(3, answer.Status);
        Assert.Contains("could not be reached", answer.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("hush-hush", answer.Out + answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void ProcessKilledOnTheWay_ReadersHaveWholePages_AndTheNextSendFinishes()
    {
        for (var i = 0; i < 300; i++)
        {
            journal.With($"journal/drill/2025-08-01-more-{i}.md", $"---\npart: head\noperation: boring\nhours: 1m\nphotos: {{file: photos/p{i}.gif, caption: Picture {i}}}\n---\n");
            var picture = Convert.FromBase64String("R0lGODlhAQABAAAAACwAAAAAAQABAAACAkQBADs=");
            Directory.CreateDirectory(Path.Combine(journal.Folder, "journal/drill/photos"));
            File.WriteAllBytes(Path.Combine(journal.Folder, $"journal/drill/photos/p{i}.gif"), picture);
        }

        Publish();
        using (var program = BeginToSend())
        {
            var entries = Path.Combine(Www, "drill", "entry");
            while (!program.HasExited && !(Directory.Exists(entries) && Directory.EnumerateFiles(entries).Skip(20).Any()))
            {
                Thread.Sleep(1);
            }

            program.Kill();
            program.WaitForExit();
        }

        Assert.NotEmpty(Directory.EnumerateFiles(Www, "*.html", SearchOption.AllDirectories));
        Assert.Empty(MissingPictures());
        Assert.Equal(0, journal.Ask("send", "disk").Status);
        Assert.Empty(MissingPictures());
        Assert.Equal(FilesIn(Path.Combine(journal.Folder, "site")), FilesIn(Www));
    }

    [Fact]
    public void ProgressLine_TellsFilesBytesAndTimeLeft() =>
        Assert.Equal("Sending: 12 of 340 files, 2 MB of 10 MB, about 40 s left", SendProgressLine.Line(new SendProgress(12, 340, 2_000_000, 10_000_000), TimeSpan.FromSeconds(10)));

    public void Dispose() => journal.Dispose();

    private List<string> MissingPictures() =>
    [
        .. Directory.EnumerateFiles(Www, "*.html", SearchOption.AllDirectories).SelectMany(page => Regex.Matches(File.ReadAllText(page), "(?:src|srcset)=\"([^\" ]*photos/[^\" ]+)")
            .Select(match => Path.GetFullPath(match.Groups[1].Value, Path.GetDirectoryName(page)!))
            .Where(picture => !File.Exists(picture))),
    ];

    private static string[] FilesIn(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file)).Where(file => file[0] != '.').Order(StringComparer.Ordinal)];

    private void Publish() => Assert.Equal(0, journal.Ask("publish", "--to", "site").Status);

    private Process BeginToSend() => Process.Start(Piped("send", "disk"))!;

    private ProcessStartInfo Piped(params string[] words)
    {
        var start = BuiltProgram.With(words);
        (start.WorkingDirectory, start.RedirectStandardOutput, start.RedirectStandardError) = (journal.Folder, true, true);
        return start;
    }

    private Answer RunAsProcess(Dictionary<string, string> variables, params string[] words)
    {
        var start = Piped(words);
        foreach (var (name, value) in variables)
        {
            start.Environment[name] = value;
        }

        using var program = Process.Start(start)!;
        var error = program.StandardError.ReadToEndAsync();
        var output = program.StandardOutput.ReadToEnd();
        program.WaitForExit();
        return new Answer(program.ExitCode, output, error.Result);
    }
}
