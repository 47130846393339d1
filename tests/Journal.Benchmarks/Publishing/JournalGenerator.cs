using System.Globalization;
using System.Text;

namespace Journal.Benchmarks.Publishing;

/// <summary>
/// Writes journals of any size from a seed: entries of about 250 words, several jobs in three of five, mistakes, lessons,
/// tools and links as a real maker has them.
/// </summary>
internal sealed class JournalGenerator(int seed)
{
    private const int EntriesInABuild = 400;
    private const int PartsOfABuild = 14;
    private const int Tools = 80;

    private static readonly string[] Words =
        ("the bore face plate cut spindle again turned slowly until edge came clean and then measured twice before moving clamp bolt washer under strap "
        + "casting skin hard sand pocket drill wandered reamer chatter feed depth speed oil brass bronze iron steel shim packing square parallel gauge "
        + "indicator needle swung thou left right evening cold shed kettle vice jaw fixture block lathe mill table slot key shoulder thread tap relief").Split(' ');

    private static readonly string[] Operations = ["turning", "boring", "milling", "drilling", "fitting", "scraping", "facing", "reaming", "tapping", "fixture-making"];
    private static readonly string[] Causes = ["setting-up", "measuring", "haste", "order-of-work", "tool-wear", "work-moved"];

#pragma warning disable CA5394 // Repeatable on purpose.
    private readonly Random random = new(seed);

    /// <summary>Writes a journal into an empty folder.</summary>
    public void Write(string folder, int entries)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "journal.yaml"), "title: A generated journal\nmaker: Bench\ncurrency: EUR\naddress: https://example.org/bench/\n");
        File.WriteAllText(Path.Combine(folder, "tools.yaml"), string.Concat(Enumerable.Range(0, Tools).Select(i => $"- {{id: tool-{i}, title: Tool number {i}, kind: cutting, got: bought, cost: {i + 1}}}\n")));
        for (var start = 0; start < entries; start += EntriesInABuild)
        {
            WriteBuild(Path.Combine(folder, $"build-{start / EntriesInABuild}"), Math.Min(EntriesInABuild, entries - start), start / EntriesInABuild);
        }

        Settle(folder);
    }

    // As if written an hour ago: a publish does not trust the time stamp of a file that is seconds old.
    private static void Settle(string folder)
    {
        var hourAgo = DateTime.UtcNow.AddHours(-1);
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(file => File.GetLastWriteTimeUtc(file) > hourAgo))
        {
            File.SetLastWriteTimeUtc(file, hourAgo);
        }
    }

    private void WriteBuild(string folder, int entries, int number)
    {
        Directory.CreateDirectory(folder);
        var build = new StringBuilder().Append(CultureInfo.InvariantCulture, $"title: Build {number}\nparts:\n");
        for (var part = 0; part < PartsOfABuild; part++)
        {
            build.Append(CultureInfo.InvariantCulture, $"  - {{id: part-{part}, item: {part + 1}, title: Part {part}, material: cast-iron, stock: casting, guess: 9h}}\n");
        }

        File.WriteAllText(Path.Combine(folder, "build.yaml"), build.ToString());
        var date = new DateOnly(1950, 1, 1).AddDays(number * 3 * EntriesInABuild);
        string? before = null;
        var lessons = new List<string>();
        for (var i = 0; i < entries; i++)
        {
            date = date.AddDays(1 + random.Next(3));
            var id = string.Create(CultureInfo.InvariantCulture, $"{date:yyyy-MM-dd}-evening-{i}");
            File.WriteAllText(Path.Combine(folder, id + ".md"), Entry(number, i, before, lessons));
            before = id;
        }
    }

    private string Entry(int build, int number, string? before, List<string> lessons)
    {
        var text = new StringBuilder().Append(CultureInfo.InvariantCulture, $"---\ntitle: {Sentence(6)}\n");
        if (random.Next(5) < 3)
        {
            text.Append("jobs:\n");
            for (var job = 0; job < 2 + random.Next(2); job++)
            {
                text.Append(CultureInfo.InvariantCulture, $"  - {{part: part-{random.Next(PartsOfABuild)}, operation: {Pick(Operations)}, hours: {10 + random.Next(80)}m, tools: [tool-{random.Next(Tools)}, tool-{random.Next(Tools)}]}}\n");
            }
        }
        else
        {
            text.Append(CultureInfo.InvariantCulture, $"part: part-{random.Next(PartsOfABuild)}\noperation: {Pick(Operations)}\nhours: 2h{random.Next(10, 59)}\nsetup: half\nheld: {Sentence(5)}\ndatum: {Sentence(3)}\ntools: [tool-{random.Next(Tools)}]\n");
        }

        if (random.Next(3) == 0)
        {
            var lesson = $"lesson-{build}-{number}";
            text.Append(CultureInfo.InvariantCulture, $"mistakes:\n  - what: {Sentence(14)}.\n    cause: {Pick(Causes)}\n    lost: {10 + random.Next(60)}m\n    outcome: rework\n    lesson: {{id: {lesson}, text: {Sentence(10)}.}}\n");
            lessons.Add(lesson);
        }

        if (lessons.Count > 0 && random.Next(6) == 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"heeded: [{lessons[random.Next(lessons.Count)]}]\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"next: {Sentence(9)}.\n---\n");
        for (var paragraph = 0; paragraph < 4; paragraph++)
        {
            text.Append(Sentence(58)).Append(". ");
            if (paragraph == 1 && before is not null)
            {
                text.Append(CultureInfo.InvariantCulture, $"See [the evening before](entry:{before}) and [the tool](tool:tool-{random.Next(Tools)}). ");
            }

            text.Append(paragraph == 2 ? "**Bold words** and *slanted ones*.\n\n- one\n- two\n\n" : "\n\n");
        }

        return text.ToString();
    }

    private string Sentence(int words)
    {
        var sentence = string.Join(' ', Enumerable.Range(0, words).Select(_ => Pick(Words)));
        return char.ToUpperInvariant(sentence[0]) + sentence[1..];
    }

    private string Pick(string[] from) => from[random.Next(from.Length)];
#pragma warning restore CA5394
}
