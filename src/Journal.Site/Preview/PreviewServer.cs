using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace Journal.Site.Preview;

/// <summary>
/// Serves a site on this machine alone, with a small script on each page that renews it after a rebuild. The published
/// site has neither.
/// </summary>
internal sealed class PreviewServer : IAsyncDisposable
{
    private const string Own = "/-/";
    private const string Policy = "default-src 'none'; style-src 'self'; img-src 'self'; script-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private const string Html = "text/html; charset=utf-8";

    /// <summary>Many tabs have a few each; the system gives a program some hundreds of handles.</summary>
    private const int MostConnections = 100;

    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(20);
    private static readonly TimeSpan ForOpenRequests = TimeSpan.FromMilliseconds(200);

    private readonly WebApplication app;
    private readonly Func<string, byte[]?> bytesOf;
    private readonly RebuildSignal board;
    private readonly CancellationTokenSource ending = new();

    private PreviewServer(Func<string, byte[]?> bytesOf, RebuildSignal board, int port)
    {
        (this.bytesOf, this.board) = (bytesOf, board);

        // Empty: no settings from files and variables, which could open other ports, no log, no stopping at signals.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => Configure(kestrel, port));
        builder.Services.AddSingleton<IConnectionListenerFactory, PatientListeners>();
        builder.Services.AddSingleton<IHostLifetime, NoLifetime>();
        app = builder.Build();
        app.Run(Answer);
    }

    /// <summary>The port that it listens on.</summary>
    public int Port { get; private set; }

    /// <summary>Answers from now on.</summary>
    /// <param name="bytesOf">The bytes of the file at an address of the site; null where there is none.</param>
    /// <param name="board">What pages wait for.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    /// <exception cref="PortException">The port is taken, or kept by the system.</exception>
    public static async Task<PreviewServer> Start(Func<string, byte[]?> bytesOf, RebuildSignal board, int port)
    {
        var server = new PreviewServer(bytesOf, board, port);
        try
        {
            await server.app.StartAsync();
            server.Port = new Uri(server.app.Urls.First()).Port;
            await server.AskItself();
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
        await ending.CancelAsync();
        using (var soon = new CancellationTokenSource(ForOpenRequests))
        {
            await app.StopAsync(soon.Token);
        }

        await app.DisposeAsync();
        ending.Dispose();
    }

    // All that an answer needs is loaded now: a library that cannot be loaded for want of a handle is never loaded again.
    private async Task AskItself()
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, Port);
        await using var stream = client.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"GET / HTTP/1.1\r\nHost: 127.0.0.1:{Port}\r\nConnection: close\r\n\r\n")));
        await stream.CopyToAsync(Stream.Null);
    }

    private static void Configure(KestrelServerOptions kestrel, int port)
    {
        kestrel.AddServerHeader = false;
        kestrel.Limits.MaxRequestBodySize = 0;
        kestrel.Limits.MaxConcurrentConnections = MostConnections;
        kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        kestrel.Limits.KeepAliveTimeout = TimeSpan.FromSeconds(30);
        kestrel.Listen(IPAddress.Loopback, port, listen => listen.Protocols = HttpProtocols.Http1);
    }

    private async Task Answer(HttpContext context)
    {
        try
        {
            var reply = await Reply(context);
            var (response, headers) = (context.Response, context.Response.Headers);
            response.StatusCode = reply.Status;
            headers.ContentType = reply.Type;
            headers.ContentLength = reply.Body.Length;
            headers.ContentSecurityPolicy = Policy;
            headers.XContentTypeOptions = "nosniff";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            headers["Referrer-Policy"] = "no-referrer";
            headers.CacheControl = "no-store";
            if (!HttpMethods.IsHead(context.Request.Method))
            {
                await response.Body.WriteAsync(reply.Body, context.RequestAborted);
            }
        }
        catch (OperationCanceledException)
        {
            // The page went away, or the preview ends: nobody waits for the answer.
        }
    }

    private async Task<Response> Reply(HttpContext context)
    {
        var (request, target) = (context.Request, context.Features.GetRequiredFeature<IHttpRequestFeature>().RawTarget);
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
        {
            return Response.Of(405, "text/plain", "Only GET.");
        }

        var origin = request.Headers.Origin;
        if (!PreviewGuard.Lets(request.Headers.Host, origin.Count == 0 ? null : origin.ToString(), Port))
        {
            return Response.Of(403, "text/plain", "This preview answers only this machine.");
        }

        return target.StartsWith(Own, StringComparison.Ordinal) ? await OwnReply(target[Own.Length..], context.RequestAborted) : FileReply(target);
    }

    private async Task<Response> OwnReply(string target, CancellationToken gone)
    {
        switch (target.Split('?'))
        {
            case ["preview.js"]:
                return Response.Of(200, "text/javascript; charset=utf-8", PreviewScript.Text);
            case ["preview.css"]:
                return Response.Of(200, "text/css; charset=utf-8", PreviewScript.Style);
            case ["news", var seen] when int.TryParse(seen, NumberStyles.None, CultureInfo.InvariantCulture, out var version):
                using (var either = CancellationTokenSource.CreateLinkedTokenSource(gone, ending.Token))
                {
                    await board.WaitBeyond(version, LongestWait, either.Token);
                }

                return Response.Of(200, "application/json", JsonSerializer.Serialize(new PreviewNews(board.Version, board.Problems), PreviewJson.Default.PreviewNews));
            default:
                return Response.Of(404, "text/plain", "There is nothing here.");
        }
    }

    private Response FileReply(string target)
    {
        // The version is taken first: a rebuild in between then renews the page once more, rather than not at all.
        var version = board.Version;
        try
        {
            if (PreviewGuard.AddressOf(target) is not { } address || Find(address) is not var (found, bytes))
            {
                return Page(404, bytesOf("404.html") is { } missing ? Encoding.UTF8.GetString(missing) : Bare("There is no page yet."), version);
            }

            return found.EndsWith(".html", StringComparison.Ordinal) ? Page(200, Encoding.UTF8.GetString(bytes), version) : new Response(200, TypeOf(found), bytes);
        }
#pragma warning disable CA1031 // Whatever keeps a page from being made: the next save may mend it, and the preview goes on.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return Page(500, Bare(e.Message), version);
        }
    }

    // The address of a folder gives its index.html.
    private (string Address, byte[] Bytes)? Find(string address) =>
        bytesOf(address) is { } file ? (address, file)
        : bytesOf($"{address}/index.html") is { } page ? ($"{address}/index.html", page)
        : null;

    private static Response Page(int status, string html, int version) => Response.Of(status, Html, PreviewScript.OnPage(html, version));

    private static string Bare(string words) => $"<!DOCTYPE html><html lang=\"en-GB\"><body><p>{WebUtility.HtmlEncode(words)}</p></body></html>";

    private static string TypeOf(string file) => Path.GetExtension(file) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".json" => "application/json",
        ".xml" => "application/xml",
        ".svg" => "image/svg+xml",
        ".jpg" => "image/jpeg",
        ".png" => "image/png",
        ".webp" => "image/webp",
        ".txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    };

    private sealed record Response(int Status, string Type, byte[] Body)
    {
        /// <summary>An answer whose body is a text, in UTF-8.</summary>
        public static Response Of(int status, string type, string text) => new(status, type, Encoding.UTF8.GetBytes(text));
    }

    // The program handles signals itself and says when to end.
    private sealed class NoLifetime : IHostLifetime
    {
        /// <inheritdoc/>
        public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        /// <inheritdoc/>
        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
