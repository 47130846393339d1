using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads words of the vocabulary: operations, causes, materials, stock, kinds of tools.</summary>
internal sealed class VocabularyKeyReader(FileScope scope)
{
    /// <summary>An operation; an unknown word is reported and null.</summary>
    public Id<Operation>? Operation(TextNode node) => Find(node, node.Text.Trim(), scope.Vocabulary.Operations, ProblemTable.UnknownOperation, "operations");

    /// <summary>The operations of a list, each once; unknown words are reported and left out.</summary>
    public IReadOnlyList<Id<Operation>> Operations(Fields fields, string key) =>
        [.. fields.Items(key)
            .Where(node => fields.TextOf(node, key) is not null)
            .Select(node => Operation((TextNode)node))
            .OfType<Id<Operation>>()
            .Distinct()];

    /// <summary>The cause of a mistake; null where it is missing, or unknown and reported.</summary>
    public Id<Cause>? Cause(Fields fields) =>
        fields.Text("cause") is { } text ? Find(fields["cause"]!, text, scope.Vocabulary.Causes, ProblemTable.UnknownCause, "causes") : null;

    /// <summary>The kind of a tool; null where it is missing, or unknown and reported.</summary>
    public Id<ToolKind>? ToolKind(Fields fields) =>
        fields.Text("kind") is { } text ? Find(fields["kind"]!, text, scope.Vocabulary.ToolKinds, ProblemTable.UnknownToolKind, "kinds of tools") : null;

    /// <summary>A family and, behind it, a free grade: <c>mild-steel 070M20</c>.</summary>
    public Material? Material(Fields fields)
    {
        if (fields.Text("material") is not { } text)
        {
            return null;
        }

        var (word, rest) = Split(text);
        return Find(fields["material"]!, word, scope.Vocabulary.Materials, ProblemTable.UnknownMaterial, "materials") is { } family
            ? new Material(family, rest)
            : null;
    }

    /// <summary>A form and, behind it, a free size: <c>round 32 x 180</c>.</summary>
    public Stock? Stock(Fields fields)
    {
        if (fields.Text("stock") is not { } text)
        {
            return null;
        }

        var (word, rest) = Split(text);
        return Find(fields["stock"]!, word, scope.Vocabulary.StockForms, ProblemTable.UnknownStock, "forms") is { } form ? new Stock(form, rest) : null;
    }

    private Id<T>? Find<T>(Node node, string word, WordList<T> words, ProblemKind unknown, string whatTheyAre)
        where T : class
    {
        if (words.TryFind(word, out var id))
        {
            return id;
        }

        if (scope.IsVocabularyWhole)
        {
            scope.Log.AddUnknown(unknown, node.Place, word, words.Spellings, whatTheyAre);
        }

        return null;
    }

    private static (string Word, string? Detail) Split(string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        return space < 0 ? (text, null) : (text[..space].TrimEnd(','), text[(space + 1)..].Trim());
    }
}
