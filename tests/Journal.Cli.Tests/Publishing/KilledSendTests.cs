using System.Diagnostics;
using System.Globalization;
using Journal.Tests.Shared;

namespace Journal.Cli.Tests.Publishing;

/// <summary>
/// The built program, killed by the system at one step of a send after the other. The next send finishes and clears up. (Servers:
/// <c>InterruptedSendTests</c> of the site.)
/// </summary>
/// <remarks>Some of the steps; JOURNAL_KILLS=all takes every one.</remarks>
public sealed class KilledSendTests : IDisposable
{
    private readonly JournalOnDisk journal = JournalOnDisk.Bare();
    private int turn;

    public KilledSendTests()
    {
        using var small = JournalOnDisk.Small();
        foreach (var file in Directory.EnumerateFiles(small.Folder, "*", SearchOption.AllDirectories))
        {
            journal.With(Path.Combine("journal", Path.GetRelativePath(small.Folder, file)), File.ReadAllText(file));
        }

        journal.With("journal/journal.yaml", "title: The Lean-to\ndestinations:\n  disk: {folder: ../www}\n  page: {git: ../bench.git, branch: pages}\n");
    }

    private static bool TakesAll => Environment.GetEnvironmentVariable("JOURNAL_KILLS") == "all";

    private string Cache => Path.Combine(journal.Folder, "cache");

    // What the program does to a folder is what it asks of the system: whatever it has done before a call, and nothing after it,
    // is on the disk when that call kills it. strace counts the calls of each thread by itself.
    [Fact]
    public async Task ToAFolder_AtEveryCallThatChangesIt()
    {
        await Change();
        Assert.Equal(0, (await Send([], "disk")).Status);
        var killed = 0;
        for (var call = 1; ; call += TakesAll ? 1 : 6)
        {
            await Change();
            var isLast = (await Send(Killer(call), "disk")).Status == 0;
            killed += isLast ? 0 : 1;
            Tries.Add("kills", 1);

            // Half of the times the next send is killed too, when it has just begun; or the site was published anew before it.
            if (killed % 2 == 0)
            {
                await Change();
            }
            else
            {
                await Send(Killer(3 + (killed / 2 % 8)), "disk");
            }

            await AssertThatTheNextSendFinishes("disk");
            Assert.Equal(Contents("site"), Contents("www"));
            Assert.DoesNotContain(Directory.EnumerateDirectories(PathOf("www"), "*", SearchOption.AllDirectories), folder => !Directory.EnumerateFileSystemEntries(folder).Any());
            if (isLast)
            {
                Assert.InRange(killed, TakesAll ? 20 : 4, 1000);
                return;
            }
        }
    }

    // A `git` before the true one counts its calls, and at one of them kills the program that called it.
    [Theory]
    [InlineData("before")]
    [InlineData("within")]
    [InlineData("after")]
    public async Task ToABranch_AtEveryCallOfGit(string moment)
    {
        await RunGit("init", "--quiet", "--bare", PathOf("bench.git"));
        var killer = GitThatKills();
        for (var call = 1; ; call++)
        {
            await Change();
            File.Delete(PathOf("calls"));
            File.Delete(PathOf("calls.done"));
            var answer = await Send(["env", $"PATH={killer}:{Environment.GetEnvironmentVariable("PATH")}", $"KILL_AT={call}", $"KILL_WHEN={moment}"], "page");
            if (answer.Status == 0)
            {
                Assert.InRange(call, 6, 20);
                return;
            }

            Tries.Add("kills", 1);
            for (var i = 0; i < 500 && !File.Exists(PathOf("calls.done")); i++)
            {
                await Task.Delay(20);
            }

            await AssertThatTheNextSendFinishes("page");
            await RunGit("--git-dir", PathOf("bench.git"), "--work-tree", Directory.CreateDirectory(PathOf("seen")).FullName, "checkout", "--quiet", "--force", "pages", "--", ".");
            Assert.Equal(Contents("site"), Contents("seen"));
            Directory.Delete(PathOf("seen"), recursive: true);
        }
    }

    public void Dispose() => journal.Dispose();

    private async Task AssertThatTheNextSendFinishes(string destination)
    {
        var next = await Send([], destination);
        Assert.Equal((0, ""), (next.Status, next.Error));
        Assert.Empty(Directory.EnumerateFileSystemEntries(journal.Folder, ".site.*"));
        Assert.Empty(Directory.Exists(Path.Combine(Cache, "at-work")) ? Directory.EnumerateFileSystemEntries(Path.Combine(Cache, "at-work")) : []);
    }

    // An entry more in every second edition, and a build in every third: pages come, change and go, with folders.
    private async Task Change()
    {
        turn++;
        const string Entry = "---\npart: head\noperation: turning\nhours: 1h\n---\n";
        WithOrWithout(turn % 2 == 0, "journal/drill/2025-10-01-more.md", Entry + string.Create(CultureInfo.InvariantCulture, $"Edition {turn}.\n"));
        WithOrWithout(turn % 3 == 0, "journal/vice/build.yaml", "title: A vice\nparts: [head]\n");
        WithOrWithout(turn % 3 == 0, "journal/vice/2025-10-02-jaw.md", Entry);
        using var publish = RunningProgram.Start(journal.Folder, Cache, "publish", "--in", "journal", "--to", "site");
        Assert.Equal(0, (await publish.End()).Status);
    }

    private void WithOrWithout(bool isThere, string file, string text)
    {
        if (isThere)
        {
            journal.With(file, text);
        }
        else
        {
            File.Delete(PathOf(file));
        }
    }

    private async Task<Answer> Send(IReadOnlyList<string> before, string destination)
    {
        using var program = RunningProgram.StartBehind(before, journal.Folder, Cache, "send", destination, "--in", "journal");
        return await program.End();
    }

    private static string[] Killer(int call)
    {
        const string Calls = "pwrite64,rename,unlink,mkdir,rmdir,ftruncate";
        return ["strace", "-f", "-qq", "-o", "/dev/null", "-e", $"trace={Calls}", "-e", string.Create(CultureInfo.InvariantCulture, $"inject={Calls}:signal=KILL:when={call}")];
    }

    private string GitThatKills()
    {
        var folder = Directory.CreateDirectory(PathOf("killer")).FullName;
        var program = Path.Combine(folder, "git");
        File.WriteAllText(program, $"""
            #!/bin/sh
            PATH={Environment.GetEnvironmentVariable("PATH")}
            calls={PathOf("calls")}
            echo >> $calls
            [ $(wc -l < $calls) -eq $KILL_AT ] || exec git "$@"
            case $KILL_WHEN in
              before) kill -9 $PPID ;;
              within) git "$@" <&0 & sleep 0.01; kill -9 $PPID; wait ;;
              after) git "$@"; kill -9 $PPID ;;
            esac
            touch $calls.done
            """);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        return folder;
    }

    private static async Task RunGit(params string[] words)
    {
        using var git = Process.Start(new ProcessStartInfo("git", words))!;
        await git.WaitForExitAsync();
        Assert.Equal(0, git.ExitCode);
    }

    private string PathOf(string name) => Path.Combine(journal.Folder, name);

    // The lists of site and destination differ by nature, and tell nothing to readers.
    private SortedDictionary<string, string> Contents(string folder) => new(
        Directory.EnumerateFiles(PathOf(folder), "*", SearchOption.AllDirectories)
            .Where(path => Path.GetFileName(path) is not (".published-site.json" or ".sent-site.json"))
            .ToDictionary(path => Path.GetRelativePath(PathOf(folder), path), File.ReadAllText),
        StringComparer.Ordinal);
}
