using Journal.Core.Estimating;
using Journal.Core.Model;

namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>A kit as the program's own journal, and the program's estimate of it.</summary>
internal static class ReferenceJournal
{
    public static EstimateResult Estimate(Kit kit, int draws)
    {
        var journal = Of(kit);
        var options = new EstimateOptions
        {
            Today = kit.Today,
            Start = kit.Start,
            HoursAWeek = (decimal?)kit.HoursAWeek,
            Seed = kit.Seed,
            Draws = draws,
            Without = [.. kit.Without.Select(id => new Id<Part>(id))],
        };
        return kit.IsPlan
            ? Core.Estimating.Estimate.Of(journal, journal.Plans.Single(), options)
            : Core.Estimating.Estimate.Of(journal, journal.Builds.Single(build => build.Id.Value == kit.Subject.Id), options);
    }

    public static MakerJournal Of(Kit kit) => Sample.Journal([.. kit.Builds.Select(Of)]) with
    {
        Plans = kit.IsPlan ? [PlanOf(kit.Subject)] : [],
    };

    private static Build Of(KitBuild build) => Sample.Build(build.Id, [.. build.Entries.Select(Of)]) with
    {
        Status = build.IsFinished ? BuildStatus.Finished : BuildStatus.UnderWay,
        Parts = [.. build.Parts.Select(Of)],
        Whole = WholeOf(build),
        HoursAWeek = (decimal?)build.HoursAWeek,
        Away = AwayOf(build),
    };

    private static Plan PlanOf(KitBuild plan) => new()
    {
        Id = new(plan.Id),
        Title = plan.Id,
        File = $"plans/{plan.Id}.yaml",
        Parts = [.. plan.Parts.Select(Of)],
        Whole = WholeOf(plan),
        HoursAWeek = (decimal?)plan.HoursAWeek,
        Start = plan.Start,
        Away = AwayOf(plan),
    };

    private static Entry Of(KitEntry entry) => Sample.Entry($"{entry.Day:yyyy-MM-dd}", [.. entry.Jobs.Select(Of)]) with
    {
        Id = new(entry.Name),
        Finished = [.. entry.Finished.Select(said => new Finished(new(said.Part), said.Pieces))],
    };

    private static Job Of(KitJob job) =>
        Sample.Job(job.Minutes, string.Join(' ', job.Operations), string.Join(' ', job.Parts.Select(part => $"{part.Part}:{part.Weight}")));

    private static Part Of(KitPart part) => Sample.Part(part.Id, part.Pieces) with
    {
        Operations = [.. part.Operations.Select(operation => new Id<Operation>(operation))],
        Guess = part.Guess is null ? null : Of(part.Guess),
        Reguess = part.SecondGuess is null ? null : Of(part.SecondGuess),
        Like = part.Like is { } like ? new PartRef(new(like.Build), new(like.Part)) : null,
    };

    private static Guess Of(KitGuess guess) => guess.Operations.Length > 0
        ? new Guess
        {
            Likely = new(guess.Minutes.Sum()),
            ByOperation = [.. guess.Operations.Select((operation, i) => (new Id<Operation>(operation), new Minutes(guess.Minutes[i])))],
            ForOnePiece = guess.IsForOnePiece,
        }
        : guess.Minutes.Length == 3
            ? new Guess { Low = new Minutes(guess.Minutes[0]), Likely = new(guess.Minutes[1]), High = new Minutes(guess.Minutes[2]) }
            : new Guess { Likely = new(guess.Minutes[0]) };

    private static Dictionary<Id<Operation>, Minutes> WholeOf(KitBuild build) =>
        build.Whole.ToDictionary(guess => new Id<Operation>(guess.Operation), guess => new Minutes(guess.Minutes));

    private static DateRange[] AwayOf(KitBuild build) => [.. build.Away.Select(away => new DateRange(away.First, away.Last))];
}
