using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;

namespace Journal.Core.Writing.Told;

/// <summary>A job as it was told, and as it can be written.</summary>
/// <param name="Job">As it can be written.</param>
/// <param name="Words">Where it was told.</param>
public sealed record ToldJob(NewJob Job, IReadOnlyList<Span> Words)
{
    /// <summary>The number, from 1, of the job that was spoken of last before some words, or with them; 1 where none was.</summary>
    public static int NumberAt(IReadOnlyList<ToldJob> jobs, Span words) => Math.Max(0, IndexAt(jobs, words)) + 1;

    /// <summary>The same as an index; -1 without jobs.</summary>
    internal static int IndexAt(IReadOnlyList<ToldJob> jobs, Span words)
    {
        var before = jobs.Index().Where(job => job.Item.Start < words.End).ToList();
        return before.Count > 0 ? before.MaxBy(job => job.Item.Start).Index : jobs.Count > 0 ? 0 : -1;
    }

    /// <summary>Where it was first told of.</summary>
    internal int Start => Words.Count == 0 ? 0 : Words.Min(span => span.Start);
}
