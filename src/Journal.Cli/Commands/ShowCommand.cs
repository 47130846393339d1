using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Cli.Writing;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Commands;

/// <summary><c>journal show</c>: one entry.</summary>
internal static class ShowCommand
{
    private const string Whole = "whole";

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (entry, build) = (EntryArgument.Create("The entry: its id, its date or words in it. Left out: the latest."), JobOptions.OfAny());
        return (Of(_ => throw new UsageException(""), "") with
        {
            Arguments = [entry],
            Options = [build],
            Narrowed = asked => At("", asked) with { Beside = (folder, _) => At(folder, asked) },
        }).Create(terminal);

        FigureCommand At(string folder, ParseResult asked) => Of(
            journal => EntryArgument.Find(asked.GetValue(entry) ?? [], journal, BuildOf(asked.GetValue(build), journal), folder, BenchClock.Of(journal).Evening(terminal.Now)),
            folder);
    }

    private static FigureCommand Of(Func<MakerJournal, Entry> find, string folder) => new()
    {
        Name = "show",
        Description = "One entry: what was done, what went wrong, what was learned and measured, and its text.",
        Example = "journal show 2025-09-06",
        Objection = journal => WhyNone(find, journal),
        Table = (journal, print) => EntrySheet.Print(journal, find(journal), folder, print),
        Csv = journal => new CsvTable(
            ["build", "entry", "date", "job", "parts", "operations", "minutes", "setUpMinutes", "tools"],
            find(journal) is var entry ? entry.Jobs.Select(job => Row(entry, job)) : []),
        Json = journal => Shape(find(journal)),
    };

    private static Id<Build>? BuildOf(string? named, MakerJournal journal) =>
        named is null ? null
            : journal.Builds.Any(build => build.Id.Value == named) ? new Id<Build>(named)
            : throw new UsageException($"There is no build `{named}`. {Core.Parsing.Problems.Suggestion.For(named, [.. journal.Builds.Select(build => build.Id.Value)], "builds")}");

    private static string? WhyNone(Func<MakerJournal, Entry> find, MakerJournal journal)
    {
        try
        {
            find(journal);
            return null;
        }
        catch (UsageException e)
        {
            return e.Message;
        }
    }

    private static object?[] Row(Entry entry, Job job) =>
    [
        entry.Build, entry.Id, entry.Date, job.Number, string.Join(' ', PartsOf(job)), string.Join(' ', job.Operations), job.Time, job.SetUp, string.Join(' ', job.Tools),
    ];

    private static IEnumerable<string> PartsOf(Job job) => job.IsGeneral ? [Whole] : job.Parts.Select(share => share.Part.Value);

    private static object Shape(Entry entry) => new
    {
        entry.Build,
        Entry = entry.Id,
        entry.File,
        entry.Date,
        entry.Title,
        Minutes = entry.Time,
        Jobs = entry.Jobs.Select(job => new { Job = job.Number, Parts = PartsOf(job), job.Operations, Minutes = job.Time, SetUpMinutes = job.SetUp, job.Held, job.Datum, job.Tools, job.Made, job.Mends }),
        Mistakes = entry.Mistakes.Select(mistake => new { mistake.Id, mistake.What, mistake.Cause, MinutesLost = mistake.Lost, Outcome = mistake.Outcome?.ToWord(), mistake.Lesson, mistake.Repeats, mistake.Job }),
        Lessons = entry.Lessons.Select(lesson => new { lesson.Id, lesson.Text, Verdict = lesson.Verdict?.ToWord(), lesson.Better, lesson.Job }),
        entry.Heeded,
        Finished = entry.Finished.Select(finished => new { finished.Part, finished.Pieces }),
        entry.Next,
        Snags = entry.Snags.Select(snag => new { snag.Id, snag.Text }),
        entry.Cleared,
        Trials = entry.Trials.Select(trial => new { trial.On, trial.Pressure, trial.Speed, Minutes = trial.Time, trial.Result }),
        Readings = entry.Readings.Select(reading => new { reading.Part, reading.Feature, reading.Required, reading.Actual, reading.With }),
        Settings = entry.Settings.Select(setting => new
        {
            setting.Job, setting.Diameter, setting.Rpm, setting.Feed, setting.Teeth, setting.Width, setting.Depth, Material = setting.Material?.Family, setting.Cutter, setting.Machine,
            setting.Coolant, setting.Verdict, setting.Note,
        }),
        entry.Milestone,
        entry.Story,
        Bought = entry.Bought.Select(bought => new { bought.What, bought.Cost, Kind = bought.Kind.ToWord() }),
        entry.Departure,
        Photos = entry.Photos.Select(photo => new { photo.File, photo.Caption, photo.Alt }),
        Text = entry.Body.Text,
    };
}
