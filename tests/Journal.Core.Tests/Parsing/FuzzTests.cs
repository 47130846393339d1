using System.Diagnostics;
using System.Globalization;
using Journal.Core.Model;
using Journal.Tests.Shared;

namespace Journal.Core.Tests.Parsing;

/// <summary>
/// Random mutations of files that are well: reading never throws, never hangs, never fills the memory, and every problem
/// has a place that lies in its file, on its line. <c>JOURNAL_FUZZ=100000</c> asks for more inputs, <c>JOURNAL_FUZZ_SEED</c>
/// for another beginning.
/// </summary>
public sealed class FuzzTests
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(2);

    private static readonly (string File, string Text)[] Seeds =
    [
        ("journal.yaml", "title: The Lean-to\nid: 5f0c7d8e-1111-4222-8333-123456789abc\nunits: mm\ncurrency: EUR\ntime-zone: Europe/Dublin\naddress: https://example.org/\noperations: [engine-turning, {id: gilding, title: Gold, kind: finishing}]\ncauses: [impatience]\n"),
        ("tools.yaml", "- {id: lathe, title: Lathe, kind: machine, got: had, cost: 12.5, since: 2025-01-01, need: handy, link: \"https://example.org/\", disclose: gift}\n- id: gauge\n  kind: gauge\n"),
        ("plans/shaper.yaml", "title: Shaper\nstart: 2026-11-07\nhours-a-week: 6\naway: [2026-12-20/2027-01-03]\nparts:\n  - {id: ram, material: cast-iron, stock: casting, operations: [milling], guess: 12h, like: drill/head}\n  - {id: slide, guess: {low: 6h, likely: 9h, high: 16h}}\n  - {id: screw, quantity: 6, operations: {turning: 1h}}\nwhole: {assembly: 8h}\npublish: never\n"),
        ("drill/build.yaml", "title: Drill\nstatus: finished\nstarted: 2025-09-06\nunits: inch\ncost: 240\ngeneral-tolerance: 0.005\nparts:\n  - {id: head, item: 4, material: cast-iron GG25, stock: casting, guess: 9h}\n  - {id: quill, stock: round 32 x 180, guess: {turning: 3h}, reguess: 8h}\n  - {id: gib-screw, quantity: 6}\nwhole: {assembly: 6h}\nmates:\n  - {hole: head.bore, shaft: quill.diameter}\nvideos:\n  - {url: \"https://example.org/\", title: A, covers: [head, 2025-10-01/2025-10-20], chapters: [{at: \"3:20\", title: B}]}\n"),
        ("drill/2025-09-27.md", "---\npart: head\noperation: boring\nhours: [19:10-20:40, 0.5]\nsetup: half\nlessons: [{id: ends, text: A}]\nmistakes: [{what: A, id: zero}]\nsnags: [{id: leak, text: B}]\n---\nText\n"),
        ("drill/2025-10-03-head.md", "---\ntitle: Boring the head\ndate: 2025-10-03\npart: {head: 2, quill: 1}\noperation: [boring, reaming]\ntools: [lathe, gauge]\njobs:\n  - {hours: 2h45, setup: 1h10, held: face plate, mends: zero}\n  - {part: quill, operation: turning, hours: \"19:10-20:40\", made: {id: block, title: Block, kind: fixture}}\nmistakes:\n  - A sentence.\n  - what: \"Off: by 0.3\"\n    cause: setting-up\n    lost: 1h15\n    outcome: used-as-is\n    made-on: 2025-09-27\n    lesson: {id: one, text: \"One\"}\n    repeats: ends\n    job: 2\nheeded: [ends]\nfinished: [head, {gib-screw: 4}]\nnext: Face the back.\nsnags: [Loose]\ncleared: leak\ntrials: {on: air, pressure: 3 bar, minutes: 12}\nreadings: {feature: bore, required: 25 H7 mm, actual: 25.012 mm, with: gauge}\nsettings: {diameter: 25, rpm: 320, teeth: 2, machine: lathe}\nbought: {what: Drill, cost: 12.50, kind: tooling, for: quill, because: zero}\nphotos:\n  - {file: photos/a.gif, caption: A, marks: [{at: [62, 40], text: b}], publish: never}\npublish: after 2026-01-10\n---\n# Evening\n\nSee [the quill](part:quill), [a](tool:block), [b](lesson:one), [c](entry:2025-09-27) and ![d](photos/a.gif).\n\n- one\n  - two\n\n> quoted\n\n| a | b |\n|---|---|\n| 1 | 2 |\n\n<b>html</b> [r]\n\n[r]: part:head\n"),
    ];

    [Fact]
    public void Reading_MutatedJournals_NeverThrowsAndAlwaysNamesAPlace()
    {
        var count = Number("JOURNAL_FUZZ", 2000);
        var random = new Random(Number("JOURNAL_FUZZ_SEED", 20251003));
        using var journal = new JournalOnDisk().WritePicture("drill/photos/a.gif");
        foreach (var (file, text) in Seeds)
        {
            journal.Write(file, text);
        }

        Assert.Empty(journal.Problems());
        for (var i = 0; i < count; i++)
        {
            var (file, text) = Seeds[random.Next(Seeds.Length)];
            var bytes = Mutations.Of(text, random);
            journal.Write(file, bytes);
            Check(journal, file, bytes, i);
            journal.Write(file, text);
        }

        Tries.Add("files", count);

        // Of the whole run and everything beside it.
        Assert.True(Process.GetCurrentProcess().PeakWorkingSet64 < 1L << 30);
    }

    private static void Check(JournalOnDisk journal, string file, byte[] bytes, int number)
    {
        try
        {
            var watch = Stopwatch.StartNew();
            var reading = journal.Read();
            var took = watch.Elapsed;
            Assert.All(reading.Problems, problem => Assert.True(IsInside(problem.Place, journal), $"{problem.Place} {problem.Kind.Code}"));
            if (took > Limit)
            {
                // A busy machine is slow once, a hang is slow again.
                watch.Restart();
                journal.Read();
                Assert.True(watch.Elapsed < Limit, $"took {took}, then {watch.Elapsed}");
            }
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"input {number}, {file}: {Convert.ToBase64String(bytes)}", e);
        }
    }

    // Lines end as in YAML 1.2, 5.4; a place may lie just behind the last letter, or on the line after the last.
    private static bool IsInside(Place place, JournalOnDisk journal)
    {
        if (!File.Exists(journal.PathOf(place.File)))
        {
            return false;
        }

        var lines = File.ReadAllText(journal.PathOf(place.File)).Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n', '\r');
        return place.Line >= 1 && place.Column >= 1 && place.Line <= lines.Length + 1 && place.Column <= (place.Line <= lines.Length ? lines[place.Line - 1].Length + 1 : 1);
    }

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : otherwise;
}
