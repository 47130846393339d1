using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using Journal.Site.Serving;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

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

    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(20);

    private readonly Func<string, byte[]?> bytesOf;
    private readonly RebuildSignal board;
    private readonly CancellationTokenSource ending = new();
    private LocalServer server = null!;

    private PreviewServer(Func<string, byte[]?> bytesOf, RebuildSignal board) => (this.bytesOf, this.board) = (bytesOf, board);

    /// <summary>The port that it listens on.</summary>
    public int Port => server.Port;

    /// <summary>Answers from now on.</summary>
    /// <param name="bytesOf">The bytes of the file at an address of the site; null where there is none.</param>
    /// <param name="board">What pages wait for.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    /// <exception cref="PortException">The port is taken, or kept by the system.</exception>
    public static async Task<PreviewServer> Start(Func<string, byte[]?> bytesOf, RebuildSignal board, int port)
    {
        var preview = new PreviewServer(bytesOf, board);
        try
        {
            preview.server = await LocalServer.Start([Door.OfThisMachine(port)], new ServerLimits(), preview.Answer);
            return preview;
        }
        catch
        {
            preview.ending.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await ending.CancelAsync();
        await server.DisposeAsync();
        ending.Dispose();
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
        if (!OriginGuard.OfThisMachine(context.Connection.LocalPort).Lets(request.Scheme, request.Headers.Host, origin.Count == 0 ? null : origin.ToString()))
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
            if (PageAddress.Of(target) is not { } address || Find(address) is not var (found, bytes))
            {
                return Page(404, bytesOf("404.html") is { } missing ? Encoding.UTF8.GetString(missing) : Bare("There is no page yet."), version);
            }

            return found.EndsWith(".html", StringComparison.Ordinal) ? Page(200, Encoding.UTF8.GetString(bytes), version) : new Response(200, ContentTypes.Of(found), bytes);
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

    private sealed record Response(int Status, string Type, byte[] Body)
    {
        /// <summary>An answer whose body is a text, in UTF-8.</summary>
        public static Response Of(int status, string type, string text) => new(status, type, Encoding.UTF8.GetBytes(text));
    }
}
