using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>The time of an evening that went into one part, one operation and one kind of time.</summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Date">The entry's date.</param>
/// <param name="Part">The part; null for the build as a whole.</param>
/// <param name="Operation">What was done.</param>
/// <param name="Kind">What the time went into.</param>
/// <param name="Minutes">The time, more than none. All shares of a job add up to the job, and so do those of its operations and of its kinds to theirs.</param>
public sealed record EveningShare(EntryRef Entry, DateOnly Date, Id<Part>? Part, Id<Operation> Operation, TimeKind Kind, Minutes Minutes)
{
    /// <summary>All the time of a journal in the order of the evenings.</summary>
    public static IEnumerable<EveningShare> Of(MakerJournal journal) =>
        from entry in journal.Entries
        from job in entry.Jobs
        from share in Of(entry, job, journal.Vocabulary)
        select share;

    private static IEnumerable<EveningShare> Of(Entry entry, Job job, Vocabulary vocabulary)
    {
        var kinds = JobSharing.KindCells(entry, job, vocabulary).ToLookup(cell => cell.Part);
        return JobSharing.OperationCells(entry, job).GroupBy(cell => cell.Part).SelectMany(cells => Crossed([.. cells], kinds[cells.Key], job, vocabulary));
    }

    // Each operation takes of its own kind first, then of what is left, setting up at the head. Operations and kinds have the
    // same sum, so in the end neither has anything left.
    private static IEnumerable<EveningShare> Crossed(IReadOnlyList<OperationCell> operations, IEnumerable<KindCell> kinds, Job job, Vocabulary vocabulary)
    {
        var (wanted, left) = (operations.Select(cell => cell.Minutes.Count).ToArray(), kinds.ToDictionary(cell => cell.Kind, cell => cell.Minutes.Count));
        TimeKind OwnKind(OperationCell cell) => job.Mends is null ? vocabulary.Operation(cell.Operation).Kind : TimeKind.PuttingRight;
        var taken = operations.Select((cell, i) => (At: i, Kind: OwnKind(cell)))
            .Concat(operations.SelectMany((_, i) => left.Keys.Order().OrderByDescending(kind => kind == TimeKind.SettingUp).Select(kind => (At: i, Kind: kind))))
            .Select(turn => (turn.At, turn.Kind, Minutes: Take(turn.At, turn.Kind)))
            .ToList();
        return taken.Where(turn => turn.Minutes > 0)
            .GroupBy(turn => (turn.At, turn.Kind))
            .OrderBy(turn => turn.Key.At)
            .Select(turn => new EveningShare(operations[turn.Key.At].Entry, operations[turn.Key.At].Date, operations[turn.Key.At].Part, operations[turn.Key.At].Operation, turn.Key.Kind, new Minutes(turn.Sum(one => one.Minutes))));

        int Take(int at, TimeKind kind)
        {
            var minutes = Math.Min(wanted[at], left.GetValueOrDefault(kind));
            wanted[at] -= minutes;
            left[kind] = left.GetValueOrDefault(kind) - minutes;
            return minutes;
        }
    }
}
