using Journal.Site.Publishing;
using Markdig;
using Scriban;
using Scriban.Runtime;
using YamlDotNet.Serialization;

namespace Journal.Benchmarks.Publishing;

/// <summary>The two things that are held against each other.</summary>
internal static class PublishWork
{
    private static readonly DateOnly Today = new(2100, 1, 1);

    /// <summary>The program: reads a journal and publishes it.</summary>
    public static void Publish(string journal, string to)
    {
        var outcome = SitePublisher.Publish(new PublishOrder(journal, to, Today) { Cache = to + "-cache" });
        if (outcome.Published is null)
        {
            throw new InvalidOperationException(outcome.Problems[0].Message);
        }
    }

    /// <summary>
    /// The floor: the same input through the bare libraries on the same cores, and the same bytes written. The YAML of
    /// each entry is deserialised and its Markdown made HTML; for each page one template is filled, with a line for each
    /// link that the page has.
    /// </summary>
    public static void Floor(string journal, string published, string to)
    {
        var yaml = new DeserializerBuilder().Build();
        var pipeline = new MarkdownPipelineBuilder().UsePipeTables().Build();
        Parallel.ForEach(Directory.EnumerateFiles(journal, "*.md", SearchOption.AllDirectories), path =>
        {
            var text = File.ReadAllText(path);
            var end = text.IndexOf("\n---\n", 4, StringComparison.Ordinal);
            yaml.Deserialize<Dictionary<string, object>>(text[4..end]);
            Markdown.ToHtml(text[(end + 5)..], pipeline);
        });
        var template = Template.Parse("<!DOCTYPE html><html><head><title>{{ title }}</title></head><body><h1>{{ title }}</h1><ul>{{ for line in lines }}<li><a href=\"{{ line.address }}\">{{ line.text | html.escape }}</a></li>{{ end }}</ul></body></html>");
        Parallel.ForEach(Directory.EnumerateFiles(published, "*", SearchOption.AllDirectories), path =>
        {
            var bytes = File.ReadAllBytes(path);
            if (path.EndsWith(".html", StringComparison.Ordinal))
            {
                Fill(template, bytes.AsSpan().Count("<a "u8));
            }

            var target = Path.Combine(to, Path.GetRelativePath(published, path));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.WriteAllBytes(target, bytes);
        });
    }

    private static void Fill(Template template, int links)
    {
        var lines = Enumerable.Range(0, links).Select(i => new ScriptObject { { "address", "../part/head.html" }, { "text", "Boring the head" } }).ToList();
        var context = new TemplateContext { LoopLimit = 0 };
        context.PushGlobal(new ScriptObject { { "title", "An evening" }, { "lines", lines } });
        template.Render(context);
    }
}
