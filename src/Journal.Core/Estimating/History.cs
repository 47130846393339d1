using Journal.Core.Estimating.Method;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>The finished parts of a journal in the order of finishing: what an estimate rests on.</summary>
/// <param name="Parts">Every finished part on which time was spent.</param>
/// <param name="Builds">The builds, with the hours of their parts and of the work on the whole.</param>
public sealed record History(IReadOnlyList<HistoryPart> Parts, IReadOnlyList<HistoryBuild> Builds)
{
    /// <summary>The time of all finished parts.</summary>
    public Minutes Minutes => Parts.Sum(part => part.Minutes);

    /// <summary>The history of a journal as it stood at the end of a day.</summary>
    public static History Of(MakerJournal journal, DateOnly asOf)
    {
        var then = journal.StoodOn(asOf);
        var hours = Hours.Of(then).Builds;
        return new History(
            [.. then.Builds.Zip(hours, HistoryPart.Of).SelectMany(parts => parts).OrderBy(part => part.Finished).ThenBy(part => part.Ref.Build)],
            [.. then.Builds.Zip(hours, HistoryBuild.Of)]);
    }

    /// <summary>The history without the parts of one build.</summary>
    internal History Without(Id<Build> build) => this with { Parts = [.. Parts.Where(part => part.Ref.Build != build)] };

    /// <summary>The parts as the method sees them, in hours and in the same order.</summary>
    internal IReadOnlyList<PastPart> ForMethod() => [.. Parts.Select(part => part.ForMethod())];
}

/// <summary>A finished part with the hours it took and the guess made before.</summary>
public sealed record HistoryPart
{
    /// <summary>The part.</summary>
    public required PartRef Ref { get; init; }

    /// <summary>The first day on which it was worked.</summary>
    public required DateOnly Begun { get; init; }

    /// <summary>The day its last piece was said to be finished; else, in a finished build, the last day it was worked.</summary>
    public required DateOnly Finished { get; init; }

    /// <summary>The time it took; more than zero.</summary>
    public required Minutes Minutes { get; init; }

    /// <summary>The first guess, in hours for all pieces; null where there was none.</summary>
    public double? GuessHours { get; init; }

    /// <summary>Of its time, what went into fixtures and tools for it and into putting right.</summary>
    public Minutes FixturesAndPuttingRight { get; init; }

    /// <summary>Its operations, each with at least a minute, the most time first.</summary>
    public required IReadOnlyList<HistoryWork> Work { get; init; }

    /// <summary>How many pieces.</summary>
    public required int Quantity { get; init; }

    /// <summary>The operations that the parts list foresaw for it.</summary>
    internal IReadOnlyList<Id<Operation>> Foreseen { get; init; } = [];

    /// <summary>As the method sees it.</summary>
    internal PastPart ForMethod() => new(
        Ref.ToString(),
        Minutes.InHours,
        GuessHours,
        [.. Work.Select(work => new Method.Work(work.Operation, work.Minutes.InHours))],
        Quantity);

    /// <summary>
    /// As the maker would have planned it: the operations that the parts list foresaw, else (nothing else being known)
    /// those that it had.
    /// </summary>
    internal PlannedPart AsPlanned() => new(
        Ref.ToString(),
        GuessHours,
        Foreseen.Count > 0 ? Foreseen : [.. Work.Select(work => work.Operation)],
        Quantity);

    /// <summary>The finished parts of a build on which time was spent, in the order of finishing, then of the parts list.</summary>
    internal static IEnumerable<HistoryPart> Of(Build build, BuildHours hours)
    {
        var (cells, listed) = (hours.Cells.ToLookup(cell => cell.Part), build.PartsById());
        var (order, work) = (build.PartsNamed().ToList(), hours.Parts.ToDictionary(part => part.Part));
        return PiecesFinished.Of(build).Finished
            .Where(finished => work[finished.Part].Minutes > Minutes.Zero)
            .Select(finished => Of(build, listed[finished.Part], finished, work[finished.Part], [.. cells[finished.Part]]))
            .OrderBy(part => part.Finished)
            .ThenBy(part => order.IndexOf(part.Ref.Part));
    }

    private static HistoryPart Of(Build build, Part part, FinishedPart finished, PartHours hours, IReadOnlyList<OperationCell> cells)
    {
        var said = build.Entries.Any(entry => entry.Ref == finished.Entry && entry.Finished.Any(named => named.Part == part.Id));
        var jobs = cells.CountBy(cell => cell.Operation).ToDictionary();
        return new HistoryPart
        {
            Ref = new PartRef(build.Id, part.Id),
            Begun = cells[0].Date,
            Finished = said ? finished.Date!.Value : cells[^1].Date,
            Minutes = hours.Minutes,
            GuessHours = part.Guess?.HoursFor(part),
            FixturesAndPuttingRight = hours.Work.In(TimeKind.FixturesAndTools) + hours.Work.In(TimeKind.PuttingRight),
            Work = [.. hours.Work.Operations.Where(time => time.Minutes > Minutes.Zero).Select(time => new HistoryWork(time.What, time.Minutes, jobs[time.What]))],
            Quantity = part.Quantity,
            Foreseen = part.Operations,
        };
    }
}

/// <summary>An operation on a finished part.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Minutes">The time it took.</param>
/// <param name="Jobs">In how many jobs.</param>
public sealed record HistoryWork(Id<Operation> Operation, Minutes Minutes, int Jobs);

/// <summary>A build with its hours.</summary>
/// <param name="Build">The build.</param>
/// <param name="Title">Its title.</param>
/// <param name="IsFinished">Whether it is finished, or every part of its list is.</param>
/// <param name="First">The day of its first entry; null without entries.</param>
/// <param name="OnParts">The time spent on its parts.</param>
/// <param name="OnWhole">The time spent on the build as a whole.</param>
public sealed record HistoryBuild(Id<Build> Build, string Title, bool IsFinished, DateOnly? First, Minutes OnParts, Minutes OnWhole)
{
    /// <summary>A build with its hours; <paramref name="hours"/> must be those of the same build.</summary>
    internal static HistoryBuild Of(Build build, BuildHours hours) => new(
        build.Id,
        build.Title,
        build.Parts.Count > 0 ? PiecesFinished.Of(build).ToGo.Count == 0 : build.Status == BuildStatus.Finished,
        build.Entries.Count == 0 ? null : build.Entries[0].Date,
        hours.Minutes - hours.General.Minutes,
        hours.General.Minutes);
}
