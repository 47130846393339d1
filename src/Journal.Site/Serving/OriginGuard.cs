namespace Journal.Site.Serving;

/// <summary>
/// Who is answered: whoever asks under one of the server's own names. A page of another site could otherwise read the
/// journal through the maker's browser, by a name that it points to this machine (DNS rebinding) or by a request from
/// its own pages.
/// </summary>
/// <param name="origins">The server's own origins, such as <c>http://127.0.0.1:8765</c>.</param>
public sealed class OriginGuard(params IReadOnlyCollection<string> origins)
{
    /// <summary>The guard of a server that is asked on this machine alone.</summary>
    /// <param name="port">The port that it listens on.</param>
    public static OriginGuard OfThisMachine(int port) => new($"http://127.0.0.1:{port}", $"http://localhost:{port}");

    /// <summary>Whether a request may be answered.</summary>
    /// <param name="scheme"><c>http</c> or <c>https</c>, as the connection is.</param>
    /// <param name="host">The <c>Host</c> header.</param>
    /// <param name="origin">The <c>Origin</c> header; null where there is none.</param>
    public bool Lets(string scheme, string? host, string? origin)
    {
        var asked = $"{scheme}://{host}";
        return origins.Contains(asked, StringComparer.Ordinal) && (origin is null || origin == asked);
    }
}
