using Journal.Core.Checking;

namespace Journal.Cli.Tests.Writing;

public class RenameTests
{
    private static readonly string Everything =
        """
        ---
        jobs:
          - part: head
            operation: [boring, gilding]
            hours: 1h
            tools: [lathe, boring-head]
          - {part: [head, quill], operation: gilding, hours: 1h, tools: lathe}
          - {part: {head: 2, quill: 1}, hours: 1h, made: {id: arbor, title: Arbor, kind: fixture}}
        finished: {gib-screw: 2}
        mistakes:
          - {what: Slipped., repeats: lap-last, lesson: Clamp it}
        heeded: [indicate-both-ends, lap-last]
        readings:
          - {feature: bore, part: head, required: 12 H7, actual: 12.009, with: lathe}
          - {feature: head.spigot, required: to suit head.bore -0.02/-0.01, actual: "12.0"}
        settings: {rpm: 480, machine: lathe}
        bought: [{what: oil, cost: 2, for: lathe}, {what: bar, cost: 2, for: head}]
        ---
        The head: [here](part:head) and [there](part:drill/head), as [learned](lesson:lap-last) on the [lathe](tool:lathe "head"),
        after [that evening](entry:drill/2025-09-06-head). `part:head` in code stays, and so does (part:head).

        [x]: part:head
        See [the other][x] and <part:head>.

        """.ReplaceLineEndings("\n");

    [Fact]
    public void RenamePart_WhereverItStands()
    {
        using var bench = WithEverything();

        var renamed = bench.Ask("rename", "part", "head", "top-slide");

        Assert.Equal(0, renamed.Status);
        Assert.Equal("16 lines in 7 files changed.\n", renamed.Error);
        Assert.Contains("drill/build.yaml\n  4 -   - {id: head, title: Head casting, material: cast-iron}\n  4 +   - {id: top-slide, title: Head casting, material: cast-iron, formerly: head}\n", renamed.Out, StringComparison.Ordinal);
        Assert.Equal(
            Everything.Replace("part: head\n    op", "part: top-slide\n    op", StringComparison.Ordinal)
                .Replace("[head, quill]", "[top-slide, quill]", StringComparison.Ordinal)
                .Replace("{head: 2", "{top-slide: 2", StringComparison.Ordinal)
                .Replace("bore, part: head", "bore, part: top-slide", StringComparison.Ordinal)
                .Replace("feature: head.spigot", "feature: top-slide.spigot", StringComparison.Ordinal)
                .Replace("suit head.bore", "suit top-slide.bore", StringComparison.Ordinal)
                .Replace("cost: 2, for: head", "cost: 2, for: top-slide", StringComparison.Ordinal)
                .Replace("[here](part:head)", "[here](part:top-slide)", StringComparison.Ordinal)
                .Replace("part:drill/head", "part:drill/top-slide", StringComparison.Ordinal)
                .Replace("[x]: part:head", "[x]: part:top-slide", StringComparison.Ordinal)
                .Replace("<part:head>", "<part:top-slide>", StringComparison.Ordinal),
            bench.Text("drill/2025-10-01-all.md"));
        Assert.Contains("like: drill/top-slide", bench.Text("plans/other.yaml"), StringComparison.Ordinal);
        Assert.Contains("part: jaw", bench.Text("vice/2025-10-02-jaw.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
        Assert.Equal(["head"], JournalReader.Read(bench.Disk.Folder, DateOnly.MaxValue).Journal!.Builds[0].Parts[0].Formerly);
        Assert.False(File.Exists(Path.Combine(bench.Disk.Folder, ".bench", "change.json")));
    }

    [Fact]
    public void RenameTool_WhereverItStands()
    {
        using var bench = WithEverything();

        Assert.Equal(0, bench.Ask("rename", "tool", "lathe", "small-lathe").Status);

        Assert.Equal(
            Everything.Replace("[lathe, boring-head]", "[small-lathe, boring-head]", StringComparison.Ordinal)
                .Replace("tools: lathe}", "tools: small-lathe}", StringComparison.Ordinal)
                .Replace("with: lathe", "with: small-lathe", StringComparison.Ordinal)
                .Replace("machine: lathe", "machine: small-lathe", StringComparison.Ordinal)
                .Replace("for: lathe", "for: small-lathe", StringComparison.Ordinal)
                .Replace("tool:lathe", "tool:small-lathe", StringComparison.Ordinal),
            bench.Text("drill/2025-10-01-all.md"));
        Assert.Contains("- {id: small-lathe, title: Small lathe, kind: machine, got: had, formerly: lathe}\n", bench.Text("tools.yaml"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void RenameOperation_OfOnesOwn_WhereverItStands()
    {
        using var bench = WithEverything();

        Assert.Equal(0, bench.Ask("rename", "operation", "gilding", "gold-leaf").Status);

        Assert.Equal(Everything.Replace("gilding", "gold-leaf", StringComparison.Ordinal), bench.Text("drill/2025-10-01-all.md"));
        Assert.Contains("operations: [engine-turning, {id: gold-leaf, formerly: gilding}]\n", bench.Text("journal.yaml"), StringComparison.Ordinal);
        Assert.Contains("operations: {gold-leaf: 1h}", bench.Text("plans/other.yaml"), StringComparison.Ordinal);
        Assert.Contains("whole: {gold-leaf: 5h}", bench.Text("plans/other.yaml"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void RenameLesson_WithAnIdAndWithout()
    {
        using var bench = WithEverything();

        Assert.Equal(0, bench.Ask("rename", "lesson", "lap-last", "lap-at-the-end").Status);
        Assert.Contains("lessons: {id: lap-at-the-end, text: Lap after everything else., verdict: do-again, formerly: lap-last}\n", bench.Text("drill/2025-09-07-quill.md"), StringComparison.Ordinal);
        Assert.Contains("repeats: lap-at-the-end", bench.Text("drill/2025-10-01-all.md"), StringComparison.Ordinal);
        Assert.Contains("heeded: [indicate-both-ends, lap-at-the-end]", bench.Text("drill/2025-10-01-all.md"), StringComparison.Ordinal);
        Assert.Contains("(lesson:lap-at-the-end)", bench.Text("drill/2025-10-01-all.md"), StringComparison.Ordinal);

        bench.Disk.With("drill/2025-10-03-heeds.md", "---\npart: head\nhours: 1h\nheeded: drill-2025-10-01-all-1\n---\n");
        Assert.Equal(0, bench.Ask("rename", "lesson", "drill-2025-10-01-all-1", "clamp-it").Status);
        Assert.Contains("lesson: {id: clamp-it, text: Clamp it, formerly: drill-2025-10-01-all-1}}", bench.Text("drill/2025-10-01-all.md"), StringComparison.Ordinal);
        Assert.Contains("heeded: clamp-it\n", bench.Text("drill/2025-10-03-heeds.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void RenameBuild_WithItsFolderItsPlanAndWhatIsChalkedUp()
    {
        using var bench = WithEverything();
        bench.Disk.With("plans/drill.yaml", "title: Drill\nparts: [head]\n").With("drill/2025-10-03-heeds.md", "---\npart: head\nhours: 1h\nheeded: drill-2025-10-01-all-1\n---\n");
        bench.Ask("stint", "begin", "--build", "drill", "--part", "head");

        var renamed = bench.Ask("rename", "build", "drill", "bench-drill");

        Assert.Equal(0, renamed.Status);
        Assert.EndsWith("drill becomes bench-drill\nplans/drill.yaml becomes plans/bench-drill.yaml\n", renamed.Out, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(bench.Disk.Folder, "drill")));
        Assert.EndsWith("\nformerly: drill\n", bench.Text("bench-drill/build.yaml"), StringComparison.Ordinal);
        Assert.Contains("part:bench-drill/head", bench.Text("bench-drill/2025-10-01-all.md"), StringComparison.Ordinal);
        Assert.Contains("entry:bench-drill/2025-09-06-head", bench.Text("bench-drill/2025-10-01-all.md"), StringComparison.Ordinal);
        Assert.Contains("heeded: bench-drill-2025-10-01-all-1", bench.Text("bench-drill/2025-10-03-heeds.md"), StringComparison.Ordinal);
        Assert.Contains("like: bench-drill/head", bench.Text("plans/other.yaml"), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(bench.Disk.Folder, "plans", "bench-drill.yaml")));
        Assert.Empty(bench.Problems());
        Assert.Equal(0, bench.At("2025-10-03 22:00").Ask("stint", "end").Status);
    }

    [Fact]
    public void Rename_BackAgain_IsAllowed()
    {
        using var bench = WithEverything();
        var before = Totals(bench);

        Assert.Equal(0, bench.Ask("rename", "part", "head", "top-slide").Status);
        Assert.Equal(0, bench.Ask("rename", "part", "top-slide", "head").Status);

        Assert.Contains("formerly: [head, top-slide]}", bench.Text("drill/build.yaml"), StringComparison.Ordinal);
        Assert.Equal(["top-slide"], JournalReader.Read(bench.Disk.Folder, DateOnly.MaxValue).Journal!.Builds[0].Parts[0].Formerly);
        Assert.Equal(Everything, bench.Text("drill/2025-10-01-all.md"));
        Assert.Equal(before, Totals(bench));
        Assert.Equal("`top-slide` is what `head` was called formerly, and its old address leads there. Choose another name.\n", bench.Ask("rename", "part", "quill", "top-slide").Error);
    }

    [Fact]
    public void Rename_DryRunOrNo_ChangesNothing()
    {
        using var bench = WithEverything();
        var before = All(bench);

        var dry = bench.Ask("rename", "part", "head", "top-slide", "--dry-run");
        Assert.Equal((0, "16 lines in 7 files would change; nothing was changed.\n"), (dry.Status, dry.Error));
        var no = bench.AskAndAnswer([""], "rename", "part", "head", "top-slide");
        Assert.Equal((0, "Change 16 lines in 7 files? (y; Enter: no): Nothing was changed.\n"), (no.Status, no.Error));
        Assert.Equal(before, All(bench));

        Assert.Equal(0, bench.AskAndAnswer(["y"], "rename", "part", "head", "top-slide").Status);
        Assert.NotEqual(before, All(bench));
    }

    [Theory]
    [InlineData("Bench drill has no part `haed`. Did you mean `head`?", "part", "haed", "x", "--build", "drill")]
    [InlineData("Bench drill has a part `quill` already.", "part", "head", "quill")]
    [InlineData("`head` has that name already; nothing was changed.", "part", "head", "head")]
    [InlineData("`whole` means the build as a whole. Choose another name.", "part", "head", "whole")]
    [InlineData("`Top Slide` is not an id. Write lower-case words joined by hyphens, such as gib-screw.", "part", "head", "Top Slide")]
    [InlineData("Windows keeps the name `con` for itself. Choose another.", "part", "head", "con")]
    [InlineData("The crib has no `lath`. Did you mean `lathe`?", "tool", "lath", "x")]
    [InlineData("There is a tool `boring-head` already. If both are one tool: `journal merge tool lathe boring-head`.", "tool", "lathe", "boring-head")]
    [InlineData("`boring` is a word that every journal knows; only your own can have another name. Yours: engine-turning, gilding.", "operation", "boring", "x")]
    [InlineData("There is an operation `bluing` already: another spelling of `blackening`.", "operation", "gilding", "bluing")]
    [InlineData("There is no operation `guilding` of your own. Did you mean `gilding`?", "operation", "guilding", "x")]
    [InlineData("There is no lesson `lap-lats`. Did you mean `lap-last`?", "lesson", "lap-lats", "x")]
    [InlineData("There is a lesson `lap-last` already.", "lesson", "indicate-both-ends", "lap-last")]
    [InlineData("There is no build `dril`. Did you mean `drill`?", "build", "dril", "x")]
    [InlineData("There is a build `vice` already.", "build", "drill", "vice")]
    [InlineData("The name `lesson` is taken: the site, or Windows, uses it for something else. Choose another.", "build", "drill", "lesson")]
    [InlineData("There is a plan `other` already, which would count as begun. Choose another name.", "build", "drill", "other")]
    public void Rename_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var bench = WithEverything();
        var before = All(bench);

        var refused = bench.Ask(["rename", .. words]);

        Assert.Equal((2, error + "\n"), (refused.Status, refused.Error));
        Assert.Equal(before, All(bench));
    }

    [Fact]
    public void Rename_FileThatCannotBeRead_StopsIt()
    {
        using var bench = WithEverything();
        bench.Disk.With("drill/2025-10-02-broken.md", "---\npart: [head\n---\n");
        var before = All(bench);

        var refused = bench.Ask("rename", "part", "head", "top-slide");

        Assert.Equal((2, "drill/2025-10-02-broken.md cannot be read, and the name may stand in it. `journal check` says what is wrong there; nothing was changed.\n"), (refused.Status, refused.Error));
        Assert.Equal(before, All(bench));
    }

    // The hours of every evening stay what they were, shared by weight.
    [Fact]
    public void SplitPart_SharesTimeGuessesAndPieces()
    {
        using var bench = WithEverything();
        bench.Disk.With("drill/build.yaml", bench.Text("drill/build.yaml").Replace("material: cast-iron}", "material: cast-iron, stock: casting, guess: 9h}", StringComparison.Ordinal) + "\nmates: [{hole: head.bore, shaft: quill.diameter}]\n")
            .With("drill/2025-10-02-done.md", "---\npart: head\nhours: 1h\nfinished: head\n---\n");
        var before = Totals(bench);

        var split = bench.Ask("split", "part", "head", "headstock=2", "cap");

        Assert.Equal(0, split.Status);
        Assert.Contains(
            "  - {id: headstock, title: Head casting, material: cast-iron, stock: casting, guess: 6h, formerly: head}\n  - {id: cap, material: cast-iron, stock: casting, guess: 3h}\n",
            bench.Text("drill/build.yaml"),
            StringComparison.Ordinal);
        Assert.Contains("hole: headstock.bore", bench.Text("drill/build.yaml"), StringComparison.Ordinal);
        var text = bench.Text("drill/2025-10-01-all.md");
        Assert.Contains("  - part: {headstock: 2, cap: 1}\n", text, StringComparison.Ordinal);
        Assert.Contains("{part: {headstock: 2, cap: 1, quill: 3}, operation: gilding", text, StringComparison.Ordinal);
        Assert.Contains("{part: {headstock: 4, cap: 2, quill: 3}, hours", text, StringComparison.Ordinal);
        Assert.Contains("{feature: bore, part: headstock,", text, StringComparison.Ordinal);
        Assert.Contains("[here](part:headstock)", text, StringComparison.Ordinal);
        Assert.Contains("finished: [headstock, cap]\n", bench.Text("drill/2025-10-02-done.md"), StringComparison.Ordinal);
        Assert.Contains("part: {headstock: 2, cap: 1}\n", bench.Text("drill/2025-09-06-head.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
        Assert.Equal(before, Totals(bench));
    }

    [Fact]
    public void SplitPart_ThatKeepsItsName_TakesSomethingOut()
    {
        using var bench = WithEverything();
        var before = Totals(bench);

        Assert.Equal(0, bench.Ask("split", "part", "head", "head", "cap").Status);

        Assert.Contains("  - {id: head, title: Head casting, material: cast-iron}\n  - {id: cap, material: cast-iron}\n", bench.Text("drill/build.yaml"), StringComparison.Ordinal);
        Assert.Contains("part: [head, cap]\n", bench.Text("drill/2025-09-06-head.md"), StringComparison.Ordinal);
        Assert.Contains("[here](part:head)", bench.Text("drill/2025-10-01-all.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
        Assert.Equal(before, Totals(bench));
    }

    [Theory]
    [InlineData("Name at least two parts that `head` becomes; it may be one of them.", "head", "cap")]
    [InlineData("Bench drill has a part `quill` already.", "head", "quill", "cap")]
    [InlineData("`cap` is named twice.", "head", "cap", "cap")]
    [InlineData("`whole` cannot be the id of a part. Write lower-case words joined by hyphens, such as gib-screw.", "head", "whole", "cap")]
    [InlineData("Bench drill has no part `haed`. Did you mean `head`?", "haed", "a", "b", "--build", "drill")]
    [InlineData("`cap=x` is not a part with its weight. Write it in digits, such as `cap=2`. See `journal split part --help`.", "head", "head", "cap=x")]
    public void Split_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var bench = WithEverything();
        var before = All(bench);

        var refused = bench.Ask(["split", "part", .. words]);

        Assert.Equal((2, error + "\n"), (refused.Status, refused.Error));
        Assert.Equal(before, All(bench));
    }

    [Fact]
    public void MergeTool_PutsOneInThePlaceOfTheOther()
    {
        using var bench = WithEverything();
        bench.Disk.With("tools.yaml", bench.Text("tools.yaml") + "\n- id: old-lathe\n  title: The same lathe\n  cost: 40\n- {id: file, title: File}\n")
            .With("drill/2025-10-02-tools.md", "---\njobs:\n  - part: head\n    hours: 1h\n    tools:\n      - old-lathe\n      - file\n      - lathe\n  - {part: head, hours: 1h, tools: [file, old-lathe, lathe]}\n  - {part: head, hours: 1h, tools: [old-lathe, lathe]}\n  - {part: head, hours: 1h, tools: old-lathe}\n---\n[It](tool:old-lathe).\n");

        var merged = bench.Ask("merge", "tool", "old-lathe", "lathe");

        Assert.Equal(0, merged.Status);
        Assert.Equal(
            "---\njobs:\n  - part: head\n    hours: 1h\n    tools:\n      - file\n      - lathe\n  - {part: head, hours: 1h, tools: [file, lathe]}\n  - {part: head, hours: 1h, tools: [lathe]}\n  - {part: head, hours: 1h, tools: lathe}\n---\n[It](tool:lathe).\n",
            bench.Text("drill/2025-10-02-tools.md"));
        Assert.Contains("- {id: lathe, title: Small lathe, kind: machine, got: had, formerly: old-lathe}\n", bench.Text("tools.yaml"), StringComparison.Ordinal);
        Assert.EndsWith("\n# - id: old-lathe\n#   title: The same lathe\n#   cost: 40\n- {id: file, title: File}\n", bench.Text("tools.yaml"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Theory]
    [InlineData("There is no tool `lath`. Did you mean `lathe`?", "lath", "boring-head")]
    [InlineData("`lathe` is one tool already; nothing was changed.", "lathe", "lathe")]
    [InlineData("`arbor` was made in drill/2025-10-01-all, which says what it is. Merge the other way round: `journal merge tool lathe arbor`.", "arbor", "lathe")]
    public void Merge_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var bench = WithEverything();
        var before = All(bench);

        var refused = bench.Ask(["merge", "tool", .. words]);

        Assert.Equal((2, error + "\n"), (refused.Status, refused.Error));
        Assert.Equal(before, All(bench));
    }

    [Fact]
    public void MergeTool_MisspeltInAnEntry_IsPutRight()
    {
        using var bench = WithEverything();
        bench.Disk.With("drill/2025-10-02-slip.md", "---\npart: head\nhours: 1h\ntools: [lahte]\n---\n");

        Assert.Equal(0, bench.Ask("merge", "tool", "lahte", "lathe").Status);

        Assert.Contains("tools: [lathe]", bench.Text("drill/2025-10-02-slip.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    // As after a crash in the midst: one file is written, the others are not. The next command, which only reads, finishes.
    [Theory]
    [InlineData("part", "head", "top-slide")]
    [InlineData("build", "drill", "bench-drill")]
    public void Change_Interrupted_IsFinishedByTheNextCommand(params string[] words)
    {
        using var whole = WithEverything();
        using var half = WithEverything();
        whole.Ask(["rename", .. words]);
        var record = RecordOf(half, () => half.Ask(["rename", .. words]));
        half.Disk.With(".bench/change.json", record);

        Assert.Equal(0, half.Ask("hours").Status);

        Assert.Equal(All(whole), All(half));
        Assert.Empty(half.Problems());
        Assert.False(File.Exists(Path.Combine(half.Disk.Folder, ".bench", "change.json")));
    }

    [Fact]
    public void Change_InterruptedAndAFileEditedSince_TellsOfIt()
    {
        using var half = WithEverything();
        half.Disk.With(".bench/change.json", RecordOf(half, () => half.Ask("rename", "part", "head", "top-slide")));
        half.Disk.With("drill/2025-09-06-head.md", "---\npart: head\nhours: 1h\n---\nEdited since.\n");

        var told = half.Ask("hours");

        Assert.Equal(3, told.Status);
        Assert.Contains("A change of names that was interrupted is finished now, but drill/2025-09-06-head.md had been changed in between and keeps the old names.", told.Error, StringComparison.Ordinal);
        Assert.Contains("Edited since.", half.Text("drill/2025-09-06-head.md"), StringComparison.Ordinal);
        Assert.Contains("(part:top-slide)", half.Text("drill/2025-10-01-all.md"), StringComparison.Ordinal);
        Assert.Equal(1, half.Ask("hours").Status);
    }

    // The record of a change as it stood when the first file could not be written, with all else as it was.
    private static string RecordOf(AtTheBench bench, Action rename)
    {
        var blocked = Path.Combine(bench.Disk.Folder, "drill", ".2025-10-01-all.md.being-written");
        Directory.CreateDirectory(blocked);
        rename();
        Directory.Delete(blocked);
        return File.ReadAllText(Path.Combine(bench.Disk.Folder, ".bench", "change.json"));
    }

    private static AtTheBench WithEverything()
    {
        var bench = new AtTheBench();
        bench.Disk.With("journal.yaml", "title: The Lean-to\ntime-zone: Etc/UTC\noperations: [engine-turning, gilding]\n")
            .With("drill/2025-10-01-all.md", Everything)
            .With("vice/2025-10-02-jaw.md", "---\npart: jaw\noperation: filing\nhours: 1h\n---\nNothing of the [head](part:drill/head).\n")
            .With("plans/other.yaml", "title: Other\nparts:\n  - {id: head, operations: {gilding: 1h}, like: drill/head}\nwhole: {gilding: 5h}\n");
        Assert.Empty(bench.Problems());
        return bench;
    }

    private static string Totals(AtTheBench bench) =>
        string.Join(", ", bench.Ask("hours", "--format", "json").Json.GetProperty("builds").EnumerateArray().Select(build => build.GetProperty("minutes").GetInt32()));

    private static string All(AtTheBench bench) => string.Join("\n", Directory.GetFiles(bench.Disk.Folder, "*", SearchOption.AllDirectories)
        .Where(path => !path.Contains(".bench", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(path => $"{path[bench.Disk.Folder.Length..]}\n{File.ReadAllText(path)}"));
}
