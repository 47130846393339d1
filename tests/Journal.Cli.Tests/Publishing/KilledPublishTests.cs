using System.Diagnostics;
using Journal.Tests.Shared;

namespace Journal.Cli.Tests.Publishing;

// The built program, killed by the system at moments spread from its start to beyond its end.
#pragma warning disable CA5394 // The same moments each time, as far as a clock can say.
public sealed class KilledPublishTests : IDisposable
{
    private static readonly int Another = int.TryParse(Environment.GetEnvironmentVariable("JOURNAL_FUZZ_SEED"), out var seed) ? seed : 0;
    private readonly LargerJournal journal = new(150);

    [Fact]
    public async Task Killed_AtFiftyMoments_LeavesTheOldSiteOrTheNewOneWhole()
    {
        const int Times = 50;
        var sites = await TwoTellings.Of(journal);
        var (atWork, writing, swapped) = (0, 0, 0);
        var kill = new Killer(journal, sites.Usual);
        foreach (var share in Shares(Times, seed: 1))
        {
            atWork += await kill.After(share) ? 1 : 0;
            writing += journal.BesideTheSite().Contains(".site.being-written") ? 1 : 0;
            swapped += sites.HasNewSite() ? 1 : 0;
        }

        await sites.AssertThatTheNextPublishWorks();

        // Most must have been caught at work, some of them writing, or nothing was tried.
        Assert.InRange(atWork, Times / 3, Times);
        Assert.InRange(writing, 3, Times);
        Assert.InRange(swapped, 1, Times - 1);
    }

    [Fact]
    public async Task Killed_WhileAFewWordsAreWrittenAnew_LeavesTheOldSiteOrTheNewOneWhole()
    {
        const int Times = 10;
        var sites = await TwoTellings.Of(journal, some: 12, inTitles: false);
        var atWork = 0;
        var kill = new Killer(journal, sites.Usual);
        foreach (var share in Shares(Times, seed: 2))
        {
            atWork += await kill.After(share) ? 1 : 0;
            sites.HasNewSite();

            // A publish that was cut off makes the next one write everything anew: for the next kill to meet words alone, it is done here.
            await sites.AssertThatTheNextPublishWorks();
        }

        Assert.InRange(atWork, Times / 3, Times);
    }

    [Fact]
    public async Task Killed_AtTheFirstPublish_LeavesNoSiteOrAWholeOne()
    {
        const int Times = 8;
        var whole = await journal.Clean();
        var clock = Stopwatch.StartNew();
        Assert.Equal(0, (await journal.Publish()).Status);
        var (kill, atWork) = (new Killer(journal, clock.Elapsed), 0);
        foreach (var share in Shares(Times, seed: 3))
        {
            Directory.Delete(Path.GetDirectoryName(journal.Site)!, recursive: true);

            atWork += await kill.After(share) ? 1 : 0;

            Assert.True(!Directory.Exists(journal.Site) || journal.Stands(whole), $"Killed after {share:0.00} of {kill.Usual.TotalMilliseconds:0} ms, half a site stands.");
            Directory.CreateDirectory(Path.GetDirectoryName(journal.Site)!);
        }

        Assert.Equal(0, (await journal.Publish()).Status);
        Assert.True(journal.Stands(whole));
        Assert.Empty(journal.BesideTheSite());
        Assert.InRange(atWork, Times / 3, Times);
    }

    [Fact]
    public async Task WhileOneIsAtWork_AnotherNamesItsProcess_AndOneThatWasKilledHoldsNobodyUp()
    {
        using var first = journal.Begin();
        while (new FileInfo(Path.Combine(Path.GetDirectoryName(journal.Site)!, ".site.publishing")) is not { Exists: true, Length: > 0 })
        {
            Assert.False(first.HasEnded);
            await Task.Delay(5);
        }

        first.Signal(RunningProgram.Halt);
        var second = await journal.Publish();
        await first.Kill();

        Assert.Equal((3, ""), (second.Status, second.Out));
        Assert.StartsWith($"Another publish is writing to {journal.Site}: process {first.Id}, since ", second.Error, StringComparison.Ordinal);
        Assert.Contains(".site.publishing", journal.BesideTheSite());
        Assert.Equal(0, (await journal.Publish()).Status);
        Assert.Empty(journal.BesideTheSite());
    }

    public void Dispose() => journal.Dispose();

    // One in each equal share of the time and a tenth more, in random order.
    private static double[] Shares(int count, int seed)
    {
        var random = new Random(seed + Another);
        double[] shares = [.. Enumerable.Range(0, count).Select(i => 1.1 * (i + random.NextDouble()) / count)];
        random.Shuffle(shares);
        return shares;
    }

    private sealed class Killer(LargerJournal journal, TimeSpan usual)
    {
        /// <summary>How long publishing takes here; learned anew where one ends sooner than was thought, as the first may have been slow.</summary>
        public TimeSpan Usual { get; private set; } = usual;

        /// <summary>Publishes, and kills after a share of the usual time; whether it was still at work.</summary>
        public async Task<bool> After(double share)
        {
            var clock = Stopwatch.StartNew();
            using var program = journal.Begin();
            await Task.WhenAny(program.End(), Task.Delay(Usual * share));
            var isAtWork = !program.HasEnded;
            if (!isAtWork && clock.Elapsed < Usual)
            {
                Usual = clock.Elapsed;
            }

            await program.Kill();
            Tries.Add("kills", 1);
            return isAtWork;
        }
    }
}
#pragma warning restore CA5394
