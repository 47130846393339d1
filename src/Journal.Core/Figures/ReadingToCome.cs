using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>A size that no entry has yet, judged as if one had.</summary>
/// <param name="Figure">The reading, judged.</param>
/// <param name="Fault">What is wrong with it, or a likely slip; null where nothing is.</param>
public sealed record ReadingToCome(ReadingFigure Figure, Fault? Fault)
{
    private static readonly Id<Entry> Tonight = new("tonight");

    /// <summary>Judges sizes in the order they were taken; a later one takes what is required from an earlier one.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="build">The build that they belong to.</param>
    /// <param name="evening">The evening.</param>
    /// <param name="readings">The sizes, as written.</param>
    public static IReadOnlyList<ReadingToCome> Of(MakerJournal journal, Build build, DateOnly evening, IReadOnlyList<MeasuredReading> readings)
    {
        var placed = readings.Select((reading, i) => reading with { Place = new Place("", i + 1, 1) }).ToList();
        var entry = new Entry { Id = Tonight, Build = build.Id, File = "", Title = "", Date = evening, Jobs = [], Body = Body.Empty, Readings = placed };
        var judged = Readings.Of(build with { Entries = [.. build.Entries, entry] }, journal.Tools.DistinctBy(tool => tool.Id).ToDictionary(tool => tool.Id));
        var figures = judged.All.Where(figure => figure.Entry == Tonight).ToDictionary(figure => figure.Place);
        return [.. placed.Select(reading => new ReadingToCome(figures[reading.Place], judged.Findings.FirstOrDefault(finding => finding.Place == reading.Place)?.Fault))];
    }
}
