using System.Text;

namespace Journal.Site.Search;

/// <summary>
/// Which things hold each word, in about as few bits as that can be told: for each word how many hold it (Elias 1975,
/// gamma), then the steps between their numbers (Rice and Plaunt 1971) with a parameter that follows from how many
/// they are. The bits stand six to a letter; zipping can do no more with them.
/// </summary>
internal sealed class Postings(int things)
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

    private readonly StringBuilder text = new();
    private int bits;
    private int held;

    /// <summary>Adds the next word.</summary>
    /// <param name="numbers">The numbers of the things that hold it, from 0, rising; at least one.</param>
    public void Add(IReadOnlyList<int> numbers)
    {
        var length = Length(numbers.Count);
        Append(0, length - 1);
        Append(numbers.Count, length);
        var parameter = ParameterOf(numbers.Count);
        var last = -1;
        foreach (var number in numbers)
        {
            var step = number - last - 1;
            for (var whole = step >> parameter; whole > 0; whole--)
            {
                Append(1, 1);
            }

            Append(0, 1);
            Append(step, parameter);
            last = number;
        }
    }

    /// <summary>All words so far as letters.</summary>
    public override string ToString() => held == 0 ? text.ToString() : text.ToString() + Letters[bits << (6 - held)];

    private static int Length(int value) => 32 - System.Numerics.BitOperations.LeadingZeroCount((uint)value);

    // The step between things that hold a word is about things / count; two thirds of it is near the best parameter.
    private int ParameterOf(int count)
    {
        var parameter = 0;
        while (3L * count << (parameter + 1) <= 2L * things)
        {
            parameter++;
        }

        return parameter;
    }

    private void Append(int value, int length)
    {
        for (var at = length - 1; at >= 0; at--)
        {
            bits = (bits << 1) | ((value >> at) & 1);
            if (++held == 6)
            {
                text.Append(Letters[bits]);
                (bits, held) = (0, 0);
            }
        }
    }
}
