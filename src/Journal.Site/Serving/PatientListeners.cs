using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Server.Kestrel.Transport.Sockets;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace Journal.Site.Serving;

/// <summary>
/// Listeners that keep accepting after the system had no handle left for a connection: others are given back soon. The
/// server's own listener would accept none from then on.
/// </summary>
internal sealed class PatientListeners(IOptions<SocketTransportOptions> options, ILoggerFactory loggers) : IConnectionListenerFactory
{
    private readonly SocketTransportFactory inner = new(options, loggers);

    /// <inheritdoc/>
    public async ValueTask<IConnectionListener> BindAsync(EndPoint endpoint, CancellationToken cancellationToken = default) =>
        new Patient(await inner.BindAsync(endpoint, cancellationToken));

    private sealed class Patient(IConnectionListener listener) : IConnectionListener
    {
        private static readonly TimeSpan AfterRefusal = TimeSpan.FromMilliseconds(200);

        /// <inheritdoc/>
        public EndPoint EndPoint => listener.EndPoint;

        /// <inheritdoc/>
        public async ValueTask<ConnectionContext?> AcceptAsync(CancellationToken cancellationToken = default)
        {
            while (true)
            {
                try
                {
                    return await listener.AcceptAsync(cancellationToken);
                }
                catch (SocketException)
                {
                    await Task.Delay(AfterRefusal, cancellationToken);
                }
            }
        }

        /// <inheritdoc/>
        public ValueTask UnbindAsync(CancellationToken cancellationToken = default) => listener.UnbindAsync(cancellationToken);

        /// <inheritdoc/>
        public ValueTask DisposeAsync() => listener.DisposeAsync();
    }
}
