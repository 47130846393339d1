namespace Journal.Core.Tests.Parsing;

/// <summary>A good-sized journal that is well, and what is said when one thing after another goes wrong in it.</summary>
public sealed class ThirtyFaultsTests
{
    /// <summary>The faults that the format promises to name, each put in by replacing a piece of one file.</summary>
    private static readonly (string File, string Piece, string Instead, string Expected)[] Faults =
    [
        ("journal.yaml", "units: mm", "units: metre", "journal.yaml:4:8 not-a-choice"),
        ("tools.yaml", "kind: gauge", "kind: guage", "tools.yaml:2:19 unknown-tool-kind"),
        ("tools.yaml", "id: file", "id: lathe", "tools.yaml:3:8 duplicate-id"),
        ("plans/shaper.yaml", "drill/head", "drill/haed", "plans/shaper.yaml:4:36 unknown-part"),
        ("plans/shaper.yaml", "2026-12-20/2027-01-03", "2027-12-20/2027-01-03", "plans/shaper.yaml:3:7 not-a-date-range"),
        ("drill/build.yaml", "status: under-way", "staus: under-way", "drill/build.yaml:2:1 unknown-key"),
        ("drill/build.yaml", "material: mild-steel", "material: mild-stele", "drill/build.yaml:5:27 unknown-material"),
        ("drill/build.yaml", "hole: head.bore", "hole: haed.bore", "drill/build.yaml:8:12 unknown-part"),
        ("drill/2025-09-01-e.md", "hours: 1h", "hours: 0", "drill/2025-09-01-e.md:5:8 not-positive"),
        ("drill/2025-09-02-e.md", "hours: 1h", "hours: -1h", "drill/2025-09-02-e.md:5:8 not-positive"),
        ("drill/2025-09-03-e.md", "hours: 1h", "hours: 2:75", "drill/2025-09-03-e.md:5:8 not-a-time"),
        ("drill/2025-09-04-e.md", "hours: 1h", "hours: 25h", "drill/2025-09-04-e.md:5:8 day-too-long"),
        ("drill/2025-09-05-e.md", "hours: 1h", "hours: [19:00-20:00, 19:30-20:30]", "drill/2025-09-05-e.md:5:22 overlap"),
        ("drill/2025-09-06-e.md", "setup: half", "setup: 3h", "drill/2025-09-06-e.md:6:8 setup-too-long"),
        ("drill/2025-09-07-e.md", "part: head", "part: haed", "drill/2025-09-07-e.md:3:7 unknown-part"),
        ("drill/2025-09-08-e.md", "operation: boring", "operation: booring", "drill/2025-09-08-e.md:4:12 unknown-operation"),
        ("drill/2025-09-09-e.md", "tools: [lathe]", "tools: [lahte]", "drill/2025-09-09-e.md:7:9 unknown-tool"),
        ("drill/2025-09-10-e.md", "(part:quill)", "(part:quil)", "drill/2025-09-10-e.md:15:5 unknown-link-target"),
        ("drill/2025-09-11-e.md", "(tool:lathe)", "(tool:lath)", "drill/2025-09-11-e.md:16:5 unknown-link-target"),
        ("drill/2025-09-12-e.md", "(lesson:slow)", "(lesson:slov)", "drill/2025-09-12-e.md:17:9 unknown-link-target"),
        ("drill/2025-09-13-e.md", "(entry:2025-09-01)", "(entry:2025-08-01)", "drill/2025-09-13-e.md:18:9 unknown-link-target"),
        ("drill/2025-09-14-e.md", "next: Face", "nxt: Face", "drill/2025-09-14-e.md:8:1 unknown-key"),
        ("drill/2025-09-15-e.md", "next: Face", "hours: 2h", "drill/2025-09-15-e.md:8:1 duplicate-key"),
        ("drill/2025-09-16-e.md", "title: Evening", "date: 2025-12-17", "drill/2025-09-16-e.md:2:7 date-differs"),
        ("drill/2025-09-17-e.md", "title: Evening", "title: tap #10-32", "drill/2025-09-17-e.md:2:8 cut-short"),
        ("drill/2025-09-18-e.md", "---\ntitle", "title", "drill/2025-09-18-e.md:1:1 front-matter-missing"),
        ("drill/2025-09-19-e.md", "\n---\n\nText", "\n\nText", "drill/2025-09-19-e.md:1:1 front-matter-not-closed"),
        ("drill/2025-09-20-e.md", "heeded: [slow]", "heeded: [slow", "drill/2025-09-20-e.md:10:9 not-yaml"),
        ("drill/2025-09-21-e.md", "heeded: [slow]", "heeded: [sloww]", "drill/2025-09-21-e.md:10:10 unknown-lesson"),
        ("drill/2025-09-22-e.md", "cause: haste", "cause: hastte", "drill/2025-09-22-e.md:9:35 unknown-cause"),
        ("drill/2025-09-23-e.md", "story: A line.", "finished: quill", "drill/2025-09-23-e.md:11:11 finished-before-work"),
        ("drill/2025-09-24-e.md", "story: A line.", "finished: {gib-screw: 7}", "drill/2025-09-24-e.md:11:12 too-many-pieces"),
        ("drill/2025-09-25-e.md", "story: A line.", "photos: photos/none.jpg", "drill/2025-09-25-e.md:11:9 picture-missing"),
        ("drill/2025-09-26-e.md", "story: A line.", "lessons: {id: slow, text: A}", "drill/2025-09-26-e.md:11:15 duplicate-id"),
        ("drill/2025-09-27-e.md", "story: A line.", "publish: perhaps", "drill/2025-09-27-e.md:11:10 not-a-choice"),
        ("drill/2025-09-28-e.md", "part: head", "part: {head: 1, quill: some}", "drill/2025-09-28-e.md:3:24 not-a-number"),
    ];

    private static readonly (string File, string Text, string Expected)[] FilesAdded =
    [
        ("drill/2026-02-01-e.md", Entry, "drill/2026-02-01-e.md:1:1 date-in-future"),
        ("drill/again/2025-08-30-slow.md", Entry, "drill/again/2025-08-30-slow.md:1:1 same-address"),
        ("drill/2025-12-01-empty.md", "---\n---\nText\n", "drill/2025-12-01-empty.md:2:1 front-matter-empty"),
        ("drill/2025-12-02-words.md", "---\njust words\n---\nText\n", "drill/2025-12-02-words.md:2:1 not-keys"),
        ("drill/no-date.md", Entry, "drill/no-date.md:2:1 date-missing"),
        ("drill/2025-12-03-alias.md", "---\npart: &p head\nhours: 1h\nnext: *p\n---\n", "drill/2025-12-03-alias.md:4:7 yaml-alias"),
    ];

    private const string Entry = """
        ---
        title: Evening
        part: head
        operation: boring
        hours: 1h
        setup: half
        tools: [lathe]
        next: Face
        mistakes: [{what: Slipped, cause: haste}]
        heeded: [slow]
        story: A line.
        ---

        Text
        See [the quill](part:quill) again.
        And [it](tool:lathe) too.
        Then as [learned](lesson:slow).
        Finally [the first](entry:2025-09-01).

        """;

    [Fact]
    public void Journal_ThatIsWell_HasNoProblems()
    {
        using var journal = Well();

        Assert.Empty(journal.Problems());
    }

    [Fact]
    public void Journal_WithEveryFaultAtOnce_NamesExactlyThese()
    {
        using var journal = Well();
        foreach (var (file, piece, instead, _) in Faults)
        {
            var text = File.ReadAllText(journal.PathOf(file));
            Assert.Contains(piece, text, StringComparison.Ordinal);
            journal.Write(file, text.Replace(piece, instead, StringComparison.Ordinal));
        }

        foreach (var (file, text, _) in FilesAdded)
        {
            journal.Write(file, text);
        }

        var problems = journal.Problems();

        Assert.True(Faults.Length + FilesAdded.Length >= 30);
        Assert.Equal(Faults.Select(fault => fault.Expected).Concat(FilesAdded.Select(added => added.Expected)).Order(StringComparer.Ordinal), problems.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Journal_WithOneFaultAtATime_NamesItAlone()
    {
        foreach (var (file, piece, instead, expected) in Faults)
        {
            using var journal = Well();
            journal.Write(file, File.ReadAllText(journal.PathOf(file)).Replace(piece, instead, StringComparison.Ordinal));

            Assert.Equal([expected], journal.Problems());
        }
    }

    private static JournalOnDisk Well()
    {
        var journal = new JournalOnDisk();
        journal.Write("journal.yaml", "title: The Lean-to\nmaker: Wren\ncurrency: EUR\nunits: mm\n");
        journal.Write("tools.yaml", "- {id: lathe, kind: machine}\n- {id: dti, kind: gauge}\n- {id: file}\n");
        journal.Write("plans/shaper.yaml", "title: Shaper\nstart: 2026-11-07\naway: 2026-12-20/2027-01-03\nparts: [{id: ram, guess: 9h, like: drill/head}]\n");
        journal.Write("drill/build.yaml", "title: Drill\nstatus: under-way\nparts:\n  - {id: head, material: cast-iron, guess: 9h}\n  - {id: quill, material: mild-steel}\n  - {id: gib-screw, quantity: 6}\nmates:\n  - {hole: head.bore, shaft: quill.diameter}\n");
        journal.Write("drill/2025-08-30-slow.md", "---\npart: gib-screw\noperation: turning\nhours: 1h\nlessons: {id: slow, text: Slow down}\n---\n");
        for (var day = 1; day <= 28; day++)
        {
            journal.Write($"drill/2025-09-{day:00}-e.md", Entry);
        }

        journal.Write("drill/2025-10-01-quill.md", "---\npart: quill\noperation: turning\nhours: 2h\n---\n");
        return journal;
    }
}
