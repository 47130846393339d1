using System.Globalization;
using System.Text.RegularExpressions;

namespace Journal.Site.Preview;

/// <summary>What the preview adds to each page that it serves.</summary>
internal static partial class PreviewScript
{
    /// <summary>The look of the note about problems.</summary>
    public const string Style = """
        #preview-note { position: fixed; inset: auto 1rem 1rem 1rem; max-height: 45vh; overflow: auto; margin: 0; padding: .75rem 1rem; z-index: 999;
          background: #fff7f0; color: #3a1a10; border: 2px solid #a33; font: 15px/1.4 system-ui, sans-serif; white-space: pre-wrap; }
        """;

    /// <summary>
    /// Waits for the next rebuild, fetches the page anew and puts its contents in the place of the old ones, so that
    /// the reader stays where they were; shows problems over the page until they are mended.
    /// </summary>
    public const string Text = """
        (function () {
          'use strict';
          var seen = Number(document.currentScript.dataset.version);
          function note(problems) {
            var old = document.getElementById('preview-note');
            if (old) { old.remove(); }
            if (!problems.length) { return; }
            var box = document.createElement('pre');
            box.id = 'preview-note';
            box.setAttribute('role', 'status');
            box.textContent = problems.join('\n');
            document.body.appendChild(box);
          }
          function renew() {
            return fetch(location.pathname, { cache: 'no-store' }).then(function (answer) { return answer.text(); }).then(function (text) {
              var fresh = new DOMParser().parseFromString(text, 'text/html');
              var open = Array.prototype.map.call(document.querySelectorAll('details'), function (one) { return one.open; });
              var x = window.scrollX, y = window.scrollY;
              document.title = fresh.title;
              document.body.className = fresh.body.className;
              document.body.replaceChildren.apply(document.body, Array.prototype.slice.call(fresh.body.childNodes));
              document.querySelectorAll('link[rel=stylesheet]').forEach(function (link) {
                if (link.href.indexOf('/-/') < 0) { link.href = link.href.split('?')[0] + '?' + seen; }
              });
              document.querySelectorAll('details').forEach(function (one, i) { if (i < open.length) { one.open = open[i]; } });
              window.scrollTo(x, y);
              document.dispatchEvent(new Event('page-renewed'));
            });
          }
          function wait() {
            fetch('/-/news?' + seen, { cache: 'no-store' }).then(function (answer) { return answer.json(); }).then(function (news) {
              var isNew = news.version !== seen;
              seen = news.version;
              var done = isNew ? renew() : Promise.resolve();
              return done.then(function () { note(news.problems); wait(); });
            }).catch(function () { setTimeout(wait, 1000); });
          }
          fetch('/-/news?' + (seen - 1)).then(function (answer) { return answer.json(); }).then(function (news) { note(news.problems); });
          wait();
        }());
        """;

    /// <summary>A page with the script in its head, and its own policy out of the way; the server sends the preview's.</summary>
    public static string OnPage(string html, int version)
    {
        var added = string.Create(CultureInfo.InvariantCulture, $"<link rel=\"stylesheet\" href=\"/-/preview.css\"><script src=\"/-/preview.js\" data-version=\"{version}\" defer></script>");
        var without = OwnPolicy().Replace(html, "", 1);
        var head = without.IndexOf("</head>", StringComparison.Ordinal);
        return head < 0 ? without.Replace("<body>", $"<head>{added}</head><body>", StringComparison.Ordinal) : without.Insert(head, added);
    }

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", RegexOptions.CultureInvariant)]
    private static partial Regex OwnPolicy();
}
