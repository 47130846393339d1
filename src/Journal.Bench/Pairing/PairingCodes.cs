using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Journal.Bench.Pairing;

/// <summary>What came of six digits.</summary>
internal enum CodeAnswer
{
    /// <summary>They are right, and are spent with that.</summary>
    Right,

    /// <summary>They are wrong; there are tries left.</summary>
    Wrong,

    /// <summary>The code is too old, was tried too often or was used: a new one is shown.</summary>
    Renewed,

    /// <summary>There were too many codes lately; none is made for a while.</summary>
    Resting,
}

/// <summary>
/// The six digits by which a phone is paired: good for two minutes and five tries, then others take their place. They are shown on
/// the terminal alone, so whoever types them can see it. A stranger in the house's network has sixty guesses an hour at a million.
/// </summary>
/// <param name="clock">The clock.</param>
/// <param name="show">Shows a new code to the maker.</param>
internal sealed class PairingCodes(TimeProvider clock, Action<string> show)
{
    private const int MostTries = 5;
    private const int MostInAnHour = 12;
    private static readonly TimeSpan GoodFor = TimeSpan.FromMinutes(2);

    private readonly Lock guard = new();
    private readonly Queue<DateTimeOffset> made = [];
    private string? digits;
    private int tries;

    /// <summary>Sees to it that a good code is shown. False where there were too many lately.</summary>
    public bool Offer()
    {
        lock (guard)
        {
            return IsGood() || Renew();
        }
    }

    /// <summary>Tries six digits.</summary>
    public CodeAnswer Try(string said)
    {
        lock (guard)
        {
            if (!IsGood())
            {
                return Renew() ? CodeAnswer.Renewed : CodeAnswer.Resting;
            }

            var typed = string.Concat(said.Where(char.IsAsciiDigit));
            if (CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(typed), Encoding.ASCII.GetBytes(digits!)))
            {
                digits = null;
                return CodeAnswer.Right;
            }

            return ++tries < MostTries ? CodeAnswer.Wrong : Renew() ? CodeAnswer.Renewed : CodeAnswer.Resting;
        }
    }

    private bool IsGood() => digits is not null && made.Count > 0 && clock.GetUtcNow() - made.Last() < GoodFor;

    private bool Renew()
    {
        (digits, tries) = (null, 0);
        var now = clock.GetUtcNow();
        while (made.TryPeek(out var oldest) && now - oldest > TimeSpan.FromHours(1))
        {
            made.Dequeue();
        }

        if (made.Count >= MostInAnHour)
        {
            return false;
        }

        digits = RandomNumberGenerator.GetInt32(1_000_000).ToString("D6", CultureInfo.InvariantCulture);
        made.Enqueue(now);
        show(digits);
        return true;
    }
}
