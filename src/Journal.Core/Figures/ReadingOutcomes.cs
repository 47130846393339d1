using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What was out, and what became of it.</summary>
internal static class ReadingOutcomes
{
    /// <summary>Adds to a reading that is out the mistake and the departure that tell of it, and the later entry that found it right.</summary>
    public static ReadingFigure Follow(ReadingFigure reading, Build build, IReadOnlyList<ReadingFigure> inOrderOfTime) => !reading.IsOut
        ? reading
        : reading with { Mistake = MistakeOf(reading, build), Departure = DepartureOf(reading, build), RightIn = RightIn(reading, inOrderOfTime) };

    private static string? DepartureOf(ReadingFigure reading, Build build) => build.Entries.First(entry => entry.Id == reading.Entry).Departure;

    /// <summary>A mistake on the part told that evening, or found later and made that evening; before others one with an outcome.</summary>
    private static Mistake? MistakeOf(ReadingFigure reading, Build build)
    {
        var told = build.Entries.SelectMany(entry => entry.Mistakes
            .Where(mistake => (mistake.MadeOn ?? entry.Id) == reading.Entry || entry.Id == reading.Entry)
            .Where(mistake => Touches(entry, mistake, reading.Part)));
        return told.OrderBy(mistake => mistake.Outcome is null).FirstOrDefault();
    }

    private static bool Touches(Entry entry, Mistake mistake, Id<Part>? part) =>
        entry.Jobs.FirstOrDefault(job => job.Number == mistake.Job) is { } job
        && (part is { } id ? job.Parts.Any(share => share.Part == id) : job.IsGeneral);

    private static Id<Entry>? RightIn(ReadingFigure reading, IReadOnlyList<ReadingFigure> inOrderOfTime)
    {
        var key = FeatureKey.Of(reading.Part, reading.Feature);
        return inOrderOfTime
            .SkipWhile(other => !ReferenceEquals(other, reading))
            .FirstOrDefault(other => other.Within == true && FeatureKey.Of(other.Part, other.Feature) == key)?.Entry;
    }
}
