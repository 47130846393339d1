using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace Journal.Browser.Tests;

/// <summary>The site while it is being written: the open page follows the file, keeps its place and tells of faults.</summary>
[Collection(SharedDemo.Name)]
public sealed class PreviewTests(DemoSite site, ITestOutputHelper output) : IDisposable
{
    private const string Page = "bench-drill/entry/2025-10-03-head-face-plate.html";
    private const string NoteText = "document.querySelector('#preview-note')?.innerText ?? ''";
    private const int Saves = 9;
    private const int Place = 600;

    private readonly string place = Directory.CreateTempSubdirectory("journal-preview-").FullName;
    private Process? preview;

    private string Journal => Path.Combine(place, "journal");

    private string Entry => Path.Combine(Journal, "bench-drill", "2025-10-03-head-face-plate.md");

    [Fact]
    public async Task SavedEntry_ShowsOnTheOpenPageInItsPlace_AndFaultsUntilMended()
    {
        Copy(Path.Combine(DemoSite.Root, "journal"));
        var home = await Start();
        var page = await site.Open(900);
        await page.GotoAsync(new Uri(home, Page).AbsoluteUri);
        await page.EvaluateAsync($"window.stayed = 'here'; scrollTo(0, {Place})");
        var text = await File.ReadAllTextAsync(Entry);
        await InPlace(page);

        var times = new List<double>();
        for (var i = 0; i < Saves; i++)
        {
            var words = string.Create(CultureInfo.InvariantCulture, $"Changed for time {i} over");
            var clock = Stopwatch.StartNew();
            await File.WriteAllTextAsync(Entry, $"{text}\n{words}.\n");
            await Shows(page, words);
            times.Add(clock.Elapsed.TotalMilliseconds);
            await InPlace(page);
        }

        // Told, and held only against a bound that no loaded machine passes; the benchmark `preview` holds it against the figure wanted.
        var median = times.Order().ElementAt(Saves / 2);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"From saving to the refreshed page: {median:0} ms, median of {Saves}."));
        Assert.True(median < 10_000, $"{median} ms");
        // The fault is told over the page, which stays as it was before. The pictures left out are told all the time.
        var told = await page.EvaluateAsync<string>(NoteText);
        var last = string.Create(CultureInfo.InvariantCulture, $"Changed for time {Saves - 1} over");
        Assert.DoesNotContain("2:75", told, StringComparison.Ordinal);
        Assert.Contains("hours: 2h45", text, StringComparison.Ordinal);
        await File.WriteAllTextAsync(Entry, text.Replace("hours: 2h45", "hours: 2:75", StringComparison.Ordinal));
        await Until(page, $"fault => ({NoteText}).includes(fault)", "2:75");
        Assert.Contains("2025-10-03-head-face-plate.md:", await page.EvaluateAsync<string>(NoteText), StringComparison.Ordinal);
        var shown = await page.Locator("main").InnerTextAsync();
        Assert.Contains(last, shown, StringComparison.Ordinal);
        Assert.DoesNotContain("2:75", shown, StringComparison.Ordinal);
        await InPlace(page);

        await File.WriteAllTextAsync(Entry, $"{text}\nMended.\n");
        await Shows(page, "Mended.");
        await Until(page, $"told => ({NoteText}) === told", told);
        Assert.DoesNotContain(last, await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        await InPlace(page);
        Assert.Equal("here", await page.EvaluateAsync<string>("window.stayed"));
        await page.Context.CloseAsync();
    }

    public void Dispose()
    {
        preview?.Kill(entireProcessTree: true);
        preview?.WaitForExit();
        preview?.Dispose();
        Directory.Delete(place, recursive: true);
    }

    // The page itself, not the note over it.
    private static Task<IJSHandle> Shows(IPage page, string words) => Until(page, "words => (document.querySelector('main')?.innerText ?? '').includes(words)", words);

    // A fresh style sheet may move it for a moment.
    private static Task<IJSHandle> InPlace(IPage page) => Until(page, "place => scrollY === place", Place);

    private static Task<IJSHandle> Until(IPage page, string isSo, object of) => page.WaitForFunctionAsync(isSo, of, new() { PollingInterval = 5, Timeout = 60_000 });

    // The built program, as a maker runs it.
    private async Task<Uri> Start()
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "journal.dll"), "preview", "--in", Journal, "--today", "2026-11-25"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["JOURNAL_CACHE"] = Path.Combine(place, "cache") },
        };
        preview = Process.Start(start)!;
        var said = await preview.StandardOutput.ReadLineAsync();
        _ = preview.StandardOutput.ReadToEndAsync();
        _ = preview.StandardError.ReadToEndAsync();
        return new Uri(said ?? throw new InvalidOperationException("The preview ended at once."));
    }

    // Without the pictures: they are made once and take their time.
    private void Copy(string from)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".md" or ".yaml" && !file.Contains("scenes", StringComparison.Ordinal)))
        {
            var to = Path.Combine(Journal, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }
}
