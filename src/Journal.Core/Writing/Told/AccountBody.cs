using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;

namespace Journal.Core.Writing.Told;

/// <summary>Whether an account can stand as the text of an entry, as it is.</summary>
public static class AccountBody
{
    /// <summary>What stands in the way, and what to do; null where nothing does.</summary>
    public static string? WhyNot(string account)
    {
        var log = new ProblemLog();
        new BodyReader("", log).Read(account, 1);
        return log.Problems.FirstOrDefault(problem => problem.Severity == Severity.Error) is { } problem ? $"{problem.Message} {problem.Remedy}" : null;
    }
}
