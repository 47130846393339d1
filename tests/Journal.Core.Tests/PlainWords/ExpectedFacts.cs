using System.Text.Json;

namespace Journal.Core.Tests.PlainWords;

/// <summary>One fact of an evening, comparable between what a reader expects and what the program proposes.</summary>
/// <param name="Kind">The kind of fact, such as <c>minutes</c>.</param>
/// <param name="Of">What it belongs to, such as a part and an operation; equal facts must share one of them. Empty: nothing.</param>
/// <param name="Value">Its value.</param>
/// <param name="IsFree">Whether the value is in the maker's own words, so that most words shared are enough.</param>
internal sealed record Fact(string Kind, IReadOnlyList<string> Of, string Value, bool IsFree = false);

/// <summary>An account with the facts that a careful reader takes from it.</summary>
internal sealed record ExpectedAccount(string File, string Style, string Build, DateOnly Date, string Said, IReadOnlyList<Fact> Facts, IReadOnlyList<string> Either)
{
    public static ExpectedAccount Load(string file)
    {
        using var json = JsonDocument.Parse(System.IO.File.ReadAllText(file));
        var root = json.RootElement;
        var either = root.TryGetProperty("either", out var list) ? list.EnumerateArray().Select(item => item.ToString()).ToList() : [];
        if (root.TryGetProperty("traps", out var traps))
        {
            either.AddRange(traps.EnumerateArray().Where(trap => trap.TryGetProperty("allows", out _)).Select(trap => trap.GetProperty("allows").ToString()));
        }

        return new(file, Text(root, "style"), Text(root, "build"), DateOnly.Parse(Text(root, "date"), System.Globalization.CultureInfo.InvariantCulture), Text(root, "text"), [.. FactsOf(root.GetProperty("expected"))], either);
    }

    /// <summary>The facts of a proposal in the JSON that <c>journal propose</c> writes: expectations have the same shape.</summary>
    public static IEnumerable<Fact> FactsOf(JsonElement root)
    {
        foreach (var job in Items(root, "jobs"))
        {
            foreach (var fact in JobFacts(job))
            {
                yield return fact;
            }
        }

        foreach (var (kind, value) in new[] { ("total", Text(root, "total")), ("next", Text(root, "next")) })
        {
            if (value.Length > 0)
            {
                yield return new(kind, [], value, kind == "next");
            }
        }

        foreach (var mistake in Items(root, "mistakes"))
        {
            yield return new("mistake", [], $"{Text(mistake, "what")}|{Quoted(mistake)}", true);
            foreach (var key in new[] { "cause", "lost", "outcome", "repeats" })
            {
                if (Text(mistake, key) is { Length: > 0 } value)
                {
                    yield return new($"mistake.{key}", [], value);
                }
            }
        }

        foreach (var (list, kind, key) in new[] { ("lessons", "lesson", "text"), ("snags", "snag", "text"), ("made", "made", "title"), ("newTools", "newTool", "title"), ("bought", "bought", "what") })
        {
            foreach (var item in Items(root, list))
            {
                yield return new(kind, [], $"{Text(item, key)}|{Quoted(item)}", true);
            }
        }

        foreach (var (list, kind, key) in new[] { ("bought", "bought.cost", "cost"), ("made", "made.kind", "kind"), ("trials", "trial", "on"), ("trials", "trial.minutes", "minutes") })
        {
            foreach (var item in Items(root, list))
            {
                if (Text(item, key) is { Length: > 0 } value)
                {
                    yield return new(kind, [], Plain(value));
                }
            }
        }

        foreach (var (list, kind) in new[] { ("heeded", "heeded"), ("mends", "mends"), ("finished", "finished"), ("cleared", "cleared"), ("newParts", "newPart") })
        {
            foreach (var id in Items(root, list))
            {
                yield return new(kind, [], id.ToString(), kind == "newPart");
            }
        }

        foreach (var reading in Items(root, "readings"))
        {
            yield return new("reading", [], $"{Text(reading, "part")} {Plain(Text(reading, "actual"))}");
            if (Text(reading, "required") is { Length: > 0 } required)
            {
                yield return new("reading.required", [], Plain(required));
            }
        }

        foreach (var setting in Items(root, "settings"))
        {
            foreach (var key in new[] { "rpm", "depth", "feed" })
            {
                if (Text(setting, key) is { Length: > 0 } value)
                {
                    yield return new($"setting.{key}", [], Plain(value));
                }
            }
        }
    }

    private static IEnumerable<Fact> JobFacts(JsonElement job)
    {
        var parts = Items(job, "parts").Select(part => part.ToString()).DefaultIfEmpty("whole").ToList();
        var operations = Items(job, "operations").Select(operation => operation.ToString()).DefaultIfEmpty("?").ToList();
        var of = parts.SelectMany(part => operations.Select(operation => $"{part} {operation}")).ToList();
        foreach (var pair in of)
        {
            yield return new("job", [], pair);
        }

        foreach (var key in new[] { "minutes", "setup", "held", "datum" })
        {
            if (Text(job, key) is { Length: > 0 } value)
            {
                yield return new($"job.{key}", of, value, key is "held" or "datum");
            }
        }

        foreach (var tool in Items(job, "tools"))
        {
            yield return new("job.tool", of, tool.ToString());
        }
    }

    // "0.750 in" and "0.75 in" are one size.
    private static string Plain(string value)
    {
        var words = value.Split(' ', 2);
        return decimal.TryParse(words[0], System.Globalization.CultureInfo.InvariantCulture, out var number)
            ? string.Join(' ', [number.ToString("0.##########", System.Globalization.CultureInfo.InvariantCulture), .. words[1..]])
            : value;
    }

    private static string Quoted(JsonElement item) => string.Join('|', Items(item, "words").Where(word => word.ValueKind == JsonValueKind.String).Select(word => word.GetString()));

    private static string Text(JsonElement element, string key) =>
        element.TryGetProperty(key, out var value) && value.ValueKind is not (JsonValueKind.Null or JsonValueKind.Array or JsonValueKind.Object) ? value.ToString() : "";

    private static JsonElement.ArrayEnumerator Items(JsonElement element, string key) =>
        element.TryGetProperty(key, out var list) && list.ValueKind == JsonValueKind.Array ? list.EnumerateArray() : default;
}
