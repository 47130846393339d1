using Journal.Benchmarks.Programs;

namespace Journal.Benchmarks.Import;

/// <summary>Taking in a table of 100,000 rows, which become 1,000 entries, against the least that must be done with it.</summary>
internal sealed class TakeInBenchmark : IBenchmark
{
    private const int Rows = 100_000;
    private const int Turns = 9;

    public string Name => "take-in";

    public bool Measure(TextWriter output)
    {
        var root = WorkFolder.Create();
        try
        {
            var (program, benchmarks) = (ShippedProgram.Journal(root), ShippedProgram.Benchmarks(root));
            var journal = Path.Combine(root, "journal");
            var table = TakeInWork.Write(journal, Rows);
            var (seconds, ratios) = (new List<double>(), new List<double>());
            for (var turn = 0; turn < Turns; turn++)
            {
                var floor = benchmarks.Run(root, "--child", "take-in-floor", table, Path.Combine(root, "floor"));
                var run = program.Run(root, "take-in", table, "--in", journal, "--build", "drill");
                seconds.Add(run.Processor.TotalSeconds);
                ratios.Add(run.Processor / floor.Processor);
                Directory.Delete(Path.Combine(root, "floor"), recursive: true);
                Directory.Delete(Path.Combine(journal, "drill", "taken-in"), recursive: true);
            }

            var result = new ResultTable("taking in 100,000 rows", output);
            result.Row("processor time", Median.Of(seconds), 2, " s");
            result.Row("against parting the lines and writing the files", Median.Of(ratios), 6);
            return result.IsWell;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }
}
