using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Commands;

/// <summary>The plan or build that a maker names.</summary>
internal static class EstimateSubjects
{
    /// <summary>The build of a name: of a plan and a build so called, the build, as the plan was begun.</summary>
    public static Build? BuildNamed(this MakerJournal journal, string name) => journal.Builds.FirstOrDefault(build => build.Id.Value == name);

    /// <summary>The plan of a name.</summary>
    public static Plan? PlanNamed(this MakerJournal journal, string name) => journal.Plans.FirstOrDefault(plan => plan.Id.Value == name);

    /// <summary>
    /// Tells what is wrong in the file of a plan or build, as an estimate of what was half read would mislead; false where
    /// nothing is.
    /// </summary>
    public static bool TellErrors(string name, string folder, JournalReading reading, Terminal terminal)
    {
        var file = reading.Journal?.BuildNamed(name) is { } build ? $"{build.Folder}/build.yaml" : null;
        var errors = reading.Problems
            .Where(problem => problem.Severity == Severity.Error)
            .Where(problem => file is not null ? problem.Place.File == file
                : problem.Place.File == $"plans/{name}.yaml" || $"/{problem.Place.File}".EndsWith($"/{name}/build.yaml", StringComparison.Ordinal))
            .ToList();
        if (errors.Count > 0)
        {
            ProblemList.Print(folder, reading with { Problems = errors }, new Printout(terminal with { Out = terminal.Error }));
        }

        return errors.Count > 0;
    }

    /// <summary>That nothing has such a name, with the nearest that does.</summary>
    public static string NoneNamed(string name, string what, IReadOnlyCollection<string> known) =>
        $"There is no {what} `{name}`. {Suggestion.For(name, known, what == "plan" ? "plans" : "plans and builds")}";
}
