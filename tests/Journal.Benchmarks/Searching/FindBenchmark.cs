using System.Diagnostics;
using Journal.Benchmarks.Programs;
using Journal.Benchmarks.Publishing;

namespace Journal.Benchmarks.Searching;

/// <summary>Finding words in 10,000 entries, as a maker waits for it, and against a command that only reads them.</summary>
internal sealed class FindBenchmark : IBenchmark
{
    private const int Entries = 10_000;
    private const int Turns = 9;

    public string Name => "find";

    public bool Measure(TextWriter output)
    {
        var root = WorkFolder.Create();
        try
        {
            var program = ShippedProgram.Journal(root);
            var journal = Path.Combine(root, "journal");
            new JournalGenerator(7).Write(journal, Entries);
            var (seconds, ratios) = (new List<double>(), new List<double>());
            for (var turn = 0; turn < Turns; turn++)
            {
                var hours = program.Run(root, "hours", "--in", journal);
                var clock = Stopwatch.StartNew();
                var found = program.Run(root, "find", "spindle", "chatter", "--in", journal);
                seconds.Add(clock.Elapsed.TotalSeconds);
                ratios.Add(found.Processor / hours.Processor);
            }

            var result = new ResultTable("finding words in 10,000 entries", output);
            result.Row("from asking to the answer", Median.Of(seconds), 1.5, " s");
            result.Row("against `hours`, processor time", Median.Of(ratios), 2);
            return result.IsWell;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }
}
