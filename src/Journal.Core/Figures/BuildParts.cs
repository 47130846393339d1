using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>The parts of a build, in the one order that all figures keep.</summary>
internal static class BuildParts
{
    /// <summary>The parts list, then parts that only jobs name, in the order of the work.</summary>
    public static IEnumerable<Id<Part>> PartsNamed(this Build build) =>
        build.Parts.Select(part => part.Id)
            .Concat(build.Entries.SelectMany(entry => entry.Jobs).SelectMany(job => job.Parts).Select(share => share.Part))
            .Distinct();

    /// <summary>The parts list by id; where two share an id the first keeps it.</summary>
    public static IReadOnlyDictionary<Id<Part>, Part> PartsById(this Build build) =>
        build.Parts.DistinctBy(part => part.Id).ToDictionary(part => part.Id);
}
