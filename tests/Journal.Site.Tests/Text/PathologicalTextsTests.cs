using System.Diagnostics;
using Journal.Cli.Tests;
using Journal.Core.Parsing.Problems;
using Journal.Site.Tests.Pages;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Text;

/// <summary>Texts that reading lets pass, or refuses with a place, are also published, without a crash and at once.</summary>
public sealed class PathologicalTextsTests
{
    [Theory]
    [InlineData("![", 130)]
    [InlineData("![", 438)]
    [InlineData("![", 300)]
    [InlineData("[", 120)]
    [InlineData("**a ", 60)]
    [InlineData("*a _b ", 60)]
    [InlineData("> ", 60)]
    [InlineData("`", 60_000)]
    [InlineData("` ", 30_000)]
    [InlineData("<div>", 12_000)]
    [InlineData("<div>\n", 10_000)]
    [InlineData("<b>", 20_000)]
    [InlineData("<b>", 500)]
    [InlineData("<b></b>", 8_000)]
    [InlineData("a<i><b>", 9_000)]
    [InlineData("<ul><li>", 8_000)]
    [InlineData("<table><tr><td>", 4_000)]
    [InlineData("<svg><g>", 8_000)]
    [InlineData("<a href=\"", 7_000)]
    [InlineData("<!--", 16_000)]
    [InlineData("</p>", 16_000)]
    [InlineData("&#", 30_000)]
    [InlineData("\\", 60_000)]
    [InlineData("- a\n", 16_000)]
    [InlineData("***", 3_000)]
    [InlineData("a|", 30)]
    [InlineData("\u0301", 30_000)]
    [InlineData("\u202E", 20_000)]
    [InlineData("x", 60_000)]
    [InlineData("word ", 12_000)]
    [InlineData("12.5 mm, ", 6_000)]
    public void Text_OfOneSign_IsRefusedWithAPlaceOrPublishedAtOnce(string piece, int times)
    {
        using var journal = JournalOnDisk.Small().WithEntry("drill/2025-09-29-odd.md", "", string.Concat(Enumerable.Repeat(piece, times)));
        var watch = Stopwatch.StartNew();

        var errors = journal.Read().Problems.Where(problem => problem.Severity == Severity.Error).ToList();
        if (errors.Count == 0)
        {
            var site = journal.Publish();
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(10), $"took {watch.Elapsed}");
            Assert.Empty(PageRules.Broken(site.Page("drill/entry/2025-09-29-odd.html")));
        }

        Assert.All(errors, problem => Assert.True(problem.Place.File == "drill/2025-09-29-odd.md" && problem.Place.Line >= 7));
    }
}
