using System.Diagnostics;
using System.Net.Sockets;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Cli.Tests.Writing;

public sealed partial class PreviewTests : IDisposable
{
    private readonly JournalOnDisk disk = JournalOnDisk.Small();
    private readonly Process program;
    private readonly int port;

    public PreviewTests()
    {
        var start = BuiltProgram.With("preview", "--port", FreePort().ToString(System.Globalization.CultureInfo.InvariantCulture), "--in", disk.Folder);
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        program = Process.Start(start)!;
        port = new Uri(program.StandardOutput.ReadLine()!).Port;
    }

    [Fact]
    public async Task Preview_SavedFile_IsOnThePageAndWakesIt()
    {
        var page = await Get("/drill/entry/2025-09-30-head-again.html");
        Assert.Contains("The head again", page, StringComparison.Ordinal);
        Assert.Contains("connect-src 'self'", page[..page.IndexOf("\r\n\r\n", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.DoesNotContain("http-equiv", page, StringComparison.Ordinal);
        var version = Version().Match(page).Groups[1].Value;
        var news = Get($"/-/news?{version}");
        Assert.NotSame(news, await Task.WhenAny(news, Task.Delay(300)));

        disk.With("drill/2025-09-30-head-again.md", "---\ntitle: The head, once more\npart: head\nhours: 4h\n---\n");

        Assert.Contains("\"problems\":[]", await news, StringComparison.Ordinal);
        Assert.Contains("The head, once more", await Get("/drill/entry/2025-09-30-head-again.html"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Preview_BrokenFile_KeepsTheSiteAndTellsTheProblem()
    {
        var version = Version().Match(await Get("/")).Groups[1].Value;

        disk.With("drill/2025-09-30-head-again.md", "---\npart: haed\nhours: 4h\n---\n");

        Assert.Contains("haed", await Get($"/-/news?{version}"), StringComparison.Ordinal);
        Assert.StartsWith("HTTP/1.1 200", await Get("/"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Preview_TwoHundredSavesInABurst_SettleInOneRebuild()
    {
        var version = int.Parse(Version().Match(await Get("/")).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        var news = Get($"/-/news?{version}");

        for (var i = 0; i < 200; i++)
        {
            disk.With("drill/2025-09-30-head-again.md", $"---\ntitle: Save {i}\npart: head\nhours: 4h\n---\n");
        }

        await news;
        await Task.Delay(1500);
        var page = await Get("/drill/entry/2025-09-30-head-again.html");
        Assert.Contains("Save 199", page, StringComparison.Ordinal);
        Assert.Equal(version + 1, int.Parse(Version().Match(page).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("GET / HTTP/1.1\r\nHost: example.org\r\n", 403)]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nOrigin: https://example.org\r\n", 403)]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nOrigin: null\r\n", 403)]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nOrigin: http://PLACE\r\nOrigin: https://example.org\r\n", 403)]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nHost: PLACE\r\n", 400)] // RFC 9112, 3.2: none or more than one is a bad request.
    [InlineData("GET / HTTP/1.1\r\n", 400)]
    [InlineData("GET http://example.org/ HTTP/1.1\r\nHost: PLACE\r\n", 400)]
    [InlineData("POST / HTTP/1.1\r\nHost: PLACE\r\n", 405)]
    [InlineData("GET / HTTP/1.1\r\nHost: PLACE\r\nOrigin: http://PLACE\r\n", 200)]
    [InlineData("GET /../../../../etc/passwd HTTP/1.1\r\nHost: PLACE\r\n", 404)]
    [InlineData("GET /%2e%2e/%2e%2e/etc/passwd HTTP/1.1\r\nHost: PLACE\r\n", 404)]
    [InlineData("GET /..%2f..%2fetc/passwd HTTP/1.1\r\nHost: PLACE\r\n", 404)]
    [InlineData("GET //etc/passwd HTTP/1.1\r\nHost: PLACE\r\n", 404)]
    [InlineData("GET /.published-site.json HTTP/1.1\r\nHost: PLACE\r\n", 404)]
    [InlineData("GET http://PLACE/ HTTP/1.1\r\nHost: PLACE\r\n", 404)]
    public async Task Preview_AskedFromElsewhereOrForElsewhere_Refuses(string head, int status) =>
        Assert.StartsWith($"HTTP/1.1 {status} ", await Send(head.Replace("PLACE", $"127.0.0.1:{port}", StringComparison.Ordinal)), StringComparison.Ordinal);

    [Fact]
    public async Task Preview_WhileManyAreSlowToAsk_AnswersOthers()
    {
        var slow = new List<TcpClient>();
        for (var i = 0; i < 80; i++)
        {
            slow.Add(new TcpClient());
            await slow[^1].ConnectAsync("127.0.0.1", port);
            await slow[^1].GetStream().WriteAsync(Encoding.ASCII.GetBytes("GET / HTTP/1.1\r\nHost: "));
        }

        Assert.StartsWith("HTTP/1.1 200", await Get("/").WaitAsync(TimeSpan.FromSeconds(20)), StringComparison.Ordinal);
        slow.ForEach(client => client.Dispose());
    }

    [Fact]
    public async Task Preview_WhereOnePageCannotBeMade_SaysSoThereAndGoesOn()
    {
        using var look = JournalOnDisk.Bare().With("look/pages/timeline.html", "{{ page.no_such_thing }}");
        var place = FreePort();
        var number = place.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var start = BuiltProgram.With("preview", "--port", number, "--in", disk.Folder, "--template", Path.Combine(look.Folder, "look"));
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        using var faulty = Process.Start(start)!;
        try
        {
            await faulty.StandardOutput.ReadLineAsync();
            Task<string> Ask(string path) => Send($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{number}\r\n", place);

            var page = await Ask("/timeline.html");
            Assert.StartsWith("HTTP/1.1 500", page, StringComparison.Ordinal);
            Assert.Contains("pages/timeline.html:1:", page, StringComparison.Ordinal);
            Assert.StartsWith("HTTP/1.1 200", await Ask("/"), StringComparison.Ordinal);

            look.With("look/pages/timeline.html", "<!DOCTYPE html><html><head></head><body>Mended.</body></html>");
            var news = Ask("/-/news?1");
            disk.With("drill/2025-09-30-head-again.md", "---\ntitle: Once more\npart: head\nhours: 4h\n---\n");
            await news;
            Assert.Contains("Mended.", await Ask("/timeline.html"), StringComparison.Ordinal);
        }
        finally
        {
            faulty.Kill();
            await faulty.WaitForExitAsync();
        }
    }

    [Fact]
    public async Task Preview_Interrupted_EndsAtOnceAndWell()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var waiting = Get("/-/news?1");
        var clock = Stopwatch.StartNew();
        Assert.Equal(0, Kill(program.Id, 2));
        await program.WaitForExitAsync();

        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(1.5), clock.Elapsed.ToString());
        Assert.Equal(0, program.ExitCode);
        await Task.WhenAny(waiting, Task.Delay(1000));
    }

    // The program needs some 150 handles itself; more connections than are left are opened, held and let go.
    [Fact]
    public async Task Preview_AfterTheSystemHadNoHandleLeft_AnswersAgain()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var place = FreePort();
        var number = place.ToString(System.Globalization.CultureInfo.InvariantCulture);
        using var narrow = Process.Start(new ProcessStartInfo("sh", ["-c", "ulimit -n 200; exec \"$@\"", "sh", .. BuiltProgram.Words, "preview", "--port", number, "--in", disk.Folder]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        try
        {
            Assert.Equal($"http://127.0.0.1:{number}/", await narrow.StandardOutput.ReadLineAsync());
            var held = new List<TcpClient>();
            for (var i = 0; i < 260; i++)
            {
                held.Add(new TcpClient());
                await held[^1].ConnectAsync("127.0.0.1", place);
            }

            held.ForEach(client => client.Dispose());

            Assert.StartsWith("HTTP/1.1 200", await Send($"GET / HTTP/1.1\r\nHost: 127.0.0.1:{number}\r\n", place).WaitAsync(TimeSpan.FromSeconds(20)), StringComparison.Ordinal);
        }
        finally
        {
            narrow.Kill();
            await narrow.WaitForExitAsync();
        }
    }

    public void Dispose()
    {
        program.Kill();
        program.Dispose();
        disk.Dispose();
    }

    private Task<string> Get(string path) => Send($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n");

    private Task<string> Send(string head) => Send(head, port);

    private static async Task<string> Send(string head, int port)
    {
        using var client = new TcpClient();
        await client.ConnectAsync("127.0.0.1", port);
        await using var stream = client.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(head + "Connection: close\r\n\r\n"));
        using var reader = new StreamReader(stream);
        return await reader.ReadToEndAsync();
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(System.Net.IPAddress.Loopback, 0);
        listener.Start();
        return ((System.Net.IPEndPoint)listener.LocalEndpoint).Port;
    }

    [GeneratedRegex("data-version=\"([0-9]+)\"")]
    private static partial Regex Version();

    [DllImport("libc", EntryPoint = "kill")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Kill(int process, int signal);
}
