using Journal.Cli.Output;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>The few lessons to read before a job, for people.</summary>
internal static class LessonsToReadList
{
    /// <summary>What the job is, then each lesson with its reasons under it.</summary>
    public static void Print(MakerJournal journal, JobToCome job, IReadOnlyList<LessonToRead> toRead, Printout print)
    {
        var titles = new TitleBook(journal);
        var about = About(job, titles);
        if (toRead.Count == 0)
        {
            print.Say($"No lessons yet about {about} or work like it.");
            return;
        }

        print.Say($"Before {about}", Ink.Strong);
        foreach (var (i, read) in toRead.Index())
        {
            print.Gap();
            print.Hang($"{i + 1}  ", read.Lesson.Lesson.Text);
            if (read.Lesson.Lesson.Better is { } better)
            {
                print.Say($"Better: {Casing.Lower(better)}", indent: 3);
            }

            print.Say($"{Casing.Capital(string.Join(", ", Reasons.Of(read, titles, journal.Currency)))}.", Ink.Faint, indent: 3);
            print.Say($"{read.Lesson.Entry}", Ink.Faint, indent: 3);
        }
    }

    private static string About(JobToCome job, TitleBook titles)
    {
        var what = job.Operations.Count > 0 ? titles.InSentence(job.Operations) : "work";
        var on = job.Parts.Count > 0 ? $" on {Count.List([.. job.Parts.Select(part => Casing.Lower(part.ToTitle()))])}" : "";
        var of = job.Materials.Count > 0 ? $" in {Count.List([.. job.Materials.Select(id => Casing.Lower(titles.Of(id)))])}" : "";
        var with = job.Tools.Count > 0 ? $" with {Count.List([.. job.Tools.Select(id => Casing.Lower(titles.Of(id)))])}" : "";
        return what + on + of + with;
    }
}
