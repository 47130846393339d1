using System.Diagnostics;
using Journal.Core.Model;
using Journal.Site.Sending;

namespace Journal.Site.Tests.Sending;

// Against a real OpenSSH server on loopback (Debian's openssh-server).
public sealed class SftpTransportTests : IDisposable
{
    private readonly SiteOnDisk site = SiteOnDisk.WithPages(12);
    private readonly SshServer server;

    public SftpTransportTests() => server = new SshServer(site.Root);

    [Fact]
    public async Task FirstSecondAndEditedSend_BringWhatChanged()
    {
        var order = Order();
        Assert.Equal(27, (await site.Send(order: order)).Files.Count);
        site.IsAt(site.Target);

        WatchedCarrier? watched = null;
        await site.Send(transport => watched = new WatchedCarrier(transport), order);
        Assert.Empty(watched!.Done);

        site.Put("index.html", "edited").Drop("drill/entry/e3.html").Publish();
        await site.Send(transport => watched = new WatchedCarrier(transport), order);
        Assert.Equal(["put index.html", "delete drill/entry/e3.html", "put .sent-site.json"], watched.Done);
        site.IsAt(site.Target);
    }

    [Fact]
    public async Task BrokenHalfWay_ReadersMissNoPictureAndTheNextSendGoesOn()
    {
        await site.Send(order: Order());
        site.Fill(12, "two");

        await Assert.ThrowsAsync<SendingException>(() => site.Send(transport => new WatchedCarrier(transport) { Fail = step => step > 18 ? new InvalidOperationException("Killed.") : null }, Order()));

        Assert.Empty(SiteOnDisk.MissingPictures(SiteOnDisk.Contents(site.Target)));
        WatchedCarrier? next = null;
        await site.Send(transport => next = new WatchedCarrier(transport), Order());
        Assert.InRange(next!.Sent.Count(), 2, 16);
        site.IsAt(site.Target);
    }

    [Fact]
    public async Task LineCutOnTheWay_IsTakenUpAgain()
    {
        site.Put("photos/0a1b2c3d4e5f60718293a4b5-1920.jpg", new string('x', 300_000)).Publish();
        using var line = new Line(server.Port) { CutAfter = 100_000 };

        await site.Send(order: Order(server.KnownHosts(line.Port), line.Port));

        Assert.Equal(1, line.Cuts);
        site.IsAt(site.Target);
    }

    [Fact]
    public async Task HashedNames_AreKnown()
    {
        await site.Send(order: Order(server.KnownHosts(server.Port, isHashed: true)));

        site.IsAt(site.Target);
    }

    [Fact]
    public async Task Fingerprint_TheRightOneWillDo()
    {
        await site.Send(order: Order(Path.Combine(site.Root, "none"), change: place => place with { HostKey = server.Fingerprint }));

        site.IsAt(site.Target);
    }

    [Fact]
    public async Task HostKeyChanged_IsRefusedBeforeAnythingIsSent()
    {
        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send(order: Order(server.KnownHosts(server.Port, key: "stranger"))));

        Assert.Contains("The key of 127.0.0.1 has changed", refused.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(site.Target));
    }

    [Fact]
    public async Task FingerprintOfAnother_IsRefused()
    {
        var other = $"SHA256:{new string('A', 43)}";

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send(order: Order(change: place => place with { HostKey = other })));

        Assert.Contains("is different", refused.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(site.Target));
    }

    [Fact]
    public async Task HostThatNobodyKnows_IsRefusedWithItsFingerprint()
    {
        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send(order: Order(Path.Combine(site.Root, "none"))));

        Assert.Contains("127.0.0.1 is not a known host", refused.Message, StringComparison.Ordinal);
        Assert.Contains(server.Fingerprint, refused.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(site.Target));
    }

    [Fact]
    public async Task WrongKey_IsRefusedWithoutShowingIt()
    {
        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send(order: Order(change: place => place with { Key = Path.Combine(server.Root, "stranger") })));

        Assert.Contains("refuses", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("BEGIN", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Agent_SignsWithAKeyThatIsInNoFile()
    {
        var socket = Path.Combine(site.Root, "agent");
        using var agent = Process.Start(new ProcessStartInfo("ssh-agent", ["-D", "-a", socket]) { RedirectStandardOutput = true })!;
        try
        {
            for (var i = 0; i < 100 && !File.Exists(socket); i++)
            {
                await Task.Delay(50);
            }

            using (var add = Process.Start(new ProcessStartInfo("ssh-add", ["-q", Path.Combine(server.Root, "maker")]) { Environment = { ["SSH_AUTH_SOCK"] = socket } })!)
            {
                await add.WaitForExitAsync();
                Assert.Equal(0, add.ExitCode);
            }

            var order = Order(change: place => place with { Key = null });
            await using var transport = new SftpTransport((SftpDestination)order.Destination, name => name == "SSH_AUTH_SOCK" ? socket : null, Transports.DraftOf(order));
            await Sender.SendAsync(order, transport, RetryPolicy.Usual, CancellationToken.None);
        }
        finally
        {
            agent.Kill();
            await agent.WaitForExitAsync();
        }

        site.IsAt(site.Target);
    }

    public void Dispose()
    {
        server.Dispose();
        site.Dispose();
    }

    private SendOrder Order(string? hosts = null, int? port = null, Func<SftpDestination, SftpDestination>? change = null)
    {
        var place = new SftpDestination(new("host"), "127.0.0.1", site.Target)
        {
            Port = port ?? server.Port,
            Key = Path.Combine(server.Root, "maker"),
            KnownHosts = hosts ?? server.KnownHosts(port ?? server.Port),
        };
        return site.Order with { Destination = change?.Invoke(place) ?? place };
    }
}
