using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>The hours of a build. Its parts and <see cref="General"/> add up to its <see cref="Minutes"/>.</summary>
/// <param name="Build">The build.</param>
/// <param name="Work">The build's time.</param>
/// <param name="General">The work on the build as a whole.</param>
/// <param name="Parts">Every part of the parts list in its order, those without work too, then parts that only jobs name.</param>
/// <param name="Calendar">The build's time over the calendar.</param>
/// <param name="Entries">Each entry's time, in the order of the entries.</param>
/// <param name="Cells">The shares that all sums are made of: job by part by operation, in the order written.</param>
/// <param name="KindCells">The same time by job, part and kind.</param>
public sealed record BuildHours(
    Id<Build> Build,
    Work Work,
    Work General,
    IReadOnlyList<PartHours> Parts,
    WorkCalendar Calendar,
    IReadOnlyList<EntryHours> Entries,
    IReadOnlyList<OperationCell> Cells,
    IReadOnlyList<KindCell> KindCells)
{
    /// <summary>All the time of the build.</summary>
    public Minutes Minutes => Work.Minutes;

    /// <summary>Sums the jobs of a build, whatever <c>publish</c> says of their entries.</summary>
    /// <param name="build">The build.</param>
    /// <param name="vocabulary">Says which kind of time each operation is.</param>
    /// <param name="ranks">The place of each operation in the vocabulary, for those with the same time.</param>
    /// <param name="isMeant">Whether the time of a part counts; null stands for the build as a whole. All of it counts where this is left out.</param>
    internal static BuildHours Of(Build build, Vocabulary vocabulary, IReadOnlyDictionary<Id<Operation>, int> ranks, Func<Id<Part>?, bool>? isMeant = null)
    {
        isMeant ??= _ => true;
        var jobs = build.Entries.SelectMany(entry => entry.Jobs, (entry, job) => (entry, job)).ToList();
        List<OperationCell> cells = [.. jobs.SelectMany(at => JobSharing.OperationCells(at.entry, at.job)).Where(cell => isMeant(cell.Part))];
        List<KindCell> kinds = [.. jobs.SelectMany(at => JobSharing.KindCells(at.entry, at.job, vocabulary)).Where(cell => isMeant(cell.Part))];
        var (cellsOfPart, kindsOfPart) = (cells.ToLookup(cell => cell.Part), kinds.ToLookup(cell => cell.Part));
        var (cellsOfEntry, kindsOfEntry) = (cells.ToLookup(cell => cell.Entry), kinds.ToLookup(cell => cell.Entry));

        Work PartWork(Id<Part>? part) => Work.Of(cellsOfPart[part], kindsOfPart[part], ranks);
        Work EntryWork(EntryRef entry) => Work.Of(cellsOfEntry[entry], kindsOfEntry[entry], ranks);
        return new BuildHours(
            build.Id,
            Work.Of(cells, kinds, ranks),
            PartWork(null),
            [.. build.PartsNamed().Where(part => isMeant(part)).Select(part => new PartHours(part, PartWork(part)))],
            WorkCalendar.Of(cells),
            [.. build.Entries.Select(entry => new EntryHours(entry.Ref, entry.Date, EntryWork(entry.Ref)))],
            cells,
            kinds);
    }
}

/// <summary>The hours of a part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Work">Its time; none for a part not begun.</param>
public sealed record PartHours(Id<Part> Part, Work Work)
{
    /// <summary>All the time of the part.</summary>
    public Minutes Minutes => Work.Minutes;
}

/// <summary>The hours of an entry.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Date">Its date.</param>
/// <param name="Work">Its time.</param>
public sealed record EntryHours(EntryRef Entry, DateOnly Date, Work Work)
{
    /// <summary>All the time of the entry.</summary>
    public Minutes Minutes => Work.Minutes;
}
