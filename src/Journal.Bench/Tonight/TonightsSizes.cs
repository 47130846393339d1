using Journal.Bench.Common;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;

namespace Journal.Bench.Tonight;

/// <summary>Sizes measured tonight, judged by the program's own fits and tolerances.</summary>
internal static class TonightsSizes
{
    /// <summary>Judges one more size, after those that the slate has; null without a build.</summary>
    public static ReadingToCome? Judge(BenchNow now, MeasuredReading reading) =>
        now.Build is not { } build ? null : ReadingToCome.Of(now.Journal, build, now.Evening, [.. OnSlate(now, build).Select(one => one.Reading), reading])[^1];

    /// <summary>Judges the sizes on the slate, by the ids of their remarks.</summary>
    public static IReadOnlyDictionary<string, ReadingToCome> OnSlate(BenchNow now)
    {
        if (now.Build is not { } build)
        {
            return new Dictionary<string, ReadingToCome>();
        }

        var taken = OnSlate(now, build);
        return taken.Zip(ReadingToCome.Of(now.Journal, build, now.Evening, [.. taken.Select(one => one.Reading)]))
            .DistinctBy(pair => pair.First.Jot.Id)
            .ToDictionary(pair => pair.First.Jot.Id ?? "", pair => pair.Second, StringComparer.Ordinal);
    }

    private static List<(Jot Jot, MeasuredReading Reading)> OnSlate(BenchNow now, Build build) =>
    [
        .. from jot in now.Slate.Jots
           where jot.Kind == JotKind.Reading && jot.IsFor(build.Id.Value) && jot["feature"] is not null
           select (jot, new MeasuredReading { Part = jot["part"] is { } part ? new Id<Part>(part) : null, Feature = jot["feature"]!, Required = jot["required"], Actual = jot["actual"] }),
    ];
}
