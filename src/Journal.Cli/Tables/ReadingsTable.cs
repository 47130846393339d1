using System.Globalization;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Trade;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>What size it came out, for people.</summary>
internal static class ReadingsTable
{
    private const string None = "–";

    /// <summary>A lead, a table for each part in the order of the drawing, the mates, and what was measured with too coarse a tool.</summary>
    public static void Print(MakerJournal journal, IReadOnlyList<ReadingFigure> readings, IReadOnlyList<MateFigure> mates, Printout print)
    {
        var titles = new TitleBook(journal);
        if (readings.Count == 0)
        {
            print.Say("No readings yet. Add `readings` to an entry, such as `{feature: bore, required: 12 H7, actual: 12.008}`.");
            return;
        }

        print.Say(Lead(readings));
        foreach (var part in readings.GroupBy(reading => (reading.Build, reading.Part)))
        {
            print.Heading($"{Title(part.Key.Build, part.Key.Part, titles)}, {titles.Of(part.Key.Build)}");
            print.Table(
                [Column.Words("Feature"), Column.Words("Required"), Column.Figures("Actual"), Column.Figures("Off by"), Column.Figures("Used"), Column.Words("In limits")],
                part.Select(Row));
        }

        if (readings.Any(HasShare))
        {
            print.Gap();
            print.Say("Used: how much of the tolerance, counted from the middle of the limits (0 % in the middle, 100 % at either limit), also where the tolerance lies to one side.");
        }

        PrintMates(mates, titles, print);
        PrintNotes(readings, titles, print);
    }

    private static string Lead(IReadOnlyList<ReadingFigure> readings)
    {
        var (inside, outside) = (readings.Count(reading => reading.Within == true), readings.Count(reading => reading.IsOut));
        var untold = readings.Count - inside - outside;
        var rest = untold == 0 ? "" : $"; {Count.Of(untold, "has", "have")} no limits given";
        return $"{Count.Of(readings.Count, "reading")}: {inside.ToString(CultureInfo.InvariantCulture)} in limits, {(outside == 0 ? "none" : outside.ToString(CultureInfo.InvariantCulture))} out{rest}.";
    }

    private static string[] Row(ReadingFigure reading) =>
    [
        reading.Feature,
        reading.RequiredText ?? None,
        reading.Actual is { } size ? Size(size) : reading.ActualText ?? None,
        reading.Deviation is { } off ? Signed(off) : "",
        HasShare(reading) ? Share.Percent((double)reading.Share!.Value) : "",
        Verdict(reading),
    ];

    private static bool HasShare(ReadingFigure reading) => reading.Share is not null && reading.Requirement?.Kind is RequirementKind.Limits or RequirementKind.AtMost;

    private static string Verdict(ReadingFigure reading) => reading.Within switch
    {
        null => None,
        true => "yes",
        false => string.Join(", ", new[] { $"no{Became(reading)}", reading.RightIn is { } right ? $"right in {right}" : null }.OfType<string>()),
    };

    private static string Became(ReadingFigure reading) => reading switch
    {
        { Became: { } outcome } => $": {outcome.InWords()}",
        { Departure: not null } => ": a departure",
        _ => "",
    };

    private static void PrintMates(IReadOnlyList<MateFigure> mates, TitleBook titles, Printout print)
    {
        if (mates.Count == 0)
        {
            return;
        }

        print.Heading("Mates: clearance, negative where they interfere");
        print.Table(
            [Column.Words("Hole"), Column.Words("Shaft"), Column.Figures("Least"), Column.Figures("Greatest"), Column.Figures("As built"), Column.Words("As required")],
            mates.Select(mate => new[]
            {
                Feature(mate.Build, mate.Mate.Hole, titles),
                Feature(mate.Build, mate.Mate.Shaft, titles),
                mate.Least is { } least ? Signed(least) : None,
                mate.Greatest is { } greatest ? Signed(greatest) : None,
                mate.AsBuilt is { } built ? Signed(built) : None,
                mate.Within is { } within ? within ? "yes" : "no" : None,
            }));
    }

    private static void PrintNotes(IReadOnlyList<ReadingFigure> readings, TitleBook titles, Printout print)
    {
        var notes = readings.SelectMany(reading => reading.Notes, (reading, note) => (reading, note)).GroupBy(pair => pair.note).ToList();
        if (notes.Count == 0)
        {
            return;
        }

        print.Heading("Worth a second look");
        foreach (var note in notes)
        {
            var where = Count.List([.. note.Select(pair => $"{Casing.Lower(Title(pair.reading.Build, pair.reading.Part, titles))}, {pair.reading.Feature}").Distinct()]);
            print.Hang("– ", $"{note.Key} ({where})");
        }
    }

    private static string Feature(Id<Build> build, Feature feature, TitleBook titles) => $"{titles.Of(new PartRef(build, feature.Part))}, {feature.Name}";

    private static string Title(Id<Build> build, Id<Part>? part, TitleBook titles) => part is { } id ? titles.Of(new PartRef(build, id)) : "The build as a whole";

    private static string Size(Length length) => string.Create(CultureInfo.InvariantCulture, $"{Measured.Number(length, length.Unit)} {length.Unit.Symbol()}");

    private static string Signed(Length length)
    {
        var number = Measured.Number(length, length.Unit)!.Value;
        var sign = number > 0 ? "+" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{sign}{number} {length.Unit.Symbol()}");
    }
}
