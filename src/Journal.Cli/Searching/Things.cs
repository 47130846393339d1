using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Searching;

/// <summary>All of a journal that can be found: evenings first, the latest at the top, then lessons, readings, remarks, parts and tools.</summary>
internal static class Things
{
    /// <summary>The things of a journal and of the slate beside it.</summary>
    public static IEnumerable<Thing> Of(MakerJournal journal, IReadOnlyList<Jot> jots)
    {
        var latestFirst = journal.Entries.Reverse().ToList();
        return latestFirst.Select(OfEntry)
            .Concat(latestFirst.SelectMany(entry => entry.Lessons.Select(lesson => OfLesson(entry, lesson))))
            .Concat(latestFirst.SelectMany(entry => entry.Readings.Select(reading => OfReading(entry, reading))))
            .Concat(jots.Reverse().Select(jot => new Thing("remark", null, "Not in an entry yet", [jot.Text]) { Date = jot.Evening }))
            .Concat(journal.Builds.SelectMany(build => build.Parts, OfPart))
            .Concat(Tooling.Of(journal).Tools.Select(OfTool));
    }

    private static Thing OfEntry(Entry entry) => new("entry", entry.Id.Value, entry.Title, [.. TextsOf(entry).OfType<string>()])
    {
        Build = entry.Build,
        Date = entry.Date,
        Entry = entry.Ref,
        Parts = [.. entry.Jobs.SelectMany(PartsOf).Distinct()],
        Operations = [.. entry.Jobs.SelectMany(job => job.Operations).Distinct()],
        Tools = [.. entry.Jobs.SelectMany(job => job.Tools.Concat(job.Made)).Distinct()],
    };

    private static IEnumerable<string?> TextsOf(Entry entry) =>
    [
        .. entry.Mistakes.Select(mistake => mistake.What),
        .. entry.Snags.Select(snag => snag.Text),
        entry.Next, entry.Milestone, entry.Story, entry.Departure,
        .. entry.Jobs.SelectMany(job => new[] { job.Held, job.Datum }),
        .. entry.Trials.Select(trial => trial.Result),
        .. entry.Settings.SelectMany(setting => new[] { setting.Cutter, setting.Note }),
        .. entry.Bought.Select(bought => bought.What),
        .. entry.Photos.SelectMany(photo => new[] { photo.Caption, photo.Alt }),
        .. entry.Body.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries),
        .. entry.Jobs.SelectMany(job => job.Parts).Select(share => share.Part.Value),
        .. entry.Jobs.SelectMany(job => job.Operations).Select(operation => operation.Value),
        .. entry.Jobs.SelectMany(job => job.Tools.Concat(job.Made)).Select(tool => tool.Value),
    ];

    private static Thing OfLesson(Entry entry, Lesson lesson)
    {
        var job = entry.Jobs[Math.Min(lesson.Job, entry.Jobs.Count) - 1];
        return new Thing("lesson", lesson.Id.Value, lesson.Text, lesson.Better is null ? [] : [lesson.Better])
        {
            Build = entry.Build,
            Date = entry.Date,
            Entry = entry.Ref,
            Parts = [.. PartsOf(job)],
            Operations = job.Operations,
            Tools = job.Tools,
        };
    }

    private static Thing OfReading(Entry entry, MeasuredReading reading) =>
        new("reading", reading.Part is { } part ? $"{part}.{reading.Feature}" : reading.Feature, $"{reading.Feature} {reading.Actual}".TrimEnd(), [.. new[] { reading.Required, reading.Part?.Value, reading.With?.Value }.OfType<string>()])
        {
            Build = entry.Build,
            Date = entry.Date,
            Entry = entry.Ref,
            Parts = [reading.Part],
            Tools = reading.With is { } tool ? [tool] : [],
        };

    private static Thing OfPart(Build build, Part part) =>
        new("part", part.Id.Value, part.Title, [.. new[] { part.Id.Value, part.Material?.Family.Value, part.Material?.Grade, part.Stock?.Form.Value, part.Stock?.Size, part.Supplied, part.Drawing }.OfType<string>()])
        {
            Build = build.Id,
            Parts = [part.Id],
        };

    private static Thing OfTool(ToolFigure tool) =>
        new("tool", tool.Id.Value, tool.Tool.Title, [.. new[] { tool.Id.Value, tool.Tool.Kind?.Value, tool.Tool.Disclose }.OfType<string>()])
        {
            Tools = [tool.Id],
        };

    private static IEnumerable<Id<Part>?> PartsOf(Job job) => job.IsGeneral ? [null] : job.Parts.Select(share => (Id<Part>?)share.Part);
}
