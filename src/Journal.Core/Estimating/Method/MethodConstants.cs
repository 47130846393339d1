namespace Journal.Core.Estimating.Method;

/// <summary>
/// The constants of the method, found on public logs of effort (docs/estimating.md, What the constants rest on): one column
/// for parts with the maker's guess, one for parts without. Scales are standard deviations of logarithms: 0.2 is about 20 %.
/// </summary>
internal sealed record MethodConstants
{
    /// <summary>Recency: after so many later parts a part counts half.</summary>
    public const double HalfLife = 40;

    /// <summary>Operation times: how many parts' worth of “all operations alike” an operation's typical hours start from.</summary>
    public const double OperationPrior = 5;

    /// <summary>Reference: the guess's share in the reference; the rest is the operations' typical hours.</summary>
    public const double GuessShare = 0.9;

    /// <summary>Weights: the least and greatest size of a part, against the median, that its weight follows.</summary>
    public const double SmallestSize = 0.1;

    /// <summary>Weights: see <see cref="SmallestSize"/>.</summary>
    public const double GreatestSize = 10;

    /// <summary>Slope: the least variance of residuals, so that a slope needs some scatter to be judged against.</summary>
    public const double LeastVariance = 0.001;

    /// <summary>Scatter: how many parts' worth of scatter is assumed before any is seen.</summary>
    public const double ScatterPrior = 10;

    /// <summary>Fewer finished parts than this are a thin history.</summary>
    public const int EnoughParts = 5;

    /// <summary>Begun parts: how much wider the rest of a begun part scatters than a whole part.</summary>
    public const double BegunScatter = 1.8;

    /// <summary>Begun parts: the operation worked last counts half done.</summary>
    public const double LastOperationLeft = 0.5;

    /// <summary>Begun parts: the greatest share of a part that can be left once it is begun.</summary>
    public const double MostLeft = 0.98;

    /// <summary>Begun parts: the least share of a guess that can be left while the part is not finished.</summary>
    public const double LeastLeftOfGuess = 0.1;

    /// <summary>Luck so far: the share of what finished parts tell of the build's luck that is given back.</summary>
    public const double LuckGivenBack = 0.3;

    /// <summary>With the maker's guess.</summary>
    public static MethodConstants WithGuesses { get; } = new()
    {
        SizeExponent = 0.5, FixedSlope = 0, ResidualLimit = 2.1, SlopeScale = 0.15, Scatter = 0.65, HabitScale = 0.2,
        BuildScale = 0.2, ThinBuildScale = 0.3, LikeShare = 0.5,
    };

    /// <summary>Without a guess, from the operations alone.</summary>
    public static MethodConstants WithoutGuesses { get; } = new()
    {
        SizeExponent = 0, FixedSlope = -0.25, ResidualLimit = 3.0, SlopeScale = 0.25, Scatter = 1.3, HabitScale = 1.0,
        BuildScale = 0.5, ThinBuildScale = 0.7, LikeShare = 0.7,
    };

    /// <summary>Weights: how strongly a part's weight follows its size.</summary>
    public required double SizeExponent { get; init; }

    /// <summary>Residuals, c₀: the slope assumed before any is seen.</summary>
    public required double FixedSlope { get; init; }

    /// <summary>Residuals: residuals are clamped to their weighted median plus and minus this.</summary>
    public required double ResidualLimit { get; init; }

    /// <summary>Slope, σ_c: how far the slope may lie from the assumed one.</summary>
    public required double SlopeScale { get; init; }

    /// <summary>Scatter, σ₀: the scatter of single parts assumed before any is seen.</summary>
    public required double Scatter { get; init; }

    /// <summary>Habit, σ_a: how far a maker's habit may lie from none.</summary>
    public required double HabitScale { get; init; }

    /// <summary>Shared luck, τ: how far builds differ as wholes.</summary>
    public required double BuildScale { get; init; }

    /// <summary>Thin history, τ with a thin history.</summary>
    public required double ThinBuildScale { get; init; }

    /// <summary>How far a part is drawn towards the finished part it is like, on the scale of logarithms.</summary>
    public required double LikeShare { get; init; }

    /// <summary>
    /// For a history that is mostly the build being forecast: how it differs as a whole is then part of the habit seen,
    /// and not still to come. Other builds being too few to tell, it may differ as far as with a thin history.
    /// </summary>
    public MethodConstants WithinOneBuild() => this with
    {
        HabitScale = Math.Sqrt((HabitScale * HabitScale) + (ThinBuildScale * ThinBuildScale)), BuildScale = 0, ThinBuildScale = 0,
    };
}
