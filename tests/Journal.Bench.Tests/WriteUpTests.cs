using System.Net;
using System.Text.Json;
using Journal.Cli.Tests;

namespace Journal.Bench.Tests;

/// <summary>An evening written up on the bench, held against what <c>journal write</c> makes of the same evening.</summary>
public sealed class WriteUpTests
{
    private const string Measured = "bored the head to 12.01 mm, the drawing asks 12 H7";
    private const string Wrong = "cut the face too deep because I misread the dial, lost 20 minutes";

    [Fact]
    public async Task WriteUp_OfAStint_IsToTheByteWhatWriteWrites()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await desk.Send("/tonight/begin", ("part", "head"), ("operation", "boring"));
        bench.Clock.At("2025-10-03 20:40");
        await Note(desk, Measured, Wrong, "next: lap the bore");
        await desk.Send("/tonight/reading", ("part", "head"), ("other-feature", "bore"), ("required", "12 H7"), ("actual", "12.031"));
        await desk.Send("/tonight/end");

        await AssertIsWhatWriteWrites(bench, desk);
    }

    [Theory]
    [InlineData("worked on the head for an hour and a half, boring it", Measured, Wrong)]
    [InlineData("turned the quill for an hour, then drilled the head for 45 minutes")]
    public async Task WriteUp_OfRemarksAlone_IsToTheByteWhatWriteWrites(params string[] remarks)
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Note(desk, remarks);

        await AssertIsWhatWriteWrites(bench, desk);
    }

    [Fact]
    public async Task WriteUp_OfRemarksWithoutATime_AsksForIt()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Note(desk, "it was cold");

        await desk.Look("/write-up");

        Assert.Contains("Say how long it took", desk.Page.QuerySelector("#told")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("", desk.Page.QuerySelector("#text")!.TextContent);
    }

    [Fact]
    public async Task Save_AfterMoreWasNoted_SavesNothingAndShowsIt()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Note(desk, "bored the head for two hours");
        await desk.Look("/write-up");
        var page = desk.Page;
        await Note(desk, "and it sings");
        desk.Stay(page);

        await Save(desk, "---\ndate: 2025-10-03\npart: head\nhours: 2h\n---\nMine.\n");

        Assert.Equal(HttpStatusCode.Conflict, desk.Status);
        Assert.Contains("and it sings", desk.Page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Mine.", desk.Page.QuerySelector("#text")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(2, bench.Slate.Jots.Count);

        // Seen now, both remarks go with the entry.
        await Save(desk, "---\ndate: 2025-10-03\npart: head\nhours: 2h\n---\nMine.\n");
        Assert.Equal("---\ndate: 2025-10-03\npart: head\nhours: 2h\n---\nMine.\n", bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Empty(bench.Slate.Jots);
    }

    [Fact]
    public async Task Save_WithTheSwitchOn_SavesNothing()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await desk.Send("/tonight/begin", ("part", "head"), ("operation", "boring"));
        await Note(desk, "bored the head for two hours");
        await desk.Look("/write-up");

        await Save(desk, "mine");

        Assert.Contains("switch is on", desk.Page.QuerySelector("#told")!.TextContent, StringComparison.Ordinal);
        Assert.Single(bench.Slate.Jots);
    }

    [Fact]
    public async Task Save_OverWhatAnEditorSaved_SavesNothing()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await desk.Send("/tonight/begin", ("part", "head"), ("operation", "boring"));
        bench.Clock.At("2025-10-03 20:40");
        await desk.Look("/tonight");
        await desk.Send("/tonight/end");
        await desk.Look("/write-up");
        bench.Disk.With("drill/2025-10-03-boring-head.md", bench.Text("drill/2025-10-03-boring-head.md") + "By the editor.\n");

        await Save(desk, "mine");

        Assert.Equal(HttpStatusCode.Conflict, desk.Status);
        Assert.EndsWith("By the editor.\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
        Assert.Contains("mine", desk.Page.QuerySelector("#text")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Draft_WithFieldsChanged_SaysWhatTheySay()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Note(desk, "bored the head for two hours", Wrong);
        await desk.Look("/write-up");

        await desk.Post("/write-up/draft", Fields(desk, ("title", "At last"), ("job-0-part", "quill"), ("job-0-hours", "3h"), ("tools", "lathe"), ("next", "Lap it.")).Where(field => field.Name != "item").ToArray());

        Assert.StartsWith("---\ntitle: At last\ndate: 2025-10-03\npart: quill\noperation: boring\nhours: 3h\ntools: [lathe]\nnext: Lap it.\n---\n", desk.Page.QuerySelector("#text")!.TextContent, StringComparison.Ordinal);
        await desk.Post("/write-up/draft", Fields(desk, ("job-0-hours", "2:75")));
        Assert.Contains("2:75", desk.Page.QuerySelector("#told .not")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Look_AtAnEntryThatIsNotThereYet_IsItsPage()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Note(desk, "bored the head for two hours");
        await desk.Look("/write-up");

        await desk.Post("/write-up/look", Fields(desk, ("text", "---\npart: head\noperation: boring\nhours: 2h\n---\nIt *sings*.\n")));

        var look = JsonDocument.Parse(desk.Text).RootElement;
        Assert.Empty(look.GetProperty("problems").EnumerateArray());
        Assert.Contains("<em>sings</em>", look.GetProperty("page").GetString(), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(bench.Disk.Folder, "drill/2025-10-03-boring-head.md")));
    }

    // The same evening in a copy of the journal, each question of `write` answered with Enter.
    private static async Task AssertIsWhatWriteWrites(ServedBench bench, BenchClient desk)
    {
        using var copy = JournalOnDisk.Bare();
        foreach (var file in Directory.EnumerateFiles(bench.Disk.Folder, "*", SearchOption.AllDirectories).Where(file => Path.GetFileName(file) != "writing"))
        {
            copy.With(Path.GetRelativePath(bench.Disk.Folder, file), await File.ReadAllTextAsync(file));
        }

        var answers = new StringReader(string.Concat(Enumerable.Repeat("\n", 100)));
        var written = Answer.To(copy.Folder, terminal => terminal with { Now = bench.Clock.GetUtcNow(), CanAsk = true, In = answers }, "write");
        Assert.Equal(0, written.Status);
        await desk.Look("/write-up");
        await Save(desk, desk.Page.QuerySelector("#text")!.TextContent.Replace("\n", "\r\n", StringComparison.Ordinal));

        Assert.Equal((HttpStatusCode.OK, ""), (desk.Status, desk.Page.QuerySelector("#told .not")?.TextContent ?? ""));
        Assert.Equal(Texts(copy.Folder), Texts(bench.Disk.Folder));
        Assert.Empty(bench.Slate.Jots);
        Assert.Null(bench.Slate.Unwritten);
    }

    private static SortedDictionary<string, string> Texts(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".md" or ".yaml").ToDictionary(file => Path.GetRelativePath(folder, file), File.ReadAllText),
        StringComparer.Ordinal);

    private static async Task Note(BenchClient desk, params string[] remarks)
    {
        foreach (var remark in remarks)
        {
            await desk.Look("/tonight");
            await desk.Send("/tonight/remark", ("text", remark));
        }
    }

    private static Task<BenchClient> Save(BenchClient desk, string text) => desk.Post("/write-up", Fields(desk, ("text", text)));

    // The form of the page as it stands, with some fields changed.
    private static (string Name, string Value)[] Fields(BenchClient desk, params (string Name, string Value)[] changed) =>
    [
        .. desk.Page.QuerySelectorAll("#text-form input").OfType<AngleSharp.Html.Dom.IHtmlInputElement>()
            .Where(field => field.Name is { Length: > 0 } name && (field.Type != "checkbox" || field.IsChecked) && changed.All(one => one.Name != name)).Select(field => (field.Name!, field.Value)),
        .. changed,
    ];
}
