using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;

namespace Journal.Core.Writing.Told;

/// <summary>An evening as it was told: what can be written of it as keys, and what cannot, each with its reason.</summary>
/// <param name="Jobs">The work in the order told; none where none can be written.</param>
/// <param name="Facts">What else it gave.</param>
/// <param name="LeftOut">What was said and stays in the text alone.</param>
public sealed record ToldEvening(IReadOnlyList<NewJob> Jobs, Amendment Facts, IReadOnlyList<LeftOut> LeftOut)
{
    /// <summary>
    /// The keys of a proposal that <c>check</c> has nothing against. Everything in the proposal counts as confirmed; its questions
    /// do not.
    /// </summary>
    /// <param name="proposal">The proposal.</param>
    /// <param name="date">The evening.</param>
    /// <param name="limits">What the journal can still hold.</param>
    public static ToldEvening Of(Proposal proposal, DateOnly date, ToldLimits limits)
    {
        var (settled, leftOut) = (limits.TakesGaps ? ToldTimes.Together(proposal) : ToldTimes.Settle(proposal), new List<LeftOut>());
        var jobs = new ToldJobs(limits, date, leftOut).Read(settled);
        var told = Of(settled, jobs, date, limits, leftOut);
        if (jobs.Count > 0 && settled.Jobs.All(job => job.Time is not null) && ToldTimes.Rest(settled) is { Count: > 0 } rest)
        {
            leftOut.Add(new($"{rest} of the {settled.Total}", "no job was told for it", settled.TotalWords is [var words, ..] ? words : null));
        }

        leftOut.AddRange(proposal.Questions.Select(question => new LeftOut(question.Text, "it is not sure", question.Words)));
        return told;
    }

    /// <summary>The same where the jobs are known already, and the proposal says what else the evening gave.</summary>
    /// <param name="proposal">The proposal, whose own jobs do not count.</param>
    /// <param name="jobs">The jobs, each with where it was told.</param>
    /// <param name="date">The evening.</param>
    /// <param name="limits">What the journal can still hold.</param>
    public static ToldEvening Of(Proposal proposal, IReadOnlyList<ToldJob> jobs, DateOnly date, ToldLimits limits) => Of(proposal, [.. jobs], date, limits, []);

    private static ToldEvening Of(Proposal proposal, List<ToldJob> jobs, DateOnly date, ToldLimits limits, List<LeftOut> leftOut)
    {
        var tools = new ToldJobs(limits, date, leftOut).Complete(jobs, proposal);
        var facts = new ToldFacts(limits, date, jobs, leftOut).Read(proposal);
        return new ToldEvening([.. jobs.Select(job => job.Job)], facts, leftOut)
        {
            NewTools = tools,
            NewParts = [.. proposal.NewParts.Select(part => (ToolNames.NewId(part.Text)?.Value ?? "", part.Text)).Where(part => part.Item1.Length > 0 && part.Item1 != "whole" && !limits.Build.HasPart(new(part.Item1))).DistinctBy(part => part.Item1)],
        };
    }

    /// <summary>Tools for the crib, which jobs name already.</summary>
    public IReadOnlyList<NewTool> NewTools { get; init; } = [];

    /// <summary>Parts for the build's list, by id and title.</summary>
    public IReadOnlyList<(string Id, string Title)> NewParts { get; init; } = [];

    /// <summary>How many keys it is: those of the jobs, and one for each fact.</summary>
    public int Keys => Jobs.Sum(job => job.Keys.Count(pair => pair.Value is not null && pair != ("part", "whole"))) + Facts.Count;
}
