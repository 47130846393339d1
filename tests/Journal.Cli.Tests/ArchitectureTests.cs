using System.Reflection;
using Journal.Core.Model;

namespace Journal.Cli.Tests;

// Data goes one way (DESIGN section 1): nothing on the left knows anything on its right.
public class ArchitectureTests
{
    private static readonly string[] ToTheRightOfCore =
    [
        "Journal.Site", "journal", "HtmlSanitizer", "AngleSharp", "Scriban", "SixLabors.ImageSharp", "System.ServiceModel.Syndication",
        "Spectre.Console", "System.CommandLine", "System.Console",
    ];

    [Fact]
    public void Core_KnowsNoPagesPicturesOrConsole()
    {
        var known = References(typeof(MakerJournal).Assembly);

        Assert.Contains("YamlDotNet", known);
        Assert.Empty(known.Intersect(ToTheRightOfCore, StringComparer.OrdinalIgnoreCase));
    }

    [Fact]
    public void Site_KnowsNoProgram()
    {
        var known = References(Assembly.LoadFrom(Path.Combine(AppContext.BaseDirectory, "Journal.Site.dll")));

        Assert.NotEmpty(known);
        Assert.Empty(known.Intersect(["journal", "Spectre.Console", "System.CommandLine", "System.Console"], StringComparer.OrdinalIgnoreCase));
    }

    private static string[] References(Assembly assembly) => [.. assembly.GetReferencedAssemblies().Select(name => name.Name!)];
}
