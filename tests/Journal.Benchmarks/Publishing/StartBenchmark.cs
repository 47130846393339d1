using Journal.Benchmarks.Programs;

namespace Journal.Benchmarks.Publishing;

/// <summary>How soon the program is there: <c>--version</c> and <c>check</c> of the demonstration against a bare .NET program.</summary>
internal sealed class StartBenchmark : IBenchmark
{
    private const int Turns = 15;

    public string Name => "start";

    public bool Measure(TextWriter output)
    {
        var root = Directory.CreateTempSubdirectory("journal-benchmark-").FullName;
        try
        {
            var (program, bare) = (ShippedProgram.Journal(root), ShippedProgram.Bare(root));
            var (version, check) = (new List<double>(), new List<double>());
            for (var turn = 0; turn < Turns; turn++)
            {
                var floor = bare.Run(root).Processor;
                version.Add(program.Run(root, "--version").Processor / floor);
                check.Add(program.Run(root, "check", "--in", Path.Combine(ShippedProgram.Source(), "journal")).Processor / floor);
            }

            var table = new ResultTable("start, against a bare .NET program", output);
            table.Row("`--version`", Median.Of(version), 1.6);
            table.Row("`check` of the demonstration", Median.Of(check), 4);
            return table.IsWell;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }
}
