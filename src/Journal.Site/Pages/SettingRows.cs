using System.Globalization;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Trade;
using Journal.Core.Wording;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>A setting of an evening: what was set, and what follows from it.</summary>
/// <param name="Heading">Operation and material.</param>
/// <param name="Used">What was set, and to what.</param>
public sealed record SettingView(string Heading, IReadOnlyList<SettingFactView> Used);

/// <summary>One thing that was set.</summary>
public sealed record SettingFactView(string Label, SizeView Value);

/// <summary>A setting as the page of its operation shows it.</summary>
public sealed record SettingRowView
{
    /// <summary>What was cut.</summary>
    public required string Material { get; init; }

    /// <summary>What it was cut with; null where it is not said.</summary>
    public string? Cutter { get; init; }

    /// <summary>Diameter of the work in turning, of the cutter in milling and drilling.</summary>
    public SizeView? Diameter { get; init; }

    /// <summary>Revolutions a minute.</summary>
    public string? Rpm { get; init; }

    /// <summary>The surface speed.</summary>
    public SizeView? Speed { get; init; }

    /// <summary>The feed.</summary>
    public SizeView? Feed { get; init; }

    /// <summary>The depth of cut.</summary>
    public SizeView? Depth { get; init; }

    /// <summary>How it went, for the style: <c>worked</c>, <c>chattered</c>, <c>failed</c> or <c>unclear</c>.</summary>
    public required string Went { get; init; }

    /// <summary>How it went, in the maker's word.</summary>
    public string? Verdict { get; init; }

    /// <summary>A remark.</summary>
    public string? Note { get; init; }

    /// <summary>The entry that wrote it down.</summary>
    public required LinkView Entry { get; init; }
}

/// <summary>Settings as pages show them. What stays at home is left out.</summary>
internal static class SettingRows
{
    /// <summary>The settings of an evening, as they stand in the entry.</summary>
    public static IReadOnlyList<SettingView> Of(SiteFigures figures, Entry entry) =>
        [.. figures.SettingsOf[entry.Ref].OrderBy(setting => setting.Place).Select(setting => new SettingView(Heading(figures, setting), [.. Used(figures, setting)]))];

    /// <summary>The settings of an operation, gathered by material and cutter.</summary>
    public static IReadOnlyList<SettingRowView> Of(SiteFigures figures, Id<Operation> operation) =>
        [.. Groups(figures, operation).SelectMany(group => group.Settings).Select(setting => Row(figures, setting))];

    /// <summary>The speeds tried in an operation, by material and cutter; null where none was written down.</summary>
    public static ChartView? Speeds(SiteFigures figures, Id<Operation> operation)
    {
        var tried = Groups(figures, operation)
            .Select(group => new SpeedsTried(Label(figures, group), SpeedsOf(group, verdict => verdict is SettingVerdict.Worked), SpeedsOf(group, verdict => verdict is SettingVerdict.Chattered or SettingVerdict.Failed)))
            .Where(row => row.Worked.Count + row.Chattered.Count > 0)
            .ToList();
        return tried.Count == 0 ? null : SpeedRangeChart.Draw(
            "speeds",
            "Surface speeds that worked, and that did not",
            $"Surface speeds used for {Casing.Lower(figures.Operation(operation).Title)}, by material and cutter.",
            tried);
    }

    private static IReadOnlyList<SettingGroup> Groups(SiteFigures figures, Id<Operation> operation) => SettingGroup.Gather(
        figures.Settings.All.Where(setting => setting.Operation == operation && figures.Visibility.Shows(new EntryRef(setting.Build, setting.Entry))));

    private static List<double> SpeedsOf(SettingGroup group, Func<SettingVerdict, bool> went) =>
        [.. group.Settings.Where(setting => went(setting.Verdict)).Select(setting => setting.Speed).OfType<SurfaceSpeed>().Select(speed => (double)speed.MetresPerMinute)];

    private static string Label(SiteFigures figures, SettingGroup group) =>
        string.Join(", ", new[] { group.Material is { } family ? figures.Journal.Vocabulary.Materials[family].Title : "No material given", group.Cutter }.OfType<string>());

    private static string Heading(SiteFigures figures, SettingFigure setting) =>
        figures.Operation(setting.Operation).Title + (setting.Material is { } material ? $", {PartPage.MaterialWords(figures, material)}" : "");

    private static IEnumerable<SettingFactView> Used(SiteFigures figures, SettingFigure setting)
    {
        var unit = UnitOf(setting);
        (string Label, SizeView? Value)[] used =
        [
            (CutKinds.Of(setting.Operation) == CutKind.Turning ? "Diameter of the work" : "Diameter", LengthFormat.Size(setting.Diameter)),
            ("Speed", setting.Rpm is { } rpm ? Plain($"{Rpm(rpm)} rev/min") : null),
            ("Surface speed", setting.Speed is { } speed ? LengthFormat.Speed(speed, unit) : null),
            ("Feed", FeedOf(setting)),
            .. WorkedOutFeeds(setting),
            ("Depth of cut", LengthFormat.Size(setting.Depth)),
            ("Width of cut", LengthFormat.Size(setting.Width)),
            ("Removed", setting.Removal is { } removal ? LengthFormat.Removal(removal, unit) : null),
            ("Cutter", Plain(setting.Cutter)),
            ("Teeth", setting.Teeth is { } teeth ? Plain(Show.Number(teeth)) : null),
            ("Machine", setting.Machine is { } machine && figures.Visibility.Shows(machine) ? Plain(figures.Tool(machine).Title) : null),
            ("Coolant", Plain(setting.Coolant)),
            ("How it went", Plain(setting.VerdictText)),
            ("Note", Plain(setting.Note)),
        ];
        return used.Where(fact => fact.Value is not null).Select(fact => new SettingFactView(fact.Label, fact.Value!));
    }

    /// <summary>The feed counted in the other ways: what the maker gave is not said twice.</summary>
    private static IEnumerable<(string Label, SizeView? Value)> WorkedOutFeeds(SettingFigure setting)
    {
        (string Label, Length? Amount, FeedPer Per)[] feeds =
            [("Feed a minute", setting.FeedPerMinute, FeedPer.Minute), ("Feed a turn", setting.FeedPerTurn, FeedPer.Turn), ("Feed a tooth", setting.Teeth > 1 ? setting.FeedPerTooth : null, FeedPer.Tooth)];
        return feeds.Where(one => one.Per != setting.Feed?.Per).Select(one => (one.Label, one.Amount is { } amount ? LengthFormat.WorkedOut(amount, one.Per) : null));
    }

    private static SettingRowView Row(SiteFigures figures, SettingFigure setting) => new()
    {
        Material = setting.Material is { } material ? PartPage.MaterialWords(figures, material) : "–",
        Cutter = setting.Cutter,
        Diameter = LengthFormat.Size(setting.Diameter),
        Rpm = setting.Rpm is { } rpm ? Rpm(rpm) : null,
        Speed = setting.Speed is { } speed ? LengthFormat.Speed(speed, UnitOf(setting)) : null,
        Feed = FeedOf(setting),
        Depth = LengthFormat.Size(setting.Depth),
        Went = setting.Verdict.ToWord(),
        Verdict = setting.VerdictText,
        Note = setting.Note,
        Entry = new LinkView(Show.Date(setting.Date), Addresses.Of(new EntryRef(setting.Build, setting.Entry))),
    };

    /// <summary>The feed; as written where it does not say per what.</summary>
    private static SizeView? FeedOf(SettingFigure setting) => setting.Feed is { } feed ? LengthFormat.Feed(feed) : Plain(setting.FeedText);

    private static LengthUnit UnitOf(SettingFigure setting) => setting.Diameter?.Unit ?? LengthUnit.Millimetre;

    private static string Rpm(decimal rpm) => rpm.ToString("0.##", CultureInfo.InvariantCulture);

    private static SizeView? Plain(string? text) => text is null ? null : new SizeView(text, "");
}
