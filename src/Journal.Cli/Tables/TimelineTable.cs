using System.Globalization;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>When the work was done, for people.</summary>
internal static class TimelineTable
{
    /// <summary>A lead, then for each build its parts, idle stretches, milestones and trials.</summary>
    public static void Print(MakerJournal journal, Timeline timeline, Printout print)
    {
        var titles = new TitleBook(journal);
        if (timeline.Gathered.Count == 0)
        {
            print.Say("Nothing yet. The timeline starts with the first entry.");
            return;
        }

        var (first, last) = (timeline.Gathered[0].Date, timeline.Gathered[^1].Date);
        print.Say($"{Count.Of(timeline.Gathered.Count, "evening")} between {Written.Date(first)} and {Written.Date(last)}; {Pace(timeline.Pace!)}.");
        foreach (var build in timeline.Builds)
        {
            PrintBuild(build, titles, print);
        }
    }

    private static void PrintBuild(BuildTimeline build, TitleBook titles, Printout print)
    {
        print.Heading(titles.Of(build.Build));
        if (build.Pace is null)
        {
            print.Say("Not started.");
            return;
        }

        print.Say($"{Written.Date(build.First)} to {Written.Date(build.Last)}, {Count.Of(build.DaysWorked, "evening")}, {Pace(build.Pace)}.");
        if (build.Parts.Count > 0)
        {
            print.Gap();
            print.Table(
                [Column.Words("Part"), Column.Figures("First"), Column.Figures("Last"), Column.Figures("Evenings"), Column.Figures("Set-ups"), Column.Figures("Hours")],
                build.Parts.Select(part => new[]
                {
                    titles.Of(new PartRef(build.Build, part.Part)),
                    Written.Date(part.First),
                    Written.Date(part.Last),
                    Count.Cell(part.DaysWorked),
                    Count.Cell(part.SetUps),
                    Written.Time(part.Minutes),
                }));
        }

        Dated(print, "Milestones", build.Milestones.Select(milestone => (milestone.Date, milestone.Text)));
        Dated(print, "Trials", build.Trials.Select(trial => (trial.Date, Sentence(trial.Trial))));
        Dated(print, "Idle for two weeks or more", build.Idle.Select(idle => (idle.First, $"to {Written.Date(idle.Last)}, {Count.Of(idle.Days, "day")}")));
    }

    private static string Pace(Pace pace) =>
        string.Create(CultureInfo.InvariantCulture, $"{new Minutes((int)Math.Round(pace.HoursAWeek * 60))} a week, idle weeks counted");

    private static string Sentence(Trial trial)
    {
        var facts = new[] { TrialText.On(trial), trial.Pressure is null ? null : $"at {trial.Pressure}", trial.Speed, trial.Time?.ToString() };
        return $"{Casing.Capital(string.Join(", ", facts.OfType<string>()))}{(trial.Result is null ? "" : $": {trial.Result}")}";
    }

    private static void Dated(Printout print, string heading, IEnumerable<(DateOnly Date, string Text)> lines)
    {
        foreach (var (i, (date, text)) in lines.Index())
        {
            if (i == 0)
            {
                print.Gap();
                print.Say(heading, Ink.Faint);
            }

            print.Hang($"  {Written.Date(date)}  ", text);
        }
    }
}
