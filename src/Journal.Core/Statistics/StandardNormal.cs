using static Journal.Core.Statistics.SameEverywhere;

namespace Journal.Core.Statistics;

/// <summary>The standard normal distribution, the same on every machine.</summary>
internal static class StandardNormal
{
    private const double SquareRootOfTwoPi = 2.50662827463100050242;

    /// <summary>The value below which a share of outcomes lies; about 16 digits.</summary>
    /// <remarks>M. J. Wichura, Algorithm AS 241 (PPND16), <i>Applied Statistics</i> 37 (1988) 477–484.</remarks>
    /// <param name="share">Strictly between 0 and 1.</param>
    public static double Quantile(double share)
    {
        var q = share - 0.5;
        if (Math.Abs(q) <= 0.425)
        {
            return q * Middle(0.180625 - (q * q));
        }

        var tail = q < 0 ? share : 1 - share;
        var r = Math.Sqrt(-Ln(tail));
        var size = r <= 5 ? Side(r - 1.6) : FarSide(r - 5);
        return q < 0 ? -size : size;
    }

    /// <summary>The share of outcomes below a value.</summary>
    public static double Below(double z) => z < 0 ? Above(-z) : 1 - Above(z);

    /// <summary>The share of outcomes above a value; keeps its digits far out, where one minus the rest would lose them.</summary>
    public static double Above(double z) => z < 0 ? 1 - Above(-z) : z < 3 ? 0.5 - AreaFromZero(z) : TailBeyond(z);

    private static double Density(double z) => Exp(-z * z / 2) / SquareRootOfTwoPi;

    // The area from 0 to z is φ(z) (z + z³/3 + z⁵/(3·5) + …): Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11.
    private static double AreaFromZero(double z)
    {
        var (sum, term) = (0.0, z);
        for (var odd = 3; sum + term != sum; odd += 2)
        {
            (sum, term) = (sum + term, term * z * z / odd);
        }

        return Density(z) * sum;
    }

    // The area beyond z is φ(z) / (z + 1/(z + 2/(z + 3/(z + …)))): the same handbook, 26.2.14. From 3 on, 60 levels are enough.
    private static double TailBeyond(double z)
    {
        var fraction = z;
        for (var level = 60; level >= 1; level--)
        {
            fraction = z + (level / fraction);
        }

        return Density(z) / fraction;
    }

    private static double Middle(double r) =>
        ((((((((((((((2.5090809287301226727e+3 * r) + 3.3430575583588128105e+4) * r) + 6.7265770927008700853e+4) * r)
            + 4.5921953931549871457e+4) * r) + 1.3731693765509461125e+4) * r) + 1.9715909503065514427e+3) * r)
            + 1.3314166789178437745e+2) * r) + 3.3871328727963666080e+0)
        / ((((((((((((((5.2264952788528545610e+3 * r) + 2.8729085735721942674e+4) * r) + 3.9307895800092710610e+4) * r)
            + 2.1213794301586595867e+4) * r) + 5.3941960214247511077e+3) * r) + 6.8718700749205790830e+2) * r)
            + 4.2313330701600911252e+1) * r) + 1.0);

    private static double Side(double r) =>
        ((((((((((((((7.74545014278341407640e-4 * r) + 2.27238449892691845833e-2) * r) + 2.41780725177450611770e-1) * r)
            + 1.27045825245236838258e+0) * r) + 3.64784832476320460504e+0) * r) + 5.76949722146069140550e+0) * r)
            + 4.63033784615654529590e+0) * r) + 1.42343711074968357734e+0)
        / ((((((((((((((1.05075007164441684324e-9 * r) + 5.47593808499534494600e-4) * r) + 1.51986665636164571966e-2) * r)
            + 1.48103976427480074590e-1) * r) + 6.89767334985100004550e-1) * r) + 1.67638483018380384940e+0) * r)
            + 2.05319162663775882187e+0) * r) + 1.0);

    private static double FarSide(double r) =>
        ((((((((((((((2.01033439929228813265e-7 * r) + 2.71155556874348757815e-5) * r) + 1.24266094738807843860e-3) * r)
            + 2.65321895265761230930e-2) * r) + 2.96560571828504891230e-1) * r) + 1.78482653991729133580e+0) * r)
            + 5.46378491116411436990e+0) * r) + 6.65790464350110377720e+0)
        / ((((((((((((((2.04426310338993978564e-15 * r) + 1.42151175831644588870e-7) * r) + 1.84631831751005468180e-5) * r)
            + 7.86869131145613259100e-4) * r) + 1.48753612908506148525e-2) * r) + 1.36929880922735805310e-1) * r)
            + 5.99832206555887937690e-1) * r) + 1.0);
}
