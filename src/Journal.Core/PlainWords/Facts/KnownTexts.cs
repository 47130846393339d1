using Journal.Core.Model;

namespace Journal.Core.PlainWords.Facts;

/// <summary>What the journal knew before an evening.</summary>
internal static class KnownTexts
{
    public static Recall Lessons(MakerJournal journal, DateOnly date) =>
        new(journal.Entries.Where(entry => entry.Date <= date).SelectMany(entry => entry.Lessons).Select(lesson => (lesson.Id.Value, lesson.Text)));

    /// <summary>Snags of the build that no earlier entry cleared.</summary>
    public static Recall OpenSnags(Build build, DateOnly date)
    {
        var before = build.Entries.Where(entry => entry.Date < date).ToList();
        var done = before.SelectMany(entry => entry.Cleared).ToHashSet();
        return new(before.SelectMany(entry => entry.Snags).Where(snag => !done.Contains(snag.Id)).Select(snag => (snag.Id.Value, snag.Text)));
    }

    /// <summary>Mistakes of the build that have an id, by which they can be mended.</summary>
    public static Recall Mistakes(Build build, DateOnly date) =>
        new(build.Entries.Where(entry => entry.Date <= date).SelectMany(entry => entry.Mistakes).Where(mistake => mistake.Id is not null).Select(mistake => (mistake.Id!.Value.Value, mistake.What)));
}
