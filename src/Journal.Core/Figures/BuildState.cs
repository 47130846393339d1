using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>Where a build stands.</summary>
/// <param name="Build">The build.</param>
/// <param name="Status">What the maker says of it.</param>
/// <param name="Latest">Its latest entry; null without entries.</param>
/// <param name="LatestDate">That entry's date.</param>
/// <param name="Next">What the latest entry that says so wants done next.</param>
/// <param name="Left">How the machine was left: the holding and datum of the last job of the latest entry.</param>
/// <param name="Snags">What is still to put right, in the order raised.</param>
/// <param name="ToGo">Parts of the list with unfinished pieces, in its order; none in a finished build.</param>
/// <param name="Finished">Parts of the list that are finished, in its order.</param>
public sealed record BuildState(
    Id<Build> Build,
    BuildStatus Status,
    EntryRef? Latest,
    DateOnly? LatestDate,
    NextStep? Next,
    LeftStanding? Left,
    IReadOnlyList<OpenSnag> Snags,
    IReadOnlyList<PartToGo> ToGo,
    IReadOnlyList<FinishedPart> Finished)
{
    /// <summary>The day of its latest entry or that on which it was begun, whichever is later; null where neither is known.</summary>
    public DateOnly? LastTouched { get; init; }

    /// <summary>The state of a build by its entries, which are in the order of their dates.</summary>
    internal static BuildState Of(Build build)
    {
        var latest = build.Entries.Count == 0 ? null : build.Entries[^1];
        var saysNext = build.Entries.LastOrDefault(entry => entry.Next is not null);
        var pieces = PiecesFinished.Of(build);
        return new BuildState(
            build.Id,
            build.Status,
            latest?.Ref,
            latest?.Date,
            saysNext is null ? null : new NextStep(saysNext.Next!, saysNext.Ref, saysNext.Date),
            latest is null ? null : new LeftStanding(latest.Jobs[^1].Held, latest.Jobs[^1].Datum, latest.Ref),
            OpenSnag.Of(build),
            pieces.ToGo,
            pieces.Finished)
        {
            LastTouched = latest is null || build.Started > latest.Date ? build.Started : latest.Date,
        };
    }
}

/// <summary>What is next.</summary>
/// <param name="Text">In the maker's words.</param>
/// <param name="Entry">The entry that says so.</param>
/// <param name="Date">That entry's date.</param>
public sealed record NextStep(string Text, EntryRef Entry, DateOnly Date);

/// <summary>How the machine was left.</summary>
/// <param name="Held">How the work was held, where the job says so.</param>
/// <param name="Datum">What everything was measured from, where the job says so.</param>
/// <param name="Entry">The entry that tells of it.</param>
public sealed record LeftStanding(string? Held, string? Datum, EntryRef Entry);

/// <summary>A snag not put right yet.</summary>
/// <param name="Snag">The snag.</param>
/// <param name="Entry">The entry that raised it.</param>
/// <param name="Date">That entry's date.</param>
public sealed record OpenSnag(Snag Snag, EntryRef Entry, DateOnly Date)
{
    /// <summary>A snag raised and cleared in one entry is put right; raised again later it is open again.</summary>
    internal static IReadOnlyList<OpenSnag> Of(Build build)
    {
        var raised = new List<OpenSnag>();
        var open = new Dictionary<Id<Snag>, OpenSnag>();
        foreach (var entry in build.Entries)
        {
            foreach (var snag in entry.Snags.Select(snag => new OpenSnag(snag, entry.Ref, entry.Date)))
            {
                if (open.TryAdd(snag.Snag.Id, snag))
                {
                    raised.Add(snag);
                }
            }

            foreach (var cleared in entry.Cleared)
            {
                open.Remove(cleared);
            }
        }

        return [.. raised.Where(snag => ReferenceEquals(open.GetValueOrDefault(snag.Snag.Id), snag))];
    }
}
