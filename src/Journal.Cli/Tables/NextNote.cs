using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>Where was I? A note to oneself.</summary>
internal static class NextNote
{
    private const string Indent = "          ";

    /// <summary>The note for the build that is under way.</summary>
    public static void Print(MakerJournal journal, Printout print)
    {
        var all = State.Of(journal);
        if (all.Current is not { } state)
        {
            print.Say(journal.Builds.Count == 0 ? "No builds yet. Add one with `journal add build <id>`." : "No build is under way: each is finished, planned or laid aside.");
            return;
        }

        var (titles, build) = (new TitleBook(journal), journal.Builds.Single(build => build.Id == state.Build));
        print.Say(titles.Of(state.Build), Ink.Strong);
        Others(all, titles, print);
        if (build.Entries.Count == 0)
        {
            print.Say("No entries yet.");
            Parts(build, state, titles, print);
            return;
        }

        var latest = build.Entries[^1];
        print.Say($"Last at the bench {Written.Date(latest.Date)}: {latest.Title}.");
        print.Gap();
        Step(state, latest, print);
        Left(state, print);
        Snags(state, print);
        Parts(build, state, titles, print);
        Lessons(build, latest.Jobs[^1], Core.Figures.Lessons.Of(journal), titles, print);
    }

    // Which build is meant goes by the day it was worked on or begun; the maker may mean another one.
    private static void Others(State state, TitleBook titles, Printout print)
    {
        if (state.UnderWay.Count > 1)
        {
            var others = state.UnderWay.Skip(1).Select(one => titles.Of(one.Build) + (one.LastTouched is { } day ? $" ({(one.Latest is null ? "begun" : "last worked on")} {Written.Date(day)})" : ""));
            print.Say($"Under way too: {string.Join("; ", others)}.");
        }
    }

    private static void Step(BuildState state, Entry latest, Printout print)
    {
        var since = state.Next is { } older && older.Entry != latest.Ref ? $" (noted {Written.Date(older.Date)})" : "";
        print.Hang("Next      ", state.Next is { } next ? next.Text + since : "Not given. Add `next` to tonight's entry, and it will be shown here.");
    }

    private static void Left(BuildState state, Printout print)
    {
        if (state.Left is { Held: { } held })
        {
            print.Hang("Held      ", held);
        }

        if (state.Left is { Datum: { } datum })
        {
            print.Hang("Datum     ", datum);
        }
    }

    private static void Snags(BuildState state, Printout print)
    {
        foreach (var (i, open) in state.Snags.Index())
        {
            print.Hang(i == 0 ? "Snags     " : Indent, $"{open.Snag.Text} ({Written.Date(open.Date)})");
        }
    }

    private static void Parts(Build build, BuildState state, TitleBook titles, Printout print)
    {
        var parts = state.ToGo.Select(part => titles.Of(new PartRef(state.Build, part.Part)) + (part.Of == 1 ? "" : $" ({part.Pieces} of {part.Of})")).ToList();
        print.Hang("To go     ", parts.Count > 0 ? string.Join("; ", parts)
            : build.Parts.Count == 0 ? "The build has no parts list."
            : $"None: every part on the list is finished. If the build is finished too, put `status: finished` in {build.Folder}/build.yaml.");
    }

    private static void Lessons(Build build, Job job, Lessons lessons, TitleBook titles, Printout print)
    {
        if (JobToCome.GoingOn(build) is not { } more || LessonsToRead.Of(lessons.All).For(more) is not { Count: > 0 } toRead)
        {
            return;
        }

        var parts = job.Parts.Select(share => titles.Of(new PartRef(build.Id, share.Part))).ToList();
        print.Heading($"Before more {titles.InSentence(job.Operations)}{(parts.Count == 0 ? "" : $" on: {string.Join("; ", parts)}")}");
        foreach (var lesson in toRead.Select(read => read.Lesson))
        {
            var cost = lesson.MinutesLost == Minutes.Zero ? "" : $" ({lesson.MinutesLost} lost)";
            print.Hang("– ", lesson.Lesson.Text + cost);
        }
    }
}
