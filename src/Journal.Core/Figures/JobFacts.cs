using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>The job that a mistake or a lesson belongs to, and what was known of it.</summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Date">The entry's date.</param>
/// <param name="Job">The number of the job in the entry, from 1.</param>
/// <param name="Operations">What was done, as listed.</param>
/// <param name="Parts">The parts it was for; none for the build as a whole.</param>
/// <param name="Materials">What those parts are made of, each once.</param>
/// <param name="Tools">The tools used.</param>
public sealed record JobFacts(
    EntryRef Entry,
    DateOnly Date,
    int Job,
    IReadOnlyList<Id<Operation>> Operations,
    IReadOnlyList<PartRef> Parts,
    IReadOnlyList<Material> Materials,
    IReadOnlyList<Id<Tool>> Tools)
{
    /// <summary>The facts of a job by its number; a number that the entry does not have means its first job.</summary>
    internal static JobFacts Of(Entry entry, int number, IReadOnlyDictionary<Id<Part>, Part> parts)
    {
        var job = number >= 1 && number <= entry.Jobs.Count ? entry.Jobs[number - 1] : entry.Jobs[0];
        var ids = job.Parts.Select(share => share.Part).Distinct().ToList();
        return new JobFacts(
            entry.Ref,
            entry.Date,
            job.Number,
            job.Operations,
            [.. ids.Select(id => new PartRef(entry.Build, id))],
            [.. ids.Select(id => parts.GetValueOrDefault(id)?.Material).OfType<Material>().Distinct()],
            job.Tools);
    }
}
