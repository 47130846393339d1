using System.Globalization;

namespace Journal.Benchmarks.Publishing;

/// <summary>
/// Publishing journals of 1,000 and 10,000 entries against the bare libraries, publishing again with nothing and with
/// one entry changed. Processor time, as the median of pairs; the machines are shared.
/// </summary>
internal sealed class PublishBenchmark : IBenchmark
{
    private const int Pairs = 3;

    public string Name => "publish";

    public bool Measure(TextWriter output)
    {
        var root = Directory.CreateTempSubdirectory("journal-benchmark-").FullName;
        try
        {
            var (small, large) = (Of(root, 1_000), Of(root, 10_000));
            var (full, again, edited) = (Median(large.Full), Median(large.Again), Median(large.Edited));
            output.WriteLine("| publishing | measured | at most |");
            output.WriteLine("| --- | --- | --- |");
            var well = true;
            void Row(string what, double measured, double most, string unit = "")
            {
                well &= measured <= most;
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {measured:0.00}{unit} | {most:0.##}{unit} |"));
            }

            Row("10,000 entries against the bare libraries, processor time", Median([.. large.Full.Zip(large.Floor, (one, floor) => one / floor)]), 1.6);
            Row("10,000 entries against 1,000", full / Median(small.Full), 10.5);
            Row("peak of memory", large.PeakBytes / 1048576.0, 600, " MiB");
            Row("again, nothing changed, against the full time", again / full, 0.08);
            Row("again, one entry changed", edited / full, 0.12);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nFull {full:0.0} s, floor {Median(large.Floor):0.0} s, again {again:0.00} s, one changed {edited:0.00} s of processor time."));
            return well;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static Series Of(string root, int entries)
    {
        var journal = Path.Combine(root, $"journal-{entries}");
        new JournalGenerator(7).Write(journal, entries);
        var series = new Series();
        for (var pair = 0; pair < Pairs; pair++)
        {
            var (site, floor) = (Path.Combine(root, $"site-{entries}-{pair}"), Path.Combine(root, $"floor-{entries}-{pair}"));
            var run = Child.Run("publish", journal, site);
            series.Full.Add(run.Processor.TotalSeconds);
            series.PeakBytes = Math.Max(series.PeakBytes, run.PeakBytes);
            series.Floor.Add(Child.Run("floor", journal, site, floor).Processor.TotalSeconds);
            series.Again.Add(Child.Run("publish", journal, site).Processor.TotalSeconds);
            JournalGenerator.Edit(journal, string.Create(CultureInfo.InvariantCulture, $"Changed for the {pair} time."));
            series.Edited.Add(Child.Run("publish", journal, site).Processor.TotalSeconds);
            Directory.Delete(site, recursive: true);
            Directory.Delete(floor, recursive: true);
        }

        return series;
    }

    private static double Median(List<double> values)
    {
        var sorted = values.Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }

    private sealed class Series
    {
        public List<double> Full { get; } = [];

        public List<double> Floor { get; } = [];

        public List<double> Again { get; } = [];

        public List<double> Edited { get; } = [];

        public long PeakBytes { get; set; }
    }
}
