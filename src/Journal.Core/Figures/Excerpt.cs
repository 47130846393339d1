using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A piece of a journal, of which every figure can be worked out as of the whole.</summary>
public static class Excerpt
{
    /// <summary>The entries of a build, or of a stretch of days. Lessons, tools and parts lists stay whole.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="build">The only build; null for all.</param>
    /// <param name="since">The first day; null for no bound.</param>
    /// <param name="until">The last day, included; null for no bound.</param>
    public static MakerJournal Of(MakerJournal journal, Id<Build>? build, DateOnly? since, DateOnly? until) =>
        (build, since, until) is (null, null, null) ? journal : journal with
        {
            Builds = [.. journal.Builds.Where(one => build is null || one.Id == build).Select(one => Between(one, since, until))],
        };

    /// <summary>
    /// The work on one part: of jobs on several its share of the time, of what was bought what was for it, of lessons and
    /// mistakes those of its jobs.
    /// </summary>
    /// <param name="journal">The journal.</param>
    /// <param name="isMeant">Whether a part of a build is the one; null stands for the build as a whole.</param>
    public static MakerJournal OfPart(MakerJournal journal, Func<Id<Build>, Id<Part>?, bool> isMeant) => journal with
    {
        Builds = [.. journal.Builds.Select(build => OnlyPart(build, part => isMeant(build.Id, part))).OfType<Build>()],
    };

    /// <summary>What was bought for one part, on whichever evening; all else stays as it is, the price of the kit left out.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="isMeant">Whether a part of a build is the one; null stands for the build as a whole.</param>
    public static MakerJournal BoughtFor(MakerJournal journal, Func<Id<Build>, Id<Part>?, bool> isMeant) => journal with
    {
        Builds =
        [
            .. journal.Builds.Select(build => build with
            {
                Cost = null,
                Entries = [.. build.Entries.Select(entry => entry with { Bought = [.. entry.Bought.Where(bought => isMeant(build.Id, bought.ForPart))] })],
            }),
        ],
    };

    // What the kit cost was spent when the build began.
    private static Build Between(Build build, DateOnly? since, DateOnly? until)
    {
        var began = build.Started ?? (build.Entries.Count > 0 ? build.Entries[0].Date : null);
        bool IsWithin(DateOnly? date) => (since is null || date >= since) && (until is null || date <= until);
        return build with { Entries = [.. build.Entries.Where(entry => IsWithin(entry.Date))], Cost = IsWithin(began) ? build.Cost : null };
    }

    private static Build? OnlyPart(Build build, Func<Id<Part>?, bool> isMeant)
    {
        var parts = build.Parts.Where(part => isMeant(part.Id)).ToList();
        var entries = build.Entries.Select(entry => OnlyPart(entry, isMeant)).OfType<Entry>().ToList();
        return parts.Count + entries.Count == 0 ? null : build with { Parts = parts, Entries = entries, Cost = null };
    }

    private static Entry? OnlyPart(Entry entry, Func<Id<Part>?, bool> isMeant)
    {
        var jobs = new List<Job>();
        var numbers = new Dictionary<int, int>();
        foreach (var job in entry.Jobs)
        {
            foreach (var (part, time) in job.OverParts().Where(share => isMeant(share.Part)))
            {
                numbers.TryAdd(job.Number, jobs.Count + 1);
                jobs.Add(job with
                {
                    Number = jobs.Count + 1,
                    Parts = part is { } only ? [new PartShare(only, 1)] : [],
                    Time = time,
                    SetUp = ShareOf(job.SetUp, time, job.Time),
                });
            }
        }

        return jobs.Count == 0 ? null : entry with
        {
            Jobs = jobs,
            Bought = [.. entry.Bought.Where(purchase => purchase.ForPart is { } part && isMeant(part))],
            Mistakes = [.. entry.Mistakes.Where(mistake => numbers.ContainsKey(mistake.Job)).Select(mistake => mistake with { Job = numbers[mistake.Job] })],
            Lessons = [.. entry.Lessons.Where(lesson => numbers.ContainsKey(lesson.Job)).Select(lesson => lesson with { Job = numbers[lesson.Job] })],
            Settings = [.. entry.Settings.Where(setting => numbers.ContainsKey(setting.Job)).Select(setting => setting with { Job = numbers[setting.Job] })],
            Readings = [.. entry.Readings.Where(reading => isMeant(reading.Part))],
        };
    }

    private static Minutes ShareOf(Minutes part, Minutes time, Minutes whole) =>
        whole == Minutes.Zero ? Minutes.Zero : new((int)((long)part.Count * time.Count / whole.Count));
}
