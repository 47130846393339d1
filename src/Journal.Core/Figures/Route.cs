using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>How a part was really made: its jobs in order, grouped by set-up (docs/figures.md, Route and set-ups).</summary>
/// <param name="Part">The part.</param>
/// <param name="SetUps">The set-ups in order; the first may say nothing of the holding.</param>
public sealed record Route(PartRef Part, IReadOnlyList<SetUp> SetUps)
{
    /// <summary>How many set-ups say how the work was held or what was measured from.</summary>
    public int SetUpCount => SetUps.Count(setUp => setUp.IsDescribed);

    /// <summary>All the steps in order.</summary>
    public IEnumerable<RouteStep> Steps => SetUps.SelectMany(setUp => setUp.Steps);

    /// <summary>The part's share of all its jobs.</summary>
    public Minutes Minutes => Steps.Sum(step => step.Minutes);

    /// <summary>The routes of all parts that were worked on, in the order of the parts list.</summary>
    public static IReadOnlyList<Route> Of(Build build)
    {
        var steps = Jobs(build).ToLookup(job => job.Part);
        return [.. build.PartsNamed().Where(steps.Contains).Select(part => Of(new PartRef(build.Id, part), steps[part]))];
    }

    private static IEnumerable<(Id<Part> Part, Entry Entry, Job Job, Minutes Time)> Jobs(Build build) =>
        from entry in build.Entries
        from job in entry.Jobs
        where !job.IsGeneral
        from share in SharesByPart(job)
        select (share.Part, entry, job, share.Time);

    // A job may name a part more than once.
    private static IEnumerable<(Id<Part> Part, Minutes Time)> SharesByPart(Job job) => job.OverParts() is [var only]
        ? [(only.Part!.Value, only.Time)]
        : job.OverParts().GroupBy(share => share.Part!.Value, (part, shares) => (part, shares.Sum(share => share.Time)));

    private static Route Of(PartRef part, IEnumerable<(Id<Part> Part, Entry Entry, Job Job, Minutes Time)> jobs)
    {
        var setUps = new List<(Job First, List<RouteStep> Steps)>();
        var number = 0;
        foreach (var (_, entry, job, time) in jobs)
        {
            if (setUps.Count == 0 || !StaysIn(setUps[^1].First, job))
            {
                setUps.Add((job, []));
            }

            number += 10;
            setUps[^1].Steps.Add(RouteStep.Of(number, entry, job, time));
        }

        return new Route(part, [.. setUps.Select((setUp, i) => new SetUp(i + 1, setUp.First.Held, setUp.First.Datum, setUp.Steps))]);
    }

    /// <summary>A job stays in a set-up while what it says of holding and datum, if anything, is what the set-up says.</summary>
    private static bool StaysIn(Job setUp, Job job) => AsBefore(setUp.Held, job.Held) && AsBefore(setUp.Datum, job.Datum);

    private static bool AsBefore(string? before, string? now) =>
        now is null || string.Equals(before?.Trim(), now.Trim(), StringComparison.OrdinalIgnoreCase);
}

/// <summary>Jobs on a part held in the same way from the same datum.</summary>
/// <param name="Number">Its number within the part, from 1.</param>
/// <param name="Held">How the work was held, in the words of its first job.</param>
/// <param name="Datum">What everything was measured from, in the words of its first job.</param>
/// <param name="Steps">The jobs in order; at least one.</param>
public sealed record SetUp(int Number, string? Held, string? Datum, IReadOnlyList<RouteStep> Steps)
{
    /// <summary>Whether it says how the work was held or from what datum.</summary>
    public bool IsDescribed => Held is not null || Datum is not null;
}

/// <summary>A job as a step of a part's route.</summary>
/// <param name="Number">10, 20, 30 … in the order of the work, as the trade numbers them.</param>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Date">The entry's date.</param>
/// <param name="Job">The number of the job in the entry, from 1.</param>
/// <param name="Operations">What was done.</param>
/// <param name="Minutes">The part's share of the job.</param>
/// <param name="Held">How the work was held, where the job says so.</param>
/// <param name="Datum">What everything was measured from, where the job says so.</param>
/// <param name="Tools">The tools used.</param>
/// <param name="Made">The tools, jigs and fixtures that the job made.</param>
/// <param name="Mends">The mistake that the job puts right.</param>
public sealed record RouteStep(
    int Number,
    EntryRef Entry,
    DateOnly Date,
    int Job,
    IReadOnlyList<Id<Operation>> Operations,
    Minutes Minutes,
    string? Held,
    string? Datum,
    IReadOnlyList<Id<Tool>> Tools,
    IReadOnlyList<Id<Tool>> Made,
    Id<Mistake>? Mends)
{
    /// <summary>A job as a step.</summary>
    /// <param name="number">10, 20, 30 …</param>
    /// <param name="entry">The entry that tells of it.</param>
    /// <param name="job">The job.</param>
    /// <param name="time">The part's share of the job, which may be on several parts.</param>
    internal static RouteStep Of(int number, Entry entry, Job job, Minutes time) =>
        new(number, entry.Ref, entry.Date, job.Number, job.Operations, time, job.Held, job.Datum, job.Tools, job.Made, job.Mends);
}
