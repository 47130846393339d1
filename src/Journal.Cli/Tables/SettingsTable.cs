using System.Globalization;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>What speed worked last time, for people.</summary>
internal static class SettingsTable
{
    /// <summary>A lead, and for each operation, material and cutter the speeds that worked and all that was tried.</summary>
    public static void Print(MakerJournal journal, IReadOnlyList<SettingFigure> settings, Printout print)
    {
        if (settings.Count == 0)
        {
            print.Say("No such settings yet. Add `settings` to an entry, such as `{diameter: 30, rpm: 480, feed: 0.1 mm/turn, verdict: worked}`.");
            return;
        }

        var titles = new TitleBook(journal);
        print.Say(Lead(settings));
        foreach (var group in SettingGroup.Gather(settings))
        {
            print.Heading(Heading(group, titles, journal));
            PrintSpeeds(group, print);
            print.Table(
                [
                    Column.Figures("Date"), Column.Figures("Diameter"), Column.Figures("rev/min"), Column.Figures("m/min"), Column.Figures("ft/min"),
                    Column.Words("Feed"), Column.Words("Depth"), Column.Words("How it went"),
                ],
                group.Settings.Select(Row));
        }
    }

    private static string Lead(IReadOnlyList<SettingFigure> settings)
    {
        int Went(SettingVerdict verdict) => settings.Count(setting => setting.Verdict == verdict);
        string[] parts =
        [
            .. new[] { (Went(SettingVerdict.Worked), "worked"), (Went(SettingVerdict.Chattered), "chattered"), (Went(SettingVerdict.Failed), "failed otherwise"), (Went(SettingVerdict.Unclear), "with no result given") }
                .Where(part => part.Item1 > 0)
                .Select(part => string.Create(CultureInfo.InvariantCulture, $"{part.Item1} {part.Item2}")),
        ];
        return $"{Count.Of(settings.Count, "setting")}: {Count.List(parts)}.";
    }

    private static string Heading(SettingGroup group, TitleBook titles, MakerJournal journal)
    {
        var material = group.Material is { } family ? Casing.Lower(journal.Vocabulary.Materials[family].Title) : null;
        return string.Join(", ", new[] { titles.Of(group.Operation), material, group.Cutter }.OfType<string>());
    }

    private static void PrintSpeeds(SettingGroup group, Printout print)
    {
        string[] parts =
        [
            .. new[] { ("worked", group.Worked), ("chattered", group.Chattered), ("failed otherwise", group.Failed) }
                .Where(part => part.Item2 is not null)
                .Select(part => $"{part.Item1} at {Speeds(part.Item2!)}"),
        ];
        if (parts.Length > 0)
        {
            print.Say($"{Casing.Capital(string.Join("; ", parts))}.", indent: 2);
        }
    }

    private static string Speeds(SpeedRange range)
    {
        var (least, greatest) = (Speed(range.Least.MetresPerMinute), Speed(range.Greatest.MetresPerMinute));
        var (slow, fast) = (Speed(range.Least.FeetPerMinute), Speed(range.Greatest.FeetPerMinute));
        return least == greatest ? $"{least} m/min ({slow} ft/min)" : $"{least} to {greatest} m/min ({slow} to {fast} ft/min)";
    }

    private static string[] Row(SettingFigure setting) =>
    [
        Written.Date(setting.Date),
        setting.Diameter?.ToString() ?? "",
        setting.Rpm?.ToString("0.##", CultureInfo.InvariantCulture) ?? "",
        setting.Speed is { } speed ? Speed(speed.MetresPerMinute) : "",
        setting.Speed is { } same ? Speed(same.FeetPerMinute) : "",
        setting.FeedText ?? "",
        setting.Depth?.ToString() ?? "",
        setting.VerdictText ?? "",
    ];

    /// <summary>Whole from 10 on, else with one decimal: nobody sets a speed finer.</summary>
    private static string Speed(decimal speed) => speed.ToString(speed < 10 ? "0.0" : "0", CultureInfo.InvariantCulture);
}
