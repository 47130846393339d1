using Journal.Bench.Slates;
using Journal.Core.Model;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Bench.WriteUps;

/// <summary>A draft, and what belongs to it beside the entry.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Told">What was told: new tools and parts for their lists, and what cannot be written.</param>
internal sealed record Drafted(EntryDraft Entry, ToldEvening Told);

/// <summary>Makes the entry of an evening of what its form says: to the byte the one that <c>journal write</c> makes of the same answers.</summary>
internal static class Drafting
{
    /// <summary>The draft.</summary>
    /// <exception cref="RefusedException">Something in the form means nothing; the message says what, and what to write.</exception>
    public static Drafted Of(EveningToWrite evening, WriteUpFields fields)
    {
        var isNew = evening.Into is null;
        var jobs = isNew ? Jobs(evening, fields) : [new ToldJob(WriteUpFields.StandingJob(evening), [.. evening.Heard.Proposal.Jobs.SelectMany(job => job.Words)])];
        var tools = Tools(evening, fields.Tools);
        var heard = WriteUpFields.Items(evening).Where(item => !fields.Kept.Contains(WriteUpFields.NameOf(item))).Aggregate(evening.Heard.Proposal, (left, item) => item.Without(left));
        var mistakes = Offered.Mistakes(heard, jobs);
        var rest = Offered.Rest(heard, mistakes.Select(mistake => mistake.Lesson).OfType<string>().ToHashSet(StringComparer.Ordinal), isNew);
        var told = ToldEvening.Of(rest, jobs, evening.Evening, new ToldLimits(evening.Journal, evening.Build));
        told = told with { Jobs = [.. told.Jobs.Select(job => job with { Tools = [.. tools, .. job.Tools] })] };
        var words = new WriteUp
        {
            Title = Said(fields.Title),
            Tools = isNew ? [] : tools,
            Facts = told.Facts with { Mistakes = mistakes, Next = Said(fields.Next) },
            Photos = [.. evening.Pictures.Names.Select(name => new NewPhoto(name, null))],
        };
        return new Drafted(Entry(evening, told, words), told);
    }

    private static EntryDraft Entry(EveningToWrite evening, ToldEvening told, WriteUp words)
    {
        var draft = new EveningDraft(evening.Folder, evening.Build);
        if (evening.Into is not { } file)
        {
            return draft.Of(evening.Evening, told.Jobs, words.With(ToldTonight.Of(evening.Jots, told.Jobs)));
        }

        var (into, whyNot) = draft.Of(file, words.With(ToldTonight.Of(evening.Jots, EveningEntry.JobsIn(evening.Folder, file))));
        return into ?? throw new RefusedException(whyNot);
    }

    private static List<ToldJob> Jobs(EveningToWrite evening, WriteUpFields fields)
    {
        var offered = Offered.Jobs(evening.Heard, evening.Journal, evening.Build, null);
        var jobs = fields.Jobs.Zip(offered).Where(pair => pair.First.IsIn).Select(pair => new ToldJob(JobOf(evening, pair.First), pair.Second.Words)).ToList();
        return jobs.Count > 0 ? jobs : throw new RefusedException("An entry needs a job. Tick one.");
    }

    private static NewJob JobOf(EveningToWrite evening, JobFields fields)
    {
        if (HoursText.Read(fields.Hours) is not { } hours || !HoursText.IsOfOneDay(hours))
        {
            throw new RefusedException(fields.Hours.Length == 0 ? "Say how long it took, such as `1h30`." : HoursText.WhyNot(fields.Hours));
        }

        Refuse(fields.SetUp is not ("" or "half" or "most") && !HoursText.IsDuration(fields.SetUp), $"`{fields.SetUp}` is not a time for setting up. Write `20m`, `half` or `most`.");
        var parts = Words(fields.Part);
        var unknown = parts.FirstOrDefault(part => part != "whole" && !evening.Build.HasPart(new(part)));
        Refuse(unknown is not null, $"{evening.Build.Title} has no part `{unknown}`.");
        Refuse(parts.Count > 1 && parts.Contains("whole"), "`whole` is the build as a whole: say it alone, or name the parts.");
        return new NewJob(parts, [.. Words(fields.Operation).Select(word => Operation(evening.Journal, word)).Distinct()], hours)
        {
            SetUp = Said(fields.SetUp),
            Held = Said(fields.Held),
            Datum = Said(fields.Datum),
            Mends = Said(fields.Mends),
        };
    }

    private static string Operation(MakerJournal journal, string word) =>
        journal.Vocabulary.Operations.TryFind(word.ToLowerInvariant().Replace(' ', '-'), out var id) ? id.Value : throw new RefusedException($"There is no operation `{word}`.");

    private static List<string> Tools(EveningToWrite evening, string line)
    {
        var names = new ToolNames(evening.Journal);
        return [.. names.On(line).Select(name => names.Find(name)?.Value ?? ToolNames.NewId(name)?.Value ?? throw new RefusedException($"`{name}` is not a tool. Use lower-case words joined by hyphens, such as boring-head.")).Distinct()];
    }

    private static List<string> Words(string line) => [.. line.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Distinct()];

    private static string? Said(string text) => text.Length == 0 ? null : text;

    private static void Refuse(bool isWrong, string why)
    {
        if (isWrong)
        {
            throw new RefusedException(why);
        }
    }
}
