using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>A reading with its texts understood, not judged yet.</summary>
internal sealed record TakenReading
{
    /// <summary>The entry that took it.</summary>
    public required Entry Entry { get; init; }

    /// <summary>The reading as written.</summary>
    public required MeasuredReading Reading { get; init; }

    /// <summary>What was measured, to find other readings of it.</summary>
    public required FeatureKey Key { get; init; }

    /// <summary>What is required, as written here or in the reading of the feature before; null where neither says.</summary>
    public string? RequiredText { get; init; }

    /// <summary>The same understood; null where nothing is required or it cannot be read.</summary>
    public Requirement? Requirement { get; init; }

    /// <summary>The size measured; null where none is given, it cannot be read, or a gauge was used.</summary>
    public Length? Actual { get; init; }

    /// <summary>What the gauge said; null where a size was measured.</summary>
    public Gauging? Gauging { get; init; }

    /// <summary>What in the texts of this reading could not be read.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Whether there is a result: a size or the verdict of a gauge.</summary>
    public bool IsMeasured => Actual is not null || Gauging is not null;
}

/// <summary>Takes the readings of a build from its entries, in order of time.</summary>
internal static class TakenReadings
{
    private static readonly string[] GoWords = ["go", "goes"];
    private static readonly string[] NoGoWords = ["no-go", "no go", "nogo"];

    /// <summary>
    /// All readings of a build. One that leaves out what is required, as a second measurement after rework does, takes it
    /// from the reading of the feature before.
    /// </summary>
    public static List<TakenReading> Of(Build build)
    {
        var required = new Dictionary<FeatureKey, TakenReading>();
        var taken = new List<TakenReading>();
        foreach (var (entry, reading) in build.Entries.SelectMany(entry => entry.Readings.Select(reading => (entry, reading))))
        {
            var key = FeatureKey.Of(reading.Part, reading.Feature);
            var one = Take(entry, reading, key, build, required.GetValueOrDefault(key));
            taken.Add(one);
            if (one.RequiredText is not null)
            {
                required[key] = one;
            }
        }

        return taken;
    }

    private static TakenReading Take(Entry entry, MeasuredReading reading, FeatureKey key, Build build, TakenReading? before)
    {
        var findings = new List<Finding>();
        var requirement = reading.Required is null ? before?.Requirement : Require(reading, build, findings);
        var gauging = GaugingOf(reading.Actual);
        return new()
        {
            Entry = entry,
            Reading = reading,
            Key = key,
            RequiredText = reading.Required ?? before?.RequiredText,
            Requirement = requirement,
            Gauging = gauging,
            Actual = gauging is null && reading.Actual is not null ? Measure(reading, requirement, build, findings) : null,
            Findings = findings,
        };
    }

    private static Requirement? Require(MeasuredReading reading, Build build, List<Finding> findings)
    {
        if (!Requirement.TryParse(reading.Required!, build.Units, build.GeneralTolerance, out var requirement, out var fault))
        {
            findings.Add(new(reading.Place, "required", fault));
        }
        else if (requirement.Suits is { } suits && !build.HasPart(new(FeatureKey.Of(suits).Part)))
        {
            var known = string.Join(", ", build.Parts.Select(part => $"`{part.Id}`"));
            fault = new(
                FaultCode.NotAFeature,
                $"The build has no part for `{suits}`.",
                build.Parts.Count == 0 ? "List the part in build.yaml." : $"Before the point write one of {known}.",
                reading.Required!.IndexOf(suits, StringComparison.Ordinal));
            findings.Add(new(reading.Place, "required", fault));
        }

        return requirement;
    }

    /// <summary>The length measured; a bare number has the unit of what is required.</summary>
    private static Length? Measure(MeasuredReading reading, Requirement? requirement, Build build, List<Finding> findings)
    {
        if (requirement?.Kind == RequirementKind.Thread)
        {
            findings.Add(new(
                reading.Place,
                "actual",
                new(
                    FaultCode.GaugeWanted,
                    "A thread is judged by a gauge or its mating part, not by a size.",
                    "Write `actual: go` or `actual: no-go`.",
                    0)));
            return null;
        }

        if (!LengthText.TryParse(reading.Actual!, requirement?.Unit ?? build.Units, out var actual, out var fault))
        {
            findings.Add(new(reading.Place, "actual", fault));
            return null;
        }

        return actual;
    }

    private static Gauging? GaugingOf(string? actual)
    {
        var word = actual?.Trim();
        return GoWords.Contains(word, StringComparer.OrdinalIgnoreCase) ? Gauging.Go
            : NoGoWords.Contains(word, StringComparer.OrdinalIgnoreCase) ? Gauging.NoGo
            : null;
    }
}

/// <summary>The latest reading of each feature: what the parts are now.</summary>
internal sealed class LatestReadings(IEnumerable<TakenReading> inOrderOfTime)
{
    private readonly Dictionary<FeatureKey, TakenReading> latest = inOrderOfTime
        .Where(reading => reading.IsMeasured)
        .GroupBy(reading => reading.Key)
        .ToDictionary(feature => feature.Key, feature => feature.Last());

    /// <summary>The latest reading of a feature; null where it has not been measured.</summary>
    public TakenReading? Of(FeatureKey feature) => latest.GetValueOrDefault(feature);

    /// <summary>Whether a reading is the latest of its feature.</summary>
    public bool Has(TakenReading reading) => ReferenceEquals(Of(reading.Key), reading);
}
