using Journal.Cli.Tests;
using Journal.Site.Output;
using Journal.Site.Publishing;
using Journal.Site.Templates;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Output;

public class AllOrNothingTests
{
    [Fact]
    public void Publish_JournalWithAnError_RefusesAndLeavesTheOldSite()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var (hashes, times) = (site.Hashes, site.Times);
        journal.Change(Changes.Quill, "1h01", "1h75m75");

        var answer = journal.AskToday("publish", "--to", "site");

        Assert.Equal(1, answer.Status);
        Assert.Contains("Nothing was published", answer.Error, StringComparison.Ordinal);
        Assert.Equal(hashes, site.Hashes);
        Assert.Equal(times, site.Times);
        Assert.Equal([], Leftovers(journal));
    }

    [Fact]
    public void Publish_JournalWithAWarning_PublishesAndEndsWith0()
    {
        using var journal = JournalOnDisk.Small().WithEntry("drill/2025-09-29-saw.md", "tools: junior-hacksaw");

        var answer = journal.AskToday("publish", "--to", "site");

        Assert.Equal(0, answer.Status);
        Assert.Contains("junior-hacksaw", answer.Error, StringComparison.Ordinal);
        Assert.True(journal.Site().Has("drill/entry/2025-09-29-saw.html"));
    }

    [Fact]
    public void Publish_LastLines_SayWhatWasPublishedHowLongItTookAndWhatToOpen()
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.AskToday("publish", "--to", "site");

        Assert.Equal(0, answer.Status);
        Assert.StartsWith("Published 2 builds and 4 entries", answer.Out, StringComparison.Ordinal);
        Assert.Matches(@"It took \d+\.\d s\.", answer.Out);
        Assert.Equal($"Open {journal.PathOf("site/index.html")}", answer.Lines[^1]);
    }

    [Theory]
    [InlineData("pages/entry.html", "{{ for }")]
    [InlineData("pages/entry.html", "{{ page.no_such_thing }}")]
    [InlineData("pages/entry.html", "{{ include 'no-such-piece' }}")]
    [InlineData("pages/entry.html", "{{ page.frame.title = 'mine' }}")]
    [InlineData("pages/entry.html", "{{ include '../../../etc/passwd' }}")]
    [InlineData("pages/entry.html", "{{ for i in 1..2000000 }}x{{ end }}")]
    [InlineData("pages/entry.html", "{{ for i in 1..900 }}{{ for j in 1..900 }}xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx{{ end }}{{ end }}")]
    [InlineData("pieces/foot.html", "{{ include 'foot' }}")]
    [InlineData("pages/entry.html", "{{ date.now }}")]
    public void Publish_TemplateAtFault_SaysWhereAndLeavesTheOldSite(string template, string text)
    {
        using var journal = JournalOnDisk.Small().With($"look/{template}", $"\n{text}\n");
        var site = journal.Publish();
        var before = site.Hashes;

        var answer = journal.AskToday("publish", "--to", "site", "--template", "look");

        Assert.Equal(3, answer.Status);
        Assert.Contains(template, answer.Error, StringComparison.Ordinal);
        Assert.Matches(@":\d+:\d+: ", answer.Error);
        Assert.Equal(before, site.Hashes);
        Assert.Equal([], Leftovers(journal));
    }

    [Fact]
    public void Publish_TemplateFolderMissing_SaysSo()
    {
        using var journal = JournalOnDisk.Small();

        Assert.Throws<TemplateException>(() => journal.PublishTo("site", template: journal.PathOf("look")));
        Assert.False(Directory.Exists(journal.PathOf("site")));
    }

    [Fact]
    public void Publish_TemplateFolderWithAFileNamedAsAPage_SaysWhich()
    {
        using var journal = JournalOnDisk.Small().With("look/index.html", "Mine.").With("look/.git/config", "Not for the site.");

        Assert.Contains("index.html", Assert.Throws<PublishingException>(() => journal.PublishTo("site", template: journal.PathOf("look"))).Message, StringComparison.Ordinal);
        Assert.False(journal.Without("look/index.html").Publish(template: journal.PathOf("look")).Has(".git/config"));
    }

    [Theory]
    [InlineData("not a picture at all")]
    [InlineData("")]
    [InlineData("\u0089PNG\r\n")]
    public void Publish_PictureThatCannotBeRead_IsLeftOutAndTheRestPublished(string content)
    {
        using var journal = JournalOnDisk.Small()
            .With("drill/photos/broken.png", content)
            .WithPicture("drill/photos/whole.png")
            .WithEntry("drill/2025-09-29-two.md", "photos: [{file: photos/broken.png, caption: Broken}, {file: photos/whole.png, caption: Whole}]");

        var answer = journal.AskToday("publish", "--to", "site");

        Assert.Equal(1, answer.Status);
        Assert.Contains("broken.png", answer.Error, StringComparison.Ordinal);
        var page = journal.Site().Page("drill/entry/2025-09-29-two.html");
        Assert.Equal(["Whole"], page.QuerySelectorAll("img").Select(picture => picture.GetAttribute("alt")));
    }

    [Fact]
    public void Publish_PictureThatIsMissing_EndsWith1AndPublishesTheRest()
    {
        using var journal = JournalOnDisk.Small().WithEntry("drill/2025-09-29-none.md", "photos: {file: photos/none.png, caption: None}");

        var answer = journal.AskToday("publish", "--to", "site");

        Assert.Equal(1, answer.Status);
        Assert.Contains("photos/none.png", answer.Error, StringComparison.Ordinal);
        Assert.True(journal.Site().Has("drill/entry/2025-09-29-none.html"));
    }

    [Fact]
    public void Publish_Stopped_LeavesTheOldSite()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var before = site.Hashes;
        journal.Change(Changes.Quill, "1h01", "1h31");
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => SitePublisher.Publish(new PublishOrder(journal.Folder, site.Folder, Journals.Today), stop.Token));

        Assert.Equal(before, site.Hashes);
        Assert.Equal([], Leftovers(journal));
    }

    [Fact]
    public void Publish_AfterACrashWhileWriting_ClearsAwayWhatWasHalfDone()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var whole = site.Hashes;
        journal.With(".site.being-written/.published-site.json", "{}").With(".site.being-written/index.html", "Half a pa").With(".site.being-written/vice/stray.html", "Half").With(".site.publishing", "4711 2025-10-01T20:00:00.0000000Z 0");

        journal.Publish();

        Assert.Equal(whole, site.Hashes);
        Assert.Equal([], Leftovers(journal));
    }

    [Fact]
    public void Publish_AfterACrashBetweenTheTwoStepsOfASwap_BringsTheOldSiteBackFirst()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        File.WriteAllText(site.PathOf("CNAME"), "bench.example");
        Directory.Move(site.Folder, journal.PathOf(".site.retired"));
        journal.With("look/pages/front.html", "{{ broken");

        Assert.Throws<TemplateException>(() => journal.PublishTo("site", template: journal.PathOf("look")));

        Assert.True(site.Has("index.html"));
        Assert.Equal("bench.example", journal.Publish().Text("CNAME"));
        Assert.Equal([], Leftovers(journal));
    }

    [Fact]
    public void Publish_AfterACrashBehindTheSwap_ClearsTheRetiredSiteAway()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var whole = site.Hashes;
        journal.With(".site.retired/index.html", "Old.").With(".site.retired/.published-site.json", "{}");

        journal.Publish();

        Assert.Equal(whole, site.Hashes);
        Assert.Equal([], Leftovers(journal));
    }

    [Fact]
    public void Publish_WhileAnotherIsAtWork_SaysSoAndTouchesNothing()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var before = site.Hashes;
        journal.Change(Changes.Quill, "1h01", "1h31");
        using (SiteFolder.Begin(site.Folder))
        {
            var answer = journal.AskToday("publish", "--to", "site");

            Assert.Equal(3, answer.Status);
            Assert.Contains($"Another publish is writing to {site.Folder}: process {Environment.ProcessId}, since ", answer.Error, StringComparison.Ordinal);
            Assert.Equal(before, site.Hashes);
        }

        Assert.Equal(0, journal.AskToday("publish", "--to", "site").Status);
        Assert.NotEqual(before, site.Hashes);
    }

    [Fact]
    public void Publish_ManyAtOnce_LeaveAWholeSite()
    {
        const int Makers = 4;
        const int Rounds = 3;
        using var journal = JournalOnDisk.Small();
        journal.PublishTo("alone");
        var (order, told, done) = (new PublishOrder(journal.Folder, journal.PathOf("site"), Journals.Today), 0, 0);
        using var together = new Barrier(Makers);

        var makers = Enumerable.Range(0, Makers).Select(_ => new Thread(() =>
        {
            for (var i = 0; i < Rounds; i++)
            {
                together.SignalAndWait();
                try
                {
                    SitePublisher.Publish(order);
                    Interlocked.Increment(ref done);
                }
                catch (PublishingException e) when (e.Message.StartsWith("Another publish", StringComparison.Ordinal))
                {
                    Interlocked.Increment(ref told);
                }
            }
        })).ToList();
        makers.ForEach(maker => maker.Start());
        makers.ForEach(maker => maker.Join());

        Assert.Equal(Makers * Rounds, told + done);
        Assert.InRange(told, 1, (Makers - 1) * Rounds);
        Assert.Equal(new SiteOnDisk(journal.PathOf("alone")).Hashes, journal.Site().Hashes);
        Assert.Equal([], Leftovers(journal));
    }

    [Fact]
    public void Publish_OnADayOnWhichNothingIsHeldBackAnyMore_ShowsIt()
    {
        using var journal = JournalOnDisk.Small().WithEntry("drill/2025-09-29-later.md", "publish: after 2025-11-10");

        Assert.False(journal.Publish(new DateOnly(2025, 11, 10)).Has("drill/entry/2025-09-29-later.html"));
        Assert.True(journal.Publish(new DateOnly(2025, 11, 11)).Has("drill/entry/2025-09-29-later.html"));
    }

    private static IEnumerable<string?> Leftovers(JournalOnDisk journal) => Directory.EnumerateFileSystemEntries(journal.Folder, ".site.*").Select(Path.GetFileName);
}
