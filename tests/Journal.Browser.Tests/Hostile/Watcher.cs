using Microsoft.Playwright;

namespace Journal.Browser.Tests.Hostile;

/// <summary>A page of the browser that notes whatever runs, asks, blocks, opens or goes elsewhere, and what stands where only we may write.</summary>
internal sealed class Watcher : IAsyncDisposable
{
    private const string Planted = "plantedByTheTest";

    // What a text could call to show that it runs, and what the policy had to stop.
    private const string Traps = $$"""
        ['alert', 'confirm', 'prompt', 'print', 'open', 'msgbox', 'fetch'].forEach(name => {
          window[name] = () => { {{Planted}}('ran ' + name); };
        });
        document.addEventListener('securitypolicyviolation', found => {{Planted}}('the policy had to stop ' + found.violatedDirective + ' ' + found.blockedURI));
        """;

    // Links of the plain kinds are not followed.
    private const string Touch = """
        async () => {
          const stay = pressed => { const link = pressed.target.closest('a'); if (link && /^(https?:|mailto:|:)$/.test(link.protocol)) { pressed.preventDefault(); } };
          window.addEventListener('click', stay, true);
          const kinds = ['mouseover', 'mouseenter', 'mousemove', 'mouseout', 'mousedown', 'mouseup', 'wheel', 'copy', 'focusin', 'keydown', 'keyup', 'input', 'change', 'toggle', 'animationstart', 'error', 'load'];
          for (const element of document.querySelectorAll('main *')) {
            kinds.forEach(kind => element.dispatchEvent(new Event(kind)));
            if (element.focus) { element.focus({ preventScroll: true }); }
            if (element.click) { element.click(); }
          }
          document.querySelectorAll('dialog').forEach(dialog => dialog.close());
          await new Promise(done => setTimeout(done, 0));
        }
        """;

    private const string Look = """
        root => {
          const faults = [];
          const fault = (element, words) => faults.push(words + ': ' + element.outerHTML.slice(0, 160));
          const ours = new Set(['viewer.js', 'find/find.js', 'find/matcher.js', 'find/index.js'].map(name => root + name));
          const never = ['iframe', 'frame', 'frameset', 'object', 'embed', 'applet', 'base', 'style', 'form', 'textarea', 'select', 'audio', 'video', 'template', 'portal', 'math', 'marquee', 'plaintext', 'foreignobject', 'animate', 'set', 'handler', 'param', 'isindex'];
          const addresses = ['href', 'src', 'action', 'formaction', 'xlink:href', 'data', 'poster', 'background', 'srcset', 'srcdoc', 'ping', 'code', 'archive', 'cite', 'longdesc', 'dynsrc', 'lowsrc'];
          for (const element of document.querySelectorAll('*')) {
            const name = element.localName.toLowerCase();
            if (never.includes(name)) { fault(element, 'holds <' + name + '>'); }
            if (name === 'script' && !(ours.has(element.src) || (root && element.src.startsWith(root + 'find/text-'))) && element.type !== 'application/ld+json') { fault(element, 'a script that is not ours'); }
            if (name === 'meta' && element.httpEquiv && element.httpEquiv !== 'Content-Security-Policy') { fault(element, 'meta ' + element.httpEquiv); }
            if (name === 'link' && !['stylesheet', 'icon', 'alternate', 'canonical'].includes(element.rel)) { fault(element, 'a link element that is not ours'); }
            for (const { name: attribute, value } of element.attributes) {
              const bare = value.replace(/[\u0000-\u0020]/g, '');
              if (/^on/i.test(attribute)) { fault(element, 'attribute ' + attribute); }
              if (['style', 'srcdoc', 'autofocus', 'formaction', 'action', 'xlink:href'].includes(attribute)) { fault(element, 'attribute ' + attribute); }
              if (addresses.includes(attribute) && /^[a-z][a-z0-9+.-]*:/i.test(bare) && !(name === 'a' && /^(https?|mailto):/i.test(bare)) && !(root && bare.startsWith(root))) { fault(element, 'address in ' + attribute); }
              if (addresses.includes(attribute) && name !== 'a' && /^[\\/]{2}/.test(bare)) { fault(element, 'address in ' + attribute); }
            }
            if (name === 'a' && element.hasAttribute('href') && root && !/^(https?|mailto):$/.test(element.protocol)) { fault(element, 'leads to ' + element.protocol); }
          }
          return faults;
        }
        """;

    private readonly List<string> faults = [];
    private readonly Uri home;
    private string here = "";
    private string root = "";
    private string expected = "about:blank";

    private Watcher(IPage page, Uri home)
    {
        Page = page;
        this.home = home;
        page.Dialog += (_, dialog) => Note($"opens a dialog {dialog.Message}", dialog.DismissAsync());
        page.PageError += (_, error) => Note($"fails with {error}");
        page.Console += (_, message) => Note(message.Type is "error" or "warning", $"the console says {message.Text}");
        page.Request += (_, request) => Note(!request.Url.StartsWith(home.AbsoluteUri, StringComparison.Ordinal) && request.Url != "about:blank", $"asks for {request.Url}");
        page.FrameNavigated += (_, frame) => Note(frame.Url.Split('#')[0] != expected, $"goes to {frame.Url}");
        page.FrameAttached += (_, frame) => Note($"has a frame {frame.Url}");
        page.Popup += (_, _) => Note("opens a window");
        page.Download += (_, download) => Note($"downloads {download.Url}", download.CancelAsync());
    }

    public IPage Page { get; }

    /// <summary>What was noted so far.</summary>
    public IReadOnlyList<string> Faults
    {
        get
        {
            lock (faults)
            {
                return [.. faults];
            }
        }
    }

    /// <param name="page">A fresh page.</param>
    /// <param name="home">Where every request must go.</param>
    public static async Task<Watcher> On(IPage page, Uri home)
    {
        var watcher = new Watcher(page, home);
        await page.Context.ExposeFunctionAsync<string, int>(Planted, words => watcher.Note(words));
        await page.AddInitScriptAsync(Traps);
        return watcher;
    }

    /// <summary>Opens a page of the site and looks at all that stands there.</summary>
    /// <param name="inHome">The site, from <c>home</c>.</param>
    /// <param name="address">The page, from the root of the site.</param>
    public async Task Visit(string inHome, string address)
    {
        here = inHome + address;
        root = new Uri(home, inHome).AbsoluteUri;
        expected = root + address;
        await Page.GotoAsync(expected);
        await LookAtAll();
    }

    /// <summary>Shows HTML alone, as a reader of feeds might.</summary>
    public async Task Show(string name, string html)
    {
        here = name;
        root = "";
        expected = "about:blank";
        await Page.GotoAsync(expected);
        await Page.SetContentAsync($"<!DOCTYPE html><title>Feed</title><main>{html}</main>");
        await LookAtAll();
    }

    public async ValueTask DisposeAsync() => await Page.Context.CloseAsync();

    /// <summary>Points at, focuses and presses everything in the sheet, and looks again.</summary>
    public Task TouchAll() => Within(async () =>
    {
        await Page.EvaluateAsync(Touch);
        await LookAtAll();
    });

    /// <summary>Looks again, after something was done on the page.</summary>
    public Task LookAtAll() => Within(async () =>
    {
        foreach (var found in await Page.EvaluateAsync<string[]>(Look, root))
        {
            Note(found);
        }
    });

    private async Task Within(Func<Task> looking)
    {
        try
        {
            await looking();
        }
        catch (PlaywrightException e)
        {
            Note($"went away while it was looked at: {e.Message}");
        }
    }

    private void Note(bool isFault, string words)
    {
        if (isFault)
        {
            Note(words);
        }
    }

    private int Note(string words, Task? then = null)
    {
        _ = then;
        lock (faults)
        {
            faults.Add($"{here}: {words}");
            return faults.Count;
        }
    }
}
