using System.Net;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Authentication;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using Journal.Bench.Doors;
using Journal.Cli.Tests;

namespace Journal.Bench.Tests;

/// <summary>The maker's certificate: what is read, and what a phone then meets.</summary>
public sealed class CertificateTests : IDisposable
{
    private static readonly DateTimeOffset Now = DateTimeOffset.UtcNow;

    private readonly JournalOnDisk disk = JournalOnDisk.Small();

    // V12.1.1, V3.4.1, V3.3.1
    [Fact]
    public async Task Phone_WithACertificate_IsServedOverTlsAlone()
    {
        var addresses = PrivateAddress.OfThisMachine();
        if (addresses.Count == 0)
        {
            return; // A machine without a network has no phones either.
        }

        var address = addresses[0];
        var certificate = BenchCertificate.Read(Pem(address, Now.AddDays(1)), Now);
        await using var bench = await BenchServer.Start(new BenchOrder(disk.Folder) { Phone = address, Certificate = certificate });
        Assert.Equal("https", bench.PhoneAddress!.Scheme);

        var (protocol, answer) = await AskOverTls(bench.PhoneAddress, address);
        Assert.Matches("^Tls1[23]$", protocol.ToString());
        Assert.StartsWith("HTTP/1.1 200", answer, StringComparison.Ordinal);
        Assert.Contains("Strict-Transport-Security: max-age=31536000", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("not encrypted", answer, StringComparison.Ordinal);
        var plain = await Wire.Send(new Uri($"http://{PrivateAddress.Bracketed(address)}:{bench.PhoneAddress.Port}/"), Wire.Head(bench.PhoneAddress, "GET", "/pair"));
        Assert.DoesNotContain("200", plain.Split('\r')[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Certificate_OutOfDate_IsRefusedWithTheReason() =>
        Assert.Contains("Renew it.", Assert.Throws<BenchException>(() => BenchCertificate.Read(Pem(IPAddress.Loopback, Now.AddDays(-1)), Now)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("nothing of the kind")]
    [InlineData("-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----\n")]
    public void Certificate_ThatIsNone_IsRefusedWithTheReason(string text)
    {
        disk.With("none.pem", text);

        Assert.Contains("It needs both", Assert.Throws<BenchException>(() => BenchCertificate.Read(Path.Combine(disk.Folder, "none.pem"), Now)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8.8.8.8")]
    [InlineData("2001:db8::1")]
    [InlineData("172.32.0.1")]
    [InlineData("0.0.0.0")]
    public async Task Phone_OnAPublicAddress_IsRefused(string address)
    {
        var refused = await Assert.ThrowsAsync<BenchException>(() => BenchServer.Start(new BenchOrder(disk.Folder) { Phone = IPAddress.Parse(address) }));

        Assert.Contains("public address", refused.Message, StringComparison.Ordinal);
    }

    // RFC 1918, 3; RFC 4193, 3.1; RFC 3927, 2.1.
    [Theory]
    [InlineData("10.0.0.1", true)]
    [InlineData("172.16.0.1", true)]
    [InlineData("172.31.255.254", true)]
    [InlineData("192.168.1.7", true)]
    [InlineData("::ffff:192.168.1.7", true)]
    [InlineData("169.254.3.4", true)]
    [InlineData("fd12:3456:789a::1", true)]
    [InlineData("127.0.0.1", true)]
    [InlineData("::1", true)]
    [InlineData("192.169.0.1", false)]
    [InlineData("100.64.0.1", false)]
    [InlineData("::ffff:8.8.8.8", false)]
    public void Address_OfAHouseOrThisMachine_IsNear(string address, bool isNear) => Assert.Equal(isNear, PrivateAddress.IsNear(IPAddress.Parse(address)));

    public void Dispose() => disk.Dispose();

    private string Pem(IPAddress address, DateTimeOffset until)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=bench", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        names.AddIpAddress(address);
        request.CertificateExtensions.Add(names.Build());
        using var certificate = request.CreateSelfSigned(until.AddDays(-30), until);
        disk.With("bench.pem", $"{certificate.ExportCertificatePem()}\n{key.ExportPkcs8PrivateKeyPem()}\n");
        return Path.Combine(disk.Folder, "bench.pem");
    }

    private static async Task<(SslProtocols Protocol, string Answer)> AskOverTls(Uri place, IPAddress address)
    {
        using var client = new TcpClient(address.AddressFamily);
        await client.ConnectAsync(address, place.Port);
#pragma warning disable CA5359 // The test's own certificate.
        await using var secured = new SslStream(client.GetStream(), leaveInnerStreamOpen: false, (_, _, _, _) => true);
#pragma warning restore CA5359
        await secured.AuthenticateAsClientAsync(place.Host);
        await secured.WriteAsync(Encoding.ASCII.GetBytes(Wire.Head(place, "GET", "/pair")));
        using var reader = new StreamReader(secured);
        return (secured.SslProtocol, await reader.ReadToEndAsync());
    }
}
