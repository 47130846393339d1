using Journal.Core.Model;
using Journal.Site.Html;
using Markdig.Syntax;

namespace Journal.Site.Text;

/// <summary>Where the links and pictures of a text lead on one page.</summary>
internal interface ITextTargets
{
    /// <summary>The address of a link's target, relative to the page; null for plain text.</summary>
    string? AddressOf(LinkTarget target);

    /// <summary>A picture that stands in the text; null where there is none of that name, so that its words stand instead.</summary>
    TextPicture? PictureOf(string written);
}

/// <summary>A picture in a text.</summary>
/// <param name="Address">Where it lies, relative to the page; null where it is not to be shown, nor its words.</param>
/// <param name="Html">What stands in the text.</param>
internal sealed record TextPicture(string? Address, SafeHtml Html);

/// <summary>
/// Makes HTML of an entry's text. Only allow-listed addresses survive; raw HTML goes through the sanitiser, and only
/// texts that hold some pay for it.
/// </summary>
internal sealed class BodyHtml(ITextTargets targets)
{
    private static readonly Sanitiser Sanitiser = new();
    private static readonly Dictionary<string, LinkTarget?> NoLinks = [];

    // Addresses within the site that this text leads to. Raw HTML may use no others: only these are known to exist.
    private readonly HashSet<string> within = new(StringComparer.Ordinal);

    // What the links of the text at hand mean, by what is written.
    private Dictionary<string, LinkTarget?> links = NoLinks;

    /// <summary>The text as HTML. Headings begin at the second level, because the page's title is the first.</summary>
    public SafeHtml Render(Body body)
    {
        if (body.Document.Count == 0)
        {
            return SafeHtml.Empty;
        }

        return new SafeHtml(Render(body, [body.Document]));
    }

    /// <summary>Some paragraphs of the text as HTML.</summary>
    public SafeHtml Render(Body body, IReadOnlyList<ParagraphBlock> paragraphs) => new(Render(body, (IReadOnlyList<MarkdownObject>)paragraphs));

    /// <summary>The address that a link as written leads to; null for plain text.</summary>
    internal string? AddressOf(string url)
    {
        if (!links.TryGetValue(url, out var target))
        {
            return SafeAddress.IsSafe(url) ? url : null;
        }

        var address = target is { } known ? targets.AddressOf(known) : null;
        if (address is not null)
        {
            within.Add(address);
        }

        return address;
    }

    /// <summary>The picture of an address as written; null where its words stand instead.</summary>
    internal TextPicture? Picture(string? url)
    {
        var picture = url is null ? null : targets.PictureOf(Uri.UnescapeDataString(url));
        if (picture?.Address is { } address)
        {
            within.Add(address);
        }

        return picture;
    }

    private string Render(Body body, IReadOnlyList<MarkdownObject> blocks)
    {
        links = body.Links.Count == 0 ? NoLinks : body.Links.DistinctBy(link => link.Written).ToDictionary(link => link.Written, link => link.Target, StringComparer.Ordinal);
        var html = Unprintable.Replace(BodyRenderer.Render(this, body.Document, blocks));
        return body.HoldsHtml ? Sanitiser.Clean(html, within) : html;
    }
}
