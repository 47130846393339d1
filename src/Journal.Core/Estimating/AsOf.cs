using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>The journal as it stood on a day.</summary>
internal static class AsOf
{
    /// <summary>
    /// What was written by the end of a day. A build with later entries was not finished then; guesses have no date and
    /// are taken as they stand.
    /// </summary>
    public static MakerJournal StoodOn(this MakerJournal journal, DateOnly day) =>
        journal.LatestDate is not { } latest || latest <= day
            ? journal
            : journal with { Builds = [.. journal.Builds.Select(build => build.StoodOn(day))] };

    private static Build StoodOn(this Build build, DateOnly day)
    {
        List<Entry> entries = [.. build.Entries.Where(entry => entry.Date <= day)];
        var status = build.Status == BuildStatus.Finished && entries.Count < build.Entries.Count ? BuildStatus.UnderWay : build.Status;
        return build with { Entries = entries, Status = status };
    }
}
