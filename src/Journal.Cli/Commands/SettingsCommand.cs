using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary><c>journal settings</c>: what speed worked last time.</summary>
internal static class SettingsCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (operation, material, part, excerpt) = (WordOptions.For.Create(), WordOptions.Material.Create(), PartOption.Create(), new ExcerptOptions(Narrows.Build | Narrows.Dates));
        FigureCommand Narrowed(ParseResult asked)
        {
            var command = Of(new Asked(asked.GetValue(operation), asked.GetValue(material), asked.GetValue(part)) { Takes = (build, date) => excerpt.Takes(asked, build, date) });
            return command with { Objection = journal => excerpt.Objection(asked, journal) ?? command.Objection(journal) };
        }

        return (Of(new Asked(null, null, null)) with { Options = [operation, material, part, .. excerpt.Options], Narrowed = Narrowed }).Create(terminal);
    }

    private static FigureCommand Of(Asked asked) => new()
    {
        Name = "settings",
        Description = "What speed worked last time: the speeds, feeds and depths used, and how it went.",
        Example = "journal settings --for turning --material cast-iron",
        Objection = asked.Objection,
        Table = (journal, print) => SettingsTable.Print(journal, asked.Of(journal), print),
        Csv = journal => new CsvTable(
            ["build", "part", "entry", "operation", "material", "cutter", "diameter", "unit", "rpm", "surfaceMetresPerMinute", "surfaceFeetPerMinute", "feed", "depth", "verdict"],
            asked.Of(journal).Select(setting => Row(setting, UnitOf(setting, journal)))),
        Json = journal => new { Settings = asked.Of(journal).Select(setting => Shape(setting, UnitOf(setting, journal))) },
    };

    private static object?[] Row(SettingFigure setting, LengthUnit unit) =>
    [
        setting.Build, setting.Part, setting.Entry, setting.Operation, setting.Material?.Family, setting.Cutter, Measured.Number(setting.Diameter, unit),
        Measured.Word(unit), setting.Rpm, Measured.Rate(setting.Speed?.MetresPerMinute), Measured.Rate(setting.Speed?.FeetPerMinute), setting.FeedText,
        Measured.Number(setting.Depth, unit), setting.VerdictText,
    ];

    private static object Shape(SettingFigure setting, LengthUnit unit) => new
    {
        setting.Build,
        setting.Part,
        setting.Entry,
        setting.Operation,
        Material = setting.Material?.Family,
        setting.Cutter,
        Diameter = Measured.Number(setting.Diameter, unit),
        Unit = Measured.Word(unit),
        setting.Rpm,
        SurfaceMetresPerMinute = Measured.Rate(setting.Speed?.MetresPerMinute),
        SurfaceFeetPerMinute = Measured.Rate(setting.Speed?.FeetPerMinute),
        Feed = setting.FeedText,
        Depth = Measured.Number(setting.Depth, unit),
        Verdict = setting.VerdictText,
        setting.Date,
        setting.Material?.Grade,
        setting.Machine,
        setting.Coolant,
        setting.Teeth,
        Width = Measured.Number(setting.Width, unit),
        FeedPerMinute = Measured.Number(setting.FeedPerMinute, unit),
        FeedPerTurn = Measured.Number(setting.FeedPerTurn, unit),
        FeedPerTooth = Measured.Number(setting.FeedPerTooth, unit),
        RemovalCubicCentimetresPerMinute = Measured.Rate(setting.Removal?.CubicCentimetresPerMinute),
        RemovalCubicInchesPerMinute = Measured.Rate(setting.Removal?.CubicInchesPerMinute),
        Went = setting.Verdict == SettingVerdict.Unclear ? null : setting.Verdict.ToWord(),
        setting.Note,
    };

    /// <summary>One unit for all lengths of a setting: that of its diameter, else of its depth, else the build's.</summary>
    private static LengthUnit UnitOf(SettingFigure setting, MakerJournal journal) =>
        setting.Diameter?.Unit ?? setting.Depth?.Unit ?? journal.Builds.Single(build => build.Id == setting.Build).Units;

    /// <summary>Which settings were asked for.</summary>
    private sealed record Asked(string? Operation, string? Material, string? Part)
    {
        /// <summary>
        /// Whether a setting of a build and day was asked for by <c>--build</c>, <c>--since</c> and <c>--until</c>; all are
        /// where this is not set.
        /// </summary>
        public Func<Id<Build>, DateOnly?, bool> Takes { get; init; } = (_, _) => true;

        /// <summary>Why the words make no sense in a journal, and what to write instead; null where they do.</summary>
        public string? Objection(MakerJournal journal) =>
            WordOptions.For.Objection(Operation, journal) ?? WordOptions.Material.Objection(Material, journal) ?? PartOption.Objection(Part, journal);

        /// <summary>The settings of a journal that were asked for, in its order.</summary>
        public List<SettingFigure> Of(MakerJournal journal) =>
        [
            .. Settings.Of(journal).All.Where(setting =>
                Takes(setting.Build, setting.Date)
                && WordOptions.For.Takes(Operation, setting.Operation, journal)
                && WordOptions.Material.Takes(Material, setting.Material?.Family, journal)
                && PartOption.Takes(Part, setting.Build, setting.Part)),
        ];
    }
}
