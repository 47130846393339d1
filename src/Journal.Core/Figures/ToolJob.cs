using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A job seen from one of the tools that it used or made.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Entry">The entry that tells of the job.</param>
/// <param name="Date">The entry's date.</param>
/// <param name="Job">The job.</param>
/// <param name="Used">Whether the job used it.</param>
/// <param name="Making">The job's time that went into making it; null where the job did not make it.</param>
internal sealed record ToolJob(Id<Tool> Tool, EntryRef Entry, DateOnly Date, Job Job, bool Used, Minutes? Making)
{
    /// <summary>The parts that the job was for.</summary>
    public IEnumerable<PartRef> Parts => Job.Parts.Select(share => new PartRef(Entry.Build, share.Part));

    /// <summary>Every tool of an entry's jobs once for each job. A job that made several shares its time among them equally, exactly.</summary>
    public static IEnumerable<ToolJob> Of(Entry entry)
    {
        foreach (var job in entry.Jobs)
        {
            var used = job.Tools.ToHashSet();
            var made = job.Made.Distinct().ToList();
            var making = made.Count == 0 ? [] : made.Zip(job.Time.ShareEqually(made.Count)).ToDictionary();
            foreach (var tool in job.Tools.Concat(made).Distinct())
            {
                yield return new ToolJob(
                    tool, entry.Ref, entry.Date, job, used.Contains(tool), making.TryGetValue(tool, out var time) ? time : null);
            }
        }
    }
}
