using System.Diagnostics;
using System.Net.WebSockets;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Journal.Benchmarks.Previewing;

/// <summary>The system's Chromium with one page open, driven by its own protocol (Chrome DevTools Protocol, Runtime domain).</summary>
internal sealed class Browser : IDisposable
{
    private static readonly string? Chromium = new[] { "/usr/bin/chromium-headless-shell", "/usr/bin/chromium" }.FirstOrDefault(File.Exists);

    private readonly Process process;
    private readonly ClientWebSocket page = new();
    private readonly byte[] buffer = new byte[64 * 1024];
    private int asked;

    private Browser(Process process) => this.process = process;

    /// <summary>Opens a page.</summary>
    /// <param name="address">The page.</param>
    /// <param name="profile">An empty folder for what the browser keeps.</param>
    public static async Task<Browser> Open(Uri address, string profile)
    {
        string[] words = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--no-first-run", "--remote-debugging-port=0", $"--user-data-dir={profile}", "about:blank"];
        var start = new ProcessStartInfo(Chromium ?? throw new InvalidOperationException("Chromium is missing; tests/run.sh installs it."), words) { RedirectStandardError = true, RedirectStandardOutput = true };
        var browser = new Browser(Process.Start(start)!);
        var door = await browser.Door();
        using var client = new HttpClient();
        using var opened = await client.PutAsync(new Uri(door, $"/json/new?{address.AbsoluteUri}"), content: null);
        var about = JsonNode.Parse(await opened.Content.ReadAsStringAsync())!;
        await browser.page.ConnectAsync(new Uri(about["webSocketDebuggerUrl"]!.GetValue<string>()), CancellationToken.None);
        return browser;
    }

    /// <summary>Waits until the page's main part shows some words.</summary>
    public Task Shows(string words) => Evaluate($$"""
        new Promise(done => {
          const shows = () => (document.querySelector('main')?.innerText ?? '').includes({{JsonSerializer.Serialize(words, WordsJson.Default.String)}});
          if (shows()) { done(); return; }
          const watch = new MutationObserver(() => { if (shows()) { watch.disconnect(); done(); } });
          watch.observe(document, { childList: true, subtree: true });
        })
        """);

    /// <inheritdoc/>
    public void Dispose()
    {
        page.Dispose();
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
        process.Dispose();
    }

    private async Task<Uri> Door()
    {
        const string Said = "DevTools listening on ";
        while (await process.StandardError.ReadLineAsync() is { } line)
        {
            if (line.StartsWith(Said, StringComparison.Ordinal))
            {
                _ = process.StandardError.ReadToEndAsync();
                return new UriBuilder(new Uri(line[Said.Length..])) { Scheme = "http" }.Uri;
            }
        }

        throw new InvalidOperationException("Chromium ended at once.");
    }

    private async Task Evaluate(string expression)
    {
        var number = ++asked;
        var order = new JsonObject
        {
            ["id"] = number,
            ["method"] = "Runtime.evaluate",
            ["params"] = new JsonObject { ["expression"] = expression, ["awaitPromise"] = true },
        };
        await page.SendAsync(System.Text.Encoding.UTF8.GetBytes(order.ToJsonString()), WebSocketMessageType.Text, endOfMessage: true, CancellationToken.None);
        while (JsonNode.Parse(await Receive())!["id"]?.GetValue<int>() != number)
        {
            // Something else that the browser tells.
        }
    }

    private async Task<byte[]> Receive()
    {
        using var message = new MemoryStream();
        while (true)
        {
            var part = await page.ReceiveAsync(buffer, CancellationToken.None);
            await message.WriteAsync(buffer.AsMemory(0, part.Count));
            if (part.EndOfMessage)
            {
                return message.ToArray();
            }
        }
    }
}

/// <summary>Words as JSON.</summary>
[System.Text.Json.Serialization.JsonSerializable(typeof(string))]
internal sealed partial class WordsJson : System.Text.Json.Serialization.JsonSerializerContext;
