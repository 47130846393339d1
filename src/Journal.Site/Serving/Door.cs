using System.Net;
using System.Security.Cryptography.X509Certificates;

namespace Journal.Site.Serving;

/// <summary>An address of this machine that a server listens on.</summary>
/// <param name="Address">The address.</param>
/// <param name="Port">The port; 0 for any that is free.</param>
/// <param name="Certificate">What the server shows of itself, then it talks <c>https</c>; null for plain <c>http</c>.</param>
public sealed record Door(IPAddress Address, int Port, X509Certificate2? Certificate = null)
{
    /// <summary>The door that only this machine can knock at.</summary>
    public static Door OfThisMachine(int port) => new(IPAddress.Loopback, port);
}

/// <summary>How much a server takes from those who ask.</summary>
public sealed record ServerLimits
{
    /// <summary>The longest body of a request, in bytes.</summary>
    public long LongestBody { get; init; }

    /// <summary>Connections at once: many tabs have a few each; the system gives a program some hundreds of handles.</summary>
    public int MostConnections { get; init; } = 100;

    /// <summary>How long the head of a request may take to come.</summary>
    public TimeSpan ForTheHead { get; init; } = TimeSpan.FromSeconds(10);
}
