using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Journal.Core.Parsing.Problems;
using Journal.Site.Publishing;

namespace Journal.Browser.Tests.Hostile;

/// <summary>
/// A journal that says hostile things wherever a maker can say something: one entry for each group of texts, and its site
/// twice, as published and with the pages' content policy taken out.
/// </summary>
internal sealed partial class HostileJournal
{
    /// <summary>As many entries as a feed holds, so that every text is in the feeds too.</summary>
    public const int MostGroups = 30;

    private const string Build = "drill";
    private const int OfPart = 10;
    private const int OfLesson = 6;

    // One black pixel.
    private static readonly byte[] Picture = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==");
    private static readonly DateOnly Today = new(2026, 11, 25);

    private readonly string folder;

    /// <param name="place">The folder that holds all of them.</param>
    /// <param name="name">The name of this one.</param>
    /// <param name="groups">What it says, at most <see cref="MostGroups"/>.</param>
    public HostileJournal(string place, string name, IReadOnlyList<IReadOnlyList<string>> groups)
    {
        (Root, Groups) = ($"{name}/", groups);
        folder = Path.Combine(place, "journals", name);
        Site = Path.Combine(place, HostileSites.AsPublished, name);
        Open = Path.Combine(place, HostileSites.WithoutPolicy, name);
        WriteJournal(groups);
        foreach (var (i, group) in groups.Index())
        {
            WriteEntry(i, group, [.. groups.Skip(i).Take(OfLesson)]);
        }

        Publish(Path.Combine(place, "cache"));
        Pages = [.. Directory.EnumerateFiles(Site, "*.html", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(Site, path)).Order(StringComparer.Ordinal)];
        TakePolicyOut();
    }

    /// <summary>Where its site lies on its server, ending with a slash.</summary>
    public string Root { get; }

    /// <summary>What it says.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Groups { get; }

    /// <summary>The site as published.</summary>
    public string Site { get; }

    /// <summary>The same site without a content policy: nothing but escaping and sanitising is left.</summary>
    public string Open { get; }

    /// <summary>Every page, from the root of the site.</summary>
    public IReadOnlyList<string> Pages { get; }

    /// <summary>The page of the entry of one group.</summary>
    public static string PageOf(int group) => $"{Build}/entry/{Date(group)}-{Name(group)}.html";

    /// <summary>Several texts as one.</summary>
    public static string Joined(IEnumerable<string> texts) => string.Join(' ', texts);

    private void WriteJournal(IReadOnlyList<IReadOnlyList<string>> groups)
    {
        // These stand on every page: of texts that differ in one letter alone one is enough.
        var all = Quoted(Joined(groups.Select(group => group[^1])));
        Write("journal.yaml", $$"""
            title: {{all}}
            maker: {{all}}
            operations: [{id: op-x, title: {{all}}, kind: finishing}]
            causes: [{id: cause-x, title: {{all}} }]
            materials: [{id: material-x, title: {{all}} }]
            tool-kinds: [{id: kind-x, title: {{all}} }]
            """);
        Write("tools.yaml", string.Concat(groups.Select((group, i) => $$"""
            - {id: tool-{{Name(i)}}, title: {{Quoted(Joined(group))}}, kind: kind-x, link: {{Address(group)}}, disclose: {{Quoted(Joined(group))}}, resolution: 0.01 mm}

            """)));
        var parts = groups.Chunk(OfPart).Select((some, i) => (Id: $"part-{Name(i)}", Text: Joined(some.SelectMany(group => group))))
            .Select(part => (part.Id, Text: Quoted(part.Text), Stock: Quoted("round " + part.Text))).ToList();
        Write($"{Build}/build.yaml", $"""
            title: {all}
            drawings: {all}
            parts:
            {string.Concat(parts.Select(part => $"  - {{id: {part.Id}, item: {part.Text}, title: {part.Text}, drawing: {part.Text}, material: material-x, stock: {part.Stock}, supplied: {part.Text}, guess: 1h}}\n"))}
            videos:
            {string.Concat(groups.Select(group => $"  - {{url: {Address(group)}, title: {Quoted(Joined(group))}, covers: [{parts[0].Id}], chapters: [{{at: \"0:40\", title: {Quoted(Joined(group))}}}]}}\n"))}
            """);
        Write("plans/next.yaml", $"title: {all}\nparts:\n{string.Concat(parts.Select(part => $"  - {{id: {part.Id}, title: {part.Text}, material: material-x, stock: {part.Stock}, guess: 1h}}\n"))}");
        Directory.CreateDirectory(Path.Combine(folder, Build, "photos"));
        File.WriteAllBytes(Path.Combine(folder, Build, "photos/plain.png"), Picture);
    }

    private void WriteEntry(int at, IReadOnlyList<string> group, IReadOnlyList<IReadOnlyList<string>> following)
    {
        var (name, text, part) = (Name(at), Quoted(Joined(group)), $"part-{Name(at / OfPart)}");
        var grade = Quoted("brass " + Joined(group));
        var lesson = at % OfLesson > 0 ? "" : Quoted(Joined(following.SelectMany(one => one)));
        var byMistake = lesson.Length == 0 ? "" : $", lesson: {{id: by-mistake-{name}, text: {lesson}, better: {lesson}}}";
        var learned = lesson.Length == 0 ? "" : $"lessons: {{id: learned-{name}, text: {lesson}, verdict: never-again, better: {lesson}}}";
        Write($"{Build}/{Date(at)}-{name}.md", $$"""
            ---
            title: {{text}}
            jobs:
              - {part: {{part}}, operation: op-x, hours: 5m, tools: tool-{{name}}, held: {{text}}, datum: {{text}}, made: {id: jig-{{name}}, title: {{text}}, kind: fixture} }
              - {part: {{part}}, operation: turning, hours: 5m, held: {{text}}, datum: {{text}} }
            mistakes: {what: {{text}}, cause: cause-x, lost: 1m, outcome: rework{{byMistake}} }
            {{learned}}
            next: {{text}}
            snags: {{text}}
            trials: {on: {{text}}, pressure: {{text}}, speed: {{text}}, result: {{text}} }
            readings: {feature: {{text}}, required: 12 mm, actual: 12.01 mm, with: tool-{{name}} }
            settings: {cutter: {{text}}, machine: tool-{{name}}, coolant: {{text}}, material: {{grade}}, rpm: 300, diameter: 12 mm, note: {{text}} }
            milestone: {{text}}
            story: {{text}}
            bought: {what: {{text}}, cost: 1, kind: stock, for: {{part}} }
            departure: {{text}}
            photos: {file: photos/plain.png, caption: {{text}}, alt: {{text}}, marks: {at: [50, 50], text: {{text}} } }
            ---
            {{Body(group)}}
            """);
    }

    // The plain text comes last: what it leaves open would take in all that follows.
    private static string Body(IReadOnlyList<string> group)
    {
        var body = new StringBuilder();
        foreach (var text in group)
        {
            body.AppendLine(CultureInfo.InvariantCulture, $"A link of [{text}](https://xss.example/), to [a place]({text}), to [a place](<{text}>), by [a title](https://xss.example/ \"{text.Replace("\"", "\\\"", StringComparison.Ordinal)}\").\n");
            body.AppendLine(CultureInfo.InvariantCulture, $"Pictures: ![{text}](photos/plain.png) ![{text}](not-there.png) ![a picture](<{text}>)\n");
            body.AppendLine(CultureInfo.InvariantCulture, $"- ``{text}``\n\n| a table | of it |\n| --- | ---: |\n| {text.Replace("|", "\\|", StringComparison.Ordinal)} | 1 |\n\n## {text}\n");
        }

        foreach (var text in group)
        {
            body.AppendLine(CultureInfo.InvariantCulture, $"> {text}\n\nIn a line: {text} and on.\n\n{text}\n");
        }

        // A file that holds a NUL is refused when it is read.
        return body.Replace("\0", "").ToString();
    }

    private void Publish(string cache)
    {
        var outcome = SitePublisher.Publish(new PublishOrder(folder, Site, Today) { Cache = cache });
        Faults.None([.. outcome.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.ToString())]);
    }

    private void TakePolicyOut()
    {
        foreach (var file in Directory.EnumerateFiles(Site, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(Open, Path.GetRelativePath(Site, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            if (Path.GetExtension(file) == ".html")
            {
                var text = File.ReadAllText(file);
                Assert.Single(Policy().Matches(text));
                File.WriteAllText(to, Policy().Replace(text, ""));
            }
            else
            {
                File.Copy(file, to);
            }
        }
    }

    private void Write(string file, string text)
    {
        var path = Path.Combine(folder, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private static string Date(int at) => new DateOnly(2025, 10, 1).AddDays(at).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Name(int at) => $"x{at.ToString(CultureInfo.InvariantCulture)}";

    private static string Address(IEnumerable<string> group) => Quoted("https://xss.example/" + Joined(group));

    // Every JSON text is a YAML text in double quotes.
    private static string Quoted(string text) => JsonSerializer.Serialize(text);

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>")]
    private static partial Regex Policy();
}
