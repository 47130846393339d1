using Journal.Core.Statistics;

namespace Journal.Core.Estimating.Method;

/// <summary>
/// How the hours of equal pieces fall with their number: each doubling multiplies the average by the same rate.
/// T. P. Wright, “Factors affecting the cost of airplanes”, <i>Journal of the Aeronautical Sciences</i> 3 (1936) 122–128.
/// </summary>
/// <param name="Exponent">The power of the number of pieces, 0 for no learning, negative for learning; log₂ of the rate.</param>
internal readonly record struct LearningCurve(double Exponent)
{
    // Held near none: before any repeat is seen the exponent is 0 ± this (a rate between 93 and 107 %).
    private const double ExponentScale = 0.1;

    // How far parts with several pieces lie from what their operations typically take, on the scale of logarithms.
    private const double Scatter = 1;

    // No steeper than a rate of 70 %, and never getting slower.
    private const double Steepest = -0.51;

    /// <summary>Every piece takes the same.</summary>
    public static LearningCurve None => new(0);

    /// <summary>The curve with a rate, such as 0.8 for the 80 % curve.</summary>
    public static LearningCurve OfRate(double rate) => new(SameEverywhere.Ln(rate) / SameEverywhere.Ln(2));

    /// <summary>The average of so many pieces, in hours of the first.</summary>
    public double Average(double pieces) => Exponent == 0 || pieces == 1 ? 1 : SameEverywhere.Exp(Exponent * SameEverywhere.Ln(pieces));

    /// <summary>All of so many pieces together, in hours of the first.</summary>
    public double Total(double pieces) => pieces * Average(pieces);

    /// <summary>
    /// The curve that the parts with several pieces show against what their operations typically take: a weighted
    /// slope through the origin of the residuals on ln quantity, held towards no learning. None without such parts.
    /// </summary>
    public static LearningCurve Of(IReadOnlyList<PastPart> past)
    {
        if (past.All(part => part.Quantity == 1))
        {
            return None;
        }

        var typical = new OperationTimes(past, None);
        var (products, squares) = (0.0, 0.0);
        for (var i = 0; i < past.Count; i++)
        {
            var (pieces, expected) = (SameEverywhere.Ln(past[i].Quantity), SameEverywhere.Ln(typical.TypicalOfPast(i)));
            products += typical.Recency[i] * pieces * (SameEverywhere.Ln(past[i].Hours) - expected);
            squares += typical.Recency[i] * pieces * pieces;
        }

        const double Penalty = Scatter * Scatter / (ExponentScale * ExponentScale);
        return new(Math.Clamp(products / (squares + Penalty), Steepest, 0));
    }
}
