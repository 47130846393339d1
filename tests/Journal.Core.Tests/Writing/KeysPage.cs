using System.Text;
using System.Text.Json.Nodes;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Tests.Writing;

/// <summary>The page that tells makers every key and every word, made from the schemas and the vocabulary.</summary>
internal static class KeysPage
{
    private static readonly (string Schema, string Heading, string Where)[] Files =
    [
        ("entry", "An entry", "The keys stand between two lines of `---`, with the text below. A date and one job are enough; the date can be in the file's name instead."),
        ("build", "A build", "In `build.yaml`, in the build's folder."),
        ("tools", "The tool crib", "In `tools.yaml`: a list."),
        ("plan", "A plan", "In `plans/<name>.yaml`."),
        ("journal", "The journal", "In `journal.yaml`."),
    ];

    /// <summary>The page as it should be.</summary>
    public static string Text(Func<string, string> schemaText)
    {
        var page = new StringBuilder(
            """
            # Every key and every word

            Generated from `shared/schemas` and `shared/vocabulary.yaml`; [how to generate it](../DEVELOPERS.md). An editor that supports JSON Schema can use the same schemas to check and complete while you type.

            Every key that takes a list also takes a single value. An id is lower-case words joined by hyphens. Times are `2h45`, `45m`, `2.75`, `2:45` or `19:10-21:55`. Keys in **bold** are required.

            """);
        foreach (var (schema, heading, where) in Files)
        {
            page.Append($"\n## {heading}\n\n{where}\n");
            var root = JsonNode.Parse(schemaText(schema))!.AsObject();
            if (root["properties"] is not null)
            {
                Keys(page, root);
            }

            foreach (var (_, definition) in root["$defs"]?.AsObject() ?? [])
            {
                page.Append($"\n### {definition!["title"]}\n");
                Keys(page, definition.AsObject());
            }
        }

        Vocabulary(page, VocabularyLoader.Shared);
        return page.ToString();
    }

    private static void Keys(StringBuilder page, JsonObject thing)
    {
        string[] required = [.. thing["required"]?.AsArray().Select(key => key!.GetValue<string>()) ?? []];
        page.Append("\n| key | |\n| --- | --- |\n");
        foreach (var (key, value) in thing["properties"]!.AsObject())
        {
            var choices = value!["enum"]?.AsArray().Select(word => $"`{word}`").ToList() ?? [];
            var said = value["description"]!.GetValue<string>() + (choices.Count == 0 ? "" : $" One of {string.Join(", ", choices)}.");
            page.Append(required.Contains(key) ? $"| **`{key}`** | {said} |\n" : $"| `{key}` | {said} |\n");
        }
    }

    private static void Vocabulary(StringBuilder page, Vocabulary vocabulary)
    {
        page.Append("\n## Words\n\nBritish and American spellings are both known. Add your own words in `journal.yaml`.\n");
        page.Append("\n### Operations, by the kind of time that they count as\n\n| kind | operations |\n| --- | --- |\n");
        foreach (var kind in vocabulary.Operations.Ids.GroupBy(id => vocabulary.Operations[id].Kind).OrderBy(kind => kind.Key))
        {
            page.Append($"| {kind.Key.ToWord()} | {List(kind)} |\n");
        }

        page.Append($"\n### Causes of mistakes\n\n{List(vocabulary.Causes.Ids)}\n");
        page.Append($"\n### Materials, with any grade after the word\n\n{List(vocabulary.Materials.Ids)}\n");
        page.Append($"\n### Forms of stock, with any size after the word\n\n{List(vocabulary.StockForms.Ids)}\n");
        page.Append($"\n### Kinds of tools\n\n{List(vocabulary.ToolKinds.Ids)}\n");
    }

    private static string List<T>(IEnumerable<Id<T>> ids) => string.Join(", ", ids.Select(id => $"`{id}`"));
}
