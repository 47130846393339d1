using System.Collections.Concurrent;
using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>Entries as one line each. An entry stands in many lists, as the same line in all.</summary>
internal sealed class EntryLines(SiteFigures figures)
{
    private readonly ConcurrentDictionary<EntryRef, EntryLineView> lines = new();

    /// <summary>The line of an entry.</summary>
    public EntryLineView Of(Entry entry) => lines.TryGetValue(entry.Ref, out var line) ? line : lines.GetOrAdd(entry.Ref, Make(entry));

    private EntryLineView Make(Entry entry)
    {
        var parts = entry.Jobs.SelectMany(job => job.Parts).Select(share => new PartRef(entry.Build, share.Part)).Distinct().Select(part => figures.Part(part).Title).ToList();
        var about = new List<string> { parts.Count == 0 ? "Build as a whole" : string.Join(", ", parts), figures.OperationWords(entry.Jobs.SelectMany(job => job.Operations).Distinct()) };
        if (entry.Milestone is not null)
        {
            about.Add("milestone");
        }

        if (entry.Mistakes.Count > 0)
        {
            about.Add(Show.Count(entry.Mistakes.Count, "mistake", "mistakes"));
        }

        return new EntryLineView(DateView.Of(entry.Date), new LinkView(entry.Title, Addresses.Of(entry.Ref)), Show.HoursOrDash(entry.Time), string.Join(" · ", about));
    }
}
