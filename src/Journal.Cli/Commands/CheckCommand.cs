using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Checking;
using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Commands;

/// <summary><c>journal check</c>: every problem, with its place and a remedy.</summary>
internal static class CheckCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (folder, format, today) = (InOption.Create(), FormatOption.Create(), TodayOption.Create(hidden: false));
        var command = new ExampledCommand("check", "List every problem in the journal, with its place and what to do about it.", "journal check --format json")
        {
            folder, format, today,
        };
        command.SetAction(asked => Run(asked.GetValue(folder), asked.GetValue(format), asked.GetValue(today), terminal));
        return command;
    }

    private static int Run(string? named, OutputFormat format, DateOnly? today, Terminal terminal)
    {
        if (JournalPlace.Find(named, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(named, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        var asOf = today ?? terminal.TodayAt(folder);
        var reading = JournalReader.Read(folder, asOf);
        IReadOnlyList<(string File, LikeOffer Offer)> offers = reading.Journal is { } journal ? LikeOffer.For(journal, asOf) : [];
        switch (format)
        {
            case OutputFormat.Json:
                Json.Write(new { Problems = reading.Problems.Select(Shape), Offers = offers.Select(Shape) }, terminal.Out);
                break;
            case OutputFormat.Csv:
                new CsvTable(["severity", "code", "file", "line", "column", "message", "remedy"], reading.Problems.Select(Row)).WriteTo(terminal.Out);
                break;
            default:
                terminal.Show(print =>
                {
                    ProblemList.Print(folder, reading, print);
                    Tell(offers, print);
                });
                break;
        }

        return reading.IsFlawed ? ExitStatus.Flawed : ExitStatus.Well;
    }

    // Offers are no problems: nothing is wrong, and the maker knows better.
    private static void Tell(IReadOnlyList<(string File, LikeOffer Offer)> offers, Printout print)
    {
        foreach (var (file, offer) in offers)
        {
            print.Hang($"{file}: ", offer.Words);
        }
    }

    private static object Shape((string File, LikeOffer Offer) offered) => new { offered.File, Part = offered.Offer.Part.Id, Like = offered.Offer.Like.ToString(), offered.Offer.Words };

    private static object?[] Row(Problem problem) =>
    [
        problem.Severity.ToWord(), problem.Kind.Code, problem.Place.File, problem.Place.Line, problem.Place.Column, problem.Message, problem.Remedy,
    ];

    private static object Shape(Problem problem) => new
    {
        Severity = problem.Severity.ToWord(),
        problem.Kind.Code,
        problem.Place.File,
        problem.Place.Line,
        problem.Place.Column,
        problem.Message,
        problem.Remedy,
    };
}
