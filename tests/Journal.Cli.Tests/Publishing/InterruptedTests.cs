using System.Diagnostics;

namespace Journal.Cli.Tests.Publishing;

// Ctrl-C and the system's request to end, sent to the built program at moments spread over its work.
public sealed class InterruptedTests : IDisposable
{
    // A second is promised; the machine that runs the tests may have others to serve.
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(3);
    private readonly LargerJournal journal = new(150);

    [Fact]
    public async Task Publish_StoppedAnywhere_EndsSoonAndSaysWhatStands()
    {
        const int Times = 8;
        var (sites, stopped) = (await TwoTellings.Of(journal), 0);
        for (var i = 1; i <= Times; i++)
        {
            using var program = journal.Begin();
            var answer = await StopAfter(sites.Usual * (i / (Times + 1.0)), program, SignalOf(i));
            var isNew = sites.HasNewSite();
            if (answer.Status == 0)
            {
                Assert.StartsWith("Published", answer.Out, StringComparison.Ordinal);
                Assert.True(isNew);
            }
            else if (WasTooEarly(answer, SignalOf(i)))
            {
                Assert.False(isNew);
            }
            else
            {
                stopped++;
                Assert.Equal((3, ""), (answer.Status, answer.Out));
                Assert.Equal(isNew ? $"Stopped. The new site is complete in {journal.Site}.\n" : "Stopped. Nothing was published; the existing site is unchanged.\n", answer.Error);
            }
        }

        Assert.InRange(stopped, 2, Times);
        await sites.AssertThatTheNextPublishWorks();
    }

    [Theory]
    [InlineData("check")]
    [InlineData("hours")]
    [InlineData("estimate", "shaper")]
    public async Task CommandsThatOnlyRead_Stopped_EndSoonAndSaySo(params string[] words)
    {
        journal.With("book/plans/shaper.yaml", Plan(3000));
        await AssertStops(words, "Stopped. Your files are unchanged.\n", status: 3);
    }

    [Fact]
    public async Task TakeIn_Stopped_TakesInAllOrNothing()
    {
        journal.With("hours.csv", "date,part,operation,hours,note\n" + string.Concat(Enumerable.Range(0, 20_000).Select(i => $"{new DateOnly(1990, 1, 1).AddDays(i / 5):yyyy-MM-dd},head,turning,1h,Row {i}\n")));
        var before = LargerJournal.HashesOf(journal.Folder);

        await AssertStops(["take-in", journal.PathOf("hours.csv"), "--build", "drill"], "Stopped. ", status: 3, () =>
        {
            var folder = journal.PathOf("book/drill/taken-in");
            if (Directory.Exists(folder))
            {
                Assert.Equal(4000, Directory.EnumerateFiles(folder).Count());
                Directory.Delete(folder, recursive: true);
            }

            if (Directory.Exists(journal.PathOf("book/drill/.being-taken-in")))
            {
                // Out of sight, and the next one clears it away.
                Directory.Delete(journal.PathOf("book/drill/.being-taken-in"), recursive: true);
            }

            Assert.Equal(before.OrderBy(file => file.Key, StringComparer.Ordinal), LargerJournal.HashesOf(journal.Folder).Where(file => file.Key != "book/.bench/writing" && file.Key != ".bench/writing").OrderBy(file => file.Key, StringComparer.Ordinal));
        });
    }

    [Fact]
    public async Task Send_Stopped_LeavesWholeFilesAndTheNextGoesOn()
    {
        Directory.CreateDirectory(journal.PathOf("www"));
        journal.With("book/journal.yaml", $"title: The Lean-to\ndestinations:\n  disk: {{folder: {journal.PathOf("www")}/bench}}\n");
        Assert.Equal(0, (await journal.Publish()).Status);
        string[] words = ["send", "disk", "--site", journal.Site];

        await AssertStops(words, "Stopped. ", status: 3, () =>
        {
            var site = LargerJournal.HashesOf(journal.Site);
            foreach (var (file, hash) in LargerJournal.HashesOf(journal.PathOf("www/bench")).Where(file => !file.Key.EndsWith(".being-sent", StringComparison.Ordinal) && site.ContainsKey(file.Key)))
            {
                Assert.Equal(site[file], hash);
            }

            if (Directory.Exists(journal.PathOf("www/bench")))
            {
                using var again = journal.Begin(words);
                Assert.Equal(0, again.End().GetAwaiter().GetResult().Status);
                Assert.Empty(Directory.EnumerateFiles(journal.PathOf("www/bench"), "*.being-sent", SearchOption.AllDirectories));
                Directory.Delete(journal.PathOf("www/bench"), recursive: true);
            }
        });
    }

    [Fact]
    public async Task Preview_StoppedWhileItMakesTheSite_EndsSoonAndWell() =>
        await AssertStops(["preview"], "Stopped. Your files are unchanged.\n", status: 0);

    public void Dispose() => journal.Dispose();

    private static string Plan(int parts) =>
        $"title: Shaper\nparts:\n{string.Concat(Enumerable.Range(0, parts).Select(i => $"  - {{id: part-{i}, title: Part {i}, operations: [turning, milling], guess: 3h}}\n"))}";

    // Over the time that it takes, or over three seconds of one that does not end.
    private async Task AssertStops(string[] words, string sentence, int status, Action? look = null)
    {
        const int Times = 3;
        var clock = Stopwatch.StartNew();
        Answer whole;
        using (var first = journal.Begin(words))
        {
            var end = first.End();
            await Task.WhenAny(end, Task.Delay(Soon));
            await first.Kill();
            whole = await end;
        }

        var (usual, stopped) = (clock.Elapsed, 0);
        look?.Invoke();
        for (var i = 1; i <= Times; i++)
        {
            using var program = journal.Begin(words);
            var answer = await StopAfter(usual * (i / (Times + 1.0)), program, SignalOf(i));
            look?.Invoke();
            if (answer.Error.Contains("Stopped.", StringComparison.Ordinal))
            {
                stopped++;
                Assert.Equal(status, answer.Status);
                Assert.Contains(sentence, answer.Error, StringComparison.Ordinal);
                Assert.DoesNotContain("fault in this program", answer.Error, StringComparison.Ordinal);
            }
            else
            {
                Assert.True(answer.Status == 0 || WasTooEarly(answer, SignalOf(i)) || WasTooLate(answer, SignalOf(i), whole), $"{answer.Status}: {answer.Out} {answer.Error}");
            }
        }

        Assert.InRange(stopped, 1, Times);
    }

    private static int SignalOf(int i) => i % 2 == 0 ? RunningProgram.Interrupt : RunningProgram.Terminate;

    // Before the program's first line the system ends it, with 128 and the signal's number, and nothing was begun.
    private static bool WasTooEarly(Answer answer, int signal) => answer == new Answer(128 + signal, "", "");

    // When all is done and said, and the runtime is being taken down, the system ends it likewise.
    private static bool WasTooLate(Answer answer, int signal, Answer whole) => whole.Status == 0 && answer == whole with { Status = 128 + signal };

    private static async Task<Answer> StopAfter(TimeSpan moment, RunningProgram program, int signal)
    {
        await Task.WhenAny(program.End(), Task.Delay(moment));
        var clock = Stopwatch.StartNew();
        if (!program.HasEnded)
        {
            program.Signal(signal);
        }

        var answer = await program.End();
        Assert.True(clock.Elapsed < Soon, $"It went on for {clock.Elapsed.TotalSeconds:0.0} s after it was told to stop.");
        return answer;
    }
}
