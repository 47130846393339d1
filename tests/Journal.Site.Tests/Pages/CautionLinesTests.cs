using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Journal.Core.Checking;
using Journal.Site.Pages;
using Journal.Site.Templates;

namespace Journal.Site.Tests.Pages;

/// <summary>Cautions on pages: a line each on entries, folded but whole elsewhere.</summary>
public sealed class CautionLinesTests
{
    private static readonly TemplateEngine Engine = new(TemplateFiles.Own());

    [Fact]
    public void Entry_MuchWork_ShowsThreeLinesAtMost()
    {
        var entry = Page("operation: [turning, milling, grinding, sawing]", "", "drill/entry/2025-10-03-all.html");

        Assert.Equal(3, entry.QuerySelectorAll(".caution").Length);
    }

    [Fact]
    public void Entry_OnSteamUnderPressure_ShowsBothWhateverElseIsCalledFor()
    {
        var lines = Page("operation: [turning, milling]", "trials: {on: steam}", "drill/entry/2025-10-03-all.html").QuerySelectorAll(".caution").Select(line => line.TextContent.Trim()).ToList();

        Assert.Contains(lines, line => line.StartsWith("Steam only from a tested boiler", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("Prove it with water", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("operation/welding.html")]
    [InlineData("drill/part/head.html")]
    public void OperationAndPart_Cautions_AreFoldedAndWhole(string page)
    {
        var cautions = Page("operation: welding", "", page).QuerySelectorAll("details.caution-details");

        Assert.Contains(cautions, caution => caution.TextContent.Contains("Local codes", StringComparison.Ordinal));
        Assert.All(cautions, caution =>
        {
            Assert.False(caution.HasAttribute("open"));
            Assert.NotEmpty(caution.QuerySelector("summary")!.TextContent.Trim());
            Assert.Equal(3, caution.QuerySelectorAll("p").Length);
            Assert.StartsWith("Source: ", caution.QuerySelector("p.small")!.TextContent, StringComparison.Ordinal);
        });
    }

    private static IDocument Page(string operation, string more, string address)
    {
        var folder = Directory.CreateTempSubdirectory("journal-").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, "drill"));
            File.WriteAllText(Path.Combine(folder, "journal.yaml"), "title: The Lean-to\n");
            File.WriteAllText(Path.Combine(folder, "drill", "build.yaml"), "title: Drill\nparts: [{id: head}]\n");
            File.WriteAllText(Path.Combine(folder, "drill", "2025-10-03-all.md"), $"---\npart: head\n{operation}\nhours: 1h\n{more}\n---\nDone.\n");
            var book = new SiteFigures(JournalReader.Read(folder, DateOnly.MaxValue).Journal!, new DateOnly(2030, 1, 1), _ => null);
            var page = PageList.Of(book).Single(page => page.Address == address);
            return new HtmlParser().ParseDocument(Engine.Fill(page.Template, page.Model()));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
