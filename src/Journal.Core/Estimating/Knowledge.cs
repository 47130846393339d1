using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>What is known when an undertaking is to be estimated: the maker's habits, and the luck of the build so far.</summary>
internal sealed record Knowledge
{
    private Knowledge(History history, Maker maker, SharedLuck luck) => (History, Maker, Luck) = (history, maker, luck);

    /// <summary>The finished parts.</summary>
    public History History { get; }

    /// <summary>The maker, as learned from them.</summary>
    public Maker Maker { get; }

    /// <summary>The luck of the build.</summary>
    public SharedLuck Luck { get; }

    /// <summary>
    /// Learns from the history. The parts of a build under way speak of its own luck when there are enough others to know
    /// the habit from; else they are what the habit is learned from.
    /// </summary>
    public static Knowledge Of(EstimateSubject undertaking, History history)
    {
        List<HistoryPart> own = [.. history.Parts.Where(part => part.Ref.Build == undertaking.Build)];
        if (own.Count == 0)
        {
            return new Knowledge(history, new Maker(history.ForMethod()), SharedLuck.Unknown);
        }

        var others = history.Parts.Count - own.Count;
        if (others < MethodConstants.EnoughParts)
        {
            return new Knowledge(history, Maker.OfOneBuild(history.ForMethod()), SharedLuck.Unknown);
        }

        var maker = new Maker(history.Without(undertaking.Build!.Value).ForMethod());
        return new Knowledge(history, maker, maker.LuckAfter(own.Select(part => (part.AsPlanned(), part.Minutes.InHours))));
    }

    /// <summary>A part of the list as the method sees it.</summary>
    public PlannedPart Planned(Part part, WorkSoFar? soFar)
    {
        var like = part.Like is { } named ? History.Parts.FirstOrDefault(past => past.Ref == named) : null;
        IReadOnlyList<Id<Operation>> operations = part.Operations.Count > 0 || like is null
            ? [.. part.Operations.Distinct()]
            : [.. like.Work.Select(work => work.Operation)];
        return new PlannedPart(part.Id.Value, part.CurrentGuess?.HoursFor(part, Maker.Curve), operations, part.Quantity)
        {
            Like = like?.ForMethod(),
            SoFar = soFar,
        };
    }
}
