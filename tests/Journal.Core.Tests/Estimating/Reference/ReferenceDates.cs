namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>From hours to days: docs/estimating.md, Pace and Hours to dates.</summary>
internal sealed class ReferenceDates
{
    private readonly Kit kit;
    private readonly List<DateOnly[]> openDays = [];

    public ReferenceDates(Kit kit)
    {
        this.kit = kit;
        var asked = kit.Start ?? kit.Subject.Start ?? kit.Today;
        Start = asked < kit.Today ? kit.Today : asked;
        OwnWeeks = WeeksOf(kit);
        Weeks = OwnWeeks;
        if ((kit.HoursAWeek ?? kit.Subject.HoursAWeek) is { } said)
        {
            Weeks = OwnWeeks.Length < 4 ? [said] : [.. OwnWeeks.Select(hours => hours * said / OwnWeeks.Average())];
        }
    }

    public DateOnly Start { get; }

    /// <summary>Hours of the maker's own weeks, the oldest first; none where nothing is known of the pace.</summary>
    public double[] OwnWeeks { get; }

    /// <summary>The weeks that are drawn from.</summary>
    public double[] Weeks { get; }

    public double? HoursAWeek => Weeks.Length == 0 ? null : Weeks.Average();

    /// <summary>The day on which so many hours are done, one for each draw; null where that takes more than a century.</summary>
    public DateOnly?[] Days(IEnumerable<double> hoursToCome, ReferenceChance chance)
    {
        var worked = Enumerable.Range(0, Weeks.Length).Where(week => Weeks[week] > 0).ToArray();
        int FirstWeek(int run) => run == 0 ? worked[chance.Below(worked.Length)] : chance.Below(Weeks.Length);
        return [.. hoursToCome.Select(hours => Day(Math.Max(0, hours) / Math.Exp(0.3 * chance.Normal()), FirstWeek))];
    }

    /// <summary>One build's last day, with the first week of each run given.</summary>
    public DateOnly? Day(double hours, Func<int, int> firstWeekOfRun)
    {
        var at = 0;
        for (var week = 0; week < 5218; week++)
        {
            at = week % 4 == 0 ? firstWeekOfRun(week / 4) : (at + 1) % Weeks.Length;
            var open = OpenDays(week);
            var done = Weeks[at] * open.Length / 7;
            if (open.Length > 0 && hours <= done)
            {
                var number = done > 0 ? (int)Math.Ceiling(hours / done * open.Length) : 1;
                return open[Math.Max(1, number) - 1];
            }

            hours -= done;
        }

        return null;
    }

    /// <summary>The days of a week, counted from that of the start, on which work is possible.</summary>
    private DateOnly[] OpenDays(int week)
    {
        while (openDays.Count <= week)
        {
            var monday = MondayOf(Start).AddDays(7 * openDays.Count);
            openDays.Add(
            [
                .. Enumerable.Range(0, 7).Select(monday.AddDays)
                    .Where(day => day >= Start && !kit.Subject.Away.Any(away => away.First <= day && day <= away.Last)),
            ]);
        }

        return openDays[week];
    }

    private static double[] WeeksOf(Kit kit)
    {
        var thisMonday = MondayOf(kit.Today);
        var minutes = new Dictionary<int, int>();
        foreach (var entry in kit.Builds.SelectMany(build => build.Entries).Where(entry => entry.Day <= kit.Today))
        {
            var ago = (thisMonday.DayNumber - MondayOf(entry.Day).DayNumber) / 7;
            minutes[ago] = minutes.GetValueOrDefault(ago) + entry.Jobs.Sum(job => job.Minutes);
        }

        // Back from the last whole week to before a gap of more than 13 idle weeks.
        var (first, idle) = (0, 0);
        for (var ago = 1; idle <= 13; ago++)
        {
            if (minutes.ContainsKey(ago))
            {
                (first, idle) = (ago, 0);
            }
            else
            {
                idle++;
            }
        }

        if (first == 0)
        {
            return minutes.TryGetValue(0, out var now) ? [now / 60.0] : [];
        }

        first = Math.Min(first, 26);
        return [.. Enumerable.Range(1, first).Reverse().Select(ago => minutes.GetValueOrDefault(ago) / 60.0)];
    }

    private static DateOnly MondayOf(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));
}
