using Journal.Core.Parsing;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Texts;
using Journal.Site.Pages;

namespace Journal.Site.Preview;

/// <summary>What a file that is being typed looks like.</summary>
/// <param name="Problems">All problems of the journal with it.</param>
/// <param name="Page">Its page of the site; null where errors stand in the way, or there is none.</param>
public sealed record DraftLook(IReadOnlyList<Problem> Problems, ReadOnlyMemory<byte>? Page);

/// <summary>The site with a file in it that is being typed and not saved yet: to the byte what a publish would write after the save.</summary>
/// <param name="folder">The journal's folder.</param>
public sealed class DraftPreview(string folder)
{
    private readonly Lock guard = new();
    private (DateOnly Today, PreviewedJournal Journal)? read;

    /// <summary>Reads the journal with a file as it is being typed.</summary>
    /// <param name="typed">The file; null for the journal as it was saved.</param>
    /// <param name="address">The page of the site to make, as <see cref="PageOf"/> names it.</param>
    /// <param name="today">The day that <c>publish: after</c> is held against.</param>
    public DraftLook Look(TypedFile? typed, string address, DateOnly today)
    {
        lock (guard)
        {
            var journal = On(today);
            var problems = journal.Read(touched: [], typed);
            var isFaulty = journal.Site is null || problems.Any(problem => problem.Severity == Severity.Error);
            return new DraftLook(problems, isFaulty ? null : journal.Site!.Bytes(address));
        }
    }

    /// <summary>A file of the site as it was last read without errors; null where there is none.</summary>
    /// <param name="target">The address within the site, as a request names it, with a slash in front.</param>
    /// <param name="today">The day that <c>publish: after</c> is held against.</param>
    public (string Address, byte[] Bytes)? File(string target, DateOnly today)
    {
        if (PageAddress.Of(target) is not { } address)
        {
            return null;
        }

        lock (guard)
        {
            return Read(On(today))?.Bytes(address) is { } bytes ? (address, bytes) : null;
        }
    }

    /// <summary>A picture of the journal as WebP, in a size fit for a page, also one that is not published; null where it cannot be read.</summary>
    /// <param name="file">Its path from the journal's folder, as the journal lists it.</param>
    /// <param name="today">The day that <c>publish: after</c> is held against.</param>
    public byte[]? Picture(string file, DateOnly today)
    {
        ShownSite? site;
        lock (guard)
        {
            site = Read(On(today));
        }

        return site?.Picture(file);
    }

    /// <summary>The page of the site that shows a file of the journal.</summary>
    public static string PageOf(JournalFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Kind switch
        {
            JournalFileKind.Entry => $"{file.Build}/entry/{file.Id}.html",
            JournalFileKind.Build => $"{file.Build}/index.html",
            JournalFileKind.Plan => $"plan/{file.Id}.html",
            JournalFileKind.Tools => "tooling.html",
            _ => Addresses.Front,
        };
    }

    private static ShownSite? Read(PreviewedJournal journal)
    {
        if (journal.Site is null)
        {
            journal.Read(touched: null, typed: null);
        }

        return journal.Site;
    }

    private PreviewedJournal On(DateOnly today)
    {
        if (read is not { } known || known.Today != today)
        {
            read = known = (today, new PreviewedJournal(folder, today, template: null));
        }

        return known.Journal;
    }
}
