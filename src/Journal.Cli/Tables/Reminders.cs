using Journal.Cli.Output;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Tables;

/// <summary>What to have in mind before a job is written up: what was next, open snags, lessons.</summary>
internal static class Reminders
{
    /// <summary>The reminders; nothing where there are none.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="build">The build that the job is for.</param>
    /// <param name="job">The job.</param>
    /// <param name="remarks">Tonight's remarks, which go into the text.</param>
    /// <param name="print">Where to.</param>
    public static void Print(MakerJournal journal, Build build, NewJob job, IEnumerable<string> remarks, Printout print)
    {
        var state = State.Of(journal).Builds.Single(state => state.Build == build.Id);
        if (state.Next is { } next)
        {
            print.Hang("Was next  ", next.Text);
        }

        foreach (var (i, open) in state.Snags.Index())
        {
            print.Hang(i == 0 ? "Snags     " : "          ", open.Snag.Text);
        }

        foreach (var (i, read) in LessonsToRead.Of(Lessons.Of(journal).All).For(JobTonight(build, job)).Index())
        {
            print.Hang(i == 0 ? "Lessons   " : "          ", read.Lesson.Lesson.Text + (read.Lesson.MinutesLost == Minutes.Zero ? "" : $" ({read.Lesson.MinutesLost} lost)"));
        }

        foreach (var (i, remark) in remarks.Index())
        {
            print.Hang(i == 0 ? "Jotted    " : "          ", remark);
        }
    }

    private static JobToCome JobTonight(Build build, NewJob job)
    {
        var known = build.Parts.FirstOrDefault(one => job.Parts.Contains(one.Id.Value));
        return new JobToCome(
            [.. job.Operations.Select(operation => new Id<Operation>(operation))],
            known?.Material is { } material ? [material.Family] : [],
            known is null ? [] : [known.Id],
            []);
    }
}
