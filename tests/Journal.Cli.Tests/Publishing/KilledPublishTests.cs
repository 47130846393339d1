using System.Diagnostics;

namespace Journal.Cli.Tests.Publishing;

// The built program, killed by the system at moments spread from its start to its end.
#pragma warning disable CA5394 // The same moments each time, as far as a clock can say.
public class KilledPublishTests
{
    private const int Entries = 80;

    [Fact]
    public async Task Killed_AtFiftyMoments_LeavesTheOldSiteOrTheNewOneWhole()
    {
        const int Times = 50;
        using var journal = new LargerJournal(Entries);
        var old = await journal.Clean();
        var oldWords = "at first";
        var newWords = "once more";
        journal.Tell(newWords);
        var whole = await journal.Clean();
        journal.Tell(oldWords);
        Assert.Equal(0, (await journal.Publish()).Status);
        Assert.True(journal.Stands(old));
        journal.Tell(newWords);
        var usual = await UsualTime(journal);
        journal.Tell(oldWords);

        // The site is now new and the words are old: whichever stands, the other is to come.
        (old, whole, oldWords, newWords) = (whole, old, newWords, oldWords);
        var (atWork, writing) = (0, 0);
        foreach (var moment in Moments(Times, usual, seed: 1))
        {
            atWork += await KillAt(journal, moment) ? 1 : 0;

            writing += journal.BesideTheSite().Contains(".site.being-written") ? 1 : 0;
            var isNew = journal.Stands(whole);
            Assert.True(isNew || journal.Stands(old), $"Killed after {moment.TotalMilliseconds:0} of {usual.TotalMilliseconds:0} ms, the site is neither the old one nor the new one.");
            if (isNew)
            {
                (old, whole, oldWords, newWords) = (whole, old, newWords, oldWords);
                journal.Tell(newWords);
            }
        }

        Assert.Equal(0, (await journal.Publish()).Status);
        Assert.True(journal.Stands(whole), "The publish after the last kill does not give what a clean one gives.");
        Assert.Empty(journal.BesideTheSite());

        // Most must have been caught at work, some of them writing, or nothing was tried.
        Assert.InRange(atWork, Times / 3, Times);
        Assert.InRange(writing, 3, Times);
    }

    [Fact]
    public async Task Killed_WhileAFewWordsAreWrittenAnew_LeavesTheOldSiteOrTheNewOneWhole()
    {
        const int Times = 10;
        const int Few = 12;
        using var journal = new LargerJournal(Entries);
        await journal.Publish();
        var sites = new[] { "once more", "at first" }.Select(words => (Words: words, Site: new Dictionary<string, string>())).ToArray();
        for (var i = 0; i < sites.Length; i++)
        {
            journal.Tell(sites[i].Words, Few, inTitles: false);
            sites[i].Site = new(await journal.Clean());
        }

        Assert.Equal(0, (await journal.Publish()).Status);
        journal.Tell(sites[0].Words, Few, inTitles: false);
        var usual = await UsualTime(journal);
        Assert.True(journal.Stands(sites[0].Site));
        var atWork = 0;
        foreach (var (moment, i) in Moments(Times, usual, seed: 2).Select((moment, i) => (moment, (i + 1) % 2)))
        {
            journal.Tell(sites[i].Words, Few, inTitles: false);

            atWork += await KillAt(journal, moment) ? 1 : 0;

            Assert.True(journal.Stands(sites[i].Site) || journal.Stands(sites[1 - i].Site), $"Killed after {moment.TotalMilliseconds:0} of {usual.TotalMilliseconds:0} ms, the site is neither the old one nor the new one.");
            Assert.Equal(0, (await journal.Publish()).Status);
            Assert.True(journal.Stands(sites[i].Site), "The publish after a kill does not give what a clean one gives.");
            Assert.Empty(journal.BesideTheSite());
        }

        Assert.InRange(atWork, Times / 3, Times);
    }

    [Fact]
    public async Task Killed_AtTheFirstPublish_LeavesNoSiteOrAWholeOne()
    {
        const int Times = 10;
        using var journal = new LargerJournal(Entries);
        var whole = await journal.Clean();
        var usual = await UsualTime(journal);
        var atWork = 0;
        foreach (var moment in Moments(Times, usual, seed: 3))
        {
            Directory.Delete(Path.GetDirectoryName(journal.Site)!, recursive: true);

            atWork += await KillAt(journal, moment) ? 1 : 0;

            Assert.True(!Directory.Exists(journal.Site) || journal.Stands(whole), $"Killed after {moment.TotalMilliseconds:0} of {usual.TotalMilliseconds:0} ms, half a site stands.");
            Directory.CreateDirectory(Path.GetDirectoryName(journal.Site)!);
        }

        Assert.Equal(0, (await journal.Publish()).Status);
        Assert.True(journal.Stands(whole));
        Assert.Empty(journal.BesideTheSite());
        Assert.InRange(atWork, Times / 3, Times);
    }

    private static async Task<TimeSpan> UsualTime(LargerJournal journal)
    {
        var clock = Stopwatch.StartNew();
        var answer = await journal.Publish();
        Assert.True(answer.Status == 0, answer.Error);
        return clock.Elapsed;
    }

    // One in each equal share of the time, in random order.
    private static TimeSpan[] Moments(int count, TimeSpan whole, int seed)
    {
        var random = new Random(seed);
        TimeSpan[] moments = [.. Enumerable.Range(0, count).Select(i => whole * ((i + random.NextDouble()) / count))];
        random.Shuffle(moments);
        return moments;
    }

    /// <summary>Publishes and kills; whether it was still at work.</summary>
    private static async Task<bool> KillAt(LargerJournal journal, TimeSpan moment)
    {
        using var program = journal.Begin();
        await Task.WhenAny(program.End(), Task.Delay(moment));
        var isAtWork = !program.HasEnded;
        await program.Kill();
        return isAtWork;
    }
}
#pragma warning restore CA5394
