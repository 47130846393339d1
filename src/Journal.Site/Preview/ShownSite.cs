using System.Collections.Concurrent;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Site.Contents;
using Journal.Site.Output;
using Journal.Site.Pages;
using Journal.Site.Photos;
using Journal.Site.Templates;

namespace Journal.Site.Preview;

/// <summary>
/// The site of a journal as it was read once, each file made when someone looks at it; a picture when a page first shows
/// it.
/// </summary>
internal sealed class ShownSite : IPictureShelf
{
    private const int WidthToLookAt = 1600;

    private readonly SiteContents contents;
    private readonly PhotoStage stage;
    private readonly ConcurrentDictionary<string, Func<byte[]>> pictures = new(StringComparer.Ordinal);

    /// <summary>The site of a journal.</summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="journal">The journal as read, without errors.</param>
    /// <param name="today">The day that <c>publish: after</c> is held against.</param>
    /// <param name="look">The templates.</param>
    /// <param name="engine">Fills them.</param>
    /// <param name="kept">Where made pictures are kept, and what is known of the journal's.</param>
    public ShownSite(string folder, MakerJournal journal, DateOnly today, TemplateFiles look, TemplateEngine engine, (UserCache Cache, SeenFiles Seen) kept)
    {
        stage = new PhotoStage(folder, this, kept.Cache, kept.Seen, PictureSettings.Usual);
        contents = new SiteContents(new SiteFigures(journal, today, stage.Of), look, engine);
    }

    /// <summary>Pictures that pages have asked for and that could not be read.</summary>
    public IReadOnlyList<Problem> PictureProblems => stage.Problems;

    /// <summary>The bytes of a file, as a publish would write them; null where the site has none at that address.</summary>
    /// <exception cref="TemplateException">A template is missing or at fault.</exception>
    public byte[]? Bytes(string address) =>
        contents.Find(address)?.ToBytes() ?? (pictures.TryGetValue(address, out var picture) ? picture() : null);

    /// <summary>A picture of the journal in a size fit for a page, also one that is not published; null where it cannot be read.</summary>
    /// <param name="file">Its path from the journal's folder.</param>
    public byte[]? Picture(string file) =>
        stage.Of(file) is { } photo && pictures.TryGetValue(photo.Address(photo.Widths.Where(width => width <= WidthToLookAt).DefaultIfEmpty(photo.Widths.Min()).Max(), PictureMaker.Modern), out var bytes) ? bytes() : null;

    void IPictureShelf.Take(string address, string from, string hash) => pictures[address] = () => File.ReadAllBytes(from);

    bool IPictureShelf.Has(string address, string hash, long length) => false;

    void IPictureShelf.Write(string address, ReadOnlySpan<byte> bytes)
    {
        // Only where the cache cannot take it: this is all there is.
        var kept = bytes.ToArray();
        pictures[address] = () => kept;
    }
}
