namespace Journal.Cli.Tests;

/// <summary>A real journal folder for one test, gone after it.</summary>
internal sealed class JournalOnDisk : IDisposable
{
    private JournalOnDisk() => Folder = Directory.CreateTempSubdirectory("journal-").FullName;

    /// <summary>Where it lies.</summary>
    public string Folder { get; }

    /// <summary>A folder without any file.</summary>
    public static JournalOnDisk Bare() => new();

    /// <summary>A journal of a title and nothing else.</summary>
    public static JournalOnDisk Empty() => Bare().With("journal.yaml", "title: The Lean-to\n");

    /// <summary>
    /// A small journal without a flaw: a drill under way (head, quill and four gib screws, of which the quill is
    /// finished), a vice not begun and a plan; 600 minutes in four entries on three evenings.
    /// </summary>
    public static JournalOnDisk Small() => Empty()
        .With("tools.yaml", """
            - {id: lathe, title: Small lathe, kind: machine, got: had}
            - {id: boring-head, title: '50 mm boring head, "the good one"', kind: tool-holding, got: bought, cost: 85, need: essential}
            """)
        .With("drill/build.yaml", """
            title: Bench drill
            cost: 240
            parts:
              - {id: head, title: Head casting, material: cast-iron}
              - {id: quill, title: Quill}
              - {id: gib-screw, title: Gib screw, quantity: 4}
            """)
        .With("vice/build.yaml", "title: Toolmaker's vice\nstatus: planned\nparts: [{id: jaw}]\n")
        .With("drill/2025-09-06-head.md", """
            ---
            title: Boring the head
            part: head
            operation: boring
            hours: 2h45
            setup: 1h10
            tools: [boring-head, lathe]
            mistakes:
              - what: Indicated in one place only.
                cause: setting-up
                lost: 1h15
                outcome: used-as-is
                lesson: {id: indicate-both-ends, text: "Indicate a rough casting at both ends, and average."}
            milestone: The first bore
            bought: {what: stub of silver steel, cost: 4.50, kind: stock, for: head}
            ---
            It came out off the boss.
            """)
        .With("drill/2025-09-07-quill.md", """
            ---
            jobs:
              - {part: quill, operation: [turning, lapping], hours: 1h01, tools: lathe}
              - {part: {head: 2, quill: 1}, operation: fitting, hours: 1h40}
            finished: quill
            lessons: {id: lap-last, text: Lap after everything else., verdict: do-again}
            ---
            """)
        .With("drill/2025-09-07-second.md", """
            ---
            part: whole
            operation: planning
            hours: 34m
            heeded: indicate-both-ends
            ---
            """)
        .With("drill/2025-09-30-head-again.md", """
            ---
            title: The head again
            part: head
            operation: boring
            hours: 4h
            held: face plate, packed on three jacks
            datum: machined base
            next: Face the back of the boss.
            snags: {id: chatter, text: It still sings at 300 rpm.}
            trials: {on: hand, minutes: 5, result: turns freely}
            ---
            """)
        .With("plans/bench-shaper.yaml", """
            # The winter's work.
            title: Bench shaper
            start: 2025-11-01
            hours-a-week: 5   # Saturdays
            away: [2025-12-20/2026-01-03]
            publish: never
            parts:
              - {id: ram, title: Ram, material: cast-iron, operations: [milling, scraping], guess: 12h, like: drill/quill}
              - {id: screw, title: Screw, quantity: 2, operations: {turning: 1h, screw-cutting: 1h30}}
              - {id: slide, title: Slide, operations: [milling, lapping], guess: {low: 6h, likely: 9h, high: 16h}}   # if it is sound
            whole: {assembly: 8h, painting: 5h}
            """);

    /// <summary>The journal with one more file.</summary>
    public JournalOnDisk With(string file, string text)
    {
        var path = Path.Combine(Folder, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return this;
    }

    /// <summary>What the program answers when asked in this folder.</summary>
    public Answer Ask(params string[] words) => Answer.To(Folder, words);

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
