using System.Net;
using System.Net.Sockets;

namespace Journal.Browser.Tests;

/// <summary>A folder as static files on 127.0.0.1, at the path that its address has on a real host; what is not there is answered with its 404.html.</summary>
internal sealed class LoopbackServer : IDisposable
{
    private readonly HttpListener listener = new();
    private readonly string folder;

    public LoopbackServer(string folder, string path)
    {
        this.folder = folder;
        Address = new Uri($"http://127.0.0.1:{FreePort()}{path}");
        listener.Prefixes.Add(Address.AbsoluteUri);
        listener.Start();
        _ = Serve();
    }

    /// <summary>Where the folder is, ending with a slash.</summary>
    public Uri Address { get; }

    public void Dispose() => ((IDisposable)listener).Dispose();

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    private async Task Serve()
    {
        while (listener.IsListening)
        {
            HttpListenerContext asked;
            try
            {
                asked = await listener.GetContextAsync();
            }
            catch (Exception e) when (e is HttpListenerException or ObjectDisposedException)
            {
                return;
            }

            _ = Task.Run(() => Answer(asked));
        }
    }

    private void Answer(HttpListenerContext asked)
    {
        try
        {
            var path = Path.Combine(folder, Uri.UnescapeDataString(asked.Request.Url!.AbsolutePath[Address.AbsolutePath.Length..]));
            if (!File.Exists(path))
            {
                asked.Response.StatusCode = 404;
                path = Path.Combine(folder, "404.html");
            }

            var bytes = File.ReadAllBytes(path);
            asked.Response.ContentType = TypeOf(path);
            asked.Response.ContentLength64 = bytes.Length;
            asked.Response.OutputStream.Write(bytes);
            asked.Response.Close();
        }
        catch (HttpListenerException)
        {
            // The browser went on to another page.
        }
    }

    private static string TypeOf(string path) => Path.GetExtension(path) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".jpg" => "image/jpeg",
        ".svg" => "image/svg+xml",
        ".webp" => "image/webp",
        ".xml" => "application/xml",
        ".json" => "application/json",
        _ => "text/plain; charset=utf-8",
    };
}
