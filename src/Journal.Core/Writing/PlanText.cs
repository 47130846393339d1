using System.Text;
using System.Text.RegularExpressions;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Writing;

/// <summary>
/// A plan's text as a build's: every line that both have stays as the maker wrote it, remarks and all. What only a plan
/// has (<c>start</c>, <c>publish</c>) is left behind, and what only a build has is put in under the title.
/// </summary>
internal static partial class PlanText
{
    private static readonly string[] OnlyInPlans = ["start", "publish"];

    private static readonly string[] Kept = ["title", "hours-a-week", "away", "parts", "whole"];

    /// <summary>The text of build.yaml; null where the plan's keys do not stand one to a line.</summary>
    public static string? AsBuild(string plan, DateOnly started)
    {
        var end = plan.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var build = new StringBuilder();
        string? key = null;
        foreach (var line in plan.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
        {
            var isRemark = line.Length == 0 || line[0] == '#';
            var isKey = KeyLine().Match(line) is { Success: true } match && (key = match.Groups["key"].Value) is not null;
            if (isRemark || !OnlyInPlans.Contains(key))
            {
                build.Append(line).Append(end);
            }

            if (isKey && key == "title")
            {
                build.Append(FormattableString.Invariant($"status: under-way{end}started: {started:yyyy-MM-dd}{end}"));
            }
        }

        var text = build.ToString();
        return SaysTheSame(plan, text) ? text : null;
    }

    // Rather refuse than write a guess that differs from the plan's by a letter.
    private static bool SaysTheSame(string plan, string build) =>
        YamlReader.Read(plan, "plan", 1, new ProblemLog()) is { } before
        && YamlReader.Read(build, "build", 1, new ProblemLog()) is { } after
        && Value(after, "status") == "under-way"
        && Kept.All(key => Value(before, key) == Value(after, key));

    private static string? Value(MapNode map, string key) =>
        map.Pairs.FirstOrDefault(pair => pair.Key.Text == key) is { Value: { } node } ? Canonical(node) : null;

    private static string Canonical(Node node) => node switch
    {
        MapNode map => $"{{{string.Join('\u0001', map.Pairs.Select(pair => $"{pair.Key.Text}\u0002{Canonical(pair.Value)}"))}}}",
        ListNode list => $"[{string.Join('\u0001', list.Nodes.Select(Canonical))}]",
        TextNode text => text.Text,
        _ => "",
    };

    [GeneratedRegex("""^["']?(?<key>[a-z][a-z-]*)["']?\s*:(?:\s|$)""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex KeyLine();
}
