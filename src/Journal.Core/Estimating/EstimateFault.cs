using System.Diagnostics.CodeAnalysis;

namespace Journal.Core.Estimating;

/// <summary>Why there is no estimate.</summary>
public enum EstimateFaultKind
{
    /// <summary>There is no part and no work on the whole to estimate.</summary>
    NoParts,

    /// <summary>A part has no guess and no part was ever finished.</summary>
    NothingToGoOn,

    /// <summary>A guess is zero.</summary>
    GuessOfNothing,

    /// <summary>A part has no pieces.</summary>
    NoPieces,

    /// <summary>A part is said to be like one that is not in the journal.</summary>
    UnknownLike,

    /// <summary>A part to leave out is not there.</summary>
    UnknownWithout,

    /// <summary>A part to make twice is not there.</summary>
    UnknownTwice,

    /// <summary>Hours a week are not more than zero, or more than a week has.</summary>
    HoursAWeek,

    /// <summary>The build is finished.</summary>
    AlreadyFinished,

    /// <summary>There are too few draws to give a range.</summary>
    TooFewDraws,
}

/// <summary>Something that keeps an estimate from being made.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Message">The same in words.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record EstimateFault(EstimateFaultKind Kind, string Message, string Remedy);

/// <summary>An estimate, or what keeps it from being made.</summary>
public sealed record EstimateResult
{
    private EstimateResult(Estimate? estimate, IReadOnlyList<EstimateFault> faults) => (Estimate, Faults) = (estimate, faults);

    /// <summary>The estimate; null where there are faults.</summary>
    public Estimate? Estimate { get; }

    /// <summary>What keeps it from being made; empty where it was.</summary>
    public IReadOnlyList<EstimateFault> Faults { get; }

    /// <summary>Whether there is an estimate.</summary>
    [MemberNotNullWhen(true, nameof(Estimate))]
    public bool IsEstimate => Estimate is not null;

    /// <summary>The result where nothing kept the estimate from being made.</summary>
    internal static EstimateResult Of(Estimate estimate) => new(estimate, []);

    /// <summary>The result without an estimate; <paramref name="faults"/> has at least one.</summary>
    internal static EstimateResult Of(IReadOnlyList<EstimateFault> faults) => new(null, faults);
}
