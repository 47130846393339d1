using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Server.Kestrel.Transport.Sockets;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace Journal.Site.Preview;

/// <summary>
/// Listeners that go on where the system has no handle left for one more connection: others will be given back soon. The
/// server's own would accept no more from then on.
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

        public EndPoint EndPoint => listener.EndPoint;

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

        public ValueTask UnbindAsync(CancellationToken cancellationToken = default) => listener.UnbindAsync(cancellationToken);

        public ValueTask DisposeAsync() => listener.DisposeAsync();
    }
}
