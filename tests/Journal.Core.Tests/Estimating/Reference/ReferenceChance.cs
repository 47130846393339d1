namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>Chance of its own for the reference: xorshift (G. Marsaglia, <i>Journal of Statistical Software</i> 8, 2003) and Box and Muller's normal numbers.</summary>
internal sealed class ReferenceChance
{
    private ulong state;
    private double? kept;

    public ReferenceChance(int seed)
    {
        state = (ulong)(seed + 1) * 0x9E3779B97F4A7C15UL;
        for (var i = 0; i < 20; i++)
        {
            _ = Uniform();
        }
    }

    /// <summary>Between 0 and 1, neither included.</summary>
    public double Uniform()
    {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        return ((state >> 11) + 0.5) / (1UL << 53);
    }

    public double Normal()
    {
        if (kept is { } second)
        {
            kept = null;
            return second;
        }

        var (radius, angle) = (Math.Sqrt(-2 * Math.Log(Uniform())), 2 * Math.PI * Uniform());
        kept = radius * Math.Sin(angle);
        return radius * Math.Cos(angle);
    }

    /// <summary>From 0 to one below a number.</summary>
    public int Below(int count) => (int)(Uniform() * count);

    /// <summary>From one number to another, both included.</summary>
    public int Between(int first, int last) => first + Below(last - first + 1);

    public bool Happens(double chance) => Uniform() < chance;

    public T OneOf<T>(params T[] things) => things[Below(things.Length)];
}
