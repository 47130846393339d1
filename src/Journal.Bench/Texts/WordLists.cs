using System.Text.Json.Serialization;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Texts;

namespace Journal.Bench.Texts;

/// <summary>What the editor offers while someone types: pairs of a word and what it stands for.</summary>
/// <param name="Keys">Keys by the key that they stand under; those at the top under an empty name.</param>
/// <param name="Values">Words by the key that they may stand behind.</param>
/// <param name="Links">Targets by the kind of link.</param>
internal sealed record WordLists(
    IReadOnlyDictionary<string, IReadOnlyList<string[]>> Keys,
    IReadOnlyDictionary<string, IReadOnlyList<string[]>> Values,
    IReadOnlyDictionary<string, IReadOnlyList<string[]>> Links)
{
    /// <summary>What is offered in a file.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="file">The file.</param>
    public static WordLists Of(MakerJournal journal, JournalFile file)
    {
        var (book, titles) = (KeyBook.Of(file.Kind), new TitleBook(journal));
        var build = journal.Builds.FirstOrDefault(build => build.Id.Value == file.Build);
        IReadOnlyList<string[]> parts = [.. (build?.Parts ?? []).Select(part => new[] { part.Id.Value, part.Title })];
        IReadOnlyList<string[]> tools = [.. journal.Tools.Select(tool => new[] { tool.Id.Value, tool.Title })];
        IReadOnlyList<string[]> lessons = [.. journal.Entries.SelectMany(entry => entry.Lessons).Select(lesson => new[] { lesson.Id.Value, Short(lesson.Text) })];
        IReadOnlyList<string[]> mistakes = [.. journal.Entries.SelectMany(entry => entry.Mistakes).Where(mistake => mistake.Id is not null).Select(mistake => new[] { mistake.Id!.Value.Value, Short(mistake.What) })];
        IReadOnlyList<string[]> operations = [.. journal.Vocabulary.Operations.Ids.Select(id => new[] { id.Value, titles.Of(id) })];
        IReadOnlyList<string[]> open = [.. State.Of(journal).Builds.Where(state => state.Build == build?.Id).SelectMany(state => state.Snags).Select(one => new[] { one.Snag.Id.Value, Short(one.Snag.Text) })];
        IReadOnlyList<string[]> kinds = [.. journal.Vocabulary.ToolKinds.Ids.Select(id => new[] { id.Value, "" })];
        var values = book.Words.ToDictionary(pair => pair.Key, pair => (IReadOnlyList<string[]>)[.. pair.Value.Select(word => new[] { word, "" })], StringComparer.Ordinal);
        foreach (var (key, words) in new (string, IReadOnlyList<string[]>)[]
        {
            ("part", [.. parts, ["whole", "The build as a whole"]]),
            ("finished", parts),
            ("for", [.. parts, .. tools]),
            ("operation", operations),
            ("operations", operations),
            ("tools", tools),
            ("with", tools),
            ("machine", tools),
            ("cause", [.. journal.Vocabulary.Causes.Ids.Select(id => new[] { id.Value, titles.Of(id) })]),
            ("material", [.. journal.Vocabulary.Materials.Ids.Select(id => new[] { id.Value, "" })]),
            ("stock", [.. journal.Vocabulary.StockForms.Ids.Select(id => new[] { id.Value, "" })]),
            ("made.kind", kinds),
            ("heeded", lessons),
            ("repeats", lessons),
            ("mends", mistakes),
            ("because", mistakes),
            ("cleared", open),
            ("like", [.. journal.Builds.SelectMany(one => one.Parts, (one, part) => new[] { $"{one.Id}/{part.Id}", part.Title })]),
        })
        {
            values[key] = words;
        }

        if (file.Kind == JournalFileKind.Tools)
        {
            values["kind"] = kinds;
        }

        return new WordLists(
            book.Keys.ToDictionary(pair => pair.Key, pair => (IReadOnlyList<string[]>)[.. pair.Value.Select(key => new[] { key.Name, Short(key.Meaning) })], StringComparer.Ordinal),
            values,
            new Dictionary<string, IReadOnlyList<string[]>>(StringComparer.Ordinal)
            {
                ["part"] = parts,
                ["tool"] = tools,
                ["lesson"] = lessons,
                ["entry"] = [.. (build?.Entries ?? []).Reverse().Select(entry => new[] { entry.Id.Value, entry.Title })],
            });
    }

    private static string Short(string text) => text.Length <= 60 ? text : $"{text[..59].TrimEnd()}…";
}

/// <summary>The same as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(WordLists))]
internal sealed partial class WordListsJson : JsonSerializerContext;
