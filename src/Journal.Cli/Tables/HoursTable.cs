using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>Where the hours went, for people.</summary>
internal static class HoursTable
{
    private const int MostOperations = 20;
    private const int MostNamed = 2;

    /// <summary>A lead, a table for each build, and all of it by operation and by kind of time.</summary>
    public static void Print(MakerJournal journal, Hours hours, Printout print)
    {
        var titles = new TitleBook(journal);
        if (hours.Minutes == Minutes.Zero)
        {
            print.Say("No hours yet. They start with the first entry.");
            return;
        }

        var settingUp = Fraction.InWords(Share.Of(hours.Work.In(TimeKind.SettingUp), hours.Minutes));
        print.Say($"{hours.Minutes} over {Count.Of(hours.Calendar.Days.Count, "evening")}; {settingUp} of it spent setting up.");
        foreach (var build in hours.Builds)
        {
            PrintBuild(build, titles, print);
        }

        print.Heading("By operation");
        print.Table(
            [Column.Words("Operation"), Column.Figures("Hours"), Column.Figures("Share")],
            Operations(hours.Work, titles).Select(time => Row(time.Title, time.Minutes, hours.Minutes)),
            ["Total", hours.Minutes.ToString(), ""]);
        print.Heading("By kind of time");
        print.Table(
            [Column.Words("Kind of time"), Column.Figures("Hours"), Column.Figures("Share")],
            hours.Work.Kinds.OrderByDescending(time => time.Minutes).Select(time => Row(TitleBook.OfWord(time.What), time.Minutes, hours.Minutes)),
            ["Total", hours.Minutes.ToString(), ""]);
    }

    private static void PrintBuild(BuildHours build, TitleBook titles, Printout print)
    {
        print.Heading(titles.Of(build.Build));
        if (build.Minutes == Minutes.Zero)
        {
            print.Say("No hours yet.");
            return;
        }

        var parts = build.Parts.Where(part => part.Minutes > Minutes.Zero)
            .OrderByDescending(part => part.Minutes)
            .Select(part => (Title: titles.Of(new PartRef(build.Build, part.Part)), part.Work));
        var rows = build.General.Minutes == Minutes.Zero ? parts : parts.Append((Title: "The build as a whole", Work: build.General));
        print.Table(
            [Column.Words("Part"), Column.Figures("Hours"), Column.Figures("Share"), Column.Words("Mostly")],
            rows.Select(row => Row(row.Title, row.Work.Minutes, build.Minutes).Append(Mostly(row.Work, titles)).ToArray()),
            ["Total", build.Minutes.ToString(), "", ""]);
        var waiting = build.Parts.Where(part => part.Minutes == Minutes.Zero).Select(part => titles.Of(new PartRef(build.Build, part.Part))).ToList();
        if (waiting.Count > 0)
        {
            print.Say($"No hours yet on: {string.Join(", ", waiting)}.", Ink.Faint);
        }
    }

    // A long tail of small times is one row; csv and json have all of it.
    private static IEnumerable<(string Title, Minutes Minutes)> Operations(Work work, TitleBook titles)
    {
        var rest = work.Operations.Count <= MostOperations + 1 ? [] : work.Operations.Skip(MostOperations).ToList();
        var named = work.Operations.Take(work.Operations.Count - rest.Count).Select(time => (titles.Of(time.What), time.Minutes));
        return rest.Count == 0 ? named : named.Append(($"{rest.Count} others", rest.Sum(time => time.Minutes)));
    }

    private static string[] Row(string title, Minutes time, Minutes whole) => [title, time.ToString(), Share.Percent(Share.Of(time, whole))];

    private static string Mostly(Work work, TitleBook titles) =>
        string.Join(", ", work.Operations.Take(MostNamed).Select(time => $"{Casing.Lower(titles.Of(time.What))} {time.Minutes}"));
}
