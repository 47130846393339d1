using System.Collections.Concurrent;
using System.Net;

namespace Journal.Bench.Requests;

/// <summary>
/// How often someone may ask: so many requests at once, and so many a second after that. Strangers are known by their address, devices
/// by their id.
/// </summary>
/// <param name="atOnce">How many at once.</param>
/// <param name="aSecond">How many a second after that.</param>
/// <param name="clock">The clock.</param>
internal sealed class Rates(int atOnce, int aSecond, TimeProvider clock)
{
    private const int MostKnown = 10_000;

    private readonly ConcurrentDictionary<string, (double Left, long At, bool IsLet)> known = new(StringComparer.Ordinal);

    /// <summary>How often strangers may ask: enough to pair a phone.</summary>
    public static Rates OfStrangers(TimeProvider clock) => new(60, 5, clock);

    /// <summary>How often a device may ask: more than a script that empties a full queue needs.</summary>
    public static Rates OfDevices(TimeProvider clock) => new(1000, 200, clock);

    /// <summary>Whether an address may ask once more now.</summary>
    public bool Lets(IPAddress? address) => Lets(address?.ToString() ?? "");

    /// <summary>Whether someone may ask once more now.</summary>
    public bool Lets(string who)
    {
        // Thousands of addresses in one house are one who changes his own: nothing is kept for each of them.
        if (known.Count > MostKnown)
        {
            known.Clear();
        }

        var now = clock.GetTimestamp();
        return known.AddOrUpdate(who, _ => (atOnce - 1, now, true), (_, before) =>
        {
            var left = Math.Min(atOnce, before.Left + (clock.GetElapsedTime(before.At, now).TotalSeconds * aSecond));
            return left >= 1 ? (left - 1, now, true) : (left, now, false);
        }).IsLet;
    }
}
