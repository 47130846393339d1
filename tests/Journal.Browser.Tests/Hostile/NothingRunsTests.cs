using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit.Abstractions;

namespace Journal.Browser.Tests.Hostile;

/// <summary>Nothing that a journal says gets into its pages as anything but words.</summary>
public sealed partial class NothingRunsTests(SystemBrowser browser, HostileSites hostile, ITestOutputHelper output) : IClassFixture<SystemBrowser>, IClassFixture<HostileSites>
{
    // Every one of so many entries is also touched, which takes longer than opening it.
    private const int Touched = 6;

    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    [Fact]
    public Task PublishedVectors_OnPagesAsPublished_DoNothing() => VisitAll(hostile.Published, oneInSoMany: 12);

    [Fact]
    public Task PublishedVectors_OnEveryPageWithoutItsPolicy_DoNothing() => VisitAll(hostile.Open, oneInSoMany: 1);

    [Fact]
    public async Task PublishedVectors_PointedAtFocusedAndPressed_DoNothing()
    {
        await using var watcher = await Watcher.On(await browser.Open(), hostile.Open);
        foreach (var journal in hostile.Journals)
        {
            foreach (var page in journal.Groups.Index().Where(group => group.Index % Touched == 0).Select(group => HostileJournal.PageOf(group.Index)))
            {
                await watcher.Visit(journal.Root, page);
                await watcher.TouchAll();
            }
        }

        Faults.None(watcher.Faults);
    }

    [Fact]
    public async Task PublishedVectors_AmongWhatIsFound_DoNothing()
    {
        await using var watcher = await Watcher.On(await browser.Open(), hostile.Open);
        foreach (var journal in hostile.Journals)
        {
            await watcher.Visit(journal.Root, "find.html");
            foreach (var words in new[] { "alert", "javascript" })
            {
                await watcher.Page.Locator("#words").FillAsync(words);
                await watcher.Page.Locator("#find-results mark", new() { HasTextRegex = new Regex($"^{words}", RegexOptions.IgnoreCase) }).First.WaitForAsync();
                await watcher.LookAtAll();
            }

            await watcher.TouchAll();
        }

        Faults.None(watcher.Faults);
    }

    [Fact]
    public async Task PublishedVectors_InWhatFeedsSay_DoNothing()
    {
        await using var watcher = await Watcher.On(await browser.Open(), hostile.Open);
        foreach (var journal in hostile.Journals)
        {
            var atom = XDocument.Load(Path.Combine(journal.Site, "feed.xml"));
            using var json = JsonDocument.Parse(await File.ReadAllTextAsync(Path.Combine(journal.Site, "feed.json")));
            var texts = json.RootElement.GetProperty("items").EnumerateArray().Select(item => item.GetProperty("content_html").GetString()!).ToList();
            Assert.Equal(journal.Groups.Count, texts.Count);
            Assert.Equal(texts, atom.Descendants(Atom + "content").Select(content => content.Value));
            Assert.All(atom.Descendants().Where(element => element.Name == Atom + "title" || element.Name == Atom + "summary"), words => Assert.Equal("text", (string?)words.Attribute("type") ?? "text"));
            foreach (var (i, text) in texts.Index())
            {
                await watcher.Show($"{journal.Root}feed.json {i}", text);
            }
        }

        Faults.None(watcher.Faults);
    }

    [Fact]
    public void PublishedLists_AreWhole() => Assert.InRange(Vectors.Groups().Sum(group => group.Count), 500, 2000);

    [Theory]
    [InlineData("<script>alert(1)</script>", "ran alert")]
    [InlineData("<img src=x onerror=alert(1)>", "ran alert")]
    [InlineData("<p onmouseover=\"confirm(1)\">words</p>", "ran confirm")]
    [InlineData("<p tabindex=0 onfocus=\"prompt(1)\">words</p>", "ran prompt")]
    [InlineData("<a href=\"jav&#x09;ascript:alert(1)\">words</a>", "ran alert")]
    [InlineData("<a href=\"jav&#x09;ascript:1\">words</a>", "leads to javascript:")]
    [InlineData("<svg><a xlink:href=\"javascript:1\"><text y=20>words</text></a></svg>", "attribute xlink:href")]
    [InlineData("<details><summary>words</summary></details><script>document.querySelector('details').ontoggle = () => alert(1)</script>", "ran alert")]
    [InlineData("<script>nothing.at.all</script>", "fails with")]
    [InlineData("<img src=\"https://xss.example/x.png\">", "asks for https://xss.example/x.png")]
    [InlineData("<iframe src=\"about:blank\"></iframe>", "holds <iframe>")]
    [InlineData("<object data=\"x.html\"></object>", "holds <object>")]
    [InlineData("<base href=\"/elsewhere/\">", "holds <base>")]
    [InlineData("<meta http-equiv=\"refresh\" content=\"60;url=index.html\">", "meta refresh")]
    [InlineData("<script>location = 'https://xss.example/'</script>", "asks for https://xss.example/")]
    [InlineData("<script>location.search || location.replace('?gone')</script>", "goes to")]
    [InlineData("<script src=\"x.js\"></script>", "a script that is not ours")]
    [InlineData("<p style=\"position: fixed\">words</p>", "attribute style")]
    [InlineData("<p onwheel=\"\">words</p>", "attribute onwheel")]
    [InlineData("<form action=\"https://xss.example/\"><button formaction=\"javascript:1\">words</button></form>", "attribute formaction")]
    public async Task UnsafePage_IsNoticed(string unsafeHtml, string noticed)
    {
        using var place = new UnsafePage(unsafeHtml, policy: "");
        await using var watcher = await Watcher.On(await browser.Open(), place.Home);
        await watcher.Visit("", "index.html");
        await watcher.TouchAll();

        Assert.Contains(watcher.Faults, fault => fault.Contains(noticed, StringComparison.Ordinal));
    }

    [Fact]
    public async Task UnsafePage_StoppedByItsPolicy_IsNoticed()
    {
        using var place = new UnsafePage("<p onmouseover=\"alert(1)\">words</p>", "<meta http-equiv=\"Content-Security-Policy\" content=\"script-src 'self'\">");
        await using var watcher = await Watcher.On(await browser.Open(), place.Home);
        await watcher.Visit("", "index.html");
        await watcher.TouchAll();

        Assert.Contains(watcher.Faults, fault => fault.Contains("the policy had to stop script-src", StringComparison.Ordinal));
        Assert.DoesNotContain(watcher.Faults, fault => fault.Contains("ran alert", StringComparison.Ordinal));
    }

    // Every page; and the title of every entry is read back, so that what did nothing was there.
    // Every page without its policy; with it, which can only forbid more, every twelfth and all that show a title of the list.
    private async Task VisitAll(Uri home, int oneInSoMany)
    {
        var clock = Stopwatch.StartNew();
        await using var watcher = await Watcher.On(await browser.Open(), home);
        foreach (var journal in hostile.Journals)
        {
            var titles = journal.Groups.Index().ToDictionary(group => HostileJournal.PageOf(group.Index), group => HostileJournal.Joined(group.Item));
            foreach (var (_, page) in journal.Pages.Index().Where(one => one.Index % oneInSoMany == 0 || titles.ContainsKey(one.Item)))
            {
                await watcher.Visit(journal.Root, page);
                if (titles.Remove(page, out var title))
                {
                    Assert.Equal(Plain(title), Plain(await watcher.Page.EvaluateAsync<string>("document.querySelector('h1').textContent")));
                }
            }

            Assert.Empty(titles);
        }

        output.WriteLine($"One in {oneInSoMany} of {hostile.Journals.Sum(journal => journal.Pages.Count)} pages in {clock.Elapsed.TotalSeconds:0.0} s.");
        Faults.None(watcher.Faults);
    }

    // As a reader sees it: letters that pages may not hold stand as one sign, and blanks count once.
    private static string Plain(string text) => Blanks().Replace(NotForPages().Replace(text, ""), " ").Trim();

    [GeneratedRegex("[\\p{Cc}\\uFFFD\\uFFFE\\uFFFF-[\\t\\n\\r ]]")]
    private static partial Regex NotForPages();

    [GeneratedRegex("\\s+")]
    private static partial Regex Blanks();

    // One page of a maker who writes HTML by hand.
    private sealed class UnsafePage : IDisposable
    {
        private readonly string folder = Directory.CreateTempSubdirectory("journal-unsafe-").FullName;
        private readonly LoopbackServer server;

        public UnsafePage(string html, string policy)
        {
            File.WriteAllText(Path.Combine(folder, "index.html"), $"<!DOCTYPE html><html><head>{policy}<title>Unsafe</title></head><body><main>{html}</main></body></html>");
            File.WriteAllText(Path.Combine(folder, "404.html"), "<!DOCTYPE html><title>Not found</title>");
            server = new LoopbackServer(folder, "/");
        }

        public Uri Home => server.Address;

        public void Dispose()
        {
            server.Dispose();
            Directory.Delete(folder, recursive: true);
        }
    }
}
