using System.CommandLine;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Options;

/// <summary><c>--part head</c>, <c>--part bench-drill/head</c>: one part, or the build as a whole.</summary>
internal static class PartOption
{
    private const string Whole = "whole";

    /// <summary>The option, one to a command.</summary>
    public static Option<string?> Create() => new("--part")
    {
        Description = "Only this part; `build/part` if several builds have a part of that name, `whole` for a build as a whole.",
        HelpName = "part",
    };

    /// <summary>Why no part of the journal can be meant; null where one can, or none was asked for.</summary>
    public static string? Objection(string? word, MakerJournal journal)
    {
        var known = journal.Builds.SelectMany(build => build.Parts.Select(part => part.Id.Value).Append(Whole), (build, part) => (part, full: $"{build.Id}/{part}")).ToList();
        return word is null || known.Exists(one => one.part == word || one.full == word)
            ? null
            : $"There is no part `{word}`. {Suggestion.For(word, [.. known.Select(one => word.Contains('/', StringComparison.Ordinal) ? one.full : one.part).Distinct()], "parts")}";
    }

    /// <summary>Whether a part is the one asked for.</summary>
    public static bool Takes(string? word, Id<Build> build, Id<Part>? part) =>
        word is null || word == (part?.Value ?? Whole) || word == $"{build}/{part?.Value ?? Whole}";
}
