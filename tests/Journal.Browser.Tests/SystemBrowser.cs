using Microsoft.Playwright;

namespace Journal.Browser.Tests;

/// <summary>The system's Chromium. Each collection of tests has one of its own, so that they run beside each other.</summary>
public sealed class SystemBrowser : IAsyncLifetime
{
    // The one without a window first: it is made of the same source, and needs less of the processor.
    private static readonly string? Chromium = new[] { "/usr/bin/chromium-headless-shell", "/usr/bin/chromium" }.FirstOrDefault(File.Exists);

    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>A fresh page.</summary>
    public async Task<IPage> Open(int width = 1440, ColorScheme scheme = ColorScheme.Light, bool javaScript = true)
    {
        var context = await browser!.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = 900 }, ColorScheme = scheme, JavaScriptEnabled = javaScript });
        return await context.NewPageAsync();
    }

    /// <summary>A fresh page of a phone: narrow, touched, and dark or light.</summary>
    public async Task<IPage> Phone(int width = 360, ColorScheme scheme = ColorScheme.Light, bool javaScript = true)
    {
        var context = await browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = 720 },
            HasTouch = true,
            IsMobile = true,
            DeviceScaleFactor = 2,
            ColorScheme = scheme,
            JavaScriptEnabled = javaScript,
        });
        return await context.NewPageAsync();
    }

    public async Task InitializeAsync()
    {
        Assert.True(Chromium is not null, "Chromium is missing; tests/run.sh installs it.");
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium,
            // No test may reach another host, whatever a page asks for.
            Args = ["--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.CloseAsync();
        }

        playwright?.Dispose();
    }
}
