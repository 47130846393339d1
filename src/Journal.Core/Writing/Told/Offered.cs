using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;

namespace Journal.Core.Writing.Told;

/// <summary>What is offered for an evening's entry before anybody said anything: from the remarks, else from what was usual before.</summary>
public static class Offered
{
    private const string Whole = "whole";

    /// <summary>The jobs: those that the remarks tell of, or one as it usually is.</summary>
    /// <param name="heard">The remarks.</param>
    /// <param name="journal">The journal.</param>
    /// <param name="build">The build.</param>
    /// <param name="span">The time that the evening's pictures span; null where they span none.</param>
    public static IReadOnlyList<ToldJob> Jobs(Heard heard, MakerJournal journal, Build build, Minutes? span)
    {
        ArgumentNullException.ThrowIfNull(heard);
        var said = ToldTimes.Settle(heard.Proposal).Jobs;
        return said.Count == 0 ? [Job(null, journal, build, span)] : [.. said.Select(job => Job(job, journal, build, span))];
    }

    /// <summary>Tools for a job: those that were named, else those that it is usually done with.</summary>
    public static IReadOnlyList<Id<Tool>> Tools(Heard heard, MakerJournal journal, NewJob job)
    {
        ArgumentNullException.ThrowIfNull(heard);
        ArgumentNullException.ThrowIfNull(job);
        return heard.Proposal.Jobs.FirstOrDefault(one => one.Tools.Count > 0)?.Tools ?? (job.Operations.Count == 0 ? [] : Usual.Tools(journal, new(job.Operations[0])));
    }

    /// <summary>The part that a job is usually on: null in a build without parts.</summary>
    public static string? Part(MakerJournal journal, Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return build.Parts.Count == 0 ? null : Usual.Part(build, State.Of(journal).Builds.Single(state => state.Build == build.Id))?.Value ?? Whole;
    }

    /// <summary>The operation that a job on some parts usually is; null where that cannot be told.</summary>
    public static string? Operation(Build build, IReadOnlyList<string> parts) => Usual.Operation(build, parts is [var one] && one != Whole ? new Id<Part>(one) : null)?.Value;

    /// <summary>The lesson of a mistake, where the remarks tell of one mistake and one lesson; else null.</summary>
    public static ProposedText? LessonOfTheMistake(Proposal heard)
    {
        ArgumentNullException.ThrowIfNull(heard);
        return heard is { Mistakes.Count: 1, Lessons: [var only] } ? only : null;
    }

    /// <summary>The mistakes as they were told.</summary>
    public static IReadOnlyList<NewMistake> Mistakes(Proposal heard, IReadOnlyList<ToldJob> jobs)
    {
        ArgumentNullException.ThrowIfNull(heard);
        return
        [
            .. heard.Mistakes.Select(said => new NewMistake(said.What)
            {
                Cause = said.Cause?.Value,
                Lost = said.Lost is { Count: > 0 } lost ? lost.ToString() : null,
                Outcome = said.Outcome,
                Repeats = said.Repeats?.Value,
                Lesson = LessonOfTheMistake(heard)?.Text,
                Job = ToldJob.NumberAt(jobs, said.Words),
            }),
        ];
    }

    /// <summary>What the remarks say beside jobs, mistakes and the next step.</summary>
    /// <param name="heard">The remarks.</param>
    /// <param name="taught">Lessons that mistakes have already.</param>
    /// <param name="isNew">Whether it goes into a new entry; what belongs to a job that stands already cannot be added to it.</param>
    public static Proposal Rest(Proposal heard, IReadOnlySet<string> taught, bool isNew)
    {
        ArgumentNullException.ThrowIfNull(heard);
        return heard with
        {
            Jobs = [],
            Total = null,
            Mistakes = [],
            Next = null,
            Lessons = [.. heard.Lessons.Where(lesson => !taught.Contains(lesson.Text))],
            Made = isNew ? heard.Made : [],
            Mends = isNew ? heard.Mends : [],
            NewTools = isNew ? heard.NewTools : [],
            Questions = [],
        };
    }

    private static ToldJob Job(ProposedJob? said, MakerJournal journal, Build build, Minutes? span)
    {
        IReadOnlyList<string> parts = said is { Parts.Count: > 0 } ? [.. said.Parts.Select(part => part.Value)] : Part(journal, build) is { } usual ? [usual] : [];
        IReadOnlyList<string> operations = said is { Operations.Count: > 0 } ? [.. said.Operations.Select(operation => operation.Value)] : Operation(build, parts) is { } one ? [one] : [];
        return new ToldJob(
            new NewJob(parts, operations, said?.Time?.ToString() ?? (span is { Count: > 0 } ? span.Value.ToString() : ""))
            {
                SetUp = said?.SetUp is { Count: > 0 } setUp ? setUp.ToString() : null,
                Held = said?.Held,
                Datum = said?.Datum,
                Mends = said?.Mends?.Value,
            },
            said?.Words ?? []);
    }
}
