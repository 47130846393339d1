using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Site.Pages;
using Journal.Site.Templates;

namespace Journal.Benchmarks.Lessons;

/// <summary>
/// The lessons book of 2,000 lessons against that of 1,000: every figure, every page of the book and of each lesson, laid out. It may
/// grow as n log n: 2 · log 2000 / log 1000 = 2.20 times.
/// </summary>
internal sealed class LessonsBookBenchmark : Benchmark
{
    private const int Many = 2_000;
    private const int Half = Many / 2;

    private readonly MakerJournal many = InventedLessons.Journal(Many);
    private readonly MakerJournal half = InventedLessons.Journal(Half);
    private readonly TemplateEngine engine = new(TemplateFiles.Own());

    /// <inheritdoc/>
    public override string Name => "lessons-book";

    /// <inheritdoc/>
    protected override string What => $"the lessons book of {Many:N0} lessons, all its pages; floor: the same of {Half:N0}";

    /// <inheritdoc/>
    protected override double MostSeconds => 8;

    /// <inheritdoc/>
    protected override double MostFloors => 2 * Math.Log(Many) / Math.Log(Half);

    /// <inheritdoc/>
    protected override void Work() => Publish(many, Many);

    /// <inheritdoc/>
    protected override void Floor() => Publish(half, Half);

    private void Publish(MakerJournal journal, int lessons)
    {
        var book = new SiteFigures(journal, new DateOnly(2030, 1, 1), _ => null);
        var pages = PageList.OfLessons(book).Count(page => engine.Fill(page.Template, page.Model()).Length > 0);
        if (pages != lessons + Enum.GetValues<LessonOrder>().Length)
        {
            throw new InvalidOperationException($"{pages} pages were made.");
        }
    }

    /// <summary>A journal in words drawn from a shop's vocabulary, common ones more often (Zipf 1949), three lessons an evening.</summary>
    private static class InventedLessons
    {
        private const int LessonsAnEvening = 3;

        private static readonly string[] Operations = ["turning", "boring", "milling", "drilling", "reaming", "tapping", "fitting", "scraping", "gear-cutting", "grinding", "setting-up", "lapping"];
        private static readonly string[] Causes = ["measuring", "setting-up", "haste", "lost-count", "work-moved", "tool-wear", "order-of-work"];

        public static MakerJournal Journal(int lessons)
        {
            var folder = Directory.CreateTempSubdirectory("journal-lessons-").FullName;
            try
            {
                Write(folder, lessons);
                var reading = JournalReader.Read(folder, DateOnly.MaxValue);
                return reading.HasErrors ? throw new InvalidOperationException(reading.Problems[0].ToString()) : reading.Journal!;
            }
            finally
            {
                Directory.Delete(folder, recursive: true);
            }
        }

        private static void Write(string folder, int lessons)
        {
#pragma warning disable CA5394 // The same words every time are wanted, not secrets.
            var random = new Random(4);
            Directory.CreateDirectory(Path.Combine(folder, "drill"));
            File.WriteAllText(Path.Combine(folder, "journal.yaml"), "title: Invented\n");
            File.WriteAllText(Path.Combine(folder, "tools.yaml"), string.Concat(Enumerable.Range(0, 40).Select(i => $"- {{id: tool-{i}}}\n")));
            File.WriteAllText(
                Path.Combine(folder, "drill", "build.yaml"),
                "title: Drill\nparts:\n" + string.Concat(Enumerable.Range(0, 60).Select(i => $"  - {{id: part-{i}, material: {(i % 3 == 0 ? "mild-steel" : "cast-iron")}}}\n")));
            for (var evening = 0; evening * LessonsAnEvening < lessons; evening++)
            {
                var many = Math.Min(LessonsAnEvening, lessons - (evening * LessonsAnEvening));
                File.WriteAllText(Path.Combine(folder, "drill", $"evening-{evening}.md"), Entry(random, evening, many));
            }
        }

        private static string Entry(Random random, int evening, int lessons)
        {
            var date = new DateOnly(2020, 1, 1).AddDays(evening);
            var mistakes = Enumerable.Range(0, lessons - 1).Select(_ =>
                $"  - {{what: {Sentence(random, 14)}, cause: {Causes[random.Next(Causes.Length)]}, lost: {random.Next(10, 120)}m, lesson: {Sentence(random, 12)}}}\n");
            return $"""
                ---
                date: {date:yyyy-MM-dd}
                part: part-{random.Next(60)}
                operation: {Operations[random.Next(Operations.Length)]}
                hours: 2h
                tools: [tool-{random.Next(40)}, tool-{random.Next(40)}]
                mistakes:{(lessons == 1 ? " []" : "")}
                {string.Concat(mistakes)}lessons: {Sentence(random, 12)}
                ---
                {Sentence(random, 60)}

                {Sentence(random, 60)}
                """;
        }

        // The kth word comes about 1/k as often as the first.
        private static string Sentence(Random random, int words) =>
            string.Join(' ', Enumerable.Range(0, words).Select(_ => Word((int)Math.Pow(1500, random.NextDouble()))));
#pragma warning restore CA5394

        private static string Word(int number) => string.Concat("bcdfghklmn"[number % 10], "aeiou"[number / 10 % 5], "prtvz"[number / 50 % 5], "aeiou"[number / 250 % 5], "lnrm"[number / 1250 % 4]);
    }
}
