using Journal.Cli.Tests;
using Journal.Site.Output;
using Journal.Site.Publishing;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Output;

public class DestinationTests
{
    [Fact]
    public void Publish_ToTheRootOfTheDisk_IsRefused()
    {
        using var journal = JournalOnDisk.Small();

        Assert.All(["/", "//", "/tmp/..", "/./"], to => Assert.Contains("root of a disk", Refused(journal, to), StringComparison.Ordinal));
    }

    [Fact]
    public void Publish_ToTheHomeFolderOrAbove_IsRefused()
    {
        using var journal = JournalOnDisk.Small();
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);

        Assert.Contains("home folder", Refused(journal, home), StringComparison.Ordinal);
        Assert.Contains("home folder", Refused(journal, home + "/"), StringComparison.Ordinal);
        Assert.Contains("home folder", Refused(journal, home + "/work/.."), StringComparison.Ordinal);
        using var elsewhere = JournalOnDisk.Bare();
        Directory.CreateSymbolicLink(elsewhere.PathOf("other"), home);
        Directory.CreateSymbolicLink(elsewhere.PathOf("another"), elsewhere.PathOf("other"));
        Assert.Contains("home folder", Refused(journal, elsewhere.PathOf("another/")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(".")]
    [InlineData("..")]
    [InlineData("drill/..")]
    [InlineData("./")]
    [InlineData("../")]
    [InlineData("drill/../../")]
    [InlineData("no-such-folder/..")]
    public void Publish_ToTheJournalOrAboveIt_IsRefused(string to)
    {
        using var journal = JournalOnDisk.Small();
        var before = new SiteOnDisk(journal.Folder).Hashes;

        Assert.Contains("holds the journal", Refused(journal, to), StringComparison.Ordinal);
        Assert.Equal(before, new SiteOnDisk(journal.Folder).Hashes);
    }

    [Fact]
    public void Publish_ToTheJournalByAnotherName_IsRefused()
    {
        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare();
        Directory.CreateSymbolicLink(elsewhere.PathOf("other"), journal.Folder);

        Directory.CreateSymbolicLink(elsewhere.PathOf("above"), Path.GetDirectoryName(journal.Folder)!);

        Assert.Contains("holds the journal", Refused(journal, elsewhere.PathOf("other")), StringComparison.Ordinal);
        Assert.Contains("holds the journal", Refused(journal, elsewhere.PathOf("other/")), StringComparison.Ordinal);
        Assert.Contains("holds the journal", Refused(journal, elsewhere.PathOf("above")), StringComparison.Ordinal);
        Assert.Contains("holds the journal", Refused(journal, elsewhere.PathOf($"above/{Path.GetFileName(journal.Folder)}")), StringComparison.Ordinal);
    }

    [Fact]
    public void Publish_ThroughALinkThatGoesThroughAnother_IsKnownForWhatItIs()
    {
        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare();
        Directory.CreateSymbolicLink(elsewhere.PathOf("dot"), ".");
        Directory.CreateSymbolicLink(elsewhere.PathOf("up"), Path.GetDirectoryName(journal.Folder)!);
        Directory.CreateSymbolicLink(elsewhere.PathOf("journal"), $"dot/up/{Path.GetFileName(journal.Folder)}");
        Directory.CreateSymbolicLink(elsewhere.PathOf("inside"), "dot/journal/drill/../.");

        Assert.Contains("holds the journal", Refused(journal, elsewhere.PathOf("journal")), StringComparison.Ordinal);
        Assert.Contains("holds the journal", Refused(journal, elsewhere.PathOf("inside")), StringComparison.Ordinal);
    }

    // As the system does: a step up from a link is a step up from where it leads.
    [Fact]
    public void RealPath_StepUpFromALink_IsFromWhereItLeads()
    {
        using var place = JournalOnDisk.Bare();
        Directory.CreateDirectory(place.PathOf("deep/a"));
        Directory.CreateSymbolicLink(place.PathOf("other"), "deep/a");
        Directory.CreateSymbolicLink(place.PathOf("link"), "other/../b");

        Assert.Equal(Path.Combine(Destination.RealPath(place.Folder), "deep", "b"), Destination.RealPath(place.PathOf("link")));
    }

    [Fact]
    public void Publish_ToLinksThatLeadRoundInACircle_IsRefused()
    {
        using var journal = JournalOnDisk.Small();
        Directory.CreateSymbolicLink(journal.PathOf("one"), "two");
        Directory.CreateSymbolicLink(journal.PathOf("two"), "one");

        Assert.Contains("round in a circle", Refused(journal, "one"), StringComparison.Ordinal);
    }

    // What the folder is called in the order does not matter; where a link within it leads does.
    [Fact]
    public void Publish_ToOtherFilesBehindALink_IsRefusedAndTouchesNothing()
    {
        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare().With("holiday/beach.txt", "Sand.");
        Directory.CreateSymbolicLink(journal.PathOf("site"), elsewhere.PathOf("holiday"));

        Assert.Contains("were not published", Refused(journal, "site"), StringComparison.Ordinal);
        Assert.Contains("were not published", Refused(journal, "drill/../site/"), StringComparison.Ordinal);
        Assert.Equal(["beach.txt"], Directory.EnumerateFileSystemEntries(elsewhere.PathOf("holiday")).Select(Path.GetFileName));
    }

    [Fact]
    public void Publish_ToAFolderWithAStrokeBehindIt_IsTheSameFolder()
    {
        using var journal = JournalOnDisk.Small();
        journal.PublishTo("site");

        Assert.Equal(0, journal.PublishTo("drill/../site//").Changed);
    }

    [Fact]
    public void Publish_ToAFolderOfOtherFiles_IsRefusedAndTouchesNothing()
    {
        using var journal = JournalOnDisk.Small().With("holiday/beach.txt", "Sand.");

        Assert.Contains("were not published", Refused(journal, "holiday"), StringComparison.Ordinal);
        Assert.Equal(["beach.txt"], Directory.EnumerateFileSystemEntries(journal.PathOf("holiday")).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("drill")]
    [InlineData("plans")]
    public void Publish_IntoABuildOfTheJournal_IsRefused(string to)
    {
        using var journal = JournalOnDisk.Small().With("plans/shaper.yaml", "title: Shaper\nparts: [{id: ram}]\n");

        Assert.Contains("were not published", Refused(journal, to), StringComparison.Ordinal);
    }

    [Fact]
    public void Publish_ToAFile_IsRefused()
    {
        using var journal = JournalOnDisk.Small().With("site", "A file.");

        Assert.Contains("is a file", Refused(journal, "site"), StringComparison.Ordinal);
        Assert.Equal("A file.", File.ReadAllText(journal.PathOf("site")));
    }

    [Theory]
    [InlineData("notes.txt/site")]
    [InlineData("notes.txt/more/site")]
    public void Publish_IntoAFile_IsRefusedByTheNameOfTheFile(string to)
    {
        using var journal = JournalOnDisk.Small().With("notes.txt", "A file.");

        Assert.Contains("notes.txt is a file, so nothing can be inside it", Refused(journal, to), StringComparison.Ordinal);
        Assert.Equal("A file.", File.ReadAllText(journal.PathOf("notes.txt")));
    }

    [Fact]
    public void Publish_ToAnEmptyFolder_IsDone()
    {
        using var journal = JournalOnDisk.Small();
        Directory.CreateDirectory(journal.PathOf("site"));

        Assert.True(journal.Publish().Has("index.html"));
    }

    [Fact]
    public void Publish_ToALink_WritesWhereItLeads()
    {
        using var journal = JournalOnDisk.Small();
        using var server = JournalOnDisk.Bare();
        Directory.CreateDirectory(server.PathOf("www"));
        Directory.CreateSymbolicLink(journal.PathOf("site"), server.PathOf("www"));

        journal.PublishTo("site");
        journal.PublishTo("site");

        Assert.Equal(server.PathOf("www"), new DirectoryInfo(journal.PathOf("site")).LinkTarget);
        Assert.True(new SiteOnDisk(server.PathOf("www")).Has("index.html"));
    }

    // Whoever runs the tests may be allowed everything, so the folder is one that nobody can write.
    [Fact]
    public void Publish_WhereNothingCanBeWritten_SaysSoAndEndsWith3()
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.AskToday("publish", "--to", "/proc/journal/site");

        Assert.Equal(3, answer.Status);
        Assert.Contains("Nothing was published", answer.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Another publish", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Publish_RefusedDestination_EndsWith3AndASentence()
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.AskToday("publish", "--to", ".");

        Assert.Equal(3, answer.Status);
        Assert.Contains("--to site", answer.Error, StringComparison.Ordinal);
        Assert.Empty(answer.Out);
    }

    private static string Refused(JournalOnDisk journal, string to) =>
        Assert.Throws<PublishingException>(() => SitePublisher.Publish(new PublishOrder(journal.Folder, Path.Combine(journal.Folder, to), Journals.Today))).Message;
}
