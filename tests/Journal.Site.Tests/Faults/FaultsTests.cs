using Journal.Site.Publishing;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Faults;

public class FaultsTests
{
    [Fact]
    public void Check_OfAJournalFullOfFaults_NamesEachWithItsLineAndNothingElse()
    {
        using var journal = new FaultyJournal();

        var answer = journal.OnDisk.AskToday("check", "--format", "json");

        // Pictures that the demo itself lacks are told too; they are not ours to count.
        var named = answer.Json.GetProperty("problems").EnumerateArray()
            .Select(problem => new Fault(problem.GetProperty("code").GetString()!, problem.GetProperty("file").GetString()!, problem.GetProperty("line").GetInt32()))
            .Where(fault => fault.Code != "picture-missing" || fault.File.StartsWith("odd/", StringComparison.Ordinal))
            .OrderBy(fault => fault.File, StringComparer.Ordinal).ThenBy(fault => fault.Line).ThenBy(fault => fault.Code, StringComparer.Ordinal)
            .ToList();
        Assert.True(journal.Faults.Count() >= 30);
        Assert.True(journal.Faults.SequenceEqual(named), $"Not named:\n{string.Join('\n', journal.Faults.Except(named))}\nNot asked for:\n{string.Join('\n', named.Except(journal.Faults))}");
        Assert.Equal(1, answer.Status);
        Assert.All(answer.Json.GetProperty("problems").EnumerateArray(), problem => Assert.False(string.IsNullOrWhiteSpace(problem.GetProperty("remedy").GetString())));
    }

    // Apart from the others: what may be written in a file that is no text nobody can tell, so ids that nothing else
    // defines are not called unknown as long as there is one.
    [Fact]
    public void Check_OfAJournalWithFilesThatAreNoText_NamesEach()
    {
        using var journal = Journals.Demo();
        File.WriteAllBytes(journal.PathOf("bench-drill/2024-07-01-latin.md"), [.. "---\npart: arm\noperation: turning\nhours: 1h\n---\nGr"u8, 0xFC, .. "n.\n"u8]);
        using (var large = File.Create(journal.PathOf("bench-drill/2024-07-02-large.md")))
        {
            large.SetLength(50 * 1024 * 1024);
        }

        var answer = journal.AskToday("check", "--format", "json");

        var named = answer.Json.GetProperty("problems").EnumerateArray().Where(problem => problem.GetProperty("code").GetString() != "picture-missing")
            .Select(problem => (problem.GetProperty("code").GetString(), problem.GetProperty("file").GetString(), problem.GetProperty("line").GetInt32()));
        Assert.Equal([("not-utf-8", "bench-drill/2024-07-01-latin.md", 6), ("file-too-large", "bench-drill/2024-07-02-large.md", 1)], named);
        Assert.Equal(1, answer.Status);
    }

    [Fact]
    public void Publish_OfAJournalFullOfFaults_RefusesAndLeavesTheOldSite()
    {
        using var whole = Journals.Demo();
        using var journal = new FaultyJournal();
        Assert.NotNull(SitePublisher.Publish(new PublishOrder(whole.Folder, journal.OnDisk.PathOf("site"), Journals.Today)).Published);
        var (hashes, times) = (journal.OnDisk.Site().Hashes, journal.OnDisk.Site().Times);

        var answer = journal.OnDisk.AskToday("publish", "--to", "site");

        Assert.Equal(1, answer.Status);
        Assert.Contains("Nothing was published", answer.Error, StringComparison.Ordinal);
        Assert.Equal(hashes, journal.OnDisk.Site().Hashes);
        Assert.Equal(times, journal.OnDisk.Site().Times);
    }
}
