using System.Globalization;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;

namespace Journal.Core.Writing.Told;

/// <summary>Turns the jobs of a proposal into those of an entry.</summary>
internal sealed class ToldJobs(ToldLimits limits, DateOnly date, List<LeftOut> leftOut)
{
    private static readonly string[] Makings = ["fixture-making", "tool-making"];

    private readonly HashSet<string> toolIds = [.. limits.Journal.Tools.Select(tool => tool.Id.Value)];

    /// <summary>The jobs that can be written.</summary>
    public List<ToldJob> Read(Proposal proposal)
    {
        var told = new List<ToldJob>();
        foreach (var said in proposal.Jobs)
        {
            if (WhyNot(said) is { } why)
            {
                leftOut.Add(new(Title(said), why, said.Words is [var words, ..] ? words : null));
            }
            else
            {
                told.Add(new ToldJob(JobOf(said), said.Words));
            }
        }

        return told;
    }

    /// <summary>Gives the jobs what they made, the mistakes that they put right, and the new tools that they used.</summary>
    /// <returns>The new tools, for the crib.</returns>
    public IReadOnlyList<NewTool> Complete(List<ToldJob> jobs, Proposal proposal)
    {
        foreach (var thing in proposal.Made)
        {
            Give(thing, jobs);
        }

        foreach (var mended in proposal.Mends.Where(mended => jobs.TrueForAll(job => job.Job.Mends != mended.Id.Value)))
        {
            var at = ToldJob.IndexAt(jobs, mended.Words);
            if (at >= 0 && jobs[at].Job.Mends is null)
            {
                jobs[at] = jobs[at] with { Job = jobs[at].Job with { Mends = mended.Id.Value } };
            }
            else
            {
                leftOut.Add(new($"mends {mended.Id}", at < 0 ? "no job can be written that did it" : "the job mends another", mended.Words));
            }
        }

        return [.. proposal.NewTools.Select(tool => Use(tool, jobs)).OfType<NewTool>()];
    }

    private NewTool? Use(ProposedText tool, List<ToldJob> jobs)
    {
        if (NewId(tool.Text) is not { } id)
        {
            return null;
        }

        if (ToldJob.IndexAt(jobs, tool.Words) is >= 0 and var at)
        {
            jobs[at] = jobs[at] with { Job = jobs[at].Job with { Tools = [.. jobs[at].Job.Tools, id] } };
        }

        return new NewTool(id, tool.Text, null);
    }

    private string? WhyNot(ProposedJob said) => said.Time is { } time ? limits.WhyNoTime(date, time) : limits.TakesGaps ? null : "no time was said for it";

    private NewJob JobOf(ProposedJob said) => new(
        said.Parts.Count == 0 && !limits.TakesGaps ? ["whole"] : [.. said.Parts.Select(part => part.Value)],
        [.. said.Operations.Select(operation => operation.Value)],
        said.Time?.ToString() ?? "")
    {
        SetUp = said.SetUp is { Count: > 0 } setUp && setUp <= said.Time ? setUp.ToString() : null,
        Held = said.Held,
        Datum = said.Datum,
        Tools = [.. said.Tools.Select(tool => tool.Value)],
        Mends = said.Mends?.Value,
    };

    private void Give(ProposedTool thing, List<ToldJob> jobs)
    {
        var making = jobs.FindIndex(job => job.Job.Operations.Any(Makings.Contains));
        var at = making >= 0 ? making : ToldJob.IndexAt(jobs, thing.Words);
        if (at < 0 || NewId(thing.Title) is not { } id)
        {
            leftOut.Add(new($"made {thing.Title}", at < 0 ? "no job can be written that made it" : "it needs a name of its own", thing.Words));
            return;
        }

        var kind = limits.Journal.Vocabulary.ToolKinds.TryFind(thing.Kind, out var known) ? known.Value : null;
        jobs[at] = jobs[at] with { Job = jobs[at].Job with { Made = [.. jobs[at].Job.Made, new NewTool(id, thing.Title, kind)] } };
    }

    // Another thing of the same name is another thing.
    private string? NewId(string title)
    {
        if (ToolNames.NewId(title)?.Value is not { } slug)
        {
            return null;
        }

        var id = Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? slug : string.Create(CultureInfo.InvariantCulture, $"{slug}-{n}")).First(one => !toolIds.Contains(one));
        toolIds.Add(id);
        return id;
    }

    private static string Title(ProposedJob job) => string.Join(", ", new[]
    {
        job.Parts.Count == 0 ? null : string.Join(" and ", job.Parts),
        job.Operations.Count == 0 ? null : string.Join(" and ", job.Operations),
        job.Time?.ToString(),
    }.Where(text => text is not null)) is { Length: > 0 } title ? title : "a job";
}
