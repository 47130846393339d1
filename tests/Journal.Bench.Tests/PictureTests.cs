using System.Net;

namespace Journal.Bench.Tests;

/// <summary>The pictures of an entry by its forms alone.</summary>
public sealed class PictureTests
{
    private const string Entry = "drill/2025-09-30-head-again.md";
    private const string Keys = "---\npart: head\noperation: boring\nhours: 1h # by the clock\nphotos:\n  - photos/a.gif\n  - {file: photos/b.gif, caption: Before}\n---\n";

    [Fact]
    public async Task Save_OfWordsAndBalloons_AddsThemAndTouchesNothingElse()
    {
        await using var bench = await WithPictures();
        using var desk = await Opened(bench);
        var (a, b) = Ids(desk);

        await Save(desk, ($"caption-{a}", "The bore: at last"), ($"alt-{a}", "A bore"), ($"marks-{a}", "40 62.5 The edge\r\n10 20 A burr"), ($"never-{b}", "yes"));

        Assert.Contains("Saved.", desk.Page.QuerySelector("#told")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(
            Keys.Replace("- photos/a.gif", "- {file: photos/a.gif, caption: \"The bore: at last\", alt: A bore, marks: [{at: [40, 62.5], text: The edge}, {at: [10, 20], text: A burr}]}", StringComparison.Ordinal)
                .Replace("caption: Before}", "caption: Before, publish: never}", StringComparison.Ordinal),
            bench.Text(Entry));
        Assert.Empty(bench.Problems);
    }

    [Fact]
    public async Task Save_Untouched_WritesNothing()
    {
        await using var bench = await WithPictures();
        using var desk = await Opened(bench);

        await Save(desk);

        Assert.Equal(Keys, bench.Text(Entry));
    }

    [Fact]
    public async Task Save_OfWordsThatWereChangedElsewhere_SavesNothingAndKeepsBoth()
    {
        await using var bench = await WithPictures();
        using var desk = await Opened(bench);
        var (_, b) = Ids(desk);
        bench.Disk.With(Entry, Keys.Replace("Before", "By the editor", StringComparison.Ordinal));
        bench.Clock.Pass(TimeSpan.FromSeconds(5));

        await Save(desk, ($"caption-{b}", "By the page"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, desk.Status);
        Assert.Contains("By the editor", desk.Page.QuerySelector("#told")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("By the page", desk.Page.QuerySelector($"[name=caption-{b}]")!.GetAttribute("value"));
        Assert.Contains("By the editor", bench.Text(Entry), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Later_OfTheFirst_PutsItBehindTheSecond()
    {
        await using var bench = await WithPictures();
        using var desk = await Opened(bench);

        await Save(desk, ("down", Ids(desk).First));

        Assert.Equal(Keys.Replace("  - photos/a.gif\n  - {file: photos/b.gif, caption: Before}\n", "  - {file: photos/b.gif, caption: Before}\n  - photos/a.gif\n", StringComparison.Ordinal), bench.Text(Entry));
    }

    [Fact]
    public async Task Move_ToAnotherEntry_TakesItsWordsAlong()
    {
        await using var bench = await WithPictures();
        using var desk = await Opened(bench);
        var b = Ids(desk).Second;
        var to = desk.Page.QuerySelectorAll($"[name=to-{b}] option").Single(option => option.TextContent.Contains("Boring the head", StringComparison.Ordinal)).GetAttribute("value")!;

        await Save(desk, ("move", b), ($"to-{b}", to));

        Assert.Equal(Keys.Replace("  - {file: photos/b.gif, caption: Before}\n", "", StringComparison.Ordinal), bench.Text(Entry));
        Assert.Contains("photos:\n  - {file: photos/b.gif, caption: Before}\n---\n", bench.Text("drill/2025-09-06-head.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems);
    }

    [Theory]
    [InlineData("40 62")]
    [InlineData("101 5 Beside it")]
    [InlineData("a b c")]
    public async Task Save_OfALineThatIsNoBalloon_SaysHowToWriteIt(string line)
    {
        await using var bench = await WithPictures();
        using var desk = await Opened(bench);
        var a = Ids(desk).First;

        await Save(desk, ($"marks-{a}", line), ($"caption-{a}", "Kept on the page"));

        Assert.Contains("40 62 The bore", desk.Page.QuerySelector("#told")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(Keys, bench.Text(Entry));
        Assert.Equal("Kept on the page", desk.Page.QuerySelector($"[name=caption-{a}]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Picture_OfAnEntry_IsServedAndNoOtherFile()
    {
        await using var bench = await WithPictures();
        using var desk = await Opened(bench);
        var a = Ids(desk).First;

        await desk.Look($"/picture/{a}");
        Assert.Equal((HttpStatusCode.OK, "RIFF"), (desk.Status, desk.Text[..4]));
        await desk.Look($"/picture/{a[..^1]}x");
        Assert.Equal(HttpStatusCode.NotFound, desk.Status);
    }

    private static async Task<ServedBench> WithPictures()
    {
        var bench = await ServedBench.Start();
        bench.Disk.With(Entry, Keys);
        foreach (var (name, grey) in new[] { ("a", 60), ("b", 160) })
        {
            using var image = new SixLabors.ImageSharp.Image<SixLabors.ImageSharp.PixelFormats.L8>(8, 6, new SixLabors.ImageSharp.PixelFormats.L8((byte)grey));
            Directory.CreateDirectory(Path.Combine(bench.Disk.Folder, "drill/photos"));
            await using var stream = File.Create(Path.Combine(bench.Disk.Folder, $"drill/photos/{name}.gif"));
            await image.SaveAsync(stream, new SixLabors.ImageSharp.Formats.Gif.GifEncoder());
        }

        bench.Clock.Pass(TimeSpan.FromSeconds(5)); // Else the journal as it was read a moment ago counts.
        return bench;
    }

    private static async Task<BenchClient> Opened(ServedBench bench)
    {
        var desk = await bench.Desk();
        await desk.Look("/pictures");
        return await desk.Look(desk.Page.QuerySelectorAll(".files a").Single().GetAttribute("href")!);
    }

    private static (string First, string Second) Ids(BenchClient desk) =>
        desk.Page.QuerySelectorAll(".picture").Select(one => one.GetAttribute("data-id")!).ToList() is [var a, var b] ? (a, b) : throw new InvalidOperationException("There are not two pictures.");

    private static Task<BenchClient> Save(BenchClient desk, params (string Name, string Value)[] changed)
    {
        var form = desk.Page.QuerySelector("#pictures")!;
        var fields = form.QuerySelectorAll("input").OfType<AngleSharp.Html.Dom.IHtmlInputElement>().Where(field => field.Type != "checkbox" || field.IsChecked).Select(field => (Name: field.Name!, field.Value))
            .Concat(form.QuerySelectorAll("textarea").Select(field => (Name: field.GetAttribute("name")!, Value: field.TextContent.Replace("\n", "\r\n", StringComparison.Ordinal))));
        return desk.Post(form.GetAttribute("action")!, [.. fields.Where(field => changed.All(one => one.Name != field.Name)), .. changed]);
    }
}
