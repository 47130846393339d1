using System.Net;
using Journal.Bench.Doors;

namespace Journal.Bench;

/// <summary>How the bench is to be served.</summary>
/// <param name="Folder">The journal's folder.</param>
public sealed record BenchOrder(string Folder)
{
    /// <summary>The port on this machine; 0 for any that is free.</summary>
    public int Port { get; init; }

    /// <summary>The address of the house that phones reach; null for this machine alone.</summary>
    public IPAddress? Phone { get; init; }

    /// <summary>For <c>https</c> to phones; null for plain <c>http</c>.</summary>
    public BenchCertificate? Certificate { get; init; }

    /// <summary>The clock.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Shows the maker the six digits that pair a phone.</summary>
    public Action<string> ShowCode { get; init; } = _ => { };
}
