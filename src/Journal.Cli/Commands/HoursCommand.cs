using System.CommandLine;
using Journal.Cli.Options;
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
    public static Command Create(Terminal terminal)
    {
        var (part, evenings) = (PartOption.Create(), new Option<bool>("--by-evening") { Description = "A line for each evening, with its part, operation and kind of time." });
        return (Of(null) with
        {
            Options = [evenings, part],
            Narrowed = asked => asked.GetValue(evenings) ? EveningsOf(asked.GetValue(part)) : Of(asked.GetValue(part)),
        }).Create(terminal);
    }

    private static FigureCommand Of(string? part) => new()
    {
        Name = "hours",
        Description = "Where the hours went: by build, part, operation and kind of time.",
        Example = "journal hours --format csv > hours.csv",
        By = Narrows.Build | Narrows.Dates,
        Objection = journal => PartOption.Objection(part, journal),
        Table = (journal, print) => HoursTable.Print(journal, For(part, journal), print),
        Csv = journal => new CsvTable(["build", "part", "operation", "minutes"], For(part, journal).Builds.SelectMany(Rows)),
        Json = journal => Shape(For(part, journal)),
    };

    private static FigureCommand EveningsOf(string? part) => Of(part) with
    {
        Table = (journal, print) => EveningsTable.Print(journal, Evenings(part, journal), print),
        Csv = journal => new CsvTable(
            ["date", "build", "part", "operation", "minutes", "kind"],
            Evenings(part, journal).Select(share => new object?[] { share.Date, share.Entry.Build, share.Part?.Value ?? Whole, share.Operation, share.Minutes, share.Kind.ToWord() })),
        Json = journal => new
        {
            Evenings = Evenings(part, journal).Select(share => new
            {
                share.Date,
                share.Entry.Build,
                share.Entry.Entry,
                Part = share.Part?.Value ?? Whole,
                share.Operation,
                share.Minutes,
                Kind = share.Kind.ToWord(),
            }),
        },
    };

    private static Hours For(string? part, MakerJournal journal) => Hours.Of(journal, (build, one) => PartOption.Takes(part, build, one));

    private static List<EveningShare> Evenings(string? part, MakerJournal journal) =>
        [.. EveningShare.Of(journal).Where(share => PartOption.Takes(part, share.Entry.Build, share.Part))];

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
