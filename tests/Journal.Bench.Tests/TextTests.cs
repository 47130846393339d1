using System.Net;
using System.Text;
using System.Text.Json;

namespace Journal.Bench.Tests;

/// <summary>The journal's files as text: opened, looked at while they are typed, and saved.</summary>
public sealed class TextTests
{
    private const string Entry = "drill/2025-09-06-head.md";

    [Theory]
    [InlineData("---\ndate: 2025-09-06\npart: head\nhours: 1h\n---\nOne\nTwo")]
    [InlineData("\uFEFF---\r\ndate: 2025-09-06\r\npart: head\nhours: 1h\r\n---\r\n\r\n<b>&amp; one</b>\r\n")]
    [InlineData("\n\n  no entry at all: [\t\n")]
    public async Task Save_Untouched_LeavesEveryByte(string text)
    {
        await using var bench = await ServedBench.Start();
        bench.Disk.With(Entry, text);
        using var desk = await bench.Desk();
        await Open(desk, Entry);

        await Save(desk, desk.Page.QuerySelector("#text")!.TextContent.Replace("\n", "\r\n", StringComparison.Ordinal));

        Assert.Contains("Saved.", desk.Page.QuerySelector("#told")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(Encoding.UTF8.GetBytes(text), await File.ReadAllBytesAsync(Path.Combine(bench.Disk.Folder, Entry)));
    }

    [Fact]
    public async Task Save_OfAnyFile_IsWhatWasTyped()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        foreach (var file in new[] { "journal.yaml", "tools.yaml", "drill/build.yaml", Entry })
        {
            await Open(desk, file);
            await Save(desk, $"# {file}\r\nnothing of a journal: [\r\n");

            Assert.Equal($"# {file}\nnothing of a journal: [\n", bench.Text(file));
        }
    }

    [Fact]
    public async Task Save_AfterAnotherProgramSaved_ShowsBothAndLosesNeither()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Open(desk, Entry);
        bench.Disk.With(Entry, "theirs\n");

        await Save(desk, "ours\r\n");

        Assert.Equal(HttpStatusCode.Conflict, desk.Status);
        Assert.Equal(("ours\n", "theirs\n"), (desk.Page.QuerySelector("#text")!.TextContent, desk.Page.QuerySelector("#theirs")!.TextContent));
        Assert.Equal("theirs\n", bench.Text(Entry));

        // Seen beside ours, it may be replaced; but only as it was seen.
        await Save(desk, "theirs and ours\r\n");
        Assert.Equal("theirs and ours\n", bench.Text(Entry));
    }

    [Fact]
    public async Task Save_OfAFileThatIsGone_KeepsWhatWasTypedOnThePage()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Open(desk, Entry);
        var address = Address(desk);
        File.Delete(Path.Combine(bench.Disk.Folder, Entry));
        File.WriteAllBytes(Path.Combine(bench.Disk.Folder, Entry), [0xFF, 0xFE, 0, 1]);

        await desk.Send(address, ("text", "ours"));

        Assert.Equal("ours", desk.Page.QuerySelector("#text")!.TextContent);
    }

    [Fact]
    public async Task Look_AtAMisspeltPart_SaysWhereAndOffersTheWord()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Open(desk, Entry);

        var look = await Look(desk, "---\r\ndate: 2025-09-06\r\npart: haed\r\nhours: 1h\r\n---\r\n");

        var problem = Assert.Single(look.GetProperty("problems").EnumerateArray());
        Assert.Equal((3, 7, "head"), (problem.GetProperty("line").GetInt32(), problem.GetProperty("column").GetInt32(), problem.GetProperty("mend").GetProperty("word").GetString()));
    }

    [Fact]
    public async Task Look_AtWhatIsTyped_IsThePageThatTheSaveBrings()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Open(desk, Entry);
        var typed = bench.Text(Entry).Replace("It came out off the boss.", "It *sings* now.", StringComparison.Ordinal);
        var look = await Look(desk, typed);

        await Save(desk, typed);
        await Look(desk, typed);
        await desk.Look("/site/drill/entry/2025-09-06-head.html");

        Assert.Contains("<em>sings</em>", desk.Text, StringComparison.Ordinal);
        Assert.Equal(desk.Text, look.GetProperty("page").GetString());
    }

    [Fact]
    public async Task Words_ForAnEntry_AreItsKeysAndTheJournalsIds()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await Open(desk, Entry);
        await desk.Look(desk.Page.QuerySelector("#text")!.GetAttribute("data-words")!);

        var words = JsonDocument.Parse(desk.Text).RootElement;
        Assert.Contains("operation", Firsts(words.GetProperty("keys").GetProperty("")));
        Assert.Contains("cause", Firsts(words.GetProperty("keys").GetProperty("mistakes")));
        Assert.Contains("head", Firsts(words.GetProperty("values").GetProperty("part")));
        Assert.Contains("boring", Firsts(words.GetProperty("values").GetProperty("operation")));
        Assert.Contains("never-again", Firsts(words.GetProperty("values").GetProperty("verdict")));
        Assert.Contains("indicate-both-ends", Firsts(words.GetProperty("links").GetProperty("lesson")));
    }

    [Theory]
    [InlineData("/files/..%2Fjournal.yaml")]
    [InlineData("/files/journal.yaml")]
    [InlineData("/site/journal.yaml")]
    [InlineData("/site/.bench/slate.json")]
    [InlineData("/site/..%2Fjournal.yaml")]
    [InlineData("/site/%2e%2e/journal.yaml")]
    [InlineData("/words/0123456789abcdef01234567")]
    public async Task Address_OfNoFileOfOurs_LeadsNowhere(string address)
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await desk.Look(address);

        Assert.Equal(HttpStatusCode.NotFound, desk.Status);
        Assert.DoesNotContain("The Lean-to", desk.Text, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Firsts(JsonElement pairs) => pairs.EnumerateArray().Select(pair => pair[0].GetString()!);

    private static async Task Open(BenchClient desk, string file)
    {
        await desk.Look("/files");
        await desk.Look(desk.Page.QuerySelectorAll(".files li").Single(row => row.QuerySelector(".small")!.TextContent.Split(' ')[0] == file).QuerySelector("a")!.GetAttribute("href")!);
    }

    private static string Address(BenchClient desk) => desk.Page.QuerySelector("#text-form")!.GetAttribute("action")!;

    private static Task<BenchClient> Save(BenchClient desk, string text) => desk.Send(Address(desk), ("text", text));

    private static async Task<JsonElement> Look(BenchClient desk, string text)
    {
        var page = desk.Page;
        await desk.Post(page.QuerySelector("#text")!.GetAttribute("data-typed")!, ("token", desk.Token), ("text", text));
        desk.Stay(page);
        return JsonDocument.Parse(desk.Text).RootElement;
    }
}
