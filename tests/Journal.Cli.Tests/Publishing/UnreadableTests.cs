using System.Diagnostics;

namespace Journal.Cli.Tests.Publishing;

// The built program as a user who may not read or write everything; whoever runs the tests may be allowed all.
public sealed class UnreadableTests : IDisposable
{
    private const string Nobody = "65534";
    private static readonly string[] AsNobody = ["setpriv", $"--reuid={Nobody}", $"--regid={Nobody}", "--clear-groups"];
    private readonly LargerJournal journal = new(6);
    private readonly bool isRoot = Environment.IsPrivilegedProcess;

    [Fact]
    public async Task Publish_WhereSomethingMayNotBeRead_SaysWhatAndKeepsTheOldSite()
    {
        journal.With("look/pages/mine.html", "For later.").With("look/pieces/mine.html", "For later.");
        Assert.Equal(0, (await Publish()).Status);
        var old = LargerJournal.HashesOf(journal.Site);
        journal.Tell("once more");
        foreach (var (closed, status, told) in new[]
        {
            ("book/drill/2010-01-01-head.md", 1, "drill/2010-01-01-head.md"),
            ("book/drill/build.yaml", 1, "drill/build.yaml"),
            ("book/drill", 1, "drill"),
            ("book/tools.yaml", 1, "tools.yaml"),
            ("book/journal.yaml", 1, "journal.yaml"),
            ("look/pages/mine.html", 3, "look/pages/mine.html"),
            ("look/pieces", 3, "look/pieces"),
            ("out/site", 3, "out/site"),
            ("out", 3, "out"),
        })
        {
            var answer = await PublishWithout(closed);

            var complaint = string.Join(' ', answer.Error.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            Assert.Equal((closed, status, ""), (closed, answer.Status, answer.Out));
            Assert.Contains(told, complaint, StringComparison.Ordinal);
            Assert.Contains("Check its permissions", complaint, StringComparison.Ordinal);
            Assert.Contains("Nothing was published", complaint, StringComparison.Ordinal);
            Assert.True(journal.Stands(old), closed);
            Assert.Empty(journal.BesideTheSite());
        }

        Assert.Equal(0, (await Publish()).Status);
        Assert.True(journal.Stands(await journal.Clean()));
    }

    public void Dispose() => journal.Dispose();

    private async Task<Answer> PublishWithout(string closed)
    {
        HandOver();
        Do("chmod", "0", journal.PathOf(closed));
        var answer = await Publish();
        Do("chmod", "700", journal.PathOf(closed));
        return answer;
    }

    private async Task<Answer> Publish()
    {
        HandOver();
        using var program = RunningProgram.StartBehind(isRoot ? AsNobody : [], journal.Folder, journal.Cache, "publish", "--to", journal.Site, "--template", journal.PathOf("look"));
        return await program.End();
    }

    private void HandOver()
    {
        if (isRoot)
        {
            Do("chown", "-R", $"{Nobody}:{Nobody}", Path.GetDirectoryName(journal.Folder)!);
        }
    }

    private static void Do(string program, params string[] words)
    {
        using var process = Process.Start(program, words);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
