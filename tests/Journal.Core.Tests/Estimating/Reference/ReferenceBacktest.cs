using MathNet.Numerics.Distributions;

namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>How the method would have done on the maker's own past: docs/estimating.md, Back-test.</summary>
internal static class ReferenceBacktest
{
    /// <summary>Each past part from the sixth on, the latest 40 at most, from those finished before it.</summary>
    public static List<(string Part, ReferenceItem Forecast, double Hours)> Parts(PastPart[] past)
    {
        var forecasts = new List<(string, ReferenceItem, double)>();
        for (var i = Math.Max(5, past.Length - 40); i < past.Length; i++)
        {
            forecasts.Add(($"{past[i].Build}/{past[i].Part}", ItemOf(new ReferenceMethod(past[..i]), past[i]), past[i].Hours));
        }

        return forecasts;
    }

    /// <summary>Where the hours fell in a forecast of one part, from 0 to 1.</summary>
    public static double Fell(ReferenceItem forecast, double hours) =>
        Normal.CDF(0, 1, (Math.Log(hours) - forecast.Middle) / Math.Sqrt(forecast.Shared * forecast.Shared + forecast.Scatter * forecast.Scatter));

    /// <summary>The parts of each finished build, together, from parts of others finished before its first evening: its forecast and what they took.</summary>
    public static List<(string Build, double[] Sorted, double Hours)> Builds(Kit kit, PastPart[] past, int draws)
    {
        var forecasts = new List<(string, double[], double)>();
        foreach (var build in kit.Builds.OrderBy(build => build.Id, StringComparer.Ordinal))
        {
            var ledger = new ReferenceLedger(build, kit.Today);
            var parts = ledger.Past();
            var before = past.Where(part => part.Build != build.Id && part.Day < ledger.FirstDay).ToArray();
            if (!ledger.IsWholeListFinished || parts.Count == 0 || before.Length == 0)
            {
                continue;
            }

            var method = new ReferenceMethod(before);
            var items = parts.Select(part => ItemOf(method, part)).ToArray();
            var chance = new ReferenceChance(kit.Seed + 2000);
            var sums = new double[draws];
            for (var d = 0; d < draws; d++)
            {
                var z = chance.Normal();
                sums[d] = items.Sum(item => item.Draw(z, chance.Normal()));
            }

            Array.Sort(sums);
            forecasts.Add((build.Id, sums, parts.Sum(part => part.Hours)));
        }

        return forecasts;
    }

    private static ReferenceItem ItemOf(ReferenceMethod method, PastPart part)
    {
        var column = method.ColumnOf(part.Guess is not null);
        var middle = method.Middle(new PartToForecast(part.Foreseen, part.Pieces, part.Guess));
        return new ReferenceItem(part.Part, part.Guess is not null, 0, 1, middle, column.Shared, column.Scatter);
    }
}
