using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What a maker is about to do, as far as it is known; at least one of the four.</summary>
/// <param name="Operations">The operations.</param>
/// <param name="Materials">What it is done to.</param>
/// <param name="Parts">The parts by their ids, whichever build they belong to: one head teaches another.</param>
/// <param name="Tools">The tools.</param>
public sealed record JobToCome(
    IReadOnlyList<Id<Operation>> Operations,
    IReadOnlyList<Id<MaterialFamily>> Materials,
    IReadOnlyList<Id<Part>> Parts,
    IReadOnlyList<Id<Tool>> Tools)
{
    /// <summary>Work with one operation, nothing else known.</summary>
    public static JobToCome With(Id<Operation> operation) => new([operation], [], [], []);

    /// <summary>Going on with the latest job of a build; null where there is none yet.</summary>
    public static JobToCome? GoingOn(Build build)
    {
        if (build.Entries.Count == 0)
        {
            return null;
        }

        var job = build.Entries[^1].Jobs[^1];
        var parts = BuildParts.PartsById(build);
        IReadOnlyList<Id<Part>> ids = [.. job.Parts.Select(share => share.Part).Distinct()];
        return new JobToCome(
            job.Operations,
            [.. ids.Select(id => parts.GetValueOrDefault(id)?.Material?.Family).OfType<Id<MaterialFamily>>().Distinct()],
            ids,
            []);
    }
}
