using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Wording;
using Spectre.Console;

namespace Journal.Cli.Tables;

/// <summary>The problems of a journal, for people: grouped by file, each with its line, a mark, and what to do.</summary>
internal static class ProblemList
{
    private const string Indent = "      ";

    /// <summary>All problems and a last line with their counts, or one friendly line.</summary>
    /// <param name="folder">The journal's folder, from which the lines are shown.</param>
    /// <param name="reading">What reading it gave.</param>
    /// <param name="print">Where to.</param>
    public static void Print(string folder, JournalReading reading, Printout print)
    {
        if (reading.Problems.Count > 0)
        {
            Print(folder, reading.Problems, print);
            return;
        }

        print.Gap();
        print.Say(AllWell(reading), reading.IsFlawed ? Ink.Bad : Ink.Good);
    }

    /// <summary>Problems, and a last line with their counts.</summary>
    /// <param name="folder">The journal's folder, from which the lines are shown.</param>
    /// <param name="problems">At least one.</param>
    /// <param name="print">Where to.</param>
    public static void Print(string folder, IReadOnlyList<Problem> problems, Printout print)
    {
        // What stops publishing comes first, whatever file it stands in.
        foreach (var file in problems.GroupBy(problem => (problem.Severity, problem.Place.File)).OrderBy(group => Rank(group.Key.Severity)))
        {
            var lines = SourceLines.Of(Path.Combine(folder, file.Key.File));
            print.Heading(file.Key.File);
            foreach (var problem in file)
            {
                PrintProblem(problem, lines, print);
            }
        }

        print.Gap();
        print.Say(LastLine(problems), problems.All(problem => problem.Severity == Severity.Warning) ? Ink.Good : Ink.Bad);
    }

    private static int Rank(Severity severity) => severity switch { Severity.Error => 0, Severity.Omission => 1, _ => 2 };

    private static void PrintProblem(Problem problem, SourceLines lines, Printout print)
    {
        var (place, severity) = ($"{problem.Place.Line}:{problem.Place.Column}", problem.Severity.ToWord());
        print.Put($"  {place,-7} {severity}", StyleOf(problem.Severity));
        print.Say(problem.Message, indent: Indent.Length);
        if (lines.Show(problem.Place, print.Width - Indent.Length) is { } shown)
        {
            print.Put(Indent + shown.Line, Ink.Faint);
            print.Put(Indent + shown.Mark, Ink.Marking);
        }

        print.Say(problem.Remedy, indent: Indent.Length);
    }

    private static string AllWell(JournalReading reading) => reading.Journal is not { Builds.Count: > 0 } journal
        ? "No problems, and no builds yet. Add one with `journal add build <id>`."
        : $"No problems: {Count.Of(journal.Builds.Count, "build")}, {Count.Of(journal.Builds.Sum(build => build.Entries.Count), "entry", "entries")}, {Count.Of(journal.Tools.Count, "tool")}.";

    private static string LastLine(IReadOnlyList<Problem> problems)
    {
        var counts = Casing.Capital(ProblemCounts.InWords(problems));
        var files = Count.Of(problems.Select(problem => problem.Place.File).Distinct().Count(), "file");
        return $"{counts} in {files}. {Meaning(problems)}";
    }

    private static string Meaning(IReadOnlyList<Problem> problems) =>
        problems.Any(problem => problem.Severity == Severity.Error) ? "Errors stop publishing: the site stays as it is until they are corrected."
        : problems.Any(problem => problem.Severity == Severity.Omission) ? "Everything else will be published."
        : "Warnings do not stop publishing.";

    private static Style StyleOf(Severity severity) => severity == Severity.Warning ? Ink.Odd : Ink.Bad;
}
