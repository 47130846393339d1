using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;

namespace Journal.Site.Serving;

/// <summary>A port cannot be listened on.</summary>
public sealed class PortException : Exception
{
    /// <inheritdoc/>
    public PortException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public PortException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A failure without words.</summary>
    public PortException()
    {
    }

    /// <summary>Whether the system keeps the port for itself; else another program has it.</summary>
    public bool IsKeptBySystem { get; init; }

    /// <summary>What a failure to start means; null where it has nothing to do with the port.</summary>
    internal static PortException? Of(Exception failure) => failure switch
    {
        SocketException { SocketErrorCode: SocketError.AccessDenied } => new PortException(failure.Message, failure) { IsKeptBySystem = true },
        SocketException or AddressInUseException => new PortException(failure.Message, failure),
        { InnerException: { } inner } => Of(inner),
        _ => null,
    };
}
