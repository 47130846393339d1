using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>How a setting went, as far as the maker's word tells.</summary>
public enum SettingVerdict
{
    /// <summary>No word, or none that we know.</summary>
    Unclear,

    /// <summary>It worked.</summary>
    Worked,

    /// <summary>It chattered.</summary>
    Chattered,

    /// <summary>It failed in another way.</summary>
    Failed,
}

/// <summary>Speed, feed and depth that were used, and what follows from them.</summary>
public sealed record SettingFigure
{
    /// <summary>The build.</summary>
    public required Id<Build> Build { get; init; }

    /// <summary>The part, where the job was for one alone.</summary>
    public Id<Part>? Part { get; init; }

    /// <summary>The entry that wrote it down.</summary>
    public required Id<Entry> Entry { get; init; }

    /// <summary>The evening it was used.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The operation of the job; of several the first that cuts by speed and feed.</summary>
    public required Id<Operation> Operation { get; init; }

    /// <summary>What was cut: as the setting says, else the part's.</summary>
    public Material? Material { get; init; }

    /// <summary>What it was cut with, as written.</summary>
    public string? Cutter { get; init; }

    /// <summary>The machine.</summary>
    public Id<Tool>? Machine { get; init; }

    /// <summary>What kept it cool.</summary>
    public string? Coolant { get; init; }

    /// <summary>Diameter of the work in turning, of the cutter in milling and drilling.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Revolutions a minute.</summary>
    public decimal? Rpm { get; init; }

    /// <summary>The surface speed.</summary>
    public SurfaceSpeed? Speed { get; init; }

    /// <summary>The feed, as written.</summary>
    public string? FeedText { get; init; }

    /// <summary>The feed, understood.</summary>
    public Feed? Feed { get; init; }

    /// <summary>The number of teeth of the cutter.</summary>
    public int? Teeth { get; init; }

    /// <summary>The feed per minute.</summary>
    public Length? FeedPerMinute { get; init; }

    /// <summary>The feed per turn.</summary>
    public Length? FeedPerTurn { get; init; }

    /// <summary>The feed per tooth.</summary>
    public Length? FeedPerTooth { get; init; }

    /// <summary>The width of cut; in parting and grooving that of the tool.</summary>
    public Length? Width { get; init; }

    /// <summary>The depth of cut, in turning on the radius.</summary>
    public Length? Depth { get; init; }

    /// <summary>How much metal came off.</summary>
    public RemovalRate? Removal { get; init; }

    /// <summary>How it went.</summary>
    public SettingVerdict Verdict { get; init; }

    /// <summary>How it went, in the maker's word.</summary>
    public string? VerdictText { get; init; }

    /// <summary>A remark.</summary>
    public string? Note { get; init; }

    /// <summary>Where it stands.</summary>
    public required Place Place { get; init; }
}

/// <summary>From one surface speed to another, both included.</summary>
/// <param name="Least">The slowest.</param>
/// <param name="Greatest">The fastest.</param>
/// <param name="Count">How many settings it comes from, at least 1.</param>
public sealed record SpeedRange(SurfaceSpeed Least, SurfaceSpeed Greatest, int Count);

/// <summary>Settings alike in operation, family of material and cutter.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Material">The family of the material; null where none is known.</param>
/// <param name="Cutter">The cutter, as first written; null where none is given.</param>
/// <param name="Settings">The settings by date.</param>
public sealed record SettingGroup(Id<Operation> Operation, Id<MaterialFamily>? Material, string? Cutter, IReadOnlyList<SettingFigure> Settings)
{
    /// <summary>The surface speeds that worked; null where none did.</summary>
    public SpeedRange? Worked => RangeOf(SettingVerdict.Worked);

    /// <summary>The surface speeds that chattered; null where none did.</summary>
    public SpeedRange? Chattered => RangeOf(SettingVerdict.Chattered);

    /// <summary>The surface speeds that failed in another way; null where none did.</summary>
    public SpeedRange? Failed => RangeOf(SettingVerdict.Failed);

    /// <summary>Gathers settings that are alike, small and capital letters of a cutter's name being the same.</summary>
    public static IReadOnlyList<SettingGroup> Gather(IEnumerable<SettingFigure> settings) =>
        [.. settings
            .GroupBy(setting => (setting.Operation, Material: setting.Material?.Family, Cutter: setting.Cutter?.Trim().ToUpperInvariant()))
            .OrderBy(group => group.Key.Operation)
            .ThenBy(group => group.Key.Material?.Value, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Cutter, StringComparer.Ordinal)
            .Select(group => new SettingGroup(
                group.Key.Operation,
                group.Key.Material,
                group.First().Cutter?.Trim(),
                [.. group.OrderBy(setting => setting.Date)]))];

    private SpeedRange? RangeOf(SettingVerdict verdict)
    {
        var speeds = Settings.Where(setting => setting.Verdict == verdict).Select(setting => setting.Speed).OfType<SurfaceSpeed>().ToList();
        return speeds.Count == 0 ? null : new(speeds.Min(), speeds.Max(), speeds.Count);
    }
}

/// <summary>All settings of a journal.</summary>
/// <param name="All">By build, date and place in the entry.</param>
/// <param name="Groups">By operation, material and cutter, each in the order of its words.</param>
/// <param name="Findings">What cannot be understood.</param>
public sealed record SettingFigures(IReadOnlyList<SettingFigure> All, IReadOnlyList<SettingGroup> Groups, IReadOnlyList<Finding> Findings);
