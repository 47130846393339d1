using Journal.Cli.Commands.Adding;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing.Told;

/// <summary>What options say counts instead of what an account says.</summary>
internal static class ToldOverrides
{
    /// <summary>The proposal with what was said beforehand: part, operations and tools for every job, hours for the evening as a whole.</summary>
    /// <exception cref="UsageException">Something of it means nothing here.</exception>
    public static Proposal Apply(Proposal proposal, EntryRequest request, OpenJournal open, Build build, Func<string, string> tool)
    {
        var (part, operations, hours) = (OpenJournal.Part(build, request.Part), open.Operations(request.Operations), Hours(request.Hours));
        var tools = request.Tools?.Select(one => new Id<Tool>(tool(one))).ToList();
        var told = proposal.Jobs.Count == 0 && (part is not null || operations.Count > 0 || hours is not null) ? [new ProposedJob()] : proposal.Jobs;
        var jobs = told.Select(job => job with
        {
            Parts = part is null ? job.Parts : part == "whole" ? [] : [new(part)],
            Operations = operations.Count == 0 ? job.Operations : [.. operations.Select(operation => new Id<Operation>(operation))],
            Tools = tools ?? job.Tools,
        }).ToList();
        var changed = proposal with
        {
            Jobs = jobs,
            Mistakes = request.Mistakes is { } mistakes ? [.. mistakes.Select(what => new ProposedMistake(what, default))] : proposal.Mistakes,
            Next = request.Next is { } next ? new ProposedText(next, default) : proposal.Next,
        };
        return hours is { } time ? Lasting(changed, time) : changed;
    }

    /// <summary>The proposal of an evening that lasted so long; the jobs keep times of their own that come to it.</summary>
    private static Proposal Lasting(Proposal proposal, Minutes time)
    {
        var isAsTold = proposal.Jobs.All(job => job.Time is not null) && proposal.Jobs.Select(job => job.Time!.Value).Sum() == time;
        return proposal with { Total = time, TotalWords = [], Jobs = isAsTold ? proposal.Jobs : [.. proposal.Jobs.Select(job => job with { Time = null })] };
    }

    private static Minutes? Hours(string? said)
    {
        Additions.Refuse(said is not null && (HoursText.Read(said) is null || !HoursText.IsOfOneDay(said)), HoursText.WhyNot(said ?? ""));
        return said is null ? null : HoursText.TimeOf(said);
    }
}
