using Journal.Core.Parsing.Problems;
using Journal.Core.Wording;

namespace Journal.Cli.Wording;

/// <summary>How many problems there are of each severity.</summary>
internal static class ProblemCounts
{
    /// <summary>“3 errors, 1 omission and 2 warnings”.</summary>
    public static string InWords(IEnumerable<Problem> problems)
    {
        var bySeverity = problems.CountBy(problem => problem.Severity).OrderBy(count => count.Key);
        return Count.List([.. bySeverity.Select(count => Count.Of(count.Value, Name(count.Key)))]);
    }

    private static string Name(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Omission => "omission",
        _ => "warning",
    };
}
