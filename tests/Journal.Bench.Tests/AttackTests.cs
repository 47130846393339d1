using System.Globalization;
using System.Net;
using Journal.Bench.Pairing;
using Journal.Bench.Requests;
using Journal.Core.Writing.Bench;

namespace Journal.Bench.Tests;

/// <summary>Nobody gets in: a test for each line of docs/bench.md that is about the server. The numbers are those of ASVS 5.0.</summary>
public sealed class AttackTests : IAsyncLifetime
{
    private ServedBench bench = null!;

    public static TheoryData<string, string> Routes => new()
    {
        { "GET", "/tonight" }, { "POST", "/tonight/remark" }, { "POST", "/tonight/begin" }, { "POST", "/tonight/end" }, { "POST", "/tonight/picture" },
        { "POST", "/tonight/take-back" }, { "GET", "/phones" }, { "POST", "/phones/take-back" },
    };

    public async Task InitializeAsync() => bench = await ServedBench.Start();

    public async Task DisposeAsync() => await bench.DisposeAsync();

    // V8.2.1, V7.2.1, V8.3.1
    [Theory]
    [MemberData(nameof(Routes))]
    public async Task Stranger_AsksForAnything_GetsNothing(string method, string path)
    {
        var answer = await Wire.Send(bench.Address, Wire.Head(bench.Address, method, path, "Content-Type: application/x-www-form-urlencoded", "Content-Length: 0"));

        Assert.Contains(Wire.StatusOf(answer), new[] { 303, 401 });
        Assert.DoesNotContain("Lean-to", answer, StringComparison.Ordinal);
        Assert.Equal(new Slate().Jots, bench.Slate.Jots);
    }

    // V7.2.3, V7.4.1: what is no secret of ours, and one that was taken back.
    [Theory]
    [InlineData("")]
    [InlineData("x")]
    [InlineData("0123456789abcdef.AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("../../etc/passwd.AAAA")]
    [InlineData("a.b.c")]
    public async Task Cookie_OfNobody_OpensNothing(string cookie)
    {
        using var phone = await bench.Phone();
        var name = phone.Cookie!.Name;

        var answer = await Wire.Send(bench.Address, Wire.Head(bench.Address, "GET", "/tonight", $"Cookie: {name}={cookie}"));

        Assert.Equal(303, Wire.StatusOf(answer));
    }

    [Fact]
    public async Task Phone_TakenBackAtTheDesk_IsOutAtOnce()
    {
        using var phone = await bench.Phone("Old phone");
        using var desk = await bench.Desk();
        await desk.Look("/phones");
        Assert.Contains("Old phone", desk.Text, StringComparison.Ordinal);
        var device = new Devices(bench.Disk.Folder, bench.Clock).All.Single(device => device.Name == "Old phone");

        await desk.Send("/phones/take-back", ("device", device.Id));
        await phone.Look("/tonight");

        Assert.Contains("Pair this phone", phone.Text, StringComparison.Ordinal);
        await phone.Post("/tonight/remark", ("id", "0123456789abcdef"), ("text", "Still here"));
        Assert.Equal(HttpStatusCode.Unauthorized, phone.Status);
        Assert.Empty(bench.Slate.Jots);
    }

    // V8.2.1: what is for the desk alone.
    [Theory]
    [InlineData("/phones")]
    public async Task Phone_AsksForWhatIsTheDesks_IsRefused(string path)
    {
        using var phone = await bench.Phone();

        await phone.Look(path);

        Assert.Equal(HttpStatusCode.Forbidden, phone.Status);
    }

    // V6.3.1, V6.6.3: guessing. Five tries for a code, twelve codes an hour.
    [Fact]
    public async Task Code_GuessedAgainAndAgain_IsRenewedAndThenRests()
    {
        using var stranger = bench.Stranger();
        await stranger.Look("/pair");
        var tried = 0;
        while (!stranger.Text.Contains("too many codes", StringComparison.Ordinal) && tried < 1000)
        {
            bench.Clock.Pass(TimeSpan.FromSeconds(1)); // What is asked too often is refused before that.
            var wrong = bench.Codes[^1] == "000000" ? "000001" : "000000";
            await stranger.Post("/pair", ("code", wrong), ("name", "Evil"));
            tried++;
        }

        Assert.Equal((12, 60), (bench.Codes.Count, tried));
        Assert.Equal(12, bench.Codes.Distinct().Count());
        await stranger.Post("/pair", ("code", bench.Codes[^1]), ("name", "Evil"));
        Assert.Null(stranger.Cookie);
        Assert.Empty(new Devices(bench.Disk.Folder, bench.Clock).All);
    }

    // V6.5.1, V6.5.5: a code is good once, and for two minutes.
    [Fact]
    public async Task Code_UsedOrOld_IsNotGood()
    {
        using var phone = await bench.Phone();
        using var second = bench.Stranger();
        await second.Post("/pair", ("code", bench.Codes[^1]), ("name", "Second"));
        Assert.Null(second.Cookie);

        await second.Look("/pair");
        var shown = bench.Codes[^1];
        bench.Clock.Pass(TimeSpan.FromSeconds(121));
        await second.Post("/pair", ("code", shown), ("name", "Second"));

        Assert.Null(second.Cookie);
        Assert.Contains("not good any more", second.Text, StringComparison.Ordinal);
    }

    // V7.2.3, V11.4.1: 256 random bits, of which the disk has a digest alone, in a file that its owner alone reads.
    [Fact]
    public async Task Secret_OfAPhone_IsNotOnTheDisk()
    {
        using var phone = await bench.Phone();
        var secret = phone.Cookie!.Value.Split('.')[1];

        Assert.Equal(43, secret.Length); // 256 bits in base64url.
        foreach (var file in Directory.EnumerateFiles(bench.Disk.Folder, "*", SearchOption.AllDirectories))
        {
            Assert.DoesNotContain(secret, await File.ReadAllTextAsync(file), StringComparison.Ordinal);
        }

        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Path.Combine(bench.Disk.Folder, ".bench", "devices.json")));
        }
    }

    // V3.3.1, V3.3.2, V3.3.4
    [Fact]
    public async Task Cookie_OfAPhone_IsForThisPageAlone()
    {
        using var stranger = bench.Stranger();
        await stranger.Look("/pair");
        var body = $"code={bench.Codes[^1]}&name=Phone";

        var answer = await Wire.Send(bench.Address, Wire.Head(bench.Address, "POST", "/pair", "Content-Type: application/x-www-form-urlencoded", $"Content-Length: {body.Length}") + body);

        var cookie = answer.Split("\r\n").Single(line => line.StartsWith("Set-Cookie:", StringComparison.Ordinal));
        Assert.Contains("samesite=strict", cookie, StringComparison.Ordinal);
        Assert.Contains("httponly", cookie, StringComparison.Ordinal);
        Assert.DoesNotContain("domain=", cookie, StringComparison.Ordinal);
    }

    // V3.5.1: forms that another page sends on behalf of a phone.
    [Theory]
    [InlineData("")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    public async Task Form_WithoutTheToken_IsNotTaken(string token)
    {
        using var phone = await bench.Phone();

        await phone.Post("/tonight/remark", ("token", token), ("id", "0123456789abcdef"), ("text", "Forged"));

        Assert.Equal(HttpStatusCode.Forbidden, phone.Status);
        Assert.Empty(bench.Slate.Jots);
    }

    [Fact]
    public async Task Form_WithTheTokenOfAnother_IsNotTaken()
    {
        using var phone = await bench.Phone();
        using var desk = await bench.Desk();

        await phone.Post("/tonight/remark", ("token", desk.Token), ("id", "0123456789abcdef"), ("text", "Forged"));

        Assert.Equal(HttpStatusCode.Forbidden, phone.Status);
    }

    // V3.5.3: nothing is changed by looking.
    [Theory]
    [InlineData("GET")]
    [InlineData("HEAD")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("OPTIONS")]
    [InlineData("TRACE")]
    [InlineData("REMARK")]
    public async Task Deed_ByAnotherMethod_IsNotDone(string method)
    {
        using var phone = await bench.Phone();
        var cookie = $"{phone.Cookie!.Name}={phone.Cookie.Value}";

        var answer = await Wire.Send(bench.Address, Wire.Head(bench.Address, method, "/tonight/remark?text=By+looking&id=0123456789abcdef", $"Cookie: {cookie}"));

        Assert.Equal(405, Wire.StatusOf(answer));
        Assert.Empty(bench.Slate.Jots);
    }

    // DNS rebinding, and pages of other sites. RFC 9110, 7.2; the Fetch standard, 3.2 and its metadata.
    [Theory]
    [InlineData("GET / HTTP/1.1\r\nHost: example.org\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: example.org:PORT\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: 127.0.0.1\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nOrigin: https://example.org\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nOrigin: null\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nOrigin: https://PLACE\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nOrigin: http://PLACE, https://example.org\r\n")]
    [InlineData("GET /tonight HTTP/1.1\r\nHost: PLACE\r\nSec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: no-cors\r\n")]
    [InlineData("GET /tonight HTTP/1.1\r\nHost: PLACE\r\nSec-Fetch-Site: same-site\r\nSec-Fetch-Mode: cors\r\n")]
    [InlineData("POST /pair HTTP/1.1\r\nHost: PLACE\r\nSec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: navigate\r\nContent-Length: 0\r\n")]
    public async Task Request_FromElsewhere_IsRefused(string head)
    {
        var answer = await Wire.Send(bench.Address, $"{head.Replace("PLACE", bench.Address.Authority, StringComparison.Ordinal).Replace("PORT", bench.Address.Port.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)}Connection: close\r\n\r\n");

        Assert.Equal(403, Wire.StatusOf(answer));
    }

    [Theory]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nHost: PLACE\r\n")]
    [InlineData("GET / HTTP/1.1\r\n")]
    [InlineData("GET http://example.org/ HTTP/1.1\r\nHost: PLACE\r\n")]
    public async Task Request_OfTwoMinds_IsRefused(string head)
    {
        var answer = await Wire.Send(bench.Address, $"{head.Replace("PLACE", bench.Address.Authority, StringComparison.Ordinal)}Connection: close\r\n\r\n");

        Assert.Equal(400, Wire.StatusOf(answer));
    }

    // V3.4.3 to V3.4.6, V3.2.1, V4.1.1, V14.3.2
    [Theory]
    [InlineData("/pair")]
    [InlineData("/tonight")]
    [InlineData("/nothing")]
    public async Task Answer_Always_SaysWhatABrowserMayDo(string path)
    {
        using var phone = await bench.Phone();

        var answer = await Wire.Send(bench.Address, Wire.Head(bench.Address, "GET", path, $"Cookie: {phone.Cookie!.Name}={phone.Cookie.Value}"));

        var head = answer[..answer.IndexOf("\r\n\r\n", StringComparison.Ordinal)];
        Assert.Contains("default-src 'none'", head, StringComparison.Ordinal);
        Assert.Contains("base-uri 'none'", head, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", head, StringComparison.Ordinal);
        Assert.Contains("form-action 'self'", head, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", head, StringComparison.Ordinal);
        Assert.Contains("X-Content-Type-Options: nosniff", head, StringComparison.Ordinal);
        Assert.Contains("Referrer-Policy: same-origin", head, StringComparison.Ordinal);
        Assert.Contains("Cross-Origin-Opener-Policy: same-origin", head, StringComparison.Ordinal);
        Assert.Contains("Cross-Origin-Resource-Policy: same-origin", head, StringComparison.Ordinal);
        Assert.Contains("Cache-Control: no-store", head, StringComparison.Ordinal);
        Assert.Contains("charset=utf-8", head, StringComparison.Ordinal);
        Assert.DoesNotContain("Access-Control-", head, StringComparison.Ordinal); // V3.4.2
        Assert.DoesNotContain("Server:", head, StringComparison.Ordinal);
    }

    // V1.2.1, V3.2.2: what is typed is text wherever it is shown.
    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><img src=x onerror=alert(1)>")]
    [InlineData("</textarea></title></style><svg/onload=alert(1)>")]
    [InlineData("{{ frame.token }} {{ include 'top' }}")]
    [InlineData("%0d%0aSet-Cookie: evil=1")]
    [InlineData("javascript:alert(1)")]
    public async Task Words_OfAnyKind_AreTextOnThePageAndInTheEntry(string words)
    {
        using var phone = await bench.Phone();

        await phone.Send("/tonight/remark", ("text", words));
        await phone.Send("/tonight/mistake", ("what", words), ("lesson", words));
        await phone.Send("/tonight/bought", ("what", words), ("cost", "1"));

        Assert.Equal(3, phone.Page.QuerySelectorAll("#so-far li").Count(line => line.TextContent.Contains(words, StringComparison.Ordinal)));
        Assert.Empty(phone.Page.QuerySelectorAll("script:not([src]), [onerror], [onload], svg, main img"));
        Assert.Equal(0, bench.Ask("write", "--hours", "1h", "--part", "head", "--operation", "boring").Status);
        Assert.Empty(bench.Problems);
    }

    // V5.3.2, V13.4.1, V13.4.3: no path comes from a client, and the journal's folder is not served.
    [Theory]
    [InlineData("/journal.yaml")]
    [InlineData("/drill/build.yaml")]
    [InlineData("/.bench/devices.json")]
    [InlineData("/.bench/slate.json")]
    [InlineData("/.git/config")]
    [InlineData("/look/../journal.yaml")]
    [InlineData("/look/%2e%2e/journal.yaml")]
    [InlineData("/look/..%2fjournal.yaml")]
    [InlineData("/look/0-../../journal.yaml")]
    [InlineData("//etc/passwd")]
    [InlineData("/tonight/../../etc/passwd")]
    [InlineData("/tonight/%00")]
    [InlineData("/look/")]
    public async Task Address_OfAFile_LeadsNowhere(string path)
    {
        using var desk = await bench.Desk();

        var answer = await Wire.Send(bench.Address, Wire.Head(bench.Address, "GET", path, $"Cookie: {desk.Cookie!.Name}={desk.Cookie.Value}"));

        Assert.Contains(Wire.StatusOf(answer), new[] { 400, 404, 405 });
    }

    [Theory]
    [InlineData("jot", "../../etc/passwd")]
    [InlineData("device", "../devices.json")]
    public async Task Id_ThatLooksLikeAPath_IsNoneOfOurs(string field, string value)
    {
        using var desk = await bench.Desk();
        await desk.Post("/tonight/take-back", ("token", desk.Token), ("id", "0123456789abcdef0"), ("jot", "none"));
        var before = Directory.EnumerateFiles(bench.Disk.Folder, "*", SearchOption.AllDirectories).Count();

        await desk.Look("/tonight");
        await desk.Post(field == "jot" ? "/tonight/take-back" : "/phones/take-back", ("token", desk.Token), ("id", "0123456789abcdef"), (field, value));

        Assert.Equal(HttpStatusCode.OK, desk.Status);
        Assert.Equal(before, Directory.EnumerateFiles(bench.Disk.Folder, "*", SearchOption.AllDirectories).Count());
    }

    // V5.2.1: bodies, pictures, fields and texts that are too large, or that never end.
    [Fact]
    public async Task Form_TooLarge_IsRefusedAndTheNextIsTaken()
    {
        using var phone = await bench.Phone();
        var token = phone.Token;

        await phone.Post("/tonight/remark", ("token", token), ("id", "0123456789abcdef"), ("text", new string('x', 300_000)));
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, phone.Status);
        await phone.Post("/tonight/remark", ("token", token), ("id", "0123456789abcdef"), ("text", new string('x', 5_000)));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, phone.Status);
        await phone.Post("/tonight/remark", [("token", token), .. Enumerable.Range(0, 100).Select(i => ($"f{i.ToString(CultureInfo.InvariantCulture)}", "x"))]);
        Assert.Equal(HttpStatusCode.BadRequest, phone.Status);

        await phone.Post("/tonight/remark", ("token", token), ("id", "0123456789abcdef"), ("text", "Short"));
        Assert.Equal("Short", Assert.Single(bench.Slate.Jots).Text);
    }

    // V5.2.2, V5.2.6: pictures that are none, or that would be too large when unpacked.
    [Theory]
    [InlineData("evil.jpg", "image/jpeg", "<html><script>alert(1)</script>")]
    [InlineData("evil.svg", "image/svg+xml", "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>")]
    [InlineData("bomb.bmp", "image/bmp", "BM\x00\x00\x00\x00\x00\x00\x00\x00\x36\x00\x00\x00\x28\x00\x00\x00\x60\xea\x00\x00\x60\xea\x00\x00\x01\x00\x18\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00")]
    public async Task Picture_ThatIsNone_IsNotKept(string name, string type, string contents)
    {
        using var phone = await bench.Phone();
        await phone.SendPicture(System.Text.Encoding.Latin1.GetBytes(contents), name, type);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, phone.Status);
        Assert.Empty(bench.Slate.Jots);
        Assert.False(Directory.Exists(Path.Combine(bench.Disk.Folder, "drill", "photos")));
    }

    // V2.4.1: whoever asks too often waits; others do not.
    [Fact]
    public void Rates_AskedTooOften_LetNobodyElseWait()
    {
        var rates = new Rates(10, 2, bench.Clock);

        Assert.Equal(10, Enumerable.Range(0, 50).Count(_ => rates.Lets("one")));
        Assert.True(rates.Lets("other"));
        bench.Clock.Pass(TimeSpan.FromSeconds(1));
        Assert.Equal(2, Enumerable.Range(0, 50).Count(_ => rates.Lets("one")));
    }

    // V14.2.1: the key of the desk is good on this machine alone, and is gone from the address at once.
    [Fact]
    public async Task Key_OfTheDesk_IsChangedForACookieAtOnce()
    {
        using var desk = await bench.Desk();
        Assert.Equal("Tonight", desk.Page.QuerySelector("h1")!.FirstChild!.TextContent.Trim());
        using var wrong = bench.Stranger();

        await wrong.Look("/?key=00000000000000000000000000000000");
        Assert.Equal(HttpStatusCode.Forbidden, wrong.Status);
        await bench.Restart();
        await wrong.Look(desk.Address.PathAndQuery.Length > 1 ? desk.Address.PathAndQuery : "/?key=");
        Assert.Null(wrong.Cookie);
    }

    // V6.2 does not apply: nobody has a password. V7.4.2: all at once.
    [Fact]
    public async Task Forget_WhileTheBenchRuns_UnpairsEveryone()
    {
        using var phone = await bench.Phone();

        Assert.Equal((0, "1 phone unpaired; each has to be paired again.\n"), bench.Ask("bench", "--forget") is var answer ? (answer.Status, answer.Error) : default);
        await phone.Look("/tonight");

        Assert.Contains("Pair this phone", phone.Text, StringComparison.Ordinal);
    }

    // V1.2.5: the program that starts others is another assembly's business.
    [Fact]
    public void Bench_NamesNoOtherProgram() =>
        Assert.DoesNotContain("System.Diagnostics.Process", typeof(BenchServer).Assembly.GetReferencedAssemblies().Select(name => name.Name));
}
