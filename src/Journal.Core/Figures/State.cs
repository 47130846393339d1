using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>Where the maker is (DESIGN section 4, State).</summary>
/// <param name="Builds">The builds by id.</param>
/// <param name="Current">The build under way with the latest entry; of two on one day the later id, of builds without entries the first.</param>
public sealed record State(IReadOnlyList<BuildState> Builds, BuildState? Current)
{
    /// <summary>The state of a journal.</summary>
    public static State Of(MakerJournal journal)
    {
        List<BuildState> builds = [.. journal.Builds.Select(BuildState.Of)];
        var underWay = builds.Where(build => build.Status == BuildStatus.UnderWay).ToList();
        var current = underWay.Where(build => build.Latest is not null)
            .OrderBy(build => build.LatestDate)
            .ThenBy(build => build.Build)
            .LastOrDefault();
        return new State(builds, current ?? underWay.FirstOrDefault());
    }
}
