namespace Journal.Core.Model;

/// <summary>Which addresses a published page may link to beside our own schemes.</summary>
public static class SafeAddress
{
    /// <summary>Whether an address is absolute and of a scheme that cannot run anything: <c>https</c>, <c>http</c>, <c>mailto</c>.</summary>
    public static bool IsSafe(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var uri)
        && (uri.Scheme == Uri.UriSchemeHttps || uri.Scheme == Uri.UriSchemeHttp || uri.Scheme == Uri.UriSchemeMailto);
}
