using Journal.Core.Model;

namespace Journal.Core.Tests.Parsing;

public sealed class OtherFilesTests
{
    [Fact]
    public void Journal_EveryKey_IsRead()
    {
        using var journal = new JournalOnDisk();
        journal.Write("journal.yaml", """
            title: The Lean-to
            id: 5f0c7d8e-1111-4222-8333-123456789abc
            maker: Wren
            units: inch
            currency: GBP
            time-zone: Europe/Dublin
            address: https://example.org/bench
            operations: [engine-turning, {id: gilding, title: Gold leaf, kind: finishing}]
            causes: [impatience]
            materials: [{id: resin, title: Casting resin}]
            tool-kinds: [magnet]
            """);

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        var read = reading.Journal!;
        Assert.Equal(("The Lean-to", "5f0c7d8e-1111-4222-8333-123456789abc", "Wren", LengthUnit.Inch), (read.Title, read.Id.ToString(), read.Maker, read.Units));
        Assert.Equal(("GBP", "Europe/Dublin", "https://example.org/bench/"), (read.Currency, read.TimeZone, read.Address?.ToString()));
        Assert.Equal((TimeKind.Cutting, "Gold leaf", TimeKind.Finishing), (read.Vocabulary.Operation(new("engine-turning")).Kind, read.Vocabulary.Operation(new("gilding")).Title, read.Vocabulary.Operation(new("gilding")).Kind));
        Assert.True(read.Vocabulary.Causes.Has(new("impatience")) && read.Vocabulary.Materials.Has(new("resin")) && read.Vocabulary.ToolKinds.Has(new("magnet")));
    }

    [Fact]
    public void Journal_TitleAlone_GetsALastingIdOfItsOwn()
    {
        using var one = new JournalOnDisk();
        using var other = new JournalOnDisk();

        Assert.Equal(one.Read().Journal!.Id, other.Read().Journal!.Id);
        Assert.Equal(5, one.Read().Journal!.Id.Version);
    }

    [Fact]
    public void Build_EveryKey_IsRead()
    {
        using var journal = new JournalOnDisk();
        journal.Write("drill/build.yaml", """
            title: Sensitive bench drill
            status: laid-aside
            started: 2025-09-06
            units: inch
            cost: 240
            drawings: three sheets
            general-tolerance: 0.005
            parts:
              - {id: head, item: 4, title: Head casting, material: cast-iron, stock: casting, supplied: kit, drawing: sheet 2, guess: 9h}
              - {id: quill, item: 7, material: mild-steel 070M20, stock: round 32 x 180, quantity: 2, guess: {turning: 3h, boring: 2h}, reguess: {low: 6h, likely: 9h, high: 16h}}
            whole: {assembly: 6h, painting: 4h}
            mates:
              - {hole: head.bore, shaft: quill.diameter}
            videos:
              - {url: "https://example.org/3", title: Part 3, covers: [head, 2025-10-01/2025-10-20], chapters: [{at: "3:20", title: Setting up}, {at: "1:02:03", title: End}]}
            """);

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        var build = Assert.Single(reading.Journal!.Builds);
        Assert.Equal(("drill", "Sensitive bench drill", BuildStatus.LaidAside, new DateOnly(2025, 9, 6)), (build.Id.Value, build.Title, build.Status, build.Started));
        Assert.Equal((LengthUnit.Inch, 240m, "three sheets", new Length(0.005m, LengthUnit.Inch)), (build.Units, build.Cost, build.Drawings, build.GeneralTolerance));
        var (head, quill) = (build.Parts[0], build.Parts[1]);
        Assert.Equal(("4", "Head casting", "grey-iron", "casting", "kit", "sheet 2", 540), (head.Item, head.Title, head.Material?.Family.Value, head.Stock?.Form.Value, head.Supplied, head.Drawing, head.Guess?.Likely.Count));
        Assert.Equal(("Quill", "070M20", "32 x 180", 2, 300), (quill.Title, quill.Material?.Grade, quill.Stock?.Size, quill.Quantity, quill.Guess?.Likely.Count));
        Assert.Equal((360, 540, 960), (quill.Reguess?.Low?.Count, quill.Reguess?.Likely.Count, quill.Reguess?.High?.Count));
        Assert.Equal((360, 240), (build.Whole[new("assembly")].Count, build.Whole[new("painting")].Count));
        Assert.Equal("head.bore/quill.diameter", $"{build.Mates[0].Hole}/{build.Mates[0].Shaft}");
        var video = Assert.Single(build.Videos);
        Assert.Equal(("Part 3", "head", new DateRange(new(2025, 10, 1), new(2025, 10, 20))), (video.Title, Assert.Single(video.CoversParts).Value, Assert.Single(video.CoversDays)));
        Assert.Equal([new Chapter(200, "Setting up"), new Chapter(3723, "End")], video.Chapters);
    }

    [Fact]
    public void Tools_EveryKey_IsRead()
    {
        using var journal = new JournalOnDisk();
        journal.Write("tools.yaml", "- {id: boring-head, title: 50 mm boring head, kind: tool-holding, got: hired, cost: 85, since: 2025-08-30, need: essential, link: \"https://example.org/\", disclose: gift}\n- {id: file}\n");

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        var tool = reading.Journal!.Tools[0];
        Assert.Equal(("50 mm boring head", "tool-holding", Got.Hired, 85m, Need.Essential, "gift"), (tool.Title, tool.Kind?.Value, tool.Got, tool.Cost, tool.Need, tool.Disclose));
        Assert.Equal("File", reading.Journal.Tools[1].Title);
    }

    [Fact]
    public void Plan_EveryKey_IsRead()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("plans/bench-shaper.yaml", """
            title: Hand-lever bench shaper
            start: 2026-11-07
            hours-a-week: 6
            away: [2026-12-20/2027-01-03, 2027-02-01]
            parts:
              - {id: ram, material: cast-iron, stock: casting, operations: [milling, scraping, drilling], guess: 12h, like: drill/head}
              - {id: gib-screw, quantity: 6, operations: {turning: 1h, screw-cutting: 1h30}}
              - {id: tool-slide, guess: {low: 6h, likely: 9h, high: 16h}}
            whole: {assembly: 8h, painting: 5h}
            publish: never
            """);
        journal.Write("plans/other.yaml", "title: Another\nparts: [ram]\n");

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        var plan = reading.Journal!.Plans[0];
        Assert.Equal(("bench-shaper", "Hand-lever bench shaper", new DateOnly(2026, 11, 7), 6m, true), (plan.Id.Value, plan.Title, plan.Start, plan.HoursAWeek, plan.Publish.IsNever));
        Assert.Equal([15, 1], plan.Away.Select(range => range.Days));
        Assert.Equal(["milling", "scraping", "drilling"], plan.Parts[0].Operations.Select(operation => operation.Value));
        Assert.Equal("drill/head", plan.Parts[0].Like?.ToString());
        Assert.Equal((6, 150, 2), (plan.Parts[1].Quantity, plan.Parts[1].Guess?.Likely.Count, plan.Parts[1].Operations.Count));
        Assert.Equal((480, 300), (plan.Whole[new("assembly")].Count, plan.Whole[new("painting")].Count));
    }

    [Fact]
    public void Folders_DotAndPublishedSiteAndPhotos_AreNotRead()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write(".trash/build.yaml", "nonsense: 1");
        journal.Write("site/.published-site.json", "{}").Write("site/drill/build.yaml", "nonsense: 1");
        journal.Write("drill/photos/NOTES.md", "no entry");
        journal.Write("drill/.hidden.md", "no entry").Write("drill/._2025-10-03.md", "no entry");
        journal.Write("README.md", "no entry either");
        journal.WriteEntry("2025/2025-10-03");

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        Assert.Equal("drill/2025/2025-10-03.md", Assert.Single(Assert.Single(reading.Journal!.Builds).Entries).File);
    }

    [Fact]
    public void Root_WithSlashAtItsEnd_IsTheSame()
    {
        using var journal = JournalOnDisk.WithDrill().WritePicture("drill/a.gif").WriteEntry("2025-10-03", body: "![The head](a.gif)\n");

        var reading = Core.Checking.JournalReader.Read(journal.Root + Path.DirectorySeparatorChar, JournalOnDisk.Today);

        Assert.Empty(reading.Problems);
        Assert.Equal("drill/a.gif", reading.Journal!.Builds[0].Entries[0].Photos[0].File);
    }

    [Fact]
    public void Photos_InNestedEntry_AreFoundBesideItElseAboveIt()
    {
        using var journal = JournalOnDisk.WithDrill().WritePicture("drill/photos/a.gif").WritePicture("drill/2025/photos/b.gif");
        journal.WriteEntry("2025/2025-10-03", "photos:\n  - {file: photos/a.gif, caption: A}\n  - photos/b.gif", "![B from the side](photos/b.gif)\n");

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        Assert.Equal(["drill/photos/a.gif A ", "drill/2025/photos/b.gif  B from the side"], reading.Journal!.Builds[0].Entries[0].Photos.Select(photo => $"{photo.File} {photo.Caption} {photo.Alt}"));
    }
}
