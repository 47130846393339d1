using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>One entry, for people.</summary>
internal static class EntrySheet
{
    private const string Indent = "          ";

    /// <summary>The title, the work, what was learned and measured, the text as written, and the file.</summary>
    public static void Print(MakerJournal journal, Entry entry, string folder, Printout print)
    {
        var titles = new TitleBook(journal);
        print.Say(entry.Title, Ink.Strong);
        print.Say($"{Written.Date(entry.Date)}, {titles.Of(entry.Build)}: {entry.Time}");
        print.Gap();
        foreach (var job in entry.Jobs)
        {
            Job(entry, job, titles, print);
        }

        Lines(print, "Finished", entry.Finished.Select(finished => titles.Of(new PartRef(entry.Build, finished.Part)) + (finished.Pieces is { } pieces ? $" ({Count.Of(pieces, "piece")})" : "")));
        Lines(print, "Mistake", entry.Mistakes.Select(mistake => MistakeLine(mistake, titles)));
        Lines(print, "Lesson", entry.Lessons.Select(lesson => $"{lesson.Text} ({lesson.Id})"));
        Lines(print, "Heeded", entry.Heeded.Select(id => id.Value));
        Lines(print, "Reading", entry.Readings.Select(ReadingLine));
        Lines(print, "Setting", entry.Settings.Select(SettingLine));
        Lines(print, "Trial", entry.Trials.Select(trial => string.Join(", ", new[] { $"on {trial.On}", trial.Pressure, trial.Speed, trial.Time?.ToString(), trial.Result }.OfType<string>())));
        Lines(print, "Snag", entry.Snags.Select(snag => $"{snag.Text} ({snag.Id})"));
        Lines(print, "Cleared", entry.Cleared.Select(id => id.Value));
        Lines(print, "Bought", entry.Bought.Select(bought => $"{bought.What}, {Written.Money(bought.Cost)} {journal.Currency}"));
        Lines(print, "Milestone", One(entry.Milestone));
        Lines(print, "Departure", One(entry.Departure));
        Lines(print, "Story", One(entry.Story));
        Lines(print, "Next", One(entry.Next));
        Lines(print, "Picture", entry.Photos.Select(photo => $"{Path.GetFileName(photo.File)}{(photo.Caption ?? photo.Alt) switch { { } words => $": {words}", _ => "" }}"));
        Text(entry, print);
        print.Gap();
        print.Put(Path.Combine(folder, entry.File.Replace('/', Path.DirectorySeparatorChar)), Ink.Faint);
    }

    private static void Job(Entry entry, Job job, TitleBook titles, Printout print)
    {
        var parts = job.IsGeneral ? "the build as a whole" : Count.List([.. job.Parts.Select(share => titles.Of(new PartRef(entry.Build, share.Part)))]);
        var setUp = job.SetUp > Minutes.Zero ? $", {job.SetUp} of it setting up" : "";
        Lines(print, "Work", [$"{Casing.Capital(titles.InSentence(job.Operations))}: {parts}, {job.Time}{setUp}"]);
        Lines(print, "Held", One(job.Held));
        Lines(print, "Datum", One(job.Datum));
        Lines(print, "With", job.Tools.Count == 0 ? [] : [Count.List([.. job.Tools.Select(titles.Of)])]);
        Lines(print, "Made", job.Made.Select(titles.Of));
        Lines(print, "Mends", job.Mends is { } mended ? [mended.Value] : []);
    }

    private static string MistakeLine(Mistake mistake, TitleBook titles)
    {
        var facts = new[]
        {
            mistake.Cause is { } cause ? Casing.Lower(titles.Of(cause)) : null,
            mistake.Lost > Minutes.Zero ? $"cost {mistake.Lost}" : null,
            mistake.Outcome is { } outcome ? Casing.Lower(TitleBook.OfWord(outcome)) : null,
            mistake.Repeats is { } repeats ? $"repeats {repeats}" : null,
        }.OfType<string>().ToList();
        return facts.Count == 0 ? mistake.What : $"{mistake.What} ({string.Join("; ", facts)})";
    }

    private static string ReadingLine(MeasuredReading reading) =>
        $"{(reading.Part is { } part ? $"{part}." : "")}{reading.Feature}: {reading.Actual ?? "not measured"}{(reading.Required is null ? "" : $", wanted {reading.Required}")}{(reading.With is null ? "" : $", with {reading.With}")}";

    private static string SettingLine(Setting setting) => string.Join(", ", new[]
    {
        setting.Diameter is null ? null : $"diameter {setting.Diameter}",
        setting.Rpm is null ? null : FormattableString.Invariant($"{setting.Rpm} rpm"),
        setting.Feed is null ? null : $"feed {setting.Feed}",
        setting.Depth is null ? null : $"depth {setting.Depth}",
        setting.Width is null ? null : $"width {setting.Width}",
        setting.Cutter, setting.Machine?.Value, setting.Coolant, setting.Verdict, setting.Note,
    }.OfType<string>());

    // As the maker wrote it: paragraphs run on, lists and tables keep their lines.
    private static void Text(Entry entry, Printout print)
    {
        foreach (var (i, line) in entry.Body.Text.ReplaceLineEndings("\n").Trim('\n').Split('\n').Index())
        {
            if (i == 0 && line.Length > 0)
            {
                print.Gap();
            }

            if (line.Length == 0)
            {
                print.Gap();
            }
            else
            {
                print.Say(line, indent: line.Length - line.TrimStart().Length);
            }
        }
    }

    private static IEnumerable<string> One(string? text) => text is null ? [] : [text];

    private static void Lines(Printout print, string label, IEnumerable<string> lines)
    {
        foreach (var (i, line) in lines.Index())
        {
            print.Hang(i == 0 ? label.PadRight(Indent.Length) : Indent, line);
        }
    }
}
