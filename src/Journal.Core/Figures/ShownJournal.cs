using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What viewers see of a journal on a day (docs/figures.md, Hidden evenings).</summary>
/// <param name="Told">The journal as if nobody had written the hidden evenings, nor made there what only they define.</param>
/// <param name="Counted">The same with the bare minutes of the hidden evenings, by part and operation.</param>
public sealed record ShownJournal(MakerJournal Told, MakerJournal Counted)
{
    /// <summary>What is seen of a journal.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="today">The day of publishing.</param>
    public static ShownJournal Of(MakerJournal journal, DateOnly today)
    {
        var hidden = journal.Builds.SelectMany(build => build.Entries).Where(entry => !entry.Publish.AllowsOn(today)).Select(entry => entry.Ref).ToHashSet();
        if (hidden.Count == 0)
        {
            return new ShownJournal(journal, journal);
        }

        var told = journal with
        {
            Tools = [.. journal.Tools.Where(tool => tool.DefinedIn is not { } entry || !hidden.Contains(entry))],
            Builds = [.. journal.Builds.Select(build => build with { Entries = [.. build.Entries.Where(entry => !hidden.Contains(entry.Ref))] })],
        };
        return new ShownJournal(told, told with
        {
            Builds = [.. journal.Builds.Select(build => build with { Entries = [.. build.Entries.Select(entry => hidden.Contains(entry.Ref) ? Bare(entry) : entry)] })],
        });
    }

    // A job that mends something counts by its operations: that something was put right is more than minutes.
    private static Entry Bare(Entry entry) => new()
    {
        Id = entry.Id,
        Build = entry.Build,
        File = entry.File,
        Title = "",
        Date = entry.Date,
        Publish = entry.Publish,
        Body = Body.Empty,
        Jobs = [.. entry.Jobs.Select(job => new Job { Number = job.Number, Parts = job.Parts, Operations = job.Operations, Time = job.Time, SetUp = job.SetUp })],
    };
}
