using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Journal.Cli.Tests;
using Journal.Core.Writing.Bench;

namespace Journal.Bench.Tests;

/// <summary>
/// The built program, killed at random moments while three clients send: nothing that was acknowledged is missing, nothing is there
/// twice. <c>JOURNAL_KILLS_BENCH=200</c> kills it more often, <c>JOURNAL_FUZZ_SEED</c> at other moments.
/// </summary>
public sealed class KilledTests : IDisposable
{
    private readonly JournalOnDisk disk = JournalOnDisk.Small().With("journal.yaml", "title: The Lean-to\ntime-zone: Etc/UTC\n");
    private readonly ConcurrentDictionary<string, bool> acknowledged = new(StringComparer.Ordinal);
    private Process? program;

    [Fact]
    public async Task Killed_AtRandomMoments_LosesAndDoublesNothing()
    {
        var kills = Number("JOURNAL_KILLS_BENCH", 4);
        var random = new Random(Number("JOURNAL_FUZZ_SEED", 20261130));
        var clients = Enumerable.Range(0, 3).Select(i => new Sender(i, acknowledged)).ToList();
        for (var i = 0; i < kills; i++)
        {
            var address = Start();
            foreach (var client in clients)
            {
                await client.Meet(address);
            }

            var sending = clients.Select(client => client.SendUntilItFails()).ToList();
            await Task.Delay(random.Next(20, 400));
            program!.Kill(entireProcessTree: true);
            await program.WaitForExitAsync();
            await Task.WhenAll(sending);
            var slate = SlateFile.Peek(disk.Folder);
            var kept = slate.Jots.Select(jot => jot.Text).ToList();
            Assert.Equal(kept.Count, kept.Distinct().Count());
            Assert.Empty(acknowledged.Keys.Where(text => text.StartsWith("said", StringComparison.Ordinal)).Except(kept));
        }

        // What was sent when it was killed is sent again, as a phone does, and then all is there once.
        var last = Start();
        foreach (var client in clients)
        {
            await client.Meet(last);
            await client.SendAgain();
        }

        var all = SlateFile.Peek(disk.Folder).Jots.Select(jot => jot.Text).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(clients.SelectMany(client => client.Said).Order(StringComparer.Ordinal), all);
        Assert.True(all.Count > kills, "Nothing was tried.");
        Assert.DoesNotContain(Core.Checking.JournalReader.Read(disk.Folder, DateOnly.MaxValue).Problems, problem => problem.Severity == Core.Parsing.Problems.Severity.Error);
    }

    public void Dispose()
    {
        if (program is { HasExited: false })
        {
            program.Kill(entireProcessTree: true);
            program.WaitForExit();
        }

        program?.Dispose();
        disk.Dispose();
    }

    private Uri Start()
    {
        program?.Dispose();
        var start = BuiltProgram.With("bench", "--in", disk.Folder);
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        program = Process.Start(start)!;
        var address = new Uri(program.StandardOutput.ReadLine()!);
        _ = program.StandardError.ReadToEndAsync();
        return address;
    }

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : otherwise;

    // Sends as the page's script does: one after the other, each with an id of its own, the same id when it is sent again.
    private sealed class Sender(int number, ConcurrentDictionary<string, bool> acknowledged) : IDisposable
    {
        private BenchClient? client;
        private (string Id, string Text)? open;
        private int next;

        public List<string> Said { get; } = [];

        public async Task Meet(Uri address)
        {
            client?.Dispose();
            client = new BenchClient(address);
            await client.Look(address.PathAndQuery);
        }

        public async Task SendUntilItFails()
        {
            try
            {
                while (true)
                {
                    await SendOne();
                }
            }
            catch (Exception e) when (e is HttpRequestException or IOException)
            {
                // It was killed.
            }
        }

        public async Task SendAgain()
        {
            if (open is not null)
            {
                await SendOne();
            }
        }

        public void Dispose() => client?.Dispose();

        private async Task SendOne()
        {
            if (open is null)
            {
                next++;
                var name = string.Create(CultureInfo.InvariantCulture, $"{number}-{next}");
                open = ($"0123456789abcdef-{name}", $"said {name}");
                Said.Add(open.Value.Text);
            }

            var (id, text) = open.Value;
            await client!.PostByScript("/tonight/remark", ("token", client.Token), ("id", id), ("text", text));
            Assert.Contains("\"done\":true", client.Text, StringComparison.Ordinal);
            acknowledged[text] = true;
            open = null;
        }
    }
}
