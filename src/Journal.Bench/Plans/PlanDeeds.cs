using Journal.Bench.Slates;
using Journal.Core.Model;
using Journal.Core.Writing;

namespace Journal.Bench.Plans;

/// <summary>Guesses of a plan are written into its file.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was sent.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Guesses">The guesses that are other than before.</param>
internal sealed record GuessesWritten(string Id, DateTimeOffset At, Plan Plan, IReadOnlyList<NewGuess> Guesses) : Deed(Id, At)
{
    /// <inheritdoc/>
    public override string Do(Hands hands)
    {
        var written = Guesses.Count == 0 ? default : hands.With(_ => PlanGuesses.Write(hands.Folder, Plan.File, Guesses));
        return Guesses.Count == 0 || written.File is not null ? "Saved." : throw new RefusedException(written.WhyNot);
    }
}

/// <summary>A plan becomes a build.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was sent.</param>
/// <param name="Plan">The plan's id.</param>
/// <param name="Today">The day to write as <c>started</c>.</param>
internal sealed record PlanBegun(string Id, DateTimeOffset At, Id<Plan> Plan, DateOnly Today) : Deed(Id, At)
{
    /// <inheritdoc/>
    public override string Do(Hands hands)
    {
        var plan = hands.Journal.Plans.FirstOrDefault(one => one.Id == Plan) ?? throw new RefusedException("That plan is gone, or cannot be read. See `journal check`.");
        var outcome = hands.With(_ => Beginning.Of(hands.Folder, hands.Journal, plan, Today));
        return outcome.Refusal is { } why ? throw new RefusedException(why) : $"Begun: {plan.Title}, in {outcome.File}. The plan stays as a record.";
    }
}
