using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Charts;
using Journal.Site.Html;

namespace Journal.Site.Pages;

/// <summary>A line of an inspection record.</summary>
public sealed record ReadingRowView
{
    /// <summary>The part; null where the page is about one.</summary>
    public LinkView? Part { get; init; }

    /// <summary>The feature.</summary>
    public required string Feature { get; init; }

    /// <summary>What the drawing asks for, as written.</summary>
    public required string Required { get; init; }

    /// <summary>The nominal size; null where there is none.</summary>
    public SizeView? Nominal { get; init; }

    /// <summary>The limits, least first; one, or none, where the drawing gives no more.</summary>
    public required IReadOnlyList<SizeView> Limits { get; init; }

    /// <summary>Which limit a single one is: <c>at most</c> or <c>at least</c>; empty for two or none.</summary>
    public required string LimitWord { get; init; }

    /// <summary>What was measured.</summary>
    public required SizeView Actual { get; init; }

    /// <summary>How far it lies from the nominal size; null where there is none.</summary>
    public SizeView? Deviation { get; init; }

    /// <summary>Whether it lies within its limits: <c>in</c>, <c>out</c>, or empty where nothing tells.</summary>
    public required string Within { get; init; }

    /// <summary>The same in a word: inside or outside the limits, right or wrong by the gauge; empty where nothing tells.</summary>
    public required string Verdict { get; init; }

    /// <summary>Where it lies between its limits; empty where no limit is known.</summary>
    public required SafeHtml Gauge { get; init; }

    /// <summary>The share of the tolerance used; null without one.</summary>
    public string? Share { get; init; }

    /// <summary>The tool it was measured with.</summary>
    public LinkView? With { get; init; }

    /// <summary>The entry that wrote it down.</summary>
    public required LinkView Entry { get; init; }

    /// <summary>For a reading that is out: what became of the part.</summary>
    public string? Became { get; init; }

    /// <summary>For a reading that is out: the entry that tells of it.</summary>
    public LinkView? Told { get; init; }

    /// <summary>For a reading that is out: the later entry that found the feature right.</summary>
    public LinkView? RightIn { get; init; }

    /// <summary>Remarks: a tool too coarse for the tolerance, a mate not measured yet.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>Readings as pages show them. What stays at home is left out.</summary>
internal static class ReadingRows
{
    private const string None = "–";

    /// <summary>The inspection record of a part, in the order of the drawing.</summary>
    public static IReadOnlyList<ReadingRowView> Of(SiteFigures figures, PartRef part) =>
        [.. Shown(figures, figures.Readings.OfPart(part.Build, part.Part)).Select(reading => Row(figures, reading))];

    /// <summary>The readings of an evening, as they stand in the entry; the part is named where the evening had several.</summary>
    public static IReadOnlyList<ReadingRowView> Of(SiteFigures figures, Entry entry)
    {
        var parts = entry.Jobs.SelectMany(job => job.Parts).Select(share => share.Part).Distinct().Count();
        return [.. figures.ReadingsOf[entry.Ref].OrderBy(reading => reading.Place).Select(reading => parts > 1 ? RowWithPart(figures, reading) : Row(figures, reading))];
    }

    /// <summary>All of a build that is or was out of its limits.</summary>
    public static IReadOnlyList<ReadingRowView> OutIn(SiteFigures figures, Build build) =>
        [.. Shown(figures, figures.Readings.OutIn(build.Id)).Select(reading => RowWithPart(figures, reading))];

    private static IEnumerable<ReadingFigure> Shown(SiteFigures figures, IEnumerable<ReadingFigure> readings) =>
        readings.Where(reading => figures.Visibility.Shows(new EntryRef(reading.Build, reading.Entry)));

    private static ReadingRowView RowWithPart(SiteFigures figures, ReadingFigure reading) => Row(figures, reading) with
    {
        Part = reading.Part is { } part ? figures.Link(new PartRef(reading.Build, part)) : new LinkView("Build as a whole", null),
    };

    private static ReadingRowView Row(SiteFigures figures, ReadingFigure reading)
    {
        var told = ToldIn(figures, reading);
        var written = EntryLink(figures, reading.Date, new EntryRef(reading.Build, reading.Entry));
        EntryRef? right = reading.RightIn is { } entry ? new EntryRef(reading.Build, entry) : null;
        return new ReadingRowView
        {
            Feature = reading.Feature,
            Required = reading.RequiredText ?? None,
            Nominal = LengthFormat.Size(reading.Nominal),
            Limits = [.. new[] { reading.Least, reading.Greatest }.OfType<Length>().Select(LengthFormat.Size)],
            LimitWord = (reading.Least, reading.Greatest) switch { (null, { }) => "at most", ({ }, null) => "at least", _ => "" },
            Actual = reading.Actual is { } size ? LengthFormat.Size(size) : new SizeView(reading.ActualText ?? None, ""),
            Deviation = reading.Deviation is { } off ? LengthFormat.Signed(off) : null,
            Within = reading.Within switch { true => "in", false => "out", null => "" },
            Verdict = (reading.Within, reading.Gauging) switch { (null, _) => "", (true, null) => "inside", (false, null) => "outside", (true, _) => "right", _ => "wrong" },
            Gauge = reading.Actual is { } actual ? LimitsGauge.Draw(reading.Least?.Value, reading.Nominal?.Value, reading.Greatest?.Value, actual.Value) : SafeHtml.Empty,
            Share = reading.Share is { } share ? Show.PerCent((double)share) : null,
            With = reading.With is { } with ? figures.Link(with) : null,
            Entry = written,
            Became = told is not null && reading.Became is { } outcome ? outcome.InWords() : reading.Departure is not null ? "a departure from the drawing" : null,
            Told = told is not null ? EntryLink(figures, told.On.Date, told.Ref.Entry) : reading.Departure is not null ? written : null,
            RightIn = right is { } later && figures.Visibility.Shows(later) ? EntryLink(figures, figures.Entry(later).Date, later) : null,
            Notes = reading.Notes,
        };
    }

    /// <summary>The mistake that tells of a reading, unless it stays at home.</summary>
    private static MistakeCost? ToldIn(SiteFigures figures, ReadingFigure reading) => reading.Mistake is { } mistake
        ? figures.Lessons.Mistakes.FirstOrDefault(cost => ReferenceEquals(cost.Mistake, mistake) && figures.Visibility.Shows(cost.Ref.Entry))
        : null;

    private static LinkView EntryLink(SiteFigures figures, DateOnly date, EntryRef entry) => new(Show.Date(date), figures.Visibility.Shows(entry) ? Addresses.Of(entry) : null);
}
