using Journal.Cli.Tests;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Faults;

/// <summary>A fault put into the demo: what it must be called, and where it stands.</summary>
internal sealed record Fault(string Code, string File, int Line);

/// <summary>A copy of the demo with faults put in, one of each kind that issue 2 names, each in a file or on a line of its own.</summary>
internal sealed class FaultyJournal : IDisposable
{
    /// <summary>Stands before the line that a problem must name, and is taken out.</summary>
    private const char Here = '▶';

    private readonly List<Fault> faults = [];
    private int day;

    public FaultyJournal()
    {
        OnDisk = Journals.Demo();
        OnDisk.With("plans/second.yaml", "title: Another plan\nparts: [{id: ram}, {id: bed}]\n"); // Its parts are its own.
        InLists();
        InFrontMatter();
        InHours();
        InIds();
        InTexts();
        InNames();
    }

    public JournalOnDisk OnDisk { get; }

    /// <summary>What <c>check</c> must name, in order.</summary>
    public IEnumerable<Fault> Faults => faults.OrderBy(fault => fault.File, StringComparer.Ordinal).ThenBy(fault => fault.Line).ThenBy(fault => fault.Code, StringComparer.Ordinal);

    public void Dispose() => OnDisk.Dispose();

    private void InLists()
    {
        File("odd/build.yaml", """
            title: A build full of faults
            parts:
              - {id: arm, title: Arm}
              - {id: pin, title: Pin, quantity: 2}
            ▶  - {id: arm, title: Arm again}
            ▶  - {id: wheel, material: unobtainium}
            ▶  - {id: lever, stock: lump 20}
            ▶  - {id: gib, guess: {low: 9h, likely: 6h, high: 16h}}
            """, "duplicate-id", "unknown-material", "unknown-stock", "guess-order");
        File("plans/odd.yaml", """
            title: A plan with faults
            ▶start: next week
            ▶away: [2027-01-03/2026-12-20]
            parts:
            ▶  - {id: ram, guess: 3h, like: bench-drill/haed}
            """, "not-a-date", "not-a-date-range", "unknown-part");
        var crib = OnDisk.PathOf("tools.yaml");
        System.IO.File.AppendAllText(crib, "\n- {id: odd-tool, title: Odd, kind: gadget}\n- {id: odd-other, title: Odd, link: \"javascript:alert(1)\"}\n");
        var lines = System.IO.File.ReadAllLines(crib).Length;
        faults.AddRange([new("unknown-tool-kind", "tools.yaml", lines - 1), new("not-an-address", "tools.yaml", lines)]);
    }

    private void InFrontMatter()
    {
        Entry("missing", "▶part: arm\nhours: 1h\n", "front-matter-missing");
        Entry("not-closed", "▶---\npart: arm\nhours: 1h\n", "front-matter-not-closed");
        Entry("empty", "---\n▶---\nNothing.\n", "front-matter-empty");
        Entry("not-yaml", "---\npart: arm\n▶hours: [1h\n---\n", "not-yaml");
        Entry("unknown-key", "---\npart: arm\noperation: turning\nhours: 1h\n▶tols: [lathe]\n---\n", "unknown-key");
        Entry("duplicate-key", "---\npart: arm\noperation: turning\nhours: 1h\n▶part: pin\n---\n", "duplicate-key");
        Entry("cut-short", "---\npart: arm\noperation: turning\nhours: 1h\n▶next: Tap it #10-32 tomorrow.\n---\n", "cut-short");
        Entry("alias", "---\npart: &a arm\noperation: turning\nhours: 1h\n▶next: *a\n---\n", "yaml-alias");
        Entry("deep", $"---\npart: arm\nhours: 1h\n▶next: {new string('[', 10_000)}\n---\n", "yaml-too-deep");
        Entry("second-date", "---\n▶date: 2024-06-30\npart: arm\noperation: turning\nhours: 1h\n---\n", "date-differs");
        File("odd/2099-01-01-future.md", "▶---\npart: arm\noperation: turning\nhours: 1h\n---\n", "date-in-future");
        File("odd/no-date.md", "---\n▶part: arm\noperation: turning\nhours: 1h\n---\n", "date-missing");
    }

    private void InHours()
    {
        Entry("zero", "---\npart: arm\noperation: turning\n▶hours: 0\n---\n", "not-positive");
        Entry("negative", "---\npart: arm\noperation: turning\n▶hours: -1.5\n---\n", "not-positive");
        Entry("no-time", "---\npart: arm\noperation: turning\n▶hours: 2:75\n---\n", "not-a-time");
        Entry("no-hours", "---\n▶part: arm\noperation: turning\n---\n", "hours-missing");
        Entry("long-setup", "---\npart: arm\noperation: turning\nhours: 1h\n▶setup: 1h30\n---\n", "setup-too-long");
        Entry("long-day", "---\njobs:\n  - {part: arm, operation: turning, hours: 14h}\n▶  - {part: arm, operation: turning, hours: 11h}\n---\n", "day-too-long");
        Entry("overlap", "---\njobs:\n  - {part: arm, operation: turning, hours: \"19:10-21:00\"}\n▶  - {part: arm, operation: turning, hours: \"20:30-21:30\"}\n---\n", "overlap");
        Entry("beside", "---\n▶hours: 1h\njobs:\n  - {part: arm, operation: turning, hours: 1h}\n---\n", "hours-beside-jobs");
    }

    private void InIds()
    {
        Entry("part", "---\n▶part: amr\noperation: turning\nhours: 1h\n---\n", "unknown-part");
        Entry("operation", "---\npart: arm\n▶operation: tunring\nhours: 1h\n---\n", "unknown-operation");
        Entry("tool", "---\npart: arm\noperation: turning\nhours: 1h\n▶tools: [no-such-lathe]\n---\n", "unknown-tool");
        Entry("cause", "---\npart: arm\noperation: turning\nhours: 1h\nmistakes:\n▶  - {what: Slipped., cause: measurign}\n---\n", "unknown-cause");
        Entry("lesson", "---\npart: arm\noperation: turning\nhours: 1h\n▶heeded: [no-such-lesson]\n---\n", "unknown-lesson");
        Entry("mends", "---\njobs:\n▶  - {part: arm, operation: turning, hours: 1h, mends: no-such-mistake}\n---\n", "unknown-mistake");
        Entry("snag", "---\npart: arm\noperation: turning\nhours: 1h\n▶cleared: [no-such-snag]\n---\n", "unknown-snag");
        Entry("unfit-id", "---\npart: arm\noperation: turning\nhours: 1h\nlessons:\n▶  - {id: Not An Id, text: So.}\n---\n", "not-an-id");
        Entry("many-pieces", "---\npart: pin\noperation: turning\nhours: 1h\n▶finished: {pin: 3}\n---\n", "too-many-pieces");
        File("odd/2024-01-01-early.md", "---\npart: whole\noperation: planning\nhours: 1h\n▶finished: arm\n---\n", "finished-before-work");
        File("odd/first/2024-06-01-twin.md", "---\npart: arm\noperation: turning\nhours: 1h\n---\n");
        File("odd/second/2024-06-01-twin.md", "▶---\npart: arm\noperation: turning\nhours: 1h\n---\n", "same-address");
    }

    private void InTexts()
    {
        const string Head = "---\npart: arm\noperation: turning\nhours: 1h\n---\n";
        Entry("link-to-part", Head + "A line.\n\n▶See [it](part:amr).\n", "unknown-link-target");
        Entry("link-to-tool", Head + "▶See [it](tool:no-such-lathe).\n", "unknown-link-target");
        Entry("link-to-lesson", Head + "▶See [it](lesson:no-such-lesson).\n", "unknown-link-target");
        Entry("link-to-entry", Head + "▶See [it](entry:1999-01-01).\n", "unknown-link-target");
        Entry("link-refused", Head + "▶See [it](javascript:alert(1)).\n", "link-refused");
        Entry("link-hidden", Head + "▶See [the sums](entry:bench-drill/2026-02-11-do-not-show).\n", "hidden-target");
        Entry("picture", "---\npart: arm\noperation: turning\nhours: 1h\n▶photos: {file: photos/no-such.jpg, caption: None}\n---\n", "picture-missing");
        Entry("picture-elsewhere", Head + "▶![A picture](https://example.org/x.png)\n", "picture-outside");
        Entry("nested-lists", Head + $"▶{string.Concat(Enumerable.Repeat("- ", 10_000))}deep\n", "text-too-nested");
        Entry("brackets", Head + $"▶{new string('[', 10_000)}\n", "text-too-nested");
        Entry("wide-table", Head + $"▶{string.Concat(Enumerable.Repeat("| a ", 3_000))}|\n", "table-too-large");
    }

    private void InNames()
    {
        File("odd/Bad Name.md", "▶---\npart: arm\noperation: turning\nhours: 1h\n---\n", "bad-file-name");
        File("odd/con.md", "▶---\npart: arm\noperation: turning\nhours: 1h\n---\n", "reserved-name");
    }

    // Each on a day of its own, so that no day holds too many hours.
    private void Entry(string name, string text, params string[] codes) => File($"odd/{new DateOnly(2024, 3, 1).AddDays(day++):yyyy-MM-dd}-{name}.md", text, codes);

    private void File(string file, string text, params string[] codes)
    {
        var marked = text.Split('\n').Index().Where(line => line.Item.StartsWith(Here)).Select(line => line.Index + 1).ToList();
        Assert.Equal(codes.Length, marked.Count);
        faults.AddRange(codes.Zip(marked, (code, line) => new Fault(code, file, line)));
        OnDisk.With(file, text.Replace(Here.ToString(), "", StringComparison.Ordinal));
    }
}
