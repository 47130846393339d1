using Journal.Core.Reading;
using Journal.Site;
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
        var reading = JournalReader.Read(journal, Today);
        if (reading.HasErrors)
        {
            throw new InvalidOperationException(reading.Problems[0].Message);
        }

        Publisher.Publish(new PublishOrder(journal, reading.Journal!, to, Today) { Cache = to + "-cache" });
    }

    /// <summary>
    /// The floor: the same input through the bare libraries on the same cores, and the same bytes written. The YAML of
    /// each entry is deserialised, its Markdown made HTML; one small template is filled for each page.
    /// </summary>
    public static void Floor(string journal, string published, string to)
    {
        var yaml = new DeserializerBuilder().Build();
        var pipeline = new MarkdownPipelineBuilder().UsePipeTables().Build();
        var template = Template.Parse("<!DOCTYPE html><html><head><title>{{ title }}</title></head><body><h1>{{ title }}</h1>{{ for key in keys }}<p>{{ key.key }}: {{ key.value }}</p>{{ end }}{{ body }}</body></html>");
        Parallel.ForEach(Directory.EnumerateFiles(journal, "*.md", SearchOption.AllDirectories), path =>
        {
            var text = File.ReadAllText(path);
            var end = text.IndexOf("\n---\n", 4, StringComparison.Ordinal);
            var keys = yaml.Deserialize<Dictionary<string, object>>(text[4..end]);
            var body = Markdown.ToHtml(text[(end + 5)..], pipeline);
            Fill(template, keys, body);
        });
        var empty = new Dictionary<string, object>();
        Parallel.ForEach(Directory.EnumerateFiles(published, "*", SearchOption.AllDirectories), path =>
        {
            var relative = Path.GetRelativePath(published, path);
            if (!relative.Contains("entry", StringComparison.Ordinal) && relative.EndsWith(".html", StringComparison.Ordinal))
            {
                Fill(template, empty, "");
            }

            var target = Path.Combine(to, relative);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.WriteAllBytes(target, File.ReadAllBytes(path));
        });
    }

    private static void Fill(Template template, Dictionary<string, object> keys, string body)
    {
        var globals = new ScriptObject { { "title", keys.GetValueOrDefault("title", "") }, { "keys", keys }, { "body", body } };
        var context = new TemplateContext();
        context.PushGlobal(globals);
        template.Render(context);
    }
}
