using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Site.Sending;

namespace Journal.Site.Tests.Sending;

public sealed class SenderTests
{
    [Fact]
    public async Task FirstSend_BringsAllOfIt_SecondNothing()
    {
        using var site = SiteOnDisk.WithPages(3);

        var first = await site.Send();
        WatchedCarrier? watched = null;
        var second = await site.Send(transport => watched = new WatchedCarrier(transport));

        Assert.Equal(9, first.Files.Count);
        site.IsAt(site.Target);
        Assert.Empty(second.Files.Concat(second.Deleted));
        Assert.Empty(watched!.Done);
    }

    [Fact]
    public async Task OneEdit_SendsThatFileAndTheManifest()
    {
        using var site = SiteOnDisk.WithPages(3);
        await site.Send();
        site.Put("drill/entry/e1.html", "edited").Publish();

        WatchedCarrier? watched = null;
        await site.Send(transport => watched = new WatchedCarrier(transport));

        Assert.Equal(["put drill/entry/e1.html", "put .sent-site.json"], watched!.Done);
        site.IsAt(site.Target);
    }

    [Fact]
    public async Task Order_IsPicturesPagesFrontPageAndFeedsDeletionsManifest()
    {
        using var site = SiteOnDisk.WithPages(4);
        await site.Send();
        site.Fill(3, "two");

        WatchedCarrier? watched = null;
        await site.Send(transport => watched = new WatchedCarrier(transport));

        string Kind(string line) => line switch
        {
            _ when line.StartsWith("delete ", StringComparison.Ordinal) => "delete",
            "put .sent-site.json" => "manifest",
            _ => UploadPhases.Of(line[4..]).ToString(),
        };
        Assert.Equal(["Pictures", "Pages", "FrontPageAndFeeds", "delete", "manifest"], watched!.Done.Where(line => line != "list").Select(Kind).Aggregate(new List<string>(), (seen, kind) => seen.LastOrDefault() == kind ? seen : [.. seen, kind]));
        Assert.Equal("delete drill/entry/e3.html", watched.Done.First(line => Kind(line) == "delete"));
    }

    [Fact]
    public async Task BrokenAtEveryStep_ReadersMissNoPictureAndTheNextSendFinishes()
    {
        for (var step = 1; ; step++)
        {
            using var site = SiteOnDisk.WithPages(4);
            await site.Send();
            site.Fill(3, "two");
            var last = step;
            WatchedCarrier? broken = null;

            var failed = await Record.ExceptionAsync(() => site.Send(transport => broken = new WatchedCarrier(transport) { Fail = now => now >= last ? new IOException("The line is dead.") : null }));

            Assert.Empty(SiteOnDisk.MissingPictures(SiteOnDisk.Contents(site.Target)));
            WatchedCarrier? next = null;
            await site.Send(transport => next = new WatchedCarrier(transport));
            site.IsAt(site.Target);
            Assert.Empty(next!.Sent.Intersect(broken!.Sent).Except([SentManifest.Address]));
            if (failed is null)
            {
                Assert.True(step > 12, "Every step was tried.");
                return;
            }
        }
    }

    // Two deletions at once, each of which finds its folder empty: one removed it under the other.
    [Fact]
    public async Task FoldersThatAreEmptied_AreGone_HoweverManyAreTakenAwayAtOnce()
    {
        using var site = SiteOnDisk.WithPages(1);
        for (var round = 0; round < 40; round++)
        {
            for (var i = 0; i < 20; i++)
            {
                site.Put($"vice/part/p{i / 2}/one{i}.html", "a part");
            }

            site.Publish();
            await site.Send();
            for (var i = 0; i < 20; i++)
            {
                site.Drop($"vice/part/p{i / 2}/one{i}.html");
            }

            site.Publish();
            await site.Send();
            site.IsFinishedAt(site.Target);
        }
    }

    [Fact]
    public async Task FolderWithSomethingElseInIt_AndFolderThatIsGone_AreWell()
    {
        using var site = SiteOnDisk.WithPages(1);
        site.Put("vice/part/jaw.html", "a part").Put("lathe/part/bed.html", "a part").Publish();
        await site.Send();
        await File.WriteAllTextAsync(Path.Combine(site.Target, "vice", "mine.txt"), "mine");
        Directory.Delete(Path.Combine(site.Target, "lathe"), recursive: true);

        site.Drop("vice/part/jaw.html").Drop("lathe/part/bed.html").Publish();
        await site.Send();

        Assert.Equal("mine", SiteOnDisk.Contents(site.Target)["vice/mine.txt"]);
        Assert.False(Directory.Exists(Path.Combine(site.Target, "vice", "part")));
        site.HasNothingLeft();
    }

    // It was taken away, and the manifest there still lists it.
    [Fact]
    public async Task TakenAwayByABrokenSend_AndBackInTheSite_IsSentAgain()
    {
        using var site = SiteOnDisk.WithPages(2);
        await site.Send();
        site.Drop("drill/entry/e1.html").Publish();
        await Assert.ThrowsAsync<SendingException>(() => site.Send(transport => new WatchedCarrier(transport) { Fail = step => step > 1 ? new IOException("Broken.") : null }));

        site.Fill(2, "one");
        await site.Send();

        site.IsFinishedAt(site.Target);
    }

    [Fact]
    public async Task StoppedWhenAllWasThere_NothingIsSentAgain()
    {
        using var site = SiteOnDisk.WithPages(2);
        var log = Directory.CreateDirectory(Path.Combine(site.Root, "kept"));
        await site.Send(transport => new WatchedCarrier(transport)
        {
            Fail = _ =>
            {
                var path = Assert.Single(Directory.EnumerateFiles(site.Root, ".site.sending-*"));
                File.WriteAllText(Path.Combine(log.FullName, Path.GetFileName(path)), UnixFile.ReadPastLock(path, 100_000));
                return null;
            },
        });
        foreach (var left in log.EnumerateFiles())
        {
            left.MoveTo(Path.Combine(site.Root, left.Name));
        }

        WatchedCarrier? next = null;
        await site.Send(transport => next = new WatchedCarrier(transport));

        Assert.Empty(next!.Sent);
        site.IsFinishedAt(site.Target);
    }

    // A line that was cut short could name another file than it would have.
    [Fact]
    public async Task LogThatEndsWithinALine_NamesNoOtherFile()
    {
        using var site = SiteOnDisk.WithPages(1);
        await Assert.ThrowsAsync<SendingException>(() => site.Send(transport => new WatchedCarrier(transport) { Fail = step => step > 2 ? new IOException("Broken.") : null }));
        var log = Assert.Single(Directory.EnumerateFiles(site.Root, ".site.sending-*"));
        await File.AppendAllTextAsync(log, "begun - notes.txt");
        await File.WriteAllTextAsync(Path.Combine(site.Target, "notes.txt"), "mine");

        await site.Send();
        site.Fill(0, "two");
        await site.Send();

        Assert.Equal("mine", SiteOnDisk.Contents(site.Target)["notes.txt"]);
        site.HasNothingLeft();
    }

    [Fact]
    public async Task BrokenSend_WhatItBroughtAndTheSiteNoLongerHas_IsTakenAway()
    {
        using var site = SiteOnDisk.WithPages(3);
        await Assert.ThrowsAsync<SendingException>(() => site.Send(transport => new WatchedCarrier(transport) { Fail = step => step > 6 ? new IOException("Broken.") : null }));
        Assert.True(File.Exists(Path.Combine(site.Target, "drill/entry/e0.html")));

        site.Drop("drill/entry/e0.html").Publish();
        await site.Send();

        site.IsAt(site.Target);
    }

    [Fact]
    public async Task FailureThatPasses_IsTriedAgainUntilItIsThere()
    {
        using var site = SiteOnDisk.WithPages(3);

        // Of the four tries no file can lose more than three, however its turns and those of the others fall.
        await site.Send(transport => new WatchedCarrier(transport) { Fail = step => step <= 3 ? new TimeoutException("Slow.") : null, Passes = failure => failure is TimeoutException });

        site.IsAt(site.Target);
    }

    [Fact]
    public async Task FullDisk_IsSaidOnceAndLeavesNoDraft()
    {
        using var site = SiteOnDisk.WithPages(3);
        await site.Send();
        site.Fill(3, "two");

        var failed = await Assert.ThrowsAsync<SendingException>(() => site.Send(transport => new WatchedCarrier(transport) { Fail = step => step > 2 ? new IOException("No space left on device") : null }));

        Assert.Equal("No space left on device. Send again to continue from here.", failed.Message);
        Assert.DoesNotContain(SiteOnDisk.Contents(site.Target).Keys, name => name.Contains("being-sent", StringComparison.Ordinal));
    }

    [Fact]
    public async Task ForeignFiles_StandAndAreNeverTakenAway()
    {
        using var site = SiteOnDisk.WithPages(1);
        Directory.CreateDirectory(site.Target);
        await File.WriteAllTextAsync(Path.Combine(site.Target, "mine.txt"), "mine");
        await site.Send();

        site.Fill(0, "two");
        await site.Send();

        Assert.Equal("mine", SiteOnDisk.Contents(site.Target)["mine.txt"]);
    }

    [Fact]
    public async Task ForeignFileAtAnAddressOfOurs_IsWrittenOverOnlyWhenAskedTo()
    {
        using var site = SiteOnDisk.WithPages(1);
        Directory.CreateDirectory(site.Target);
        await File.WriteAllTextAsync(Path.Combine(site.Target, "index.html"), "It works!");

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send());

        Assert.Contains("index.html", refused.Message, StringComparison.Ordinal);
        Assert.Equal("It works!", Assert.Single(SiteOnDisk.Contents(site.Target)).Value);
        await site.Send(order: site.Order with { TakeOver = true });
        site.IsAt(site.Target);
    }

    [Fact]
    public async Task ForeignFileWhereTheSiteHasANewPage_IsWrittenOverOnlyWhenAskedTo()
    {
        using var site = SiteOnDisk.WithPages(1);
        await site.Send();
        await File.WriteAllTextAsync(Path.Combine(Directory.CreateDirectory(Path.Combine(site.Target, "vice")).FullName, "index.html"), "My own page.");
        site.Put("vice/index.html", "the site's").Publish();

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send());

        Assert.Contains("vice/index.html", refused.Message, StringComparison.Ordinal);
        Assert.Equal("My own page.", SiteOnDisk.Contents(site.Target)["vice/index.html"]);
        await site.Send(order: site.Order with { TakeOver = true });
        site.IsAt(site.Target);
    }

    [Fact]
    public async Task BrokenSendToAnotherFolderOfTheSameName_GivesNoRightToWhatLiesInThisOne()
    {
        using var site = SiteOnDisk.WithPages(1);
        await Assert.ThrowsAsync<SendingException>(() => site.Send(transport => new WatchedCarrier(transport) { Fail = step => step > 3 ? new IOException("Broken.") : null }));
        var other = Path.Combine(site.Root, "other");
        await File.WriteAllTextAsync(Path.Combine(Directory.CreateDirectory(other).FullName, "style.css"), "mine");
        foreach (var address in SiteOnDisk.Contents(site.Target).Keys)
        {
            await File.WriteAllTextAsync(Path.Combine(Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(other, address))!).FullName, Path.GetFileName(address)), "mine");
        }

        var elsewhere = site.Order with { Destination = new FolderDestination(new("disk"), other) };
        var refused = await Assert.ThrowsAsync<SendingException>(() => Sender.SendAsync(elsewhere));

        Assert.Contains("files that no send put there", refused.Message, StringComparison.Ordinal);
        Assert.All(SiteOnDisk.Contents(other).Values, words => Assert.Equal("mine", words));
    }

    [Fact]
    public async Task HalfAFileOfAKilledSend_IsTakenAwayByTheNext_EvenWhereTheSiteHasThePageNoMore()
    {
        using var site = SiteOnDisk.WithPages(3);
        await site.Send();
        site.Put("drill/entry/secret.html", "not for everyone").Publish();
        var half = Path.Combine(site.Target, "drill/entry/secret.html" + Transports.DraftOf(site.Order));
        await Assert.ThrowsAsync<SendingException>(() => site.Send(transport => new WatchedCarrier(transport)
        {
            Fail = _ =>
            {
                File.WriteAllText(half, "not for");
                return new IOException("Killed.");
            },
        }));

        site.Drop("drill/entry/secret.html").Publish();
        await site.Send();

        Assert.False(File.Exists(half));
        site.IsAt(site.Target);
    }

    [Theory]
    [InlineData("drill", true)]
    [InlineData("drill", false)]
    public async Task LinkedFolderAtTheDestination_IsNotGoneThrough(string folder, bool isGone)
    {
        using var site = SiteOnDisk.WithPages(1);
        await site.Send();
        var outside = Path.Combine(site.Root, "outside");
        Directory.Move(Path.Combine(site.Target, folder), outside);
        Directory.CreateSymbolicLink(Path.Combine(site.Target, folder), outside);
        var before = SiteOnDisk.Contents(outside);
        (isGone ? site.Drop("drill/entry/e0.html") : site.Put("drill/entry/e0.html", "edited")).Publish();

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send());

        Assert.Contains("drill is a link", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, SiteOnDisk.Contents(outside));
    }

    [Theory]
    [InlineData("journal/www", "is inside the journal")]
    [InlineData("link", "holds the journal itself")]
    [InlineData("link/www", "is inside the journal")]
    [InlineData("/", "are inside one another")]
    [InlineData("", "are inside one another")]
    public async Task DestinationInOrAroundTheJournal_IsRefusedByWhateverName(string folder, string reason)
    {
        using var site = SiteOnDisk.WithPages(1);
        Directory.CreateDirectory(Path.Combine(site.Root, "journal"));
        Directory.CreateSymbolicLink(Path.Combine(site.Root, "link"), Path.Combine(site.Root, "journal"));

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send(order: site.Order with { Destination = new FolderDestination(new("disk"), Path.Combine(site.Root, folder)) }));

        Assert.Contains(reason, refused.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(site.Root, "journal")));
    }

    [Fact]
    public async Task LinksRoundInACircleAtTheDestination_AreNotFollowed()
    {
        using var site = SiteOnDisk.WithPages(1);
        Directory.CreateDirectory(site.Target);
        Directory.CreateSymbolicLink(Path.Combine(site.Target, "a"), ".");
        Directory.CreateSymbolicLink(Path.Combine(site.Target, "b"), ".");

        Assert.Equal(5, (await site.Send()).Files.Count);
    }

    [Fact]
    public async Task LinkWhereADraftWouldGo_IsNotWrittenThrough()
    {
        using var site = SiteOnDisk.WithPages(1);
        var precious = Path.Combine(site.Root, "precious.txt");
        await File.WriteAllTextAsync(precious, "mine");
        Directory.CreateDirectory(site.Target);
        File.CreateSymbolicLink(Path.Combine(site.Target, "index.html" + Transports.DraftOf(site.Order)), precious);

        await site.Send();

        Assert.Equal("mine", await File.ReadAllTextAsync(precious));
        site.IsAt(site.Target);
    }

    [Fact]
    public async Task ManifestThatIsAFolder_IsRefusedBeforeAnythingIsSent()
    {
        using var site = SiteOnDisk.WithPages(1);
        Directory.CreateDirectory(Path.Combine(site.Target, SentManifest.Address));

        Assert.Contains("is a folder", (await Assert.ThrowsAsync<SendingException>(() => site.Send())).Message, StringComparison.Ordinal);
        Assert.Empty(SiteOnDisk.Contents(site.Target));
    }

    [Fact]
    public async Task Verify_MissingAtTheDestination_IsSentAgain()
    {
        using var site = SiteOnDisk.WithPages(2);
        await site.Send();
        File.Delete(Path.Combine(site.Target, "style.css"));

        Assert.Empty((await site.Send()).Files);
        Assert.Equal(["style.css"], (await site.Send(order: site.Order with { Verify = true })).Files);
        site.IsAt(site.Target);
    }

    [Fact]
    public async Task DryRun_SaysAndChangesNothing()
    {
        using var site = SiteOnDisk.WithPages(2);

        var report = await site.Send(order: site.Order with { DryRun = true });

        Assert.Equal(7, report.Files.Count);
        Assert.False(Directory.Exists(site.Target));
        Assert.Equal(["site"], Directory.EnumerateFileSystemEntries(site.Root).Select(Path.GetFileName));
    }

    [Fact]
    public async Task SiteChangedBehindOurBack_IsNotSent()
    {
        using var site = SiteOnDisk.WithPages(2);
        await File.WriteAllTextAsync(Path.Combine(site.Folder, "drill/entry/e0.html"), "someone else's words");

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send());

        Assert.Contains("drill/entry/e0.html is not as it was published", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("index.html", SiteOnDisk.Contents(site.Target).Keys);
    }

    [Fact]
    public async Task ManifestThatLeadsOutOfTheFolder_IsRefused()
    {
        using var site = SiteOnDisk.WithPages(1);
        await site.Send();
        await File.WriteAllTextAsync(Path.Combine(site.Root, "precious.txt"), "mine");
        await File.WriteAllTextAsync(Path.Combine(site.Target, SentManifest.Address), "{\"journal\": \"0b9c1f6e-6a36-4c0f-9a60-54d1f0a7c2de\", \"title\": \"The bench\", \"files\": {\"../precious.txt\": \"\"}}");

        Assert.Contains("outside the site", (await Assert.ThrowsAsync<SendingException>(() => site.Send())).Message, StringComparison.Ordinal);

        Assert.True(File.Exists(Path.Combine(site.Root, "precious.txt")));
    }

    [Theory]
    [InlineData("{\"index.html\": \"00\"}")]
    [InlineData("{\"journal\": \"0b9c1f6e-6a36-4c0f-9a60-54d1f0a7c2de\", \"title\": null, \"files\": null}")]
    [InlineData("[]")]
    public async Task ManifestOfAnotherForm_IsRefusedWithARemedy(string manifest)
    {
        using var site = SiteOnDisk.WithPages(1);
        Directory.CreateDirectory(site.Target);
        await File.WriteAllTextAsync(Path.Combine(site.Target, SentManifest.Address), manifest);

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send());

        Assert.Contains("cannot be read. Delete that file there", refused.Message, StringComparison.Ordinal);
        Assert.Equal([SentManifest.Address], SiteOnDisk.Contents(site.Target).Keys);
    }

    [Fact]
    public async Task PlaceOfAnotherJournal_IsRefusedAndStaysAsItIs_UnlessTakenOver()
    {
        using var site = SiteOnDisk.WithPages(2);
        await site.Send(order: site.Order with { Id = new("77a3d1c4-0f52-4f5a-8f1e-3a0c7d2b9e61"), Title = "The other bench" });
        var theirs = SiteOnDisk.Contents(site.Target);
        site.Fill(1, "two");

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send());

        Assert.Contains("the site of another journal, “The other bench”", refused.Message, StringComparison.Ordinal);
        Assert.Contains("id: 77a3d1c4-0f52-4f5a-8f1e-3a0c7d2b9e61", refused.Message, StringComparison.Ordinal);
        Assert.Equal(theirs, SiteOnDisk.Contents(site.Target));

        await site.Send(order: site.Order with { TakeOver = true });
        site.IsAt(site.Target);
        await site.Send();
    }

    [Fact]
    public async Task FilesOfTheMakerWithTheEndingOfDrafts_Stay()
    {
        using var site = SiteOnDisk.WithPages(1);
        Directory.CreateDirectory(site.Target);
        var own = Path.Combine(site.Target, "index.html.being-sent");
        await File.WriteAllTextAsync(own, "mine");

        await site.Send();
        site.Fill(1, "two");
        await site.Send();

        Assert.Equal("mine", await File.ReadAllTextAsync(own));
    }

    [Fact]
    public async Task SecondSendToTheSamePlace_Waits()
    {
        using var site = SiteOnDisk.WithPages(1);
        using var log = SendLog.Open(site.Folder, site.Order.Destination);

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send());

        Assert.Contains("Another send", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task FolderOfADiskThatIsNotConnected_IsNotMade()
    {
        using var site = SiteOnDisk.WithPages(1);
        var order = site.Order with { Destination = new FolderDestination(new("disk"), Path.Combine(site.Root, "stick", "www")) };

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send(order: order));

        Assert.Contains("Is the disk connected?", refused.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(site.Root, "stick")));
    }

    [Theory]
    [InlineData("site")]
    [InlineData("site/inner")]
    [InlineData(".")]
    public async Task FolderThatIsOrHoldsSiteOrJournal_IsRefused(string folder)
    {
        using var site = SiteOnDisk.WithPages(1);

        await Assert.ThrowsAsync<SendingException>(() => site.Send(order: site.Order with { Destination = new FolderDestination(new("disk"), Path.GetFullPath(folder, site.Root)) }));

        site.IsAt(Path.Combine(site.Folder, "..", "site").Replace(".published-site.json", "", StringComparison.Ordinal) is var path ? CopyWithoutMark(site, path) : "");
    }

    private static string CopyWithoutMark(SiteOnDisk site, string folder)
    {
        var copy = Path.Combine(site.Root, "copy");
        foreach (var (address, text) in SiteOnDisk.Contents(folder).Where(file => file.Key != SiteToSend.Mark))
        {
            var path = Path.Combine(copy, address);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
        }

        return copy;
    }
}
