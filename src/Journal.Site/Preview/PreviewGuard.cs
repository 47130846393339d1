namespace Journal.Site.Preview;

/// <summary>
/// Who may ask the preview: this machine alone, under its own name. A page of another site could otherwise read the
/// journal through the maker's browser, by a name that it points to this machine (DNS rebinding) or by a request from
/// its own pages.
/// </summary>
internal static class PreviewGuard
{
    /// <summary>Whether a request may be answered.</summary>
    /// <param name="host">The <c>Host</c> header.</param>
    /// <param name="origin">The <c>Origin</c> header; null where there is none.</param>
    /// <param name="port">The port that the preview listens on.</param>
    public static bool Lets(string? host, string? origin, int port) =>
        (host == $"127.0.0.1:{port}" || host == $"localhost:{port}")
        && (origin is null || origin == $"http://{host}");

    /// <summary>The address within the site that a request means; null where it would lead out of the site.</summary>
    /// <param name="target">The request target as sent, still encoded.</param>
    public static string? AddressOf(string target)
    {
        var path = Uri.UnescapeDataString(target.Split('?', '#')[0]);
        if (!path.StartsWith('/') || path.Contains('\0', StringComparison.Ordinal) || path.Contains('\\', StringComparison.Ordinal)
            || path.Split('/').Any(step => step.StartsWith('.')))
        {
            return null;
        }

        return path.EndsWith('/') ? $"{path[1..]}index.html" : path[1..];
    }
}
