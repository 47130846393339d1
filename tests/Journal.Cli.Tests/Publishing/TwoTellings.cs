using System.Diagnostics;

namespace Journal.Cli.Tests.Publishing;

/// <summary>A journal told in two ways. The site of one stands; the other is told, and to be published over it.</summary>
internal sealed class TwoTellings
{
    private readonly LargerJournal journal;
    private readonly Action<string> tell;
    private (string Words, IReadOnlyDictionary<string, string> Site) standing;
    private (string Words, IReadOnlyDictionary<string, string> Site) toCome;

    private TwoTellings(LargerJournal journal, Action<string> tell) => (this.journal, this.tell) = (journal, tell);

    /// <summary>How long publishing the one over the other takes.</summary>
    public TimeSpan Usual { get; private set; }

    /// <summary>Publishes both, into empty folders and one over the other.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="some">How many evenings are told anew; all where it is not said.</param>
    /// <param name="inTitles">Whether in their titles too, which more pages show.</param>
    public static async Task<TwoTellings> Of(LargerJournal journal, int? some = null, bool inTitles = true)
    {
        var both = new TwoTellings(journal, words => journal.Tell(words, some, inTitles));
        both.standing = await both.Clean("once more");
        both.toCome = await both.Clean("at first");
        Assert.Equal(0, (await journal.Publish()).Status);
        both.tell(both.standing.Words);
        var clock = Stopwatch.StartNew();
        Assert.Equal(0, (await journal.Publish()).Status);
        both.Usual = clock.Elapsed;
        both.tell(both.toCome.Words);
        return both;
    }

    /// <summary>
    /// Whether the new site stands; where neither it nor the old one does, byte for byte, the test has failed. Once the new
    /// one stands, it is the old one, and the other is told.
    /// </summary>
    public bool HasNewSite()
    {
        if (journal.Stands(standing.Site))
        {
            return false;
        }

        Assert.True(journal.Stands(toCome.Site), "The site is neither the old one nor the new one.");
        (standing, toCome) = (toCome, standing);
        tell(toCome.Words);
        return true;
    }

    /// <summary>Publishes once more: that must give what a publish into an empty folder gives, and leave nothing beside it.</summary>
    public async Task AssertThatTheNextPublishWorks()
    {
        var answer = await journal.Publish();
        Assert.True(answer.Status == 0, answer.Error);
        Assert.True(journal.Stands(toCome.Site), "The next publish does not give what a clean one gives.");
        Assert.Empty(journal.BesideTheSite());
        Assert.True(HasNewSite());
    }

    private async Task<(string Words, IReadOnlyDictionary<string, string> Site)> Clean(string words)
    {
        tell(words);
        return (words, await journal.Clean());
    }
}
