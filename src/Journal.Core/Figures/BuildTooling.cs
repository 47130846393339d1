using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>
/// What another maker would need for a build: only what was really used in it. Jigs and fixtures stand in a list of their
/// own, and beside the other tools only if they are called essential or a workaround.
/// </summary>
/// <param name="Build">The build.</param>
/// <param name="Essential">The job cannot be done without them; in the order of <see cref="Tooling.Tools"/>.</param>
/// <param name="Handy">They save time.</param>
/// <param name="Workarounds">Made up for a limit of this workshop.</param>
/// <param name="Fixtures">Jigs and fixtures used or made in the build.</param>
public sealed record BuildTooling(
    Id<Build> Build,
    IReadOnlyList<Id<Tool>> Essential,
    IReadOnlyList<Id<Tool>> Handy,
    IReadOnlyList<Id<Tool>> Workarounds,
    IReadOnlyList<FixtureServed> Fixtures)
{
    private static readonly Id<ToolKind> Jig = new("jig");
    private static readonly Id<ToolKind> Fixture = new("fixture");

    /// <summary>What each build of a journal needs, in the order of the builds.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="tools">All tools in the order in which the lists name them.</param>
    /// <param name="jobs">Each use and each making of a tool, in the order of the work.</param>
    internal static IReadOnlyList<BuildTooling> Of(MakerJournal journal, IReadOnlyList<ToolFigure> tools, IReadOnlyList<ToolJob> jobs)
    {
        var ranks = tools.Index().ToDictionary(tool => tool.Item.Id, tool => tool.Index);
        var byBuild = jobs.ToLookup(job => job.Entry.Build);
        return [.. journal.Builds.Select(build => Of(build.Id, byBuild[build.Id]))];

        BuildTooling Of(Id<Build> build, IEnumerable<ToolJob> inBuild)
        {
            var groups = inBuild.GroupBy(job => job.Tool)
                .OrderBy(group => ranks[group.Key])
                .Select(group => (Figure: tools[ranks[group.Key]], Jobs: group))
                .ToList();
            var used = groups.Where(group => group.Jobs.Any(job => job.Used)).Select(group => group.Figure.Tool).ToList();
            return new BuildTooling(
                build,
                [.. used.Where(tool => tool.Need == Need.Essential).Select(tool => tool.Id)],
                [.. used.Where(tool => tool.Need == Need.Handy && !Holds(tool)).Select(tool => tool.Id)],
                [.. used.Where(tool => tool.Need == Need.Workaround).Select(tool => tool.Id)],
                [.. groups.Where(group => Holds(group.Figure.Tool)).Select(group => FixtureServed.Of(group.Figure, group.Jobs))]);
        }
    }

    private static bool Holds(Tool tool) => tool.Kind == Jig || tool.Kind == Fixture;
}

/// <summary>A jig or fixture and the parts of a build that it served.</summary>
/// <param name="Tool">The jig or fixture.</param>
/// <param name="MinutesToMake">The time that making it took, in all builds; zero for what was not made here.</param>
/// <param name="Parts">The parts of the build that it was used on or made for, in the order of the work.</param>
public sealed record FixtureServed(Id<Tool> Tool, Minutes MinutesToMake, IReadOnlyList<Id<Part>> Parts)
{
    /// <summary>A jig or fixture with the parts of <paramref name="jobs"/>, which are those of one build.</summary>
    internal static FixtureServed Of(ToolFigure figure, IEnumerable<ToolJob> jobs) =>
        new(figure.Id, figure.MinutesToMake, [.. jobs.SelectMany(job => job.Parts).Select(part => part.Part).Distinct()]);
}
