using System.Reflection;
using Journal.Core.Model;

namespace Journal.Cli.Tests;

// Data goes one way: nothing on the left knows anything on its right. This holds for the projects, and for the folders in
// each of them; DEVELOPERS.md says what each folder is for.
public class ArchitectureTests
{
    private static readonly string[] FoldersOfCore =
        ["Statistics", "Model", "Trade", "Parsing", "Figures", "Wording", "Estimating", "Checking", "PlainWords", "Writing", "Import"];

    private static readonly string[] FoldersOfSite =
        ["Html", "Output", "Text", "Photos", "Charts", "Pages", "Templates", "Search", "Feeds", "Contents", "Publishing", "Serving", "Preview", "Sending"];

    private static readonly string[] FoldersOfBench = ["Doors", "Pairing", "Requests", "Slates", "Pages", "Templates", "Common", "Phones", "Texts", "Pictures", "Plans", "Tonight", "WriteUps", ""];

    private static readonly string[] ToTheRightOfCore =
    [
        "Journal.Site", "Journal.Bench", "journal", "HtmlSanitizer", "AngleSharp", "Scriban", "SixLabors.ImageSharp", "System.ServiceModel.Syndication",
        "Spectre.Console", "System.CommandLine", "System.Console",
    ];

    [Fact]
    public void Core_KnowsNoPagesPicturesOrConsole()
    {
        var known = References(typeof(MakerJournal).Assembly);

        Assert.Contains("YamlDotNet", known);
        Assert.Empty(known.Intersect(ToTheRightOfCore, StringComparer.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("Journal.Site", "Journal.Bench")]
    [InlineData("Journal.Bench", "journal")]
    public void Pages_KnowNoProgramAndNothingToTheirRight(string project, string right)
    {
        var known = References(Assembly.LoadFrom(Path.Combine(AppContext.BaseDirectory, $"{project}.dll")));

        Assert.NotEmpty(known);
        Assert.Empty(known.Intersect([right, "journal", "Spectre.Console", "System.CommandLine", "System.Console"], StringComparer.OrdinalIgnoreCase));
    }

    [Fact]
    public void FoldersOfCore_PointLeftOnly() => AssertPointLeft("Journal.Core", FoldersOfCore);

    [Fact]
    public void FoldersOfSite_PointLeftOnly() => AssertPointLeft("Journal.Site", FoldersOfSite);

    [Fact]
    public void FoldersOfBench_PointLeftOnly() => AssertPointLeft("Journal.Bench", FoldersOfBench);

    private static void AssertPointLeft(string project, string[] folders)
    {
        var path = Path.Combine(AppContext.BaseDirectory, $"{project}.dll");

        Assert.Equal(folders.Order(StringComparer.Ordinal), FolderGraph.In(path, project));
        var toTheRight = FolderGraph.Of(path, project)
            .Where(arrow => Array.IndexOf(folders, arrow.To) > Array.IndexOf(folders, arrow.From))
            .Select(arrow => $"{arrow.From} names {arrow.To}: {arrow.Type} names {arrow.Named}")
            .Distinct()
            .ToList();
        Assert.True(toTheRight.Count == 0, string.Join('\n', toTheRight));
    }

    private static string[] References(Assembly assembly) => [.. assembly.GetReferencedAssemblies().Select(name => name.Name!)];
}
