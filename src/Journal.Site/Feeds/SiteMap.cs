using System.Text;
using System.Xml;

namespace Journal.Site.Feeds;

/// <summary>The site map of the sitemaps.org protocol, version 0.9; only where the site has an address.</summary>
internal static class SiteMap
{
    private const string Namespace = "http://www.sitemaps.org/schemas/sitemap/0.9";

    /// <summary>The site map as UTF-8, sorted, so that the order of the pages does not matter.</summary>
    /// <param name="home">The address of the site.</param>
    /// <param name="addresses">The pages, from the root of the site.</param>
    public static byte[] Of(Uri home, IEnumerable<string> addresses)
    {
        using var bytes = new MemoryStream();
        using (var writer = XmlWriter.Create(bytes, new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" }))
        {
            writer.WriteStartElement("urlset", Namespace);
            foreach (var address in addresses.Order(StringComparer.Ordinal))
            {
                writer.WriteStartElement("url", Namespace);
                writer.WriteElementString("loc", Namespace, new Uri(home, address).AbsoluteUri);
                writer.WriteEndElement();
            }

            writer.WriteEndElement();
        }

        return bytes.ToArray();
    }

    /// <summary>The text of robots.txt: all may be read. It names the site map where the site has an address; null for a site without.</summary>
    public static string Robots(Uri? home) => home is null ? "User-agent: *\nAllow: /\n" : $"User-agent: *\nAllow: /\nSitemap: {new Uri(home, "sitemap.xml").AbsoluteUri}\n";
}
