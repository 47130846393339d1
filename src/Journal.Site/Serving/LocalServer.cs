using System.Globalization;
using System.Net.Security;
using System.Net.Sockets;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace Journal.Site.Serving;

/// <summary>A server on addresses of this machine, without settings from elsewhere, with limits, and one answer for all that is asked.</summary>
public sealed class LocalServer : IAsyncDisposable
{
    private static readonly TimeSpan ForOpenRequests = TimeSpan.FromMilliseconds(200);

    private readonly WebApplication app;

    private LocalServer(IReadOnlyList<Door> doors, ServerLimits limits, RequestDelegate answer)
    {
        // Empty: no settings from files and variables, which could open other doors, no log, no end by signal of its own.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().UseKestrelHttpsConfiguration().ConfigureKestrel(kestrel => Configure(kestrel, doors, limits));
        builder.Services.AddSingleton<IConnectionListenerFactory, PatientListeners>();
        builder.Services.AddSingleton<IHostLifetime, NoLifetime>();
        app = builder.Build();
        app.Run(answer);
    }

    /// <summary>The port of the first door.</summary>
    public int Port { get; private set; }

    /// <summary>Answers from now on.</summary>
    /// <param name="doors">Where it listens; at least one.</param>
    /// <param name="limits">How much it takes from those who ask.</param>
    /// <param name="answer">Answers a request.</param>
    /// <exception cref="PortException">A port is taken, or kept by the system.</exception>
    public static async Task<LocalServer> Start(IReadOnlyList<Door> doors, ServerLimits limits, RequestDelegate answer)
    {
        var server = new LocalServer(doors, limits, answer);
        try
        {
            await server.app.StartAsync();
            server.Port = new Uri(server.app.Urls.First()).Port;
            await Task.WhenAll(doors.Select(door => AskItself(door with { Port = door.Port == 0 ? server.Port : door.Port })));
            return server;
        }
        catch (Exception e) when (PortException.Of(e) is { } taken)
        {
            await server.DisposeAsync();
            throw taken;
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        using (var soon = new CancellationTokenSource(ForOpenRequests))
        {
            await app.StopAsync(soon.Token);
        }

        await app.DisposeAsync();
    }

    // All that an answer needs is loaded now: what could not be loaded for want of a handle would never be loaded again.
    private static async Task AskItself(Door door)
    {
        using var client = new TcpClient(door.Address.AddressFamily);
        await client.ConnectAsync(door.Address, door.Port);
        await using var stream = client.GetStream();
        if (door.Certificate is null)
        {
            await Ask(stream, door);
            return;
        }

#pragma warning disable CA5359 // It asks itself, on an address of this machine, and sends nothing that anyone may not know.
        await using var secured = new SslStream(stream, leaveInnerStreamOpen: true, (_, _, _, _) => true);
#pragma warning restore CA5359
        await secured.AuthenticateAsClientAsync(door.Address.ToString());
        await Ask(secured, door);
    }

    private static async Task Ask(Stream stream, Door door)
    {
        await stream.WriteAsync(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"GET / HTTP/1.1\r\nHost: {door.Address}:{door.Port}\r\nConnection: close\r\n\r\n")));
        await stream.CopyToAsync(Stream.Null);
    }

    private static void Configure(KestrelServerOptions kestrel, IReadOnlyList<Door> doors, ServerLimits limits)
    {
        kestrel.AddServerHeader = false;
        kestrel.Limits.MaxRequestBodySize = limits.LongestBody;
        kestrel.Limits.MaxConcurrentConnections = limits.MostConnections;
        kestrel.Limits.RequestHeadersTimeout = limits.ForTheHead;
        kestrel.Limits.KeepAliveTimeout = TimeSpan.FromSeconds(30);
        foreach (var door in doors)
        {
            kestrel.Listen(door.Address, door.Port, listen =>
            {
                listen.Protocols = HttpProtocols.Http1;
                if (door.Certificate is { } certificate)
                {
                    listen.UseHttps(certificate);
                }
            });
        }
    }

    // The program itself hears signals and says when to end.
    private sealed class NoLifetime : IHostLifetime
    {
        public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
