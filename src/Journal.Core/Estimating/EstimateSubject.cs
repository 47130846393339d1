using Journal.Core.Estimating.Method;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>What is to be estimated, be it a plan or a build under way.</summary>
internal sealed record EstimateSubject
{
    /// <summary>The id of the plan or build.</summary>
    public required string Name { get; init; }

    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>The build, where it is one.</summary>
    public Id<Build>? Build { get; init; }

    /// <summary>Whether it is a finished build.</summary>
    public bool IsFinished { get; init; }

    /// <summary>The parts list.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>Guesses for the work on the whole.</summary>
    public required IReadOnlyDictionary<Id<Operation>, Minutes> Whole { get; init; }

    /// <summary>The day the plan says it shall start.</summary>
    public DateOnly? Start { get; init; }

    /// <summary>Hours a week that the plan or build gives.</summary>
    public decimal? HoursAWeek { get; init; }

    /// <summary>Days away from the bench.</summary>
    public IReadOnlyList<DateRange> Away { get; init; } = [];

    /// <summary>What is finished of it.</summary>
    public IReadOnlySet<Id<Part>> Finished { get; init; } = new HashSet<Id<Part>>();

    /// <summary>Time spent on each part that was begun, finished ones too.</summary>
    public IReadOnlyDictionary<Id<Part>, Minutes> Spent { get; init; } = new Dictionary<Id<Part>, Minutes>();

    /// <summary>What was done to each part that was begun, finished ones too.</summary>
    public IReadOnlyDictionary<Id<Part>, WorkSoFar> SoFar { get; init; } = new Dictionary<Id<Part>, WorkSoFar>();

    /// <summary>Time spent on the whole, by operation.</summary>
    public IReadOnlyDictionary<Id<Operation>, Minutes> SpentOnWhole { get; init; } = new Dictionary<Id<Operation>, Minutes>();

    /// <summary>The parts still to make.</summary>
    public IEnumerable<Part> Open => Parts.Where(part => !Finished.Contains(part.Id));

    /// <summary>The parts on which nothing was done.</summary>
    public IEnumerable<Part> NotBegun => Open.Where(part => !SoFar.ContainsKey(part.Id));

    /// <summary>All time spent on it.</summary>
    public Minutes SpentInAll => Spent.Values.Sum() + SpentOnWhole.Values.Sum();

    /// <summary>Time spent on a part.</summary>
    public Minutes SpentOn(Id<Part> part) => Spent.GetValueOrDefault(part);

    /// <summary>Nothing of a plan is made yet.</summary>
    public static EstimateSubject Of(Plan plan) => new()
    {
        Name = plan.Id.Value, Title = plan.Title, Parts = plan.Parts, Whole = plan.Whole,
        Start = plan.Start, HoursAWeek = plan.HoursAWeek, Away = plan.Away,
    };

    /// <summary>A build of a journal as it stands; second guesses count from when they were written.</summary>
    public static EstimateSubject Of(MakerJournal journal, Id<Build> id)
    {
        var build = journal.Builds.First(build => build.Id == id);
        var hours = BuildHours.Of(build, journal.Vocabulary, journal.Vocabulary.Operations.Ranks());
        return new()
        {
            Name = build.Id.Value,
            Title = build.Title,
            Build = build.Id,
            IsFinished = build.Status == BuildStatus.Finished,
            Parts = build.Parts,
            Whole = build.Whole,
            HoursAWeek = build.HoursAWeek,
            Away = build.Away,
            Finished = PiecesFinished.Of(build).Finished.Select(finished => finished.Part).ToHashSet(),
            Spent = hours.Parts.ToDictionary(part => part.Part, part => part.Minutes),
            SoFar = SoFarOf(hours),
            SpentOnWhole = hours.General.Operations.ToDictionary(time => time.What, time => time.Minutes),
        };
    }

    // Cells stand in the order of the entries, their jobs, and the operations as named.
    private static Dictionary<Id<Part>, WorkSoFar> SoFarOf(BuildHours hours) => hours.Cells
        .Where(cell => cell.Part is not null)
        .GroupBy(cell => cell.Part!.Value)
        .Select(cells => (Part: cells.Key, Time: cells.Sum(cell => cell.Minutes), Operations: cells.Select(cell => cell.Operation).ToList()))
        .Where(part => part.Time > Minutes.Zero)
        .ToDictionary(part => part.Part, part => new WorkSoFar(part.Time.InHours, [.. part.Operations.Distinct()], part.Operations[^1]));

    /// <summary>The same without some parts; what was spent on them stays spent.</summary>
    public EstimateSubject Without(IReadOnlyList<Id<Part>> parts) => this with { Parts = [.. Parts.Where(part => !parts.Contains(part.Id))] };
}
