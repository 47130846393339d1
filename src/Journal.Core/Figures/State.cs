using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>Where the maker is (docs/figures.md, State).</summary>
/// <param name="Builds">The builds by id.</param>
/// <param name="UnderWay">Those under way, the last touched first: worked on or begun.</param>
public sealed record State(IReadOnlyList<BuildState> Builds, IReadOnlyList<BuildState> UnderWay)
{
    /// <summary>The build that the maker is at; null where none is under way.</summary>
    public BuildState? Current => UnderWay.Count == 0 ? null : UnderWay[0];

    /// <summary>The state of a journal.</summary>
    public static State Of(MakerJournal journal)
    {
        List<BuildState> builds = [.. journal.Builds.Select(BuildState.Of)];
        return new State(builds, [.. builds
            .Where(build => build.Status == BuildStatus.UnderWay)
            .OrderByDescending(build => build.LastTouched.HasValue)
            .ThenByDescending(build => build.LastTouched)
            .ThenBy(build => build.LastTouched is not null && build.Latest is not null)
            .ThenBy(build => build, Comparer<BuildState>.Create((one, other) => one.LastTouched is null ? one.Build.CompareTo(other.Build) : other.Build.CompareTo(one.Build)))]);
    }
}
