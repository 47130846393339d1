using Journal.Core.Model;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing.Checks;

/// <summary>Judges each date over all builds: no more than 24 hours, and no two stretches at once.</summary>
internal static class Clock
{
    private static readonly Minutes Day = new(24 * 60);

    /// <summary>Reports stretches that overlap and dates with more than 24 hours, over all builds.</summary>
    public static void Check(IEnumerable<ClockClaim> claims, ProblemLog log)
    {
        foreach (var date in claims.GroupBy(claim => claim.Date))
        {
            CheckDay(date.Key, date, log);
        }
    }

    private static void CheckDay(DateOnly date, IEnumerable<ClockClaim> claims, ProblemLog log)
    {
        var (total, earlier) = (Minutes.Zero, new List<(Stretch Stretch, Place Place)>());
        foreach (var claim in claims)
        {
            var before = total;
            total = total > Day ? total : total + claim.Time;
            if (total > Day && before <= Day)
            {
                log.Add(ProblemTable.DayTooLong, claim.Place, Dates.Write(date), total);
            }

            foreach (var (stretch, place) in claim.Stretches)
            {
                if (earlier.FirstOrDefault(one => one.Stretch.Overlaps(stretch)) is { Place.File: not null } other)
                {
                    log.Add(ProblemTable.Overlap, place, stretch, other.Stretch, other.Place.File, other.Place.Line);
                }

                earlier.Add((stretch, place));
            }
        }
    }
}
