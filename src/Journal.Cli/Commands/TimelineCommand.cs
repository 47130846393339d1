using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;

namespace Journal.Cli.Commands;

/// <summary><c>journal timeline</c>: when the work was done.</summary>
internal static class TimelineCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) => new FigureCommand
    {
        Name = "timeline",
        Description = "When the work was done: parts, idle stretches, milestones and trials.",
        Example = "journal timeline --in my-journal",
        By = Narrows.Build | Narrows.Part | Narrows.Dates,
        Table = (journal, print) => TimelineTable.Print(journal, Timeline.Of(journal), print),
        Csv = journal => new CsvTable(
            ["build", "part", "first", "last", "daysWorked", "setUps", "minutes"],
            Timeline.Of(journal).Builds.SelectMany(Rows)),
        Json = journal => Shape(Timeline.Of(journal)),
    }.Create(terminal);

    private static IEnumerable<object?[]> Rows(BuildTimeline build) =>
        build.Parts.Select(part => new object?[] { build.Build, part.Part, part.First, part.Last, part.DaysWorked, part.SetUps, part.Minutes });

    private static object Shape(Timeline timeline) => new
    {
        Builds = timeline.Builds.Select(build => new
        {
            build.Build,
            build.First,
            build.Last,
            build.DaysWorked,
            HoursAWeek = build.Pace is { } pace ? Math.Round(pace.HoursAWeek, 3) : (double?)null,
            Parts = build.Parts.Select(part => new { part.Part, part.First, part.Last, part.DaysWorked, part.SetUps, part.Minutes }),
            Idle = build.Idle.Select(idle => new { From = idle.First, To = idle.Last, idle.Days }),
            Milestones = build.Milestones.Select(milestone => new { milestone.Date, milestone.Text, milestone.Entry.Entry }),
            Trials = build.Trials.Select(trial => new
            {
                trial.Date,
                trial.Trial.On,
                trial.Trial.Pressure,
                trial.Trial.Speed,
                Minutes = trial.Trial.Time,
                trial.Trial.Result,
                trial.Entry.Entry,
            }),
            Gathered = build.Gathered.Select(day => new { day.Date, day.Minutes, day.Total }),
        }),
    };
}
