using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using System.Text;
using Xunit.Abstractions;

namespace Journal.Bench.Tests;

/// <summary>Many at once: those that never finish what they ask, and those that all send.</summary>
public sealed class CrowdTests(ITestOutputHelper output)
{
    private const int Slow = 300;
    private const int Clients = 5;

    [Fact]
    public async Task Remark_WhileThreeHundredAreSlow_IsKeptWithinASecond()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        var token = phone.Token;
        var slow = new List<TcpClient>();
        for (var i = 0; i < Slow; i++)
        {
            slow.Add(new TcpClient());
            await slow[^1].ConnectAsync(bench.Address.Host, bench.Address.Port);
            var begun = i % 2 == 0 ? "GET / HTTP/1.1\r\nHost: " : $"POST /tonight/remark HTTP/1.1\r\nHost: {bench.Address.Authority}\r\nCookie: {phone.Cookie!.Name}={phone.Cookie.Value}\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 100\r\n\r\ntext=";
            await slow[^1].GetStream().WriteAsync(Encoding.ASCII.GetBytes(begun));
        }

        // The best of three, for the machine may be busy with other tests.
        var fastest = TimeSpan.MaxValue;
        for (var i = 0; i < 3; i++)
        {
            var clock = Stopwatch.StartNew();
            await phone.Post("/tonight/remark", ("token", token), ("id", $"0123456789abcdef{i.ToString(CultureInfo.InvariantCulture)}"), ("text", "Kept"));
            fastest = clock.Elapsed < fastest ? clock.Elapsed : fastest;
        }

        slow.ForEach(client => client.Dispose());
        Assert.Equal(3, bench.Slate.Jots.Count);
        Assert.True(fastest < TimeSpan.FromSeconds(1), fastest.ToString());
    }

    /// <summary><c>JOURNAL_LOAD_BENCH=2000</c> has each of the five send more; the test's output tells how long they waited.</summary>
    [Fact]
    public async Task FiveClientsAndACommand_AllAtOnce_AreAllKeptInOrderOfTime()
    {
        var each = int.TryParse(Environment.GetEnvironmentVariable("JOURNAL_LOAD_BENCH"), out var number) ? number : 12;
        await using var bench = await ServedBench.Start();
        var waited = new ConcurrentBag<double>();
        var clients = new List<BenchClient>();
        for (var i = 0; i < Clients; i++)
        {
            clients.Add(i == 0 ? await bench.Desk() : await bench.Phone());
        }

        await Task.WhenAll([
            .. clients.Select((client, i) => Send(client, string.Create(CultureInfo.InvariantCulture, $"client{i}"), each, 1000 * i, waited, bench.Clock)),
            Task.Run(() => Enumerable.Range(0, 5).All(i => bench.Ask("jot", $"command {i.ToString(CultureInfo.InvariantCulture)}").Status == 0))]);
        clients.ForEach(client => client.Dispose());

        var jots = bench.Slate.Jots;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{waited.Count} requests of {Clients} clients: median {waited.Order().ElementAt(waited.Count / 2):0.0} ms, at most {waited.Max():0} ms."));
        Assert.Equal((Clients * each) + 5, jots.Count);
        Assert.Equal(jots.Count, jots.Select(jot => jot.Text).Distinct().Count());
        Assert.Equal(jots.Select(jot => jot.At).Order(), jots.Select(jot => jot.At));
    }

    // Every tenth is sent twice: what is sent again is kept once.
    private static async Task Send(BenchClient client, string name, int count, int age, ConcurrentBag<double> waited, TurnedClock clock)
    {
        var token = client.Token;
        for (var i = 0; i < count; i++)
        {
            var id = $"{name}-0123456789abcdef-{i.ToString(CultureInfo.InvariantCulture)}";
            for (var times = 0; times < (i % 10 == 0 ? 2 : 1); times++)
            {
                clock.Pass(TimeSpan.FromMilliseconds(2)); // Nobody is refused for asking too often.
                var started = Stopwatch.GetTimestamp();
                await client.PostByScript("/tonight/remark", ("token", token), ("id", id), ("at", "1000"), ("now", (1000 + age + i).ToString(CultureInfo.InvariantCulture)), ("text", $"{name} {i.ToString(CultureInfo.InvariantCulture)}"));
                waited.Add(Stopwatch.GetElapsedTime(started).TotalMilliseconds);
                Assert.Contains("\"done\":true", client.Text, StringComparison.Ordinal);
            }
        }
    }
}
