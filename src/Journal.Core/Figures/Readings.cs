using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>As built: every measured dimension beside the required one.</summary>
public static class Readings
{
    /// <summary>Judges every reading of a journal.</summary>
    public static ReadingFigures Of(MakerJournal journal)
    {
        var tools = journal.Tools.ToDictionary(tool => tool.Id);
        var builds = journal.Builds.Select(build => Of(build, tools)).ToList();
        return new([.. builds.SelectMany(build => build.All)], [.. builds.SelectMany(build => build.Findings)]);
    }

    /// <summary>Judges the readings of one build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="tools">The crib, for the resolution of what was measured with.</param>
    internal static ReadingFigures Of(Build build, IReadOnlyDictionary<Id<Tool>, Tool> tools)
    {
        var taken = TakenReadings.Of(build);
        var latest = new LatestReadings(taken);
        var judged = taken.Select(reading => ReadingJudge.Judge(reading, build, latest, tools)).ToList();
        var followed = judged.Select(reading => ReadingOutcomes.Follow(reading, build, judged));
        var findings = taken.SelectMany(reading => reading.Findings).Concat(judged.Select(ReadingSlips.Find).OfType<Finding>());
        return new(InOrderOfTheDrawing(followed, build), [.. findings.OrderBy(finding => finding.Place)]);
    }

    private static List<ReadingFigure> InOrderOfTheDrawing(IEnumerable<ReadingFigure> readings, Build build)
    {
        var parts = build.Parts.Index().ToDictionary(part => part.Item.Id, part => part.Index);
        return [.. readings
            .GroupBy(reading => FeatureKey.Of(reading.Part, reading.Feature))
            .OrderBy(feature => feature.First().Part is not { } part ? int.MaxValue : parts.GetValueOrDefault(part, int.MaxValue - 1))
            .SelectMany(feature => feature)];
    }
}
