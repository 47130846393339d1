using System.Diagnostics;
using Journal.Benchmarks.Programs;
using Journal.Benchmarks.Publishing;
using Journal.Core.Checking;
using Journal.Core.PlainWords;

namespace Journal.Benchmarks.PlainWords;

/// <summary>Reading an evening told in plain words: 200 words and 5,000 in a running program, and a hostile megabyte.</summary>
internal sealed class PlainWordsBenchmark : IBenchmark
{
    private const int Turns = 15;

    /// <summary>An invented evening of some 70 words.</summary>
    private const string Evening = "Spindle tonight, two hours ten from half six to twenty to nine. Half an hour of that setting up in the four-jaw, clocked off the bore. "
        + "Turned the nose at 320 rev, five thou a pass, lovely finish. Diameter came out at 0.7503, the drawing wants 0.750. Forgot the backlash once and lost ten minutes. "
        + "My neighbour does his in an hour. The gland still weeps. Next time the keyway. ";

    public string Name => "plain-words";

    public bool Measure(TextWriter output)
    {
        var root = WorkFolder.Create();
        try
        {
            var folder = Path.Combine(root, "journal");
            new JournalGenerator(7).Write(folder, 100);
            var journal = JournalReader.Read(folder, DateOnly.MaxValue).Journal!;
            var build = journal.Builds[0];
            double Seconds(string account)
            {
                var clock = Stopwatch.StartNew();
                AccountReader.Read(account, journal, build, DateOnly.MaxValue);
                return clock.Elapsed.TotalSeconds;
            }

            double Warm(string account) => Median.Of([.. Enumerable.Range(0, Turns).Select(_ => Seconds(account))]);
            Seconds(Evening);
            var result = new ResultTable("reading an evening told in plain words", output);
            result.Row("200 words", Warm(Repeat(Evening, 3)), 0.05, " s");
            result.Row("5,000 words", Warm(Repeat(Evening, 72)), 1, " s");
            result.Row("a megabyte of one word", Seconds(Repeat("bored ", 170_000)), 2, " s");
            result.Row("600 KB of letters and figures", Seconds(Repeat("a1", 300_000)), 2, " s");
            return result.IsWell;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static string Repeat(string text, int times) => string.Concat(Enumerable.Repeat(text, times));
}
