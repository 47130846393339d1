using System.Diagnostics;
using System.Globalization;
using Journal.Benchmarks.Programs;
using Journal.Benchmarks.Publishing;

namespace Journal.Benchmarks.Previewing;

/// <summary>
/// How long a maker waits for the preview: from the save of an entry to its new words on the open page, in a browser. The
/// demonstration without its pictures, and journals of 1,000 and 10,000 entries; medians of 20 saves, by the clock on the wall.
/// </summary>
internal sealed class PreviewBenchmark : IBenchmark
{
    private const int Saves = 20;
    private const int ToWarm = 3;

    public string Name => "preview";

    public bool Measure(TextWriter output)
    {
        var root = WorkFolder.Create();
        try
        {
            var program = ShippedProgram.Journal(root);
            var table = new ResultTable("preview, from the save to the new page in the browser", output);
            table.Row("the demonstration", Median.Of(Measure(root, Demo(root), program).GetAwaiter().GetResult()), 0.15, " s");
            foreach (var (entries, most) in new[] { (1_000, 0.25), (10_000, 1.0) })
            {
                var journal = Path.Combine(root, $"journal-{entries}");
                new JournalGenerator(7).Write(journal, entries);
                table.Row(string.Create(CultureInfo.InvariantCulture, $"{entries:#,0} entries"), Median.Of(Measure(root, journal, program).GetAwaiter().GetResult()), most, " s");
            }

            return table.IsWell;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static async Task<List<double>> Measure(string root, string journal, ShippedProgram program)
    {
        var entry = Directory.EnumerateFiles(journal, "*.md", SearchOption.AllDirectories).Where(file => File.ReadAllText(file).StartsWith("---", StringComparison.Ordinal)).Order(StringComparer.Ordinal).ElementAt(7);
        var build = Path.GetFileName(Path.GetDirectoryName(entry));
        using var preview = program.Start(Path.Combine(root, "cache"), "preview", "--in", journal, "--today", "2100-01-01");
        try
        {
            var home = new Uri((await preview.StandardOutput.ReadLineAsync())!);
            using var browser = await Browser.Open(new Uri(home, $"{build}/entry/{Path.GetFileNameWithoutExtension(entry)}.html"), Directory.CreateTempSubdirectory("journal-browser-").FullName);
            var (text, times) = (await File.ReadAllTextAsync(entry), new List<double>());
            for (var save = 0; save < ToWarm + Saves; save++)
            {
                var words = string.Create(CultureInfo.InvariantCulture, $"Saved for time {save} over");
                var clock = Stopwatch.StartNew();
                await File.WriteAllTextAsync(entry, $"{text}\n{words}.\n");
                await browser.Shows(words);
                times.Add(clock.Elapsed.TotalSeconds);
            }

            return times[ToWarm..];
        }
        finally
        {
            preview.Kill();
            await preview.WaitForExitAsync();
        }
    }

    // Without the pictures: they are made once, when first asked for, and take their time.
    private static string Demo(string root)
    {
        var (from, to) = (Path.Combine(ShippedProgram.Source(), "journal"), Path.Combine(root, "demo"));
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".md" or ".yaml" && !file.Contains("scenes", StringComparison.Ordinal)))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        return to;
    }
}
