using System.Security.Cryptography;
using System.Text;
using Journal.Site.Html;
using Journal.Site.Templates;

namespace Journal.Bench.Templates;

/// <summary>The look of the bench's pages: templates, the style sheet that comes with each page, and the scripts.</summary>
internal sealed class BenchLook
{
    private const string StyleFile = "bench.css";

    private readonly TemplateFiles files = TemplateFiles.In(typeof(BenchLook).Assembly, "bench-template");
    private readonly TemplateEngine engine;
    private readonly Dictionary<string, byte[]> plain;

    /// <summary>The look that the program carries.</summary>
    public BenchLook()
    {
        engine = new TemplateEngine(files, BenchViews.MembersOf);
        plain = files.Plain.ToDictionary(file => file.Key, file => file.Value, StringComparer.Ordinal);
        var style = Encoding.UTF8.GetString(plain[StyleFile]);
        Style = new SafeHtml($"<style>{style}</style>");
        StyleSource = $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'";
    }

    /// <summary>The style sheet within its element.</summary>
    public SafeHtml Style { get; }

    /// <summary>The same by its digest, as a content policy names it (CSP 3, 2.3.1).</summary>
    public string StyleSource { get; }

    /// <summary>A page.</summary>
    public string Fill(string template, object page) => engine.Fill(template, page);

    /// <summary>The address of a script or another plain file, which changes with its contents.</summary>
    public string AddressOf(string file) => $"/look/{Convert.ToHexStringLower(SHA256.HashData(plain[file]).AsSpan(0, 6))}-{file}";

    /// <summary>A plain file.</summary>
    public byte[] Bytes(string file) => plain[file];

    /// <summary>A plain file by the last step of its address; null where there is none.</summary>
    public (string Name, byte[] Bytes)? Find(string step) =>
        step.IndexOf('-', StringComparison.Ordinal) is > 0 and var dash && plain.TryGetValue(step[(dash + 1)..], out var bytes) && AddressOf(step[(dash + 1)..]).EndsWith($"/{step}", StringComparison.Ordinal)
            ? (step[(dash + 1)..], bytes) : null;
}
