using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Site.Tests.Sending;

/// <summary>A moment of a step: before it, within it, or when it is done and whoever asked for it does not know yet.</summary>
public enum Moment
{
    Before,
    Within,
    After,
}

/// <summary>A line to a server on loopback that counts requests of HTTP and can be cut after a number of bytes, or for good at a step.</summary>
internal sealed partial class Line : IDisposable
{
    private readonly TcpListener listener;
    private readonly int server;
    private readonly CancellationTokenSource end = new();
    private readonly Lock turn = new();
    private readonly List<string> requests = [];
    private readonly CancellationTokenSource death = new();
    private long passed;
    private int cuts;
    private int steps;

    public Line(int server, int port = 0)
    {
        this.server = server;
        listener = new TcpListener(IPAddress.Loopback, port);
        listener.Start();
        _ = Accept();
    }

    public int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    /// <summary>Cuts the connection once when so many bytes have gone to the server.</summary>
    public long? CutAfter { get; set; }

    /// <summary>
    /// The step to the server at which the line dies: what had been sent until then arrives, and there is no other connection
    /// any more. To the server and to what lies there it is as if the sender had been killed.
    /// </summary>
    public (int Step, Moment Moment)? DiesAt { get; set; }

    /// <summary>Whether it has died.</summary>
    public bool IsDead => death.IsCancellationRequested;

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
        death.Dispose();
    }

    private async Task Accept()
    {
        try
        {
            while (true)
            {
                var client = await listener.AcceptTcpClientAsync(end.Token);
                if (IsDead)
                {
                    client.Dispose();
                    continue;
                }

#pragma warning disable CA2025 // Who carries disposes of it.
                _ = Carry(client);
#pragma warning restore CA2025
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
                    Task.Delay(Timeout.Infinite, death.Token),
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

                if (await Dies(buffer.AsMemory(0, count), to))
                {
                    return;
                }
            }
            else if (DiesAt is { Moment: Moment.After } last && Volatile.Read(ref steps) >= last.Step)
            {
                await death.CancelAsync();
                return;
            }

            await to.WriteAsync(buffer.AsMemory(0, count), end.Token);
        }
    }

    private async Task<bool> Dies(ReadOnlyMemory<byte> bytes, NetworkStream to)
    {
        if (DiesAt is not { } last || last.Moment == Moment.After)
        {
            Interlocked.Increment(ref steps);
            return false;
        }

        if (Interlocked.Increment(ref steps) < last.Step)
        {
            return false;
        }

        if (last.Moment == Moment.Within)
        {
            await to.WriteAsync(bytes[..(bytes.Length / 2)], end.Token);
        }

        await death.CancelAsync();
        return true;
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
