namespace Journal.Core.Statistics;

/// <summary>
/// Seeded chance, the same on every machine: SplitMix64 (Steele, Lea and Flood, “Fast splittable pseudorandom number
/// generators”, OOPSLA 2014), which is whole-number arithmetic only. Each purpose has its own stream, named by a text,
/// so that leaving out one part leaves the luck of the others as it was and “what if” compares like with like.
/// </summary>
internal sealed class Luck
{
    private ulong state;

    private Luck(ulong state) => this.state = state;

    /// <summary>The bare stream of a seed, as published.</summary>
    public static Luck Of(ulong seed) => new(seed);

    /// <summary>The stream of a seed for one purpose.</summary>
    public static Luck For(int seed, string purpose) => new(Of(Digest(purpose) ^ Of(unchecked((ulong)seed)).Next()).Next());

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A whole number from 0 to one below a limit. Every value is as likely to within limit ÷ 2⁶⁴.</summary>
    public int Below(int limit) => (int)Math.BigMul(Next(), (ulong)limit, out _);

    /// <summary>A number strictly between 0 and 1 with 53 random bits.</summary>
    public double Share() => ((Next() >> 11) + 0.5) * (1.0 / (1L << 53));

    /// <summary>A standard normal number, by inversion.</summary>
    public double Normal() => StandardNormal.Quantile(Share());

    /// <summary>Puts items in random order (Durstenfeld 1964).</summary>
    public void Shuffle(Span<int> items)
    {
        for (var i = items.Length - 1; i > 0; i--)
        {
            var other = Below(i + 1);
            (items[i], items[other]) = (items[other], items[i]);
        }
    }

    // FNV-1a, 64 bits, over UTF-16 units: string.GetHashCode differs from run to run.
    private static ulong Digest(string text) =>
        text.Aggregate(14695981039346656037, (digest, unit) => unchecked((digest ^ unit) * 1099511628211));
}
