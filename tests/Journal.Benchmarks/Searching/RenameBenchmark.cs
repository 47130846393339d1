using System.Diagnostics;
using Journal.Benchmarks.Programs;
using Journal.Benchmarks.Publishing;

namespace Journal.Benchmarks.Searching;

/// <summary>Renaming a tool in a journal of 10,000 entries, as a maker waits for it: there and back again.</summary>
internal sealed class RenameBenchmark : IBenchmark
{
    private const int Entries = 10_000;
    private const int Turns = 5;

    public string Name => "rename";

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
                foreach (var (from, to) in new[] { ("tool-7", "tool-seven"), ("tool-seven", "tool-7") })
                {
                    var clock = Stopwatch.StartNew();
                    var renamed = program.Run(root, "rename", "tool", from, to, "--in", journal);
                    seconds.Add(clock.Elapsed.TotalSeconds);
                    ratios.Add(renamed.Processor / hours.Processor);
                }
            }

            var result = new ResultTable("renaming a tool in 10,000 entries", output);
            result.Row("from asking to the last file", Median.Of(seconds), 3, " s");
            result.Row("against `hours`, processor time", Median.Of(ratios), 3);
            return result.IsWell;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }
}
