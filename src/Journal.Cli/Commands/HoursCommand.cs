using System.CommandLine;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary><c>journal hours</c>: where the hours went.</summary>
internal static class HoursCommand
{
    private const string Whole = "whole";

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) => new FigureCommand
    {
        Name = "hours",
        Description = "Where the hours went: by build, part, operation and kind of time.",
        Example = "journal hours --format csv > hours.csv",
        Table = (journal, print) => HoursTable.Print(journal, Hours.Of(journal), print),
        Csv = journal => new CsvTable(["build", "part", "operation", "minutes"], Hours.Of(journal).Builds.SelectMany(Rows)),
        Json = journal => Shape(Hours.Of(journal)),
    }.Create(terminal);

    private static IEnumerable<object?[]> Rows(BuildHours build) =>
        from part in build.Parts.Select(part => (Id: part.Part.Value, part.Work)).Append((Id: Whole, Work: build.General))
        from time in part.Work.Operations
        select new object?[] { build.Build, part.Id, time.What, time.Minutes };

    private static object Shape(Hours hours) => new
    {
        hours.Minutes,
        Builds = hours.Builds.Select(build => new
        {
            build.Build,
            build.Minutes,
            General = build.General.Minutes,
            GeneralOperations = Operations(build.General),
            Parts = build.Parts.Select(part => new { part.Part, part.Minutes, Operations = Operations(part.Work), Kinds = Kinds(part.Work) }),
            Operations = Operations(build.Work),
            Kinds = Kinds(build.Work),
            Weeks = build.Calendar.Weeks.Select(week => new { Week = week.What.ToString(), week.Minutes }),
            Months = build.Calendar.Months.Select(month => new { Month = month.What.ToString(), month.Minutes }),
        }),
        Operations = Operations(hours.Work),
        Kinds = Kinds(hours.Work),
    };

    private static IEnumerable<object> Operations(Work work) => work.Operations.Select(time => new { Operation = time.What, time.Minutes });

    private static IEnumerable<object> Kinds(Work work) => work.Kinds.Select(time => new { Kind = time.What.ToWord(), time.Minutes });
}
