using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A part with pieces still to make.</summary>
/// <param name="Part">The part.</param>
/// <param name="Pieces">How many are left, at least 1.</param>
/// <param name="Of">How many the build needs.</param>
public sealed record PartToGo(Id<Part> Part, int Pieces, int Of);

/// <summary>A part of which all pieces are finished.</summary>
/// <param name="Part">The part.</param>
/// <param name="Date">The day the last piece was finished; the build's latest day where only the build's being finished says so.</param>
/// <param name="Entry">The entry of that day; null in a finished build without entries.</param>
public sealed record FinishedPart(Id<Part> Part, DateOnly? Date, EntryRef? Entry);

/// <summary>Which parts are finished: all pieces said to be so, or the build is finished (docs/figures.md, Parts and the whole).</summary>
/// <param name="ToGo">Parts of the list with pieces still to make, in its order; none in a finished build.</param>
/// <param name="Finished">The other parts of the list, in its order.</param>
internal sealed record PiecesFinished(IReadOnlyList<PartToGo> ToGo, IReadOnlyList<FinishedPart> Finished)
{
    /// <summary>Counts the pieces of a build; <c>finished</c> without a number means all that are left, and so does too large a number.</summary>
    public static PiecesFinished Of(Build build)
    {
        var left = build.PartsById().ToDictionary(pair => pair.Key, pair => pair.Value.Quantity);
        var finished = new Dictionary<Id<Part>, FinishedPart>();
        foreach (var entry in build.Entries)
        {
            foreach (var (part, pieces) in entry.Finished)
            {
                if (left.TryGetValue(part, out var count) && count > 0)
                {
                    left[part] = Math.Max(0, count - (pieces ?? count));
                    if (left[part] == 0)
                    {
                        finished[part] = new FinishedPart(part, entry.Date, entry.Ref);
                    }
                }
            }
        }

        var parts = build.Parts.DistinctBy(part => part.Id).ToList();
        if (build.Status == BuildStatus.Finished)
        {
            var last = build.Entries.Count == 0 ? null : build.Entries[^1];
            return new PiecesFinished(
                [],
                [.. parts.Select(part => finished.GetValueOrDefault(part.Id) ?? new FinishedPart(part.Id, last?.Date, last?.Ref))]);
        }

        return new PiecesFinished(
            [.. parts.Where(part => left[part.Id] > 0).Select(part => new PartToGo(part.Id, left[part.Id], part.Quantity))],
            [.. parts.Where(part => finished.ContainsKey(part.Id)).Select(part => finished[part.Id])]);
    }
}
