using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>Judges one reading: the limits, how far it lies from the nominal size, in or out, and how much of the tolerance is used.</summary>
internal static class ReadingJudge
{
    /// <summary>
    /// The figure of one reading, with all its lengths in one unit: that of what is required, else of what was measured, else
    /// of the build.
    /// </summary>
    /// <param name="taken">The reading.</param>
    /// <param name="build">Its build, whose mates say which of two features is the hole.</param>
    /// <param name="latest">The latest readings of the build: what a feature made to suit has to suit.</param>
    /// <param name="tools">The tools by id, for the resolution of what was measured with.</param>
    public static ReadingFigure Judge(TakenReading taken, Build build, LatestReadings latest, IReadOnlyDictionary<Id<Tool>, Tool> tools)
    {
        var unit = taken.Requirement?.Unit ?? taken.Actual?.Unit ?? build.Units;
        var (nominal, least, greatest, note) = Limits(taken, unit, build, latest);
        var actual = taken.Actual?.In(unit);
        return new()
        {
            Build = build.Id,
            Part = taken.Reading.Part,
            Entry = taken.Entry.Id,
            Date = taken.Entry.Date,
            Feature = taken.Reading.Feature,
            RequiredText = taken.RequiredText,
            Requirement = taken.Requirement,
            Unit = unit,
            Nominal = nominal,
            Least = least,
            Greatest = greatest,
            ActualText = taken.Reading.Actual,
            Actual = actual,
            Gauging = taken.Gauging,
            Deviation = actual is { } size && nominal is { } wanted ? new(size.Value - wanted.Value, unit) : null,
            Within = Within(actual, least, greatest, taken.Gauging),
            Share = Share(actual, least, greatest),
            With = taken.Reading.With,
            IsLatest = latest.Has(taken),
            Notes = [.. new[] { note, ToolNote(taken, least, greatest, tools) }.OfType<string>()],
            Place = taken.Reading.Place,
        };
    }

    private static (Length? Nominal, Length? Least, Length? Greatest, string? Note) Limits(
        TakenReading taken,
        LengthUnit unit,
        Build build,
        LatestReadings latest)
    {
        if (taken.Requirement is not { Kind: RequirementKind.ToSuit } suiting)
        {
            return (taken.Requirement?.Nominal, taken.Requirement?.Least, taken.Requirement?.Greatest, null);
        }

        var mate = FeatureKey.Of(suiting.Suits!);
        if (latest.Of(mate)?.Actual?.In(unit) is not { } size)
        {
            return (null, null, null, $"{suiting.Suits} has not been measured yet.");
        }

        return suiting is { LeastBeyond: { } least, GreatestBeyond: { } greatest }
            ? (size, new(size.Value + least.Value, unit), new(size.Value + greatest.Value, unit), null)
            : (size, IsHoleOf(taken.Key, mate, build) ? size : null, IsHoleOf(mate, taken.Key, build) ? size : null, null);
    }

    /// <summary>Without deviations, a hole that has to suit a shaft may not be smaller than it, nor the shaft larger than the hole.</summary>
    private static bool IsHoleOf(FeatureKey hole, FeatureKey shaft, Build build) =>
        build.Mates.Any(mate => FeatureKey.Of(mate.Hole) == hole && FeatureKey.Of(mate.Shaft) == shaft);

    private static bool? Within(Length? actual, Length? least, Length? greatest, Gauging? gauging) => (actual, gauging) switch
    {
        (_, { } said) => said == Gauging.Go,
        ({ } size, _) when least is not null || greatest is not null => !(size.Value < least?.Value) && !(size.Value > greatest?.Value),
        _ => null,
    };

    private static decimal? Share(Length? actual, Length? least, Length? greatest) => (actual, least, greatest) switch
    {
        ({ } size, { } low, { } high) => Math.Abs((2 * size.Value) - low.Value - high.Value) / (high.Value - low.Value),
        ({ } size, null, { Value: > 0 } most) => size.Value / most.Value,
        _ => null,
    };

    /// <summary>The one-tenth rule (common practice): a tool should read to a tenth of the tolerance that it judges.</summary>
    private static string? ToolNote(TakenReading taken, Length? least, Length? greatest, IReadOnlyDictionary<Id<Tool>, Tool> tools)
    {
        if (taken is not { Actual: { }, Reading.With: { } with }
            || !tools.TryGetValue(with, out var tool)
            || Room(taken.Requirement, least, greatest) is not { } room)
        {
            return null;
        }

        return Resolutions.Of(tool, room.Unit) is { } step && !Resolutions.CanJudge(step, room)
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{tool.Title}: read to {step.ToStringInBoth()}; a tolerance of {room.ToStringInBoth()} needs a tool that reads to a tenth of it (common practice).")
            : null;
    }

    private static Length? Room(Requirement? requirement, Length? least, Length? greatest) =>
        requirement?.Tolerance ?? (least is { } low && greatest is { } high ? new(high.Value - low.Value, low.Unit) : null);
}
