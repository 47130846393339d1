using System.Globalization;
using Journal.Benchmarks.Programs;

namespace Journal.Benchmarks.Pictures;

/// <summary>
/// The picture stage of a publish, cold, against the library's own decoding, resizing and encoding of the same files at
/// the same sizes on the same cores; and the most memory that it takes. Twelve pictures of 12 and 24 megapixels.
/// </summary>
internal sealed class PictureBenchmark : IBenchmark
{
    private const int Pairs = 3;
    private const double MostOfFloor = 1.15;
    private const double MostMebibytes = 600;

    public string Name => "pictures";

    public bool Measure(TextWriter output)
    {
        var root = Directory.CreateTempSubdirectory("journal-pictures-").FullName;
        try
        {
            var journal = Path.Combine(root, "journal");
            Child.Run("pictures-journal", journal);
            var (ratios, peak, again) = (new List<double>(), 0L, 0.0);
            for (var pair = 0; pair < Pairs; pair++)
            {
                var site = Path.Combine(root, $"site-{pair}");
                var whole = Child.Run("publish", journal, site);
                var second = Child.Run("publish", journal, site);
                var floor = Child.Run("pictures-floor", journal);

                // What a publish costs beside its pictures is what the second one costs, which makes none.
                ratios.Add((whole.Processor - second.Processor) / floor.Processor);
                peak = Math.Max(peak, whole.PeakBytes);
                again = second.Processor / whole.Processor;
            }

            var ratio = ratios.Order().ElementAt(Pairs / 2);
            output.WriteLine("| pictures | measured | at most |");
            output.WriteLine("| --- | --- | --- |");
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| the picture stage against the bare library, processor time | {ratio:0.00} | {MostOfFloor:0.00} |"));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| peak of memory | {peak / 1048576.0:0} MiB | {MostMebibytes:0} MiB |"));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| a second publish against the first | {again:0.00} | |"));
            return ratio <= MostOfFloor && peak / 1048576.0 <= MostMebibytes;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }
}
