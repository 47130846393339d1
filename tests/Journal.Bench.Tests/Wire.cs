using System.Net.Sockets;
using System.Text;

namespace Journal.Bench.Tests;

/// <summary>Requests byte by byte, as no browser would send them.</summary>
internal static class Wire
{
    /// <summary>Sends a request and hears the whole answer; empty where the connection is closed without one.</summary>
    public static Task<string> Send(Uri address, string request) => Send(address, Encoding.Latin1.GetBytes(request));

    /// <summary>The same with bytes; empty too where no answer comes for so long.</summary>
    public static async Task<string> Send(Uri address, byte[] request, TimeSpan? patience = null)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(address.Host, address.Port);
        await using var stream = client.GetStream();
        try
        {
            await stream.WriteAsync(request);
            using var reader = new StreamReader(stream, Encoding.Latin1);
            return await reader.ReadToEndAsync().WaitAsync(patience ?? TimeSpan.FromSeconds(30));
        }
        catch (Exception e) when (e is IOException || (e is TimeoutException && patience is not null))
        {
            return "";
        }
    }

    /// <summary>A request's head, with the host that the server has; the connection is closed after it.</summary>
    public static string Head(Uri address, string method, string path, params string[] headers) =>
        $"{method} {path} HTTP/1.1\r\nHost: {address.Authority}\r\nConnection: close\r\n{string.Concat(headers.Select(header => $"{header}\r\n"))}\r\n";

    /// <summary>The status of an answer; 0 for none.</summary>
    public static int StatusOf(string answer) => answer.StartsWith("HTTP/1.1 ", StringComparison.Ordinal) && int.TryParse(answer.AsSpan(9, 3), out var status) ? status : 0;
}
