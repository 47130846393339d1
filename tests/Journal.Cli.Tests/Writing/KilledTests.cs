using System.Diagnostics;

namespace Journal.Cli.Tests.Writing;

// The built program, killed by the system at many moments while it writes.
public class KilledTests
{
    private const string Job = "  - {part: head, operation: boring, hours: 20m}\n";

    [Fact]
    public async Task Killed_AtAnyMoment_LeavesNoEntryHalfWritten()
    {
        using var bench = new AtTheBench();
        var whole = $"---\ndate: 2025-10-03\njobs:\n{Job}---\n" + string.Concat(Enumerable.Repeat("A long evening, told at length.\n", 2000));
        var clock = Stopwatch.StartNew();
        await KillAfter(Timeout.InfiniteTimeSpan, bench.Disk.Folder, ["write", "--hours", "1h", "--date", "2025-10-01"]);
        var whileItRuns = clock.Elapsed;
        var late = 0;
        for (var i = 0; i < 24; i++)
        {
            // Every fourth turn a stint ends into this long entry; else an entry is written anew, with a remark.
            bench.Disk.With("drill/2025-10-03-head.md", whole);
            bench.Ask("jot", "It sings");
            string[] words = i % 4 == 0 ? ["stint", "end", "--now"] : ["write", "--hours", "1h", "--title", "Killed", "--date", "2025-10-03"];
            if (i % 4 == 0)
            {
                bench.Ask("stint", "begin");
            }

            late += await KillAfter(whileItRuns * (0.4 + (i * 0.04)), bench.Disk.Folder, words) ? 1 : 0;

            var entry = bench.Text("drill/2025-10-03-head.md");
            Assert.True(entry == whole || (entry.Length > whole.Length && entry.EndsWith(whole[^100..], StringComparison.Ordinal) && entry.Replace(Job, "", StringComparison.Ordinal).Contains("hours: ", StringComparison.Ordinal)), entry[..200]);
            foreach (var name in bench.Entries().Where(name => name.StartsWith("2025-10-03-boring", StringComparison.Ordinal)))
            {
                var text = bench.Text($"drill/{name}");
                Assert.StartsWith("---\ntitle: Killed\ndate: 2025-10-03\npart: head\noperation: boring\nhours: 1h\n---\n", text, StringComparison.Ordinal);
                Assert.EndsWith("It sings\n", text, StringComparison.Ordinal);
                File.Delete(Path.Combine(bench.Disk.Folder, "drill", name));
            }

            Assert.Empty(bench.Problems());
            Assert.Equal(0, bench.Ask("stint", "show").Status);
            bench.Ask("stint", "end", "--drop");
        }

        // Some must have been killed before they were done, and some must have got through, or nothing was tried.
        Assert.InRange(late, 1, 23);
    }

    /// <summary>Whether the program was done before it was killed.</summary>
    private static async Task<bool> KillAfter(TimeSpan delay, string folder, string[] words)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "journal.dll"), .. words])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var program = Process.Start(start)!;
        await Task.WhenAny(program.WaitForExitAsync(), Task.Delay(delay));
        var isDone = program.HasExited;
        program.Kill();
        await program.WaitForExitAsync();
        return isDone;
    }
}
