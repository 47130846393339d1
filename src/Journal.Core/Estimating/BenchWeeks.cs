using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Statistics;

namespace Journal.Core.Estimating;

/// <summary>Hours in weeks as the maker has them, idle ones included.</summary>
/// <param name="Hours">The hours of weeks that followed each other; more than zero in all.</param>
/// <param name="Taken">How many of the maker's own weeks they come from.</param>
internal sealed record BenchWeeks(IReadOnlyList<double> Hours, int Taken)
{
    // Half a year and a quarter: what the bench was like before says little about next month. Our own choice.
    private const int Longest = 26;
    private const int LongestGap = 13;

    /// <summary>Fewer of the maker's own weeks than this do not show how they vary.</summary>
    public const int Enough = 4;

    /// <summary>The mean, idle weeks counted.</summary>
    public double HoursAWeek => Hours.Average();

    /// <summary>
    /// The maker's recent weeks (docs/estimating.md, Pace): up to the last whole week before today, idle ones too, back to
    /// a gap of more than 13 weeks, 26 at most; the week of today, not over yet, only where there is no other. Hours a week,
    /// where given, scale them: the maker's weeks keep their ups and downs. Null where nothing is known.
    /// </summary>
    public static BenchWeeks? Of(MakerJournal journal, DateOnly today, decimal? hoursAWeek)
    {
        var now = IsoWeek.Of(today).Monday.DayNumber;
        var worked = Sums.By(journal.StoodOn(today).Entries, entry => (now - IsoWeek.Of(entry.Date).Monday.DayNumber) / 7, entry => entry.Time)
            .Where(week => week.Minutes > Minutes.Zero)
            .ToDictionary(week => week.What, week => week.Minutes.InHours);
        double[] hours = [.. Enumerable.Range(1, Stretch(worked.ContainsKey)).Reverse().Select(back => worked.GetValueOrDefault(back))];
        double[] known = hours.Length == 0 && worked.TryGetValue(0, out var thisWeek) ? [thisWeek] : hours;
        return hoursAWeek is { } wanted ? Scaled(known, (double)wanted)
            : known.Length == 0 ? null
            : new(known, known.Length);
    }

    // How many weeks before that of today are recent, given whether so many weeks back there was work.
    private static int Stretch(Func<int, bool> isWorked)
    {
        var first = 0;
        for (var back = 1; back <= Longest + LongestGap + 1 && back - first <= LongestGap + 1; back++)
        {
            first = isWorked(back) ? back : first;
        }

        return Math.Min(first, Longest);
    }

    private static BenchWeeks Scaled(double[] hours, double wanted) => hours.Length < Enough
        ? new([wanted], hours.Length)
        : new([.. hours.Select(week => week * wanted / hours.Average())], hours.Length);
}

/// <summary>Days from a start on, away days left out: hours become dates.</summary>
internal sealed class BenchCalendar
{
    /// <summary>A century of weeks; what takes longer has no date.</summary>
    private const int LastWeek = 5_218;

    // Weeks are drawn in runs, since busy and idle ones come in spells: single draws would even them out and promise too much.
    // (The moving-block bootstrap: H. R. Künsch, Annals of Statistics 17, 1989.)
    private const int Run = 4;

    // How far the pace of the coming weeks may lie from that of the last, on the scale of logarithms.
    private const double PaceScale = 0.3;

    private readonly IReadOnlyList<double> hours;
    private readonly int[] worked;
    private readonly DateOnly start;
    private readonly IReadOnlyList<DateRange> away;
    private readonly List<DateOnly[]> openDays = [];

    /// <summary>Prepares to reckon from a day on.</summary>
    public BenchCalendar(BenchWeeks weeks, DateOnly start, IReadOnlyList<DateRange> away)
    {
        (hours, this.start, this.away) = (weeks.Hours, start, away);
        worked = [.. Enumerable.Range(0, hours.Count).Where(week => hours[week] > 0)];
    }

    /// <summary>The day on which so many hours are done, with weeks drawn by chance; the last day of all for more than a century.</summary>
    public DateOnly DayOf(double work, Luck luck)
    {
        var at = 0;
        for (var week = 0; week < LastWeek; week++)
        {
            at = week % Run == 0 ? FirstOfRun(week, luck) : (at + 1) % hours.Count;
            var days = OpenDays(week);
            var done = hours[at] * days.Length / 7;
            if (done >= work && days.Length > 0)
            {
                var part = work > 0 ? work / done : 0;
                return days[Math.Clamp((int)Math.Ceiling(part * days.Length) - 1, 0, days.Length - 1)];
            }

            work -= done;
        }

        return DateOnly.MaxValue;
    }

    /// <summary>
    /// The day of each draw (docs/estimating.md, Hours to dates). Each draw has a stream of its own, so that other hours meet
    /// the same weeks; and a pace of its own, as the coming season may be busier or quieter than the last.
    /// </summary>
    /// <param name="work">The hours to come in each draw.</param>
    /// <param name="seed">The seed of chance.</param>
    public IEnumerable<DateOnly> DaysOf(IEnumerable<double> work, int seed)
    {
        var (weeks, pace) = (Luck.For(seed, "weeks"), Luck.For(seed, "pace"));
        return work.Select(hours => DayOf(hours / SameEverywhere.Exp(PaceScale * pace.Normal()), Luck.Of(weeks.Next())));
    }

    // Work begins in a week at the bench; later runs begin with any.
    private int FirstOfRun(int week, Luck luck) => week == 0 ? worked[luck.Below(worked.Length)] : luck.Below(hours.Count);

    // The days of the week at the bench; the first week begins with the start.
    private DateOnly[] OpenDays(int week)
    {
        while (openDays.Count <= week)
        {
            var monday = IsoWeek.Of(start).Monday.AddDays(7 * openDays.Count);
            openDays.Add([.. Enumerable.Range(0, 7).Select(monday.AddDays).Where(day => day >= start && away.All(range => !range.Contains(day)))]);
        }

        return openDays[week];
    }
}
