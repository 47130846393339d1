using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>Works out one setting.</summary>
internal static class SettingSums
{
    private static readonly HashSet<string> FedAlongTheRadius = ["parting-off", "grooving"];

    /// <summary>The figure of a setting. What cannot be read counts as not given.</summary>
    /// <param name="build">The build, whose unit a bare number has.</param>
    /// <param name="entry">The entry that holds the setting.</param>
    /// <param name="setting">The setting as written.</param>
    /// <param name="findings">Takes what cannot be read, and what is not more than zero.</param>
    public static SettingFigure Of(Build build, Entry entry, Setting setting, List<Finding> findings)
    {
        var job = entry.Jobs.FirstOrDefault(job => job.Number == setting.Job) ?? entry.Jobs[0];
        var operation = job.Operations.FirstOrDefault(candidate => CutKinds.Of(candidate) != CutKind.Other, job.Operations[0]);
        var part = job.Parts is [var only] ? only.Part : (Id<Part>?)null;
        var diameter = Measure(setting.Diameter, "diameter");
        var rpm = Positive(setting.Rpm, "rpm");
        var teeth = (int?)Positive(setting.Teeth, "teeth");
        var feed = ReadFeed();
        var figure = new SettingFigure
        {
            Build = build.Id,
            Part = part,
            Entry = entry.Id,
            Date = entry.Date,
            Operation = operation,
            Material = setting.Material ?? build.Parts.FirstOrDefault(candidate => candidate.Id == part)?.Material,
            Cutter = setting.Cutter,
            Machine = setting.Machine,
            Coolant = setting.Coolant,
            Diameter = diameter,
            Rpm = rpm,
            Speed = diameter is { } size && rpm is { } turns ? SurfaceSpeed.Of(size, turns) : null,
            FeedText = setting.Feed,
            Feed = feed,
            Teeth = teeth,
            FeedPerMinute = feed?.PerMinute(rpm, teeth),
            FeedPerTurn = feed?.PerTurn(rpm, teeth),
            FeedPerTooth = feed?.PerTooth(rpm, teeth),
            Width = Measure(setting.Width, "width"),
            Depth = Measure(setting.Depth, "depth"),
            Verdict = SettingVerdicts.Of(setting.Verdict),
            VerdictText = setting.Verdict,
            Note = setting.Note,
            Place = setting.Place,
        };
        return figure with { Removal = Removal(figure) };

        Length? Measure(string? text, string key)
        {
            if (text is null)
            {
                return null;
            }

            if (!LengthText.TryParse(text, build.Units, out var length, out var fault))
            {
                findings.Add(new(setting.Place, key, fault));
                return null;
            }

            return Positive(length.Value, key) is null ? null : length;
        }

        Feed? ReadFeed()
        {
            if (setting.Feed is null)
            {
                return null;
            }

            if (!Feed.TryParse(setting.Feed, build.Units, out var read, out var fault))
            {
                findings.Add(new(setting.Place, "feed", fault));
                return null;
            }

            return read;
        }

        decimal? Positive(decimal? value, string key)
        {
            if (value <= 0)
            {
                findings.Add(new(
                    setting.Place,
                    key,
                    new(FaultCode.NotPositive, $"`{key}` must be more than zero.", "Write what was used, or leave out the key.", 0)));
                return null;
            }

            return value;
        }
    }

    private static RemovalRate? Removal(SettingFigure setting) => CutKinds.Of(setting.Operation) switch
    {
        CutKind.Turning when setting is { Speed: { } speed, FeedPerTurn: { } feed } && TurningDepth(setting) is { } depth =>
            RemovalRate.OfTurning(speed, feed, depth),
        CutKind.Milling when setting is { Width: { } width, Depth: { } depth, FeedPerMinute: { } feed } =>
            RemovalRate.OfMilling(width, depth, feed),
        CutKind.Drilling when setting is { Diameter: { } diameter, FeedPerMinute: { } feed } =>
            RemovalRate.OfDrilling(diameter, feed),
        _ => null,
    };

    private static Length? TurningDepth(SettingFigure setting) => FedAlongTheRadius.Contains(setting.Operation.Value) ? setting.Width : setting.Depth;
}
