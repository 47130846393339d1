using System.Globalization;
using Journal.Benchmarks.Programs;

namespace Journal.Benchmarks.Publishing;

/// <summary>
/// Publishing journals of 1,000 and 10,000 entries against the bare libraries, and publishing again with nothing changed.
/// Processor time, as the median of pairs; the machines are shared.
/// </summary>
internal sealed class PublishBenchmark : IBenchmark
{
    private const int Pairs = 3;

    public string Name => "publish";

    public bool Measure(TextWriter output)
    {
        var root = WorkFolder.Create();
        try
        {
            var (program, benchmarks) = (ShippedProgram.Journal(root), ShippedProgram.Benchmarks(root));
            var (small, large) = (Of(root, 1_000, program, benchmarks), Of(root, 10_000, program, benchmarks));
            var full = Median.Of(large.Full);
            var table = new ResultTable("publishing 10,000 entries", output);
            table.Row("against the bare libraries, processor time", Median.Of([.. large.Full.Zip(large.Floor, (one, floor) => one / floor)]), 1.6);
            table.Row("against 1,000 entries", full / Median.Of(small.Full), 10.5);
            table.Row("peak of memory", large.PeakBytes / 1e6, 600, " MB");
            table.Row("again, nothing changed, against the full time", Median.Of(large.Again) / full, 0.05);
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"\nFull {full:0.0} s, floor {Median.Of(large.Floor):0.0} s, again {Median.Of(large.Again):0.00} s of processor time."));
            return table.IsWell;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static Series Of(string root, int entries, ShippedProgram program, ShippedProgram benchmarks)
    {
        var (journal, cache) = (Path.Combine(root, $"journal-{entries}"), Path.Combine(root, "cache"));
        new JournalGenerator(7).Write(journal, entries);
        var series = new Series();

        // Nothing is deleted before the end: for minutes afterwards ext4 looks for each new file past the files that were just deleted.
        for (var pair = 0; pair < Pairs; pair++)
        {
            var (site, floor) = (Path.Combine(root, $"site-{entries}-{pair}"), Path.Combine(root, $"floor-{entries}-{pair}"));
            ChildRun Publish() => program.Run(cache, "publish", "--in", journal, "--to", site, "--today", "2100-01-01");
            var run = Publish();
            series.Full.Add(run.Processor.TotalSeconds);
            series.PeakBytes = Math.Max(series.PeakBytes, run.PeakBytes);
            series.Floor.Add(benchmarks.Run(cache, "--child", "floor", journal, site, floor).Processor.TotalSeconds);
            series.Again.Add(Publish().Processor.TotalSeconds);
        }

        return series;
    }

    private sealed class Series
    {
        public List<double> Full { get; } = [];

        public List<double> Floor { get; } = [];

        public List<double> Again { get; } = [];

        public long PeakBytes { get; set; }
    }
}
