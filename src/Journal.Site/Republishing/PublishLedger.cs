using System.Collections.Concurrent;
using System.Text;
using Journal.Core.Model;
using Journal.Core.Parsing;
using Journal.Core.Parsing.Problems;
using Journal.Site.Feeds;
using Journal.Site.Pages;
using Journal.Site.Search;

namespace Journal.Site.Republishing;

/// <summary>What a publish notes while it is at work, to become a <see cref="PublishRecord"/>.</summary>
/// <param name="look">The program and templates.</param>
/// <param name="surveyed">When the journal's files were looked at.</param>
/// <param name="sources">What they were.</param>
/// <param name="problems">What reading the journal had to say.</param>
internal sealed class PublishLedger(string look, DateTime surveyed, IReadOnlyDictionary<string, FileStamp> sources, IReadOnlyList<Problem> problems)
{
    private readonly ConcurrentBag<(EntryRef Entry, WordSlot Slot)> slots = [];
    private readonly ConcurrentDictionary<EntryRef, bool> unfit = new();

    /// <summary>Notes where a page shows words of entries.</summary>
    public void Note(string address, ReadOnlySpan<char> page, object model)
    {
        foreach (var words in (model as IShowsWords)?.Words ?? [])
        {
            Note(words.Entry, Find(page, words.Html.Markup), new WordSlot(address, 0, 0, words.About is null ? SlotKind.Prose : SlotKind.Story, words.About ?? "", words.Answers));
        }
    }

    /// <summary>Notes where the feeds show words of entries.</summary>
    public void Note(IEnumerable<FeedEntry> entries, byte[] atom, byte[] json)
    {
        foreach (var entry in entries)
        {
            Note(entry.Ref, Find(atom, FeedText.InAtom(entry.Content)), new WordSlot(Addresses.AtomFeed, 0, 0, SlotKind.Atom, "", entry.Answers));
            Note(entry.Ref, Find(json, FeedText.InJson(entry.Content)), new WordSlot(Addresses.JsonFeed, 0, 0, SlotKind.Json, "", entry.Answers));
        }
    }

    /// <summary>Keeps it all; where that fails the next publish makes everything anew.</summary>
    public void Keep(RecordFile file, PublishOrder order, SiteFigures figures, FindIndex index, Published published, string site)
    {
        // What lies behind a dot was not looked at.
        var isAllSeen = !order.Journal.Entries.SelectMany(entry => entry.Photos).Any(photo => $"/{photo.File}".Contains("/.", StringComparison.Ordinal));
        if (isAllSeen && FileStamps.OfSite(site) is { } files)
        {
            var record = new PublishRecord
            {
                Look = look,
                Folder = Path.GetFullPath(order.Folder),
                Today = order.Today,
                SameUntil = SameUntil(order.Journal, order.Today),
                Surveyed = surveyed.Ticks,
                Sources = sources,
                Site = files,
                Problems = problems,
                Published = published,
                Entries = order.Template is null ? Entries(figures) : new Dictionary<string, EntrySlots>(),
                Home = order.Journal.Address?.AbsoluteUri ?? "",
                Story = figures.Story,
            };
            file.Write(record, index);
        }
    }

    private void Note(EntryRef entry, (int Offset, int Length)? place, WordSlot slot)
    {
        if (place is { } found)
        {
            slots.Add((entry, slot with { Offset = found.Offset, Length = found.Length }));
        }
        else
        {
            unfit[entry] = true;
        }
    }

    // Nothing shown has no place; what stands in a page twice, or not as it was made, cannot be told apart.
    private static (int Offset, int Length)? Find(ReadOnlySpan<char> page, string markup)
    {
        var at = page.IndexOf(markup);
        return markup.Length == 0 ? (0, 0)
            : at >= 0 && page[(at + 1)..].IndexOf(markup) < 0 ? (Encoding.UTF8.GetByteCount(page[..at]), Encoding.UTF8.GetByteCount(markup))
            : null;
    }

    private static (int Offset, int Length)? Find(byte[] file, byte[] content)
    {
        var at = file.AsSpan().IndexOf(content);
        return content.Length == 0 ? (0, 0) : at >= 0 && file.AsSpan(at + 1).IndexOf(content) < 0 ? (at, content.Length) : null;
    }

    private Dictionary<string, EntrySlots> Entries(SiteFigures figures)
    {
        var places = slots.ToLookup(one => one.Entry, one => one.Slot);
        var told = problems.ToLookup(problem => problem.Place.File, problem => problem.Place.Line);
        return figures.Journal.Builds.SelectMany(build => build.Entries)
            .Where(entry => !unfit.ContainsKey(entry.Ref) && !told[entry.File].Any(line => line >= entry.Body.FirstLine))
            .ToDictionary(entry => entry.File, entry => new EntrySlots(EntryFacts.DigestOf(entry.Written, entry.Body), Addresses.Of(entry.Ref), [.. places[entry.Ref]]), StringComparer.Ordinal);
    }

    private static DateOnly SameUntil(MakerJournal journal, DateOnly today) => journal.Builds
        .SelectMany(build => build.Entries)
        .SelectMany(entry => entry.Photos.Select(photo => photo.Publish).Append(entry.Publish))
        .Concat(journal.Plans.Select(plan => plan.Publish))
        .Select(publication => publication.FirstSeenAfter(today))
        .OfType<DateOnly>()
        .DefaultIfEmpty(DateOnly.MaxValue)
        .Min();
}
