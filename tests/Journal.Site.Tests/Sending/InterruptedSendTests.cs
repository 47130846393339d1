using System.Globalization;
using Journal.Core.Model;
using Journal.Site.Sending;
using Journal.Tests.Shared;

namespace Journal.Site.Tests.Sending;

/// <summary>
/// Sends whose line dies before a step, within it, or after it: what lies at the server and beside the site is then what a
/// killed program leaves. The next send finishes and clears up. (Folder and branch: <c>KilledSendTests</c> of the program.)
/// </summary>
/// <remarks>Every fifth step; JOURNAL_KILLS=all takes every one.</remarks>
public sealed class InterruptedSendTests : IDisposable
{
    private readonly SiteOnDisk site = SiteOnDisk.WithPages(3, "start");
    private int turn;

    private static int Stride => Environment.GetEnvironmentVariable("JOURNAL_KILLS") == "all" ? 1 : 5;

    [Theory]
    [InlineData(Moment.Before)]
    [InlineData(Moment.Within)]
    [InlineData(Moment.After)]
    public async Task Sftp(Moment moment)
    {
        using var server = new SshServer(site.Root);
        SendOrder Order(int port) => site.Order with
        {
            Destination = new SftpDestination(new("host"), "127.0.0.1", site.Target) { Port = port, Key = Path.Combine(server.Root, "maker"), KnownHosts = server.KnownHosts(port) },
        };

        var steps = await Interrupt(
            moment,
            server.Port,
            port => site.Send(order: Order(port)),
            () => Task.FromResult(SiteOnDisk.Contents(site.Target)));

        Assert.InRange(steps, 30, 1000);
    }

    [Theory]
    [InlineData(Moment.Before)]
    [InlineData(Moment.Within)]
    [InlineData(Moment.After)]
    public async Task S3(Moment moment)
    {
        using var server = new S3Server(site.Root);
        async Task Send(int port)
        {
            var place = new S3Destination(new("store"), S3Server.Bucket, "www") { Service = new Uri(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}")) };
            await using var transport = new S3Transport(place, name => name switch { "AWS_ACCESS_KEY_ID" => S3Server.Id, "AWS_SECRET_ACCESS_KEY" => S3Server.Secret, _ => null });
            await Sender.SendAsync(site.Order with { Destination = place }, transport, new RetryPolicy(2, TimeSpan.FromMilliseconds(1)), CancellationToken.None);
        }

        var steps = await Interrupt(moment, server.Port, Send, () => Settled(server));

        Assert.InRange(steps, 8, 1000);
    }

    public void Dispose() => site.Dispose();

    /// <summary>Interrupts sends at one step after the other, until one is finished before its step comes; how many steps there were.</summary>
    private async Task<int> Interrupt(Moment moment, int server, Func<int, Task> send, Func<Task<Dictionary<string, string>>> there)
    {
        var port = SshServer.FreePort();
        for (var step = 1; ; step += Stride)
        {
            Change();
            using (var line = new Line(server, port) { DiesAt = (step, moment) })
            {
                var failure = await Record.ExceptionAsync(() => send(port));
                Assert.True(failure is SendingException or null, failure?.ToString());
                Assert.Empty(SiteOnDisk.MissingPictures(await there()));
                Tries.Add("kills", 1);
                if (!line.IsDead)
                {
                    return step;
                }
            }

            // Half of the times the site was published anew before the next send.
            if (step / Stride % 2 == 1)
            {
                Change();
            }

            using var mended = new Line(server, port);
            await send(port);
            site.IsFinished(await there());
        }
    }

    // Other pages and pictures, some more and some gone.
    private void Change() => site.Fill(++turn % 3 + 1, turn.ToString(CultureInfo.InvariantCulture));

    // The server of the tests may store what it got of a broken request (a true one throws it away), and a little later.
    private static async Task<Dictionary<string, string>> Settled(S3Server server)
    {
        for (var before = server.Objects("www"); ;)
        {
            await Task.Delay(50);
            var now = server.Objects("www");
            if (now.Count == before.Count && now.All(one => before.GetValueOrDefault(one.Key) == one.Value))
            {
                return now;
            }

            before = now;
        }
    }
}
