using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace Journal.Site.Preview;

/// <summary>
/// Serves a site on this machine alone, with a small script on each page that renews it after a rebuild. The published
/// site has neither.
/// </summary>
internal sealed class PreviewServer : IDisposable
{
    private const string Own = "/-/";
    private const int LargestHead = 16 * 1024;
    private const string Policy = "default-src 'none'; style-src 'self'; img-src 'self'; script-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(20);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private static readonly TimeSpan AfterRefusal = TimeSpan.FromMilliseconds(200);

    private readonly TcpListener listener;
    private readonly string site;
    private readonly RebuildSignal board;

    /// <summary>Listens from now on.</summary>
    /// <param name="site">The site's folder.</param>
    /// <param name="board">What pages wait for.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    /// <exception cref="SocketException">The port is taken.</exception>
    public PreviewServer(string site, RebuildSignal board, int port)
    {
        (this.site, this.board) = (site, board);
        listener = new TcpListener(IPAddress.Loopback, port);
        listener.Start();
        Port = ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    /// <summary>The port that it listens on.</summary>
    public int Port { get; }

    /// <summary>Answers until it is told to stop.</summary>
    public async Task Run(CancellationToken cancellation)
    {
        try
        {
            while (true)
            {
                if (await Accept(cancellation) is { } client)
                {
                    _ = Answer(client, cancellation);
                }
            }
        }
        catch (OperationCanceledException)
        {
            // This is how it ends.
        }
    }

    // Null where the system has no handle left for one more: others will be given back soon.
    private async Task<TcpClient?> Accept(CancellationToken cancellation)
    {
        try
        {
            return await listener.AcceptTcpClientAsync(cancellation);
        }
        catch (SocketException)
        {
            await Task.Delay(AfterRefusal, cancellation);
            return null;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => listener.Dispose();

    private async Task Answer(TcpClient client, CancellationToken cancellation)
    {
        using (client)
        {
            try
            {
                using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
                patience.CancelAfter(Patience);
                await using var stream = client.GetStream();
                if (await Head(stream, patience.Token) is { } head)
                {
                    await Send(stream, await Reply(head, cancellation), cancellation);
                }
            }
            catch (Exception e) when (e is IOException or SocketException or OperationCanceledException or ObjectDisposedException or UriFormatException)
            {
                // The page went away, or the preview ends: nobody is left to be told.
            }
        }
    }

    private static async Task<string?> Head(NetworkStream stream, CancellationToken cancellation)
    {
        var (buffer, length) = (new byte[LargestHead], 0);
        while (length < buffer.Length && await stream.ReadAsync(buffer.AsMemory(length), cancellation) is > 0 and var read)
        {
            length += read;
            if (buffer.AsSpan(0, length).IndexOf("\r\n\r\n"u8) is >= 0 and var end)
            {
                return Encoding.Latin1.GetString(buffer, 0, end);
            }
        }

        return null;
    }

    private async Task<Response> Reply(string head, CancellationToken cancellation)
    {
        var lines = head.Split("\r\n");
        var words = lines[0].Split(' ');
        if (words is not [var method, var target, _] || method is not ("GET" or "HEAD"))
        {
            return Response.Of(405, "text/plain", "Only GET.");
        }

        var hosts = Header(lines, "Host");
        if (hosts.Count != 1 || !PreviewGuard.Lets(hosts[0], Header(lines, "Origin") is [var origin, ..] ? origin : null, Port))
        {
            return Response.Of(403, "text/plain", "This preview answers only this machine.");
        }

        var reply = target.StartsWith(Own, StringComparison.Ordinal) ? await OwnReply(target[Own.Length..], cancellation) : FileReply(target);
        return method == "HEAD" ? reply with { Body = [] } : reply;
    }

    private async Task<Response> OwnReply(string target, CancellationToken cancellation)
    {
        switch (target.Split('?'))
        {
            case ["preview.js"]:
                return Response.Of(200, "text/javascript; charset=utf-8", PreviewScript.Text);
            case ["preview.css"]:
                return Response.Of(200, "text/css; charset=utf-8", PreviewScript.Style);
            case ["news", var seen] when int.TryParse(seen, NumberStyles.None, CultureInfo.InvariantCulture, out var version):
                await board.WaitBeyond(version, LongestWait, cancellation);
                return Response.Of(200, "application/json", JsonSerializer.Serialize(new PreviewNews(board.Version, board.Problems), PreviewJson.Default.PreviewNews));
            default:
                return Response.Of(404, "text/plain", "There is nothing here.");
        }
    }

    private Response FileReply(string target)
    {
        if (PreviewGuard.FileFor(site, target) is not { } file)
        {
            var missing = Path.Combine(site, "404.html");
            return File.Exists(missing) ? Page(404, missing) : Response.Of(404, "text/html; charset=utf-8", PreviewScript.OnPage("<!DOCTYPE html><html lang=\"en-GB\"><body><p>There is no page yet.</p></body></html>", board.Version));
        }

        return file.EndsWith(".html", StringComparison.Ordinal) ? Page(200, file) : new Response(200, TypeOf(file), File.ReadAllBytes(file));
    }

    private Response Page(int status, string file)
    {
        // The version is taken first: a rebuild in between then renews the page once more, rather than not at all.
        var version = board.Version;
        return Response.Of(status, "text/html; charset=utf-8", PreviewScript.OnPage(File.ReadAllText(file), version));
    }

    private static async Task Send(NetworkStream stream, Response response, CancellationToken cancellation)
    {
        var head = string.Create(
            CultureInfo.InvariantCulture,
            $"HTTP/1.1 {response.Status} {(HttpStatusCode)response.Status}\r\nContent-Type: {response.Type}\r\nContent-Length: {response.Body.Length}\r\nContent-Security-Policy: {Policy}\r\nX-Content-Type-Options: nosniff\r\nCross-Origin-Resource-Policy: same-origin\r\nReferrer-Policy: no-referrer\r\nCache-Control: no-store\r\nConnection: close\r\n\r\n");
        await stream.WriteAsync(Encoding.ASCII.GetBytes(head), cancellation);
        await stream.WriteAsync(response.Body, cancellation);
    }

    private static List<string> Header(string[] lines, string name) =>
        [.. lines.Skip(1).Where(line => line.StartsWith(name + ":", StringComparison.OrdinalIgnoreCase)).Select(line => line[(name.Length + 1)..].Trim())];

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
        public static Response Of(int status, string type, string text) => new(status, type, Encoding.UTF8.GetBytes(text));
    }
}
