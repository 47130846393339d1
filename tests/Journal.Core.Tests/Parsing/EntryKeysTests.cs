using Journal.Core.Model;

namespace Journal.Core.Tests.Parsing;

public sealed class EntryKeysTests
{
    [Fact]
    public void Entry_EveryKey_IsRead()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("tools.yaml", "- {id: boring-head}\n- {id: gauges}\n- {id: lathe}\n");
        journal.WritePicture("drill/photos/a.gif");
        journal.WriteEntry("2025-09-27", "mistakes:\n  - {what: Wrong zero, id: zero}\nlessons:\n  - {id: ends, text: Both ends}\nsnags: [{id: rattle, text: It rattles}]");
        journal.Write("drill/2025-10-03-head.md", """
            ---
            title: Boring the head
            date: 2025-10-03
            part: head
            operation: [boring, reaming]
            hours: 2h45
            setup: 1h10
            held: face plate
            datum: machined base
            tools: [boring-head, gauges]
            made: {id: quill-block, title: Split block, kind: fixture, got: made, cost: 2.5, since: 2025-10-03, need: workaround, link: "https://example.org/", disclose: gift}
            mends: zero
            mistakes:
              - A plain sentence.
              - {what: Off, id: off, cause: setting-up, lost: 1h15, outcome: used-as-is, pieces: 2, made-on: 2025-09-27, lesson: {id: one, text: One, verdict: do-again, better: More}, repeats: ends, job: 1}
            lessons:
              - Just so.
              - {id: two, text: Two, verdict: never-again, better: Another way}
            heeded: [ends, one]
            finished: [head, {gib-screw: 4}]
            next: Face the back.
            snags: [Loose handle, {id: leak, text: It leaks}]
            cleared: rattle
            trials: {on: air, pressure: 3 bar, speed: 200 rpm, minutes: 12.5, result: Ran}
            readings: {feature: bore, required: 25 H7, actual: 25.012, with: gauges}
            settings: {diameter: 25, rpm: 320, feed: 0.05 mm/turn, teeth: 2, width: 3, depth: 0.5, material: cast-iron GG25, cutter: bar, machine: lathe, coolant: dry, verdict: good, note: Sang}
            milestone: First bore
            story: The head was bored.
            bought: {what: Drill, cost: 12.50, kind: tooling, for: quill, because: zero}
            departure: Bored over size for a bush.
            photos: {file: photos/a.gif, caption: The head, alt: A grey lump, marks: {at: [62, 40.5], text: guide}, publish: never}
            publish: after 2026-01-10
            ---
            Text.
            """);

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        var entry = reading.Journal!.Builds[0].Entries[1];
        var job = Assert.Single(entry.Jobs);
        Assert.Equal("Boring the head", entry.Title);
        Assert.Equal(new DateOnly(2025, 10, 3), entry.Date);
        Assert.Equal([new PartShare(new("head"), 1)], job.Parts);
        Assert.Equal(["boring", "reaming"], job.Operations.Select(operation => operation.Value));
        Assert.Equal((165, 70), (job.Time.Count, job.SetUp.Count));
        Assert.Equal(("face plate", "machined base"), (job.Held, job.Datum));
        Assert.Equal(["boring-head", "gauges"], job.Tools.Select(tool => tool.Value));
        Assert.Equal("quill-block", Assert.Single(job.Made).Value);
        Assert.Equal("zero", job.Mends?.Value);

        var tool = reading.Journal.Tools.Single(tool => tool.Id.Value == "quill-block");
        Assert.Equal(("Split block", "fixture", Got.Made, 2.5m, Need.Workaround, "gift"), (tool.Title, tool.Kind?.Value, tool.Got, tool.Cost, tool.Need, tool.Disclose));
        Assert.Equal((new DateOnly(2025, 10, 3), "https://example.org/", entry.Ref), (tool.Since, tool.Link?.ToString(), tool.DefinedIn));

        Assert.Equal("A plain sentence.", entry.Mistakes[0].What);
        var mistake = entry.Mistakes[1];
        Assert.Equal(("Off", "off", "setting-up", 75, Outcome.UsedAsIs, 2), (mistake.What, mistake.Id?.Value, mistake.Cause?.Value, mistake.Lost.Count, mistake.Outcome, mistake.Pieces));
        Assert.Equal(("2025-09-27", "one", "ends", 1), (mistake.MadeOn?.Value, mistake.Lesson?.Value, mistake.Repeats?.Value, mistake.Job));

        Assert.Equal(["one", "drill-2025-10-03-head-2", "two"], entry.Lessons.Select(lesson => lesson.Id.Value));
        Assert.Equal((true, Verdict.DoAgain, "More"), (entry.Lessons[0].FromMistake, entry.Lessons[0].Verdict, entry.Lessons[0].Better));
        Assert.Equal((false, Verdict.NeverAgain, "Another way"), (entry.Lessons[2].FromMistake, entry.Lessons[2].Verdict, entry.Lessons[2].Better));
        Assert.Equal(["ends", "one"], entry.Heeded.Select(lesson => lesson.Value));
        Assert.Equal([new Finished(new("head"), null), new Finished(new("gib-screw"), 4)], entry.Finished);
        Assert.Equal("Face the back.", entry.Next);
        Assert.Equal([new Snag(new("2025-10-03-head-1"), "Loose handle"), new Snag(new("leak"), "It leaks")], entry.Snags);
        Assert.Equal("rattle", Assert.Single(entry.Cleared).Value);

        var trial = Assert.Single(entry.Trials);
        Assert.Equal(("air", "3 bar", "200 rpm", 13, "Ran"), (trial.On, trial.Pressure, trial.Speed, trial.Time?.Count, trial.Result));
        var measured = Assert.Single(entry.Readings);
        Assert.Equal(("bore", "head", "25 H7", "25.012", "gauges", 25), (measured.Feature, measured.Part?.Value, measured.Required, measured.Actual, measured.With?.Value, measured.Place.Line));
        var setting = Assert.Single(entry.Settings);
        Assert.Equal(("25", 320m, "0.05 mm/turn", 2, "3", "0.5"), (setting.Diameter, setting.Rpm, setting.Feed, setting.Teeth, setting.Width, setting.Depth));
        Assert.Equal(("grey-iron", "GG25", "bar", "lathe", "dry", "good", "Sang"), (setting.Material?.Family.Value, setting.Material?.Grade, setting.Cutter, setting.Machine?.Value, setting.Coolant, setting.Verdict, setting.Note));
        Assert.Equal(("First bore", "The head was bored.", "Bored over size for a bush."), (entry.Milestone, entry.Story, entry.Departure));
        var purchase = Assert.Single(entry.Bought);
        Assert.Equal(("Drill", 12.5m, PurchaseKind.Tooling, "quill", "zero"), (purchase.What, purchase.Cost, purchase.Kind, purchase.ForPart?.Value, purchase.Because?.Value));
        var photo = Assert.Single(entry.Photos);
        Assert.Equal(("drill/photos/a.gif", "The head", "A grey lump", true), (photo.File, photo.Caption, photo.Alt, photo.Publish.IsNever));
        Assert.Equal([new PhotoMark(62, 40.5m, "guide")], photo.Marks);
        Assert.False(entry.Publish.AllowsOn(new DateOnly(2026, 1, 10)));
        Assert.True(entry.Publish.AllowsOn(new DateOnly(2026, 1, 11)));
        Assert.Equal("Text.", entry.Body.Text);
    }

    [Fact]
    public void Entry_TheLeastThatIsValid_IsADateAndAJob()
    {
        using var journal = new JournalOnDisk();
        journal.Write("vice/build.yaml", "title: Vice\n");
        journal.Write("vice/first-look.md", "---\ndate: 2025-10-03\nhours: 1\n---");

        var reading = journal.Read();

        Assert.Empty(reading.Problems);
        var entry = reading.Journal!.Builds[0].Entries[0];
        Assert.Equal(("First look", "other", true), (entry.Title, entry.Jobs[0].Operations[0].Value, entry.Jobs[0].IsGeneral));
    }

    [Theory]
    [InlineData("2025-10-03-boring-the-head", "Boring the head")]
    [InlineData("2025-10-03", "2025-10-03")]
    public void Title_LeftOut_ComesFromTheName(string name, string title)
    {
        using var journal = JournalOnDisk.WithDrill().WriteEntry(name);

        Assert.Equal(title, journal.Read().Journal!.Builds[0].Entries[0].Title);
    }

    [Fact]
    public void Jobs_Defaults_AreReplacedWhole()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("tools.yaml", "- {id: a}\n- {id: b}\n- {id: c}\n");
        journal.Write("drill/2025-10-03.md", """
            ---
            part: [head, quill]
            operation: [turning, boring]
            tools: [a, b]
            held: chuck
            datum: base
            jobs:
              - {hours: 1h}
              - {part: quill, operation: reaming, tools: c, held: vice, datum: bore, hours: 2h}
              - {part: whole, tools: , hours: 3h}
            ---
            """);

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        var jobs = reading.Journal!.Builds[0].Entries[0].Jobs;
        Assert.Equal([1, 2, 3], jobs.Select(job => job.Number));
        Assert.Equal(["head+quill", "quill", ""], jobs.Select(job => string.Join('+', job.Parts.Select(share => share.Part))));
        Assert.Equal(["turning+boring", "reaming", "turning+boring"], jobs.Select(job => string.Join('+', job.Operations)));
        Assert.Equal(["a+b", "c", "a+b"], jobs.Select(job => string.Join('+', job.Tools)));
        Assert.Equal(["chuck/base", "vice/bore", "chuck/base"], jobs.Select(job => $"{job.Held}/{job.Datum}"));
    }

    [Theory]
    [InlineData("hours", "1h")]
    [InlineData("setup", "1h")]
    [InlineData("made", "{id: x}")]
    [InlineData("mends", "x")]
    public void Jobs_KeyOfAJobBeside_IsReported(string key, string value)
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"part: head\n{key}: {value}\njobs:\n  - hours: 1h");

        Assert.Equal(["drill/2025-10-03.md:3:1 hours-beside-jobs"], JournalOnDisk.Lines(problems));
    }

    [Theory]
    [InlineData("part: {head: 2, quill: 1}", "head=2 quill=1")]
    [InlineData("part: {head: 0.5, quill: }", "head=0.5 quill=1")]
    [InlineData("part: [head, quill]", "head=1 quill=1")]
    [InlineData("part: quill", "quill=1")]
    [InlineData("part: whole", "")]
    [InlineData("part: [whole]", "")]
    public void Part_EveryForm_GivesItsWeights(string line, string shares)
    {
        var (entry, problems) = JournalOnDisk.ReadEntry($"{line}\nhours: 1h");

        Assert.Empty(JournalOnDisk.Lines(problems));
        Assert.Equal(shares, string.Join(' ', entry!.Jobs[0].Parts.Select(share => FormattableString.Invariant($"{share.Part}={share.Weight}"))));
    }

    [Theory]
    [InlineData("part: {head: 0, quill: 1}", "2:14 not-a-number")]
    [InlineData("part: {head: -1}", "2:14 not-a-number")]
    [InlineData("part: {head: some}", "2:14 not-a-number")]
    [InlineData("part: {head: 1, head: 2}", "2:17 duplicate-key")]
    [InlineData("part: [[head]]", "2:8 not-text")]
    [InlineData("part: drill/head", "2:7 not-an-id")]
    [InlineData("part: haed", "2:7 unknown-part")]
    [InlineData("finished: {gib-screw: 1, gib-screw: 2}\npart: head", "2:26 duplicate-key")]
    [InlineData("finished: [[head]]\npart: head", "2:12 not-text")]
    [InlineData("finished: {gib-screw: few}\npart: head", "2:23 not-a-number")]
    public void Part_WrongForm_IsReportedWhereItStands(string lines, string expected)
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"{lines}\nhours: 1h");

        Assert.Equal([$"drill/2025-10-03.md:{expected}"], JournalOnDisk.Lines(problems));
    }

    [Fact]
    public void Part_LeftOut_WarnsOnlyWhereThereAreParts()
    {
        var (entry, problems) = JournalOnDisk.ReadEntry("operation: painting\nhours: 1h");

        Assert.Equal(["drill/2025-10-03.md:2:1 part-not-said"], JournalOnDisk.Lines(problems));
        Assert.True(entry!.Jobs[0].IsGeneral);
    }

    [Fact]
    public void Lists_SingleBareValue_ServesEverywhere()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("journal.yaml", "title: Shed\noperations: gilding\ncauses: impatience\nmaterials: resin\ntool-kinds: magnet\n");
        journal.Write("tools.yaml", "- {id: a, kind: magnet}\n");
        journal.Write("vice/build.yaml", "title: Vice\nparts: jaw\nmates: {hole: jaw.bore, shaft: jaw.pin}\nvideos: {url: \"https://example.org/v\", covers: jaw, chapters: {at: 3:20, title: Start}}\n");
        journal.Write("plans/shaper.yaml", "title: Shaper\nparts: ram\naway: 2026-12-20/2027-01-03\n");
        journal.WritePicture("drill/photos/a.gif");
        journal.WriteEntry("2025-10-02", "mistakes: {what: One, id: m}\nsnags: {id: s, text: Loose}\nlessons: {id: l, text: Slow down}");
        journal.WriteEntry("2025-10-03", "tools: a\nmade: {id: b}\nmends: m\nmistakes: Dropped it.\nlessons: Hold it.\nheeded: l\nfinished: head\nsnags: Dirty\ncleared: s\ntrials: {on: hand}\nreadings: {feature: bore}\nsettings: {rpm: 100}\nbought: {what: Oil, cost: 4}\nphotos: {file: photos/a.gif, caption: A}");
        journal.Write("drill/2025-10-04.md", "---\njobs: {part: head, operation: gilding, hours: 1h}\n---\n");

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        var entry = reading.Journal!.Builds[0].Entries[1];
        Assert.Single(entry.Mistakes);
        Assert.Single(entry.Snags);
        Assert.Equal(200, reading.Journal.Builds[1].Videos[0].Chapters[0].AtSecond);
    }

    [Fact]
    public void Keys_Blank_CountAsLeftOut()
    {
        var blanks = string.Join('\n', "setup tools made mends mistakes lessons heeded finished next snags cleared trials readings settings milestone story bought departure photos publish jobs".Split(' ').Select((key, i) => $"{key}:{(i % 3 == 0 ? "" : i % 3 == 1 ? " ~" : " null")}"));

        var (entry, problems) = JournalOnDisk.ReadEntry($"part: head\nhours: 1h\n{blanks}");

        Assert.Empty(JournalOnDisk.Lines(problems));
        Assert.Null(entry!.Next);
        Assert.Empty(entry.Snags);
    }

    [Fact]
    public void Lists_BlankItems_CountAsLeftOut()
    {
        var (entry, problems) = JournalOnDisk.ReadEntry("part: head\nhours: 1h\nsnags:\n  -\n  - Loose\nfinished: [~]\ntools:\n  -");

        Assert.Empty(JournalOnDisk.Lines(problems));
        Assert.Equal("Loose", Assert.Single(entry!.Snags).Text);
    }

    [Fact]
    public void Publish_AnythingElse_IsReportedAndHides()
    {
        foreach (var value in new[] { "sometime", "after tomorrow", "[never]", "true" })
        {
            var (entry, problems) = JournalOnDisk.ReadEntry($"part: head\nhours: 1h\npublish: {value}");

            Assert.Single(problems);
            Assert.True(entry!.Publish.IsNever);
        }
    }

    [Fact]
    public void Lost_Nothing_IsFine()
    {
        var (entry, problems) = JournalOnDisk.ReadEntry("part: head\nhours: 1h\nmistakes: {what: Nearly, lost: 0}");

        Assert.Empty(problems);
        Assert.Equal(Minutes.Zero, entry!.Mistakes[0].Lost);
    }

    [Fact]
    public void Lesson_NumberInTheEntry_FollowsTheFileNotTheKey()
    {
        var (entry, problems) = JournalOnDisk.ReadEntry("part: head\nhours: 1h\nlessons: [First]\nmistakes:\n  - {what: Off, lesson: Second}");

        Assert.Empty(problems);
        Assert.Equal(["drill-2025-10-03-1 First", "drill-2025-10-03-2 Second"], entry!.Lessons.Select(lesson => $"{lesson.Id} {lesson.Text}"));
        Assert.Equal("drill-2025-10-03-2", entry.Mistakes[0].Lesson?.Value);
    }
}
