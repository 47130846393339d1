using System.Text.RegularExpressions;

namespace Journal.Site.Sending;

/// <summary>What a server should say of a file, where it can be told.</summary>
/// <param name="ContentType">Its media type.</param>
/// <param name="CacheControl">How long readers and the network may keep it (RFC 9111; <c>immutable</c> of RFC 8246).</param>
internal sealed partial record FileHeaders(string ContentType, string CacheControl)
{
    private const string Year = "public, max-age=31536000, immutable";
    private const string Minute = "public, must-revalidate, max-age=60";

    // IANA's media types; text is always UTF-8 here.
    private static readonly Dictionary<string, string> Types = new(StringComparer.OrdinalIgnoreCase)
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".txt"] = "text/plain; charset=utf-8",
        [".xml"] = "application/xml; charset=utf-8",
        [".json"] = "application/json",
        [".svg"] = "image/svg+xml",
        [".webp"] = "image/webp",
        [".jpg"] = "image/jpeg",
        [".jpeg"] = "image/jpeg",
        [".png"] = "image/png",
        [".gif"] = "image/gif",
        [".ico"] = "image/vnd.microsoft.icon",
        [".woff2"] = "font/woff2",
        [".pdf"] = "application/pdf",
    };

    /// <summary>The headers of an address.</summary>
    public static FileHeaders Of(string address) => new(TypeOf(address), IsNamedByContent(address) ? Year : Minute);

    /// <summary>Whether a file's name was made from its contents, so that the name never gets other contents.</summary>
    public static bool IsNamedByContent(string address) => Digest().IsMatch(address);

    private static string TypeOf(string address) => address switch
    {
        "feed.xml" => "application/atom+xml; charset=utf-8",
        "feed.json" => "application/feed+json",
        _ => Types.GetValueOrDefault(Path.GetExtension(address), "application/octet-stream"),
    };

    [GeneratedRegex("(?:^|[/.-])[0-9a-f]{16,64}[.-][^/]*$", RegexOptions.CultureInvariant)]
    private static partial Regex Digest();
}
