using Journal.Core.Model;

namespace Journal.Cli.Writing;

/// <summary>A part as a maker names it where only one build can be meant: <c>head</c>, <c>bench-drill/head</c>.</summary>
internal static class PartOfBuild
{
    /// <summary>The build and the part's word. A part that only one build has is that one's; else the build named, or the one under way.</summary>
    /// <exception cref="UsageException">There is no such build, or it cannot be told which.</exception>
    public static (Build Build, string Part) Find(OpenJournal open, string? build, string word)
    {
        if (word.Split('/') is [var of, var part])
        {
            return (open.Build(of), part);
        }

        var having = open.Journal.Builds.Where(one => one.HasPart(new(word))).ToList();
        return (build is null && having is [var only] ? only : open.Build(build), word);
    }
}
