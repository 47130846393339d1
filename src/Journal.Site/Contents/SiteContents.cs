using System.Buffers;
using System.Text;
using Journal.Site.Feeds;
using Journal.Site.Output;
using Journal.Site.Pages;
using Journal.Site.Search;
using Journal.Site.Templates;

namespace Journal.Site.Contents;

/// <summary>
/// A site as a list of files by address, each made when it is asked for. Publishing asks for all of them, the preview for
/// those that are looked at: so both show the same, to the byte. Pictures are brought by the pages that show them
/// (<see cref="Photos.PhotoStage"/>).
/// </summary>
internal sealed class SiteContents
{
    private readonly SiteFigures figures;
    private readonly TemplateFiles look;
    private readonly TemplateEngine engine;
    private readonly Lazy<IReadOnlyList<SiteFile>> pages;
    private readonly Lazy<Dictionary<string, PageOrder>> pagesByAddress;
    private readonly Lazy<Dictionary<string, SiteFile>> others;
    private readonly Lazy<FindIndex> find;
    private readonly Lazy<IReadOnlyList<FeedEntry>> latest;

    /// <summary>The site of a journal in a look.</summary>
    /// <param name="figures">The journal and its figures.</param>
    /// <param name="look">The templates.</param>
    /// <param name="engine">Fills them.</param>
    public SiteContents(SiteFigures figures, TemplateFiles look, TemplateEngine engine)
    {
        (this.figures, this.look, this.engine) = (figures, look, engine);
        pages = new(() => [.. PageList.Of(figures).Where(page => page.IsThere()).Select(Page)]);
        pagesByAddress = new(() => ByAddress(PageList.Of(figures), page => page.Address));
        others = new(() => ByAddress(Others(), file => file.Address));
        find = new(() => FindIndex.Of(FindableThings.Of(figures)));
        latest = new(() => FeedEntry.Latest(figures));
    }

    /// <summary>How many entries it shows.</summary>
    public int Entries => figures.ShownEntries.Count;

    /// <summary>The pages that there are.</summary>
    public IReadOnlyList<SiteFile> Pages => pages.Value;

    /// <summary>Every file but the pictures. The longest to make comes first.</summary>
    public IEnumerable<SiteFile> Files => [new SiteFile(FindIndex.Address, take => take(find.Value.Script())), .. Pages, .. find.Value.Pieces.Select(Texts), .. Others()];

    /// <summary>The file at an address; null where the site has none, or it is a picture.</summary>
    /// <exception cref="PublishingException">Two files want the address.</exception>
    public SiteFile? Find(string address) =>
        pagesByAddress.Value.TryGetValue(address, out var page) ? page.IsThere() ? Page(page) : null
        : address == FindIndex.Address ? new SiteFile(address, take => take(find.Value.Script()))
        : FindPiece.IsAddress(address) ? find.Value.Pieces.Where(piece => piece.Address == address).Select(Texts).FirstOrDefault()
        : others.Value.GetValueOrDefault(address);

    private SiteFile Page(PageOrder page) => new(page.Address, take => engine.Fill(page.Template, page.Model(), text => GiveInUtf8(text, take)));

    private SiteFile Texts(FindPiece piece) => new(piece.Address, take => take(find.Value.TextsOf(piece)));

    // All that is neither a page nor of the find page: feeds, plain texts, and the look's own files.
    private IEnumerable<SiteFile> Others()
    {
        var journal = figures.Journal;
        yield return new SiteFile(Addresses.AtomFeed, take => take(AtomFeed.Of(figures, latest.Value)));
        yield return new SiteFile(Addresses.JsonFeed, take => take(JsonFeed.Of(figures, latest.Value)));
        foreach (var build in journal.Builds.Where(build => StoryPage.HasStory(figures, build)))
        {
            yield return Text(Addresses.StoryText(build.Id), () => StoryPage.Text(figures, build));
        }

        foreach (var (address, text) in journal.Builds.SelectMany(VideoView.ChapterLists))
        {
            yield return Text(address, () => text);
        }

        yield return Text("robots.txt", () => SiteMap.Robots(journal.Address));
        if (journal.Address is { } home)
        {
            yield return new SiteFile("sitemap.xml", take => take(SiteMap.Of(home, Pages.Select(page => page.Address).Where(address => address != Addresses.NotFound && pagesByAddress.Value[address].Template != MovedPage.Template))));
        }

        foreach (var (path, bytes) in look.Plain)
        {
            yield return new SiteFile(path, take => take(bytes));
        }
    }

    private static SiteFile Text(string address, Func<string> text) => new(address, take => GiveInUtf8(text(), take));

    private static void GiveInUtf8(ReadOnlySpan<char> text, TakeBytes take)
    {
        var bytes = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(text.Length));
        take(bytes.AsSpan(0, Encoding.UTF8.GetBytes(text, bytes)));
        ArrayPool<byte>.Shared.Return(bytes);
    }

    private static Dictionary<string, T> ByAddress<T>(IEnumerable<T> files, Func<T, string> addressOf)
    {
        var found = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var file in files)
        {
            if (!found.TryAdd(addressOf(file), file))
            {
                throw PublishingException.SameAddress(addressOf(file));
            }
        }

        return found;
    }
}
