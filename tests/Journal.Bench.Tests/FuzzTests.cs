using System.Globalization;
using System.Net;
using System.Text;

namespace Journal.Bench.Tests;

/// <summary>
/// Requests that nobody would send: whatever arrives is answered, none of it falls through, nothing of the journal's files changes.
/// <c>JOURNAL_FUZZ_BENCH=10000</c> sends more, <c>JOURNAL_FUZZ_SEED</c> others.
/// </summary>
public sealed class FuzzTests
{
    // One that promises more than it sends is waited for in vain.
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(500);

    private static readonly string[] Paths =
        ["/", "/tonight", "/tonight/remark", "/tonight/reading", "/tonight/begin", "/tonight/end", "/tonight/picture", "/tonight/take-back", "/tonight/finished", "/tonight/caption", "/pair", "/phones", "/phones/take-back", "/look/x-y.js", "/nothing"];

    private static readonly string[] Fields =
        ["token", "id", "at", "now", "text", "what", "cause", "lost", "part", "operation", "feature", "other-feature", "actual", "required", "rpm", "feed", "cost", "pieces", "of", "jot", "ended", "caption", "code", "name", "device"];

    private static readonly string[] Values =
        ["", "head", "boring", "-1", "99999999999999999999", "NaN", "12 H7", "12,5", "%00", "%ff%fe", "+", "whole", "../..", "{a: [", "---%0a", "25:99", "10:00", "on", "%F0%9F%94%A7", "0x10", "1e308", "null"];

    [Fact]
    public async Task Requests_OfAnyKind_AreAnsweredAndChangeNoFile()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        var (cookie, token) = ($"{phone.Cookie!.Name}={phone.Cookie.Value}", phone.Token);
        var before = Files(bench);
        var random = new Random(Number("JOURNAL_FUZZ_SEED", 20261130));
        var count = Number("JOURNAL_FUZZ_BENCH", 400);
        for (var i = 0; i < count; i++)
        {
            bench.Clock.Pass(TimeSpan.FromMilliseconds(300)); // More often is refused for that alone.
            var request = Request(bench.Address, cookie, token, random);

            var status = Wire.StatusOf(await Wire.Send(bench.Address, request, patience: Patience));

            Assert.True(status is 0 or (>= 200 and < 500) or 505, $"request {i}: {status}\n{Convert.ToBase64String(request)}");
        }

        Assert.Equal(before, Files(bench));
        await phone.Look("/tonight");
        Assert.Equal(HttpStatusCode.OK, phone.Status);
    }

    private static byte[] Request(Uri address, string cookie, string token, Random random)
    {
        string One(string[] of) => of[random.Next(of.Length)];
        var body = string.Join('&', Enumerable.Range(0, random.Next(8)).Select(_ => $"{One(Fields)}={(random.Next(3) == 0 ? One(Values) : random.Next(2) == 0 ? token : $"0123456789abcdef{random.Next(20).ToString(CultureInfo.InvariantCulture)}")}").Append($"token={token}").Append("id=0123456789abcdef" + random.Next(1000).ToString(CultureInfo.InvariantCulture)));
        var isMultipart = random.Next(6) == 0;
        if (isMultipart)
        {
            body = $"--b\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n{token}\r\n--b\r\nContent-Disposition: form-data; name=\"picture\"; filename=\"{One(Values)}\"\r\nContent-Type: {One(Values)}\r\n\r\n{One(Values)}\r\n--b--\r\n";
        }

        var text = Wire.Head(
            address,
            random.Next(4) == 0 ? "GET" : "POST",
            One(Paths),
            random.Next(5) == 0 ? "Cookie: x=y" : $"Cookie: {cookie}",
            isMultipart ? "Content-Type: multipart/form-data; boundary=b" : "Content-Type: application/x-www-form-urlencoded",
            random.Next(3) == 0 ? "Accept: application/json" : "Accept: */*",
            $"Content-Length: {(body.Length + (random.Next(10) == 0 ? random.Next(-2, 3) : 0)).ToString(CultureInfo.InvariantCulture)}") + body;
        var bytes = Encoding.Latin1.GetBytes(text);
        for (var changes = random.Next(4) == 0 ? random.Next(1, 6) : 0; changes > 0; changes--)
        {
            bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
        }

        return bytes;
    }

    // All but the slate's own folder; and what a stint, which any of them may end, has put into tonight's entry.
    private static IReadOnlyList<string> Files(ServedBench bench) =>
        [.. Directory.EnumerateFiles(bench.Disk.Folder, "*", SearchOption.AllDirectories)
            .Where(path => !path.Contains(".bench", StringComparison.Ordinal) && !Path.GetFileName(path).StartsWith("2025-10-0", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(path => $"{path} {Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)))}")];

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : otherwise;
}
