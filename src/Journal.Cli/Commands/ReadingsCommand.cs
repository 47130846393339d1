using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary><c>journal readings</c>: every measured dimension beside the required one.</summary>
internal static class ReadingsCommand
{
    private const int DecimalsOfAShare = 4;

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (part, excerpt) = (PartOption.Create(), new ExcerptOptions(Narrows.Build | Narrows.Dates));
        return (Of(null, _ => null, (_, _) => true) with
        {
            Options = [part, .. excerpt.Options],
            Narrowed = asked => Of(asked.GetValue(part), journal => excerpt.Objection(asked, journal), (build, date) => excerpt.Takes(asked, build, date)),
        }).Create(terminal);
    }

    // What is required may stand in a reading long before, so the whole journal is judged and then what was asked for taken.
    private static FigureCommand Of(string? part, Func<MakerJournal, string?> objection, Func<Id<Build>, DateOnly?, bool> takes) => new()
    {
        Name = "readings",
        Description = "How sizes came out: each measured dimension beside the required one, and the mates.",
        Example = "journal readings --part head",
        Objection = journal => objection(journal) ?? PartOption.Objection(part, journal),
        Table = (journal, print) => ReadingsTable.Print(journal, Wanted(journal, part, takes), WantedMates(journal, part, takes), print),
        Csv = journal => new CsvTable(
            ["build", "part", "entry", "feature", "required", "unit", "nominal", "least", "greatest", "actual", "deviation", "within", "share", "with"],
            Wanted(journal, part, takes).Select(Row)),
        Json = journal => new { Readings = Wanted(journal, part, takes).Select(Shape), Mates = WantedMates(journal, part, takes).Select(Shape) },
    };

    private static List<ReadingFigure> Wanted(MakerJournal journal, string? part, Func<Id<Build>, DateOnly?, bool> takes) =>
        [.. Readings.Of(journal).All.Where(reading => takes(reading.Build, reading.Date) && PartOption.Takes(part, reading.Build, reading.Part))];

    private static List<MateFigure> WantedMates(MakerJournal journal, string? part, Func<Id<Build>, DateOnly?, bool> takes) =>
        [.. Mates.Of(journal).Where(mate => takes(mate.Build, null) && new[] { mate.Mate.Hole, mate.Mate.Shaft }.Any(feature => PartOption.Takes(part, mate.Build, feature.Part)))];

    private static object?[] Row(ReadingFigure reading)
    {
        var numbers = Numbers(reading);
        return
        [
            reading.Build, reading.Part, reading.Entry, reading.Feature, reading.RequiredText, Measured.Word(reading.Unit), numbers.Nominal, numbers.Least,
            numbers.Greatest, numbers.Actual, numbers.Deviation, reading.Within is { } within ? within ? "true" : "false" : null, Share(reading), reading.With,
        ];
    }

    private static object Shape(ReadingFigure reading)
    {
        var numbers = Numbers(reading);
        return new
        {
            reading.Build,
            reading.Part,
            reading.Entry,
            reading.Feature,
            Required = reading.RequiredText,
            Unit = Measured.Word(reading.Unit),
            numbers.Nominal,
            numbers.Least,
            numbers.Greatest,
            numbers.Actual,
            numbers.Deviation,
            reading.Within,
            Share = Share(reading),
            reading.With,
            reading.Date,
            Gauge = reading.Gauging is { } said ? said.ToWord() : null,
            Latest = reading.IsLatest,
            Outcome = reading.Became?.ToWord(),
            reading.Departure,
            reading.RightIn,
            reading.Notes,
        };
    }

    private static object Shape(MateFigure mate) => new
    {
        mate.Build,
        Hole = mate.Mate.Hole.ToString(),
        Shaft = mate.Mate.Shaft.ToString(),
        Unit = Measured.Word(mate.Unit),
        Least = Measured.Number(mate.Least, mate.Unit),
        Greatest = Measured.Number(mate.Greatest, mate.Unit),
        AsBuilt = Measured.Number(mate.AsBuilt, mate.Unit),
        Fit = mate.Required?.ToWord(),
        mate.Within,
    };

    private static (decimal? Nominal, decimal? Least, decimal? Greatest, decimal? Actual, decimal? Deviation) Numbers(ReadingFigure reading) => (
        Measured.Number(reading.Nominal, reading.Unit),
        Measured.Number(reading.Least, reading.Unit),
        Measured.Number(reading.Greatest, reading.Unit),
        Measured.Number(reading.Actual, reading.Unit),
        Measured.Number(reading.Deviation, reading.Unit));

    private static decimal? Share(ReadingFigure reading) => reading.Share is { } share ? decimal.Round(share, DecimalsOfAShare) : null;
}
