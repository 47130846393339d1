using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>
/// Where the hours went (docs/figures.md, Minutes and how they are shared). Whole minutes throughout: what is shared out always adds up to what
/// was entered. Every job is shared first over its parts by weight, then over its operations equally; its kinds of time
/// are split once. Whatever <c>publish</c> says counts.
/// </summary>
/// <param name="Builds">The builds by id.</param>
/// <param name="Work">All builds together.</param>
/// <param name="Calendar">All builds over the calendar.</param>
public sealed record Hours(IReadOnlyList<BuildHours> Builds, Work Work, WorkCalendar Calendar)
{
    /// <summary>All the time of the journal.</summary>
    public Minutes Minutes => Work.Minutes;

    /// <summary>The hours of a journal.</summary>
    public static Hours Of(MakerJournal journal) => Of(journal, (_, _) => true);

    /// <summary>The hours of some parts: of a job on several what fell to them.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="isMeant">Whether a part of a build counts; null stands for the build as a whole.</param>
    public static Hours Of(MakerJournal journal, Func<Id<Build>, Id<Part>?, bool> isMeant)
    {
        var ranks = journal.Vocabulary.Operations.Ranks();
        List<BuildHours> builds = [.. journal.Builds.Select(build => BuildHours.Of(build, journal.Vocabulary, ranks, part => isMeant(build.Id, part)))];
        return new Hours(
            builds,
            Work.Of(builds.SelectMany(build => build.Cells), builds.SelectMany(build => build.KindCells), ranks),
            WorkCalendar.Of(builds.SelectMany(build => build.Cells)));
    }
}
