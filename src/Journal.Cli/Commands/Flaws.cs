using Journal.Cli.Wording;
using Journal.Core.Checking;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Commands;

/// <summary>The short line that figures of a flawed journal come with.</summary>
internal static class Flaws
{
    /// <summary>How many problems there are and where to see them; null where figures can be trusted.</summary>
    /// <param name="reading">What reading gave.</param>
    /// <param name="named">The folder as the maker named it; null where none was.</param>
    public static string? Tell(JournalReading reading, string? named)
    {
        if (!reading.IsFlawed)
        {
            return null;
        }

        var problems = reading.Problems.Where(problem => problem.Severity != Severity.Warning).ToList();
        var missing = reading.Journal is null ? "nothing could be read" : $"what {(problems.Count == 1 ? "it touches" : "they touch")} is missing here";
        return $"{ProblemCounts.InWords(problems)} in the journal; {missing}. See `journal check{(named is null ? "" : $" --in {Quoted(named)}")}`.";
    }

    private static string Quoted(string folder) => folder.Contains(' ', StringComparison.Ordinal) ? $"\"{folder}\"" : folder;
}
