namespace Journal.Core.Statistics;

/// <summary>
/// Exponential and natural logarithm that give the same bits on every machine. <see cref="Math.Exp"/> and
/// <see cref="Math.Log(double)"/> come from each platform's C library and differ in the last bit; these use only
/// what IEEE 754 rounds in one way: + − × ÷, and exact scaling by powers of two.
/// </summary>
/// <remarks>Within a few units in the last place of the true value; tested against <see cref="Math"/>.</remarks>
internal static class SameEverywhere
{
    private const double Ln2 = 0.693147180559945309417;

    // ln 2 in two parts: the first has 21 trailing zero bits, so that a whole number times it is exact.
    private const double Ln2High = 6.93147180369123816490e-01;
    private const double Ln2Low = 1.90821492927058770002e-10;

    private static readonly double[] InverseFactorials = [.. Enumerable.Range(0, 15).Select(k => 1.0 / Factorial(k))];

    /// <summary>e to the power of x; 0 below −708 and infinity above 709.</summary>
    public static double Exp(double x)
    {
        if (x is < -708 or > 709)
        {
            return x < 0 ? 0 : double.PositiveInfinity;
        }

        // e^x = 2^k e^r with |r| ≤ ln 2 / 2, and e^r by its Taylor series: the first term left out is below 2^−60.
        var k = (int)Math.Floor((x / Ln2) + 0.5);
        var r = x - (k * Ln2High) - (k * Ln2Low);
        var sum = InverseFactorials[^1];
        for (var i = InverseFactorials.Length - 2; i >= 0; i--)
        {
            sum = (sum * r) + InverseFactorials[i];
        }

        return sum * PowerOfTwo(k);
    }

    /// <summary>The natural logarithm of a positive, normal number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">x is zero, negative, tiny (below 1e−300) or not a number.</exception>
    public static double Ln(double x)
    {
        if (!(x >= 1e-300) || double.IsPositiveInfinity(x))
        {
            throw new ArgumentOutOfRangeException(nameof(x), "A logarithm needs a positive, finite number.");
        }

        // x = m 2^e with m between √½ and √2; ln m = 2 (f + f³/3 + f⁵/5 + …) with f = (m − 1)/(m + 1).
        var bits = BitConverter.DoubleToInt64Bits(x);
        var e = (int)(bits >> 52) - 1023;
        var m = BitConverter.Int64BitsToDouble((bits & 0x000FFFFFFFFFFFFF) | 0x3FF0000000000000);
        if (m > 1.4142135623730951)
        {
            (m, e) = (m / 2, e + 1);
        }

        var f = (m - 1) / (m + 1);
        var square = f * f;
        var sum = 1.0 / 23;
        for (var odd = 21; odd >= 1; odd -= 2)
        {
            sum = (sum * square) + (1.0 / odd);
        }

        return (e * Ln2High) + ((2 * f * sum) + (e * Ln2Low));
    }

    private static double PowerOfTwo(int k) => BitConverter.Int64BitsToDouble((long)(k + 1023) << 52);

    private static double Factorial(int k) => k <= 1 ? 1 : k * Factorial(k - 1);
}
