using System.Diagnostics;
using Journal.Tests.Shared;

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
        var inTheMidst = 0;
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

            inTheMidst += await KillWhileWriting(TimeSpan.FromMilliseconds(i / 2), bench.Disk.Folder, words) ? 1 : 0;

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

        Tries.Add("kills", 24);

        // Some must have been caught between the first byte and the last, or nothing was tried.
        Assert.InRange(inTheMidst, 1, 24);
    }

    /// <summary>
    /// Waits until the program begins to write (the slate says so first), a little longer, and kills it; whether it was
    /// still at it.
    /// </summary>
    private static async Task<bool> KillWhileWriting(TimeSpan delay, string folder, string[] words)
    {
        var begun = new TaskCompletionSource();
        using var watcher = new FileSystemWatcher(Path.Combine(folder, ".bench"), ".slate.json*");
        watcher.Created += (_, _) => begun.TrySetResult();
        watcher.EnableRaisingEvents = true;
        var start = BuiltProgram.With(words);
        (start.WorkingDirectory, start.RedirectStandardInput, start.RedirectStandardOutput, start.RedirectStandardError) = (folder, true, true, true);
        using var program = Process.Start(start)!;
        await Task.WhenAny(program.WaitForExitAsync(), begun.Task);
        await Task.Delay(delay);
        var isAtIt = !program.HasExited;
        program.Kill();
        await program.WaitForExitAsync();
        return isAtIt;
    }
}
