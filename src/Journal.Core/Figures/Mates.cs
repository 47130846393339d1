using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>How a hole and a shaft go together (ISO 286-1: types of fit).</summary>
public enum FitKind
{
    /// <summary>There is always room.</summary>
    Clearance,

    /// <summary>There may be room or not, by the sizes that come out.</summary>
    Transition,

    /// <summary>The shaft is always larger.</summary>
    Interference,
}

/// <summary>A hole and a shaft, as required and as built. All its lengths are in <see cref="Unit"/>; interference is negative clearance.</summary>
public sealed record MateFigure
{
    /// <summary>The build.</summary>
    public required Id<Build> Build { get; init; }

    /// <summary>The two features.</summary>
    public required Mate Mate { get; init; }

    /// <summary>The latest reading of the hole.</summary>
    public ReadingFigure? Hole { get; init; }

    /// <summary>The latest reading of the shaft.</summary>
    public ReadingFigure? Shaft { get; init; }

    /// <summary>The unit: the hole's.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>The least clearance required: least hole less greatest shaft.</summary>
    public Length? Least { get; init; }

    /// <summary>The greatest clearance required: greatest hole less least shaft.</summary>
    public Length? Greatest { get; init; }

    /// <summary>The clearance as built: the hole less the shaft.</summary>
    public Length? AsBuilt { get; init; }

    /// <summary>The fit as required; null without limits.</summary>
    public FitKind? Required => (Least, Greatest) switch
    {
        ({ Value: >= 0 }, _) => FitKind.Clearance,
        (_, { Value: <= 0 }) => FitKind.Interference,
        ({ }, { }) => FitKind.Transition,
        _ => null,
    };

    /// <summary>Whether the clearance as built lies between the least and the greatest required; null where nothing tells.</summary>
    public bool? Within => AsBuilt is { } built && Least is { } least && Greatest is { } greatest
        ? least.Value <= built.Value && built.Value <= greatest.Value
        : null;
}

/// <summary>Features that must fit each other.</summary>
public static class Mates
{
    /// <summary>The mates of all builds of a journal.</summary>
    public static IReadOnlyList<MateFigure> Of(MakerJournal journal) => [.. journal.Builds.SelectMany(Of)];

    /// <summary>The mates of a build, in the order of its file.</summary>
    public static IReadOnlyList<MateFigure> Of(Build build)
    {
        var readings = Readings.Of(build, new Dictionary<Id<Tool>, Tool>()).All.ToLookup(reading => FeatureKey.Of(reading.Part, reading.Feature));
        return [.. build.Mates.Select(mate => Of(build, mate, [.. readings[FeatureKey.Of(mate.Hole)]], [.. readings[FeatureKey.Of(mate.Shaft)]]))];
    }

    private static MateFigure Of(Build build, Mate mate, List<ReadingFigure> holes, List<ReadingFigure> shafts)
    {
        var (hole, shaft) = (holes.Find(reading => reading.IsLatest), shafts.Find(reading => reading.IsLatest));
        var (lastHole, lastShaft) = (holes.FindLast(_ => true), shafts.FindLast(_ => true));
        var unit = lastHole?.Unit ?? build.Units;
        var (least, greatest) = Clearance(lastHole, lastShaft, unit);
        return new()
        {
            Build = build.Id,
            Mate = mate,
            Hole = hole,
            Shaft = shaft,
            Unit = unit,
            Least = least,
            Greatest = greatest,
            AsBuilt = Difference(hole?.Actual, shaft?.Actual, unit),
        };
    }

    /// <summary>The least and greatest clearance required. What one of the two has to suit in the other says it outright.</summary>
    private static (Length? Least, Length? Greatest) Clearance(ReadingFigure? hole, ReadingFigure? shaft, LengthUnit unit)
    {
        if (hole?.Requirement is { LeastBeyond: { } holeLeast, GreatestBeyond: { } holeGreatest })
        {
            return (holeLeast.In(unit), holeGreatest.In(unit));
        }

        if (shaft?.Requirement is { LeastBeyond: { } shaftLeast, GreatestBeyond: { } shaftGreatest })
        {
            return (Difference(default(Length), shaftGreatest, unit), Difference(default(Length), shaftLeast, unit));
        }

        return hole?.Requirement?.Kind == RequirementKind.Limits && shaft?.Requirement?.Kind == RequirementKind.Limits
            ? (Difference(hole.Least, shaft.Greatest, unit), Difference(hole.Greatest, shaft.Least, unit))
            : (null, null);
    }

    private static Length? Difference(Length? larger, Length? smaller, LengthUnit unit) =>
        larger is { } hole && smaller is { } shaft ? new(hole.In(unit).Value - shaft.In(unit).Value, unit) : null;
}
