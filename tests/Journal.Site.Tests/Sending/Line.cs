using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Site.Tests.Sending;

/// <summary>A line to a server on loopback that counts requests of HTTP and can be cut after a number of bytes.</summary>
internal sealed partial class Line : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly int server;
    private readonly CancellationTokenSource end = new();
    private readonly Lock turn = new();
    private readonly List<string> requests = [];
    private long passed;
    private int cuts;

    public Line(int server)
    {
        this.server = server;
        listener.Start();
        _ = Accept();
    }

    public int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    /// <summary>Cuts the connection once when so many bytes have gone to the server.</summary>
    public long? CutAfter { get; set; }

    /// <summary>How often the line was cut.</summary>
    public int Cuts => cuts;

    /// <summary>Method and target of every request since the last call.</summary>
    public IReadOnlyList<string> TakeRequests()
    {
        lock (turn)
        {
            string[] taken = [.. requests];
            requests.Clear();
            return taken;
        }
    }

    public void Dispose()
    {
        end.Cancel();
        listener.Dispose();
        end.Dispose();
    }

    private async Task Accept()
    {
        try
        {
            while (true)
            {
                var client = await listener.AcceptTcpClientAsync(end.Token);
                _ = Carry(client);
            }
        }
        catch (Exception e) when (e is OperationCanceledException or ObjectDisposedException or SocketException)
        {
            // The test is over.
        }
    }

    private async Task Carry(TcpClient client)
    {
        using (client)
        using (var behind = new TcpClient())
        {
            try
            {
                await behind.ConnectAsync(IPAddress.Loopback, server, end.Token);
                await await Task.WhenAny(
                    Copy(client.GetStream(), behind.GetStream(), isToServer: true),
                    Copy(behind.GetStream(), client.GetStream(), isToServer: false));
            }
            catch (Exception e) when (e is OperationCanceledException or IOException or SocketException or ObjectDisposedException)
            {
                // One side hung up.
            }
        }
    }

    private async Task Copy(NetworkStream from, NetworkStream to, bool isToServer)
    {
        var buffer = new byte[16 * 1024];
        while (await from.ReadAsync(buffer, end.Token) is > 0 and var count)
        {
            if (isToServer)
            {
                Note(buffer.AsSpan(0, count));
                if (CutAfter is { } most && Interlocked.Add(ref passed, count) > most)
                {
                    CutAfter = null;
                    Interlocked.Increment(ref cuts);
                    return;
                }
            }

            await to.WriteAsync(buffer.AsMemory(0, count), end.Token);
        }
    }

    private void Note(ReadOnlySpan<byte> bytes)
    {
        var text = Encoding.Latin1.GetString(bytes);
        lock (turn)
        {
            requests.AddRange(Request().Matches(text).Select(match => match.Groups[1].Value));
        }
    }

    [GeneratedRegex("((?:GET|PUT|POST|HEAD|DELETE) [^ \r\n]+) HTTP/1\\.1\r\n")]
    private static partial Regex Request();
}
