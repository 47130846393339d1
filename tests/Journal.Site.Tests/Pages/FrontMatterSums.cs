using System.Globalization;
using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Site.Tests.Publishing;
using YamlDotNet.Serialization;

namespace Journal.Site.Tests.Pages;

/// <summary>
/// The hours of the demo, added up from its files by another way than the program's: the plain YAML library and a
/// handful of expressions for the forms of a time (docs/keys.md).
/// </summary>
internal static partial class FrontMatterSums
{
    /// <summary>Minutes by build.</summary>
    public static IReadOnlyDictionary<string, int> OfDemo()
    {
        var sums = new Dictionary<string, int>();
        foreach (var build in Directory.EnumerateDirectories(Path.Combine(Repository.Root, "journal")).Where(folder => File.Exists(Path.Combine(folder, "build.yaml"))))
        {
            sums.Add(Path.GetFileName(build), Directory.EnumerateFiles(build, "*.md", SearchOption.AllDirectories).Sum(OfEntry));
        }

        return sums;
    }

    private static int OfEntry(string path)
    {
        var yaml = File.ReadAllText(path).Split("---\n")[1];
        var keys = new DeserializerBuilder().Build().Deserialize<Dictionary<string, object>>(yaml);
        return keys.TryGetValue("jobs", out var jobs)
            ? (jobs as List<object> ?? [jobs]).Sum(job => OfHours(((Dictionary<object, object>)job)["hours"]))
            : OfHours(keys["hours"]);
    }

    private static int OfHours(object hours) => hours is List<object> several ? several.Sum(OfHours) : OfText((string)hours);

    private static int OfText(string text)
    {
        static int Number(Group group) => group.Length == 0 ? 0 : int.Parse(group.Value, CultureInfo.InvariantCulture);
        if (Stretch().Match(text) is { Success: true } stretch)
        {
            var (from, to) = (Number(stretch.Groups[1]) * 60 + Number(stretch.Groups[2]), Number(stretch.Groups[3]) * 60 + Number(stretch.Groups[4]));
            return to > from ? to - from : to + 24 * 60 - from;
        }

        if (Parts().Match(text) is { Success: true } parts)
        {
            return Number(parts.Groups[1]) * 60 + Number(parts.Groups[2]);
        }

        if (MinutesAlone().Match(text) is { Success: true } minutes)
        {
            return Number(minutes.Groups[1]);
        }

        return (int)Math.Round(decimal.Parse(text, CultureInfo.InvariantCulture) * 60, MidpointRounding.AwayFromZero);
    }

    [GeneratedRegex(@"^(\d+):(\d\d)\s*[-–]\s*(\d+):(\d\d)$")]
    private static partial Regex Stretch();

    [GeneratedRegex(@"^(?:PT)?(\d+)(?:[hH]\s*|:)(\d*)[mM]?$")]
    private static partial Regex Parts();

    [GeneratedRegex(@"^(?:PT)?(\d+)[mM]$")]
    private static partial Regex MinutesAlone();
}
