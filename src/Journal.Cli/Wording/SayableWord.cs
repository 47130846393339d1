using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Cli.Wording;

/// <summary>A word that entries and lists understand.</summary>
/// <param name="List">The list that it stands in, such as <c>operations</c>.</param>
/// <param name="Word">The word.</param>
/// <param name="Title">As people read it.</param>
/// <param name="Also">Other spellings of it.</param>
/// <param name="IsOwn">Whether the journal added it.</param>
internal sealed record SayableWord(string List, string Word, string Title, IReadOnlyList<string> Also, bool IsOwn)
{
    /// <summary>The lists, in the order of what is looked up most.</summary>
    public static IReadOnlyList<string> Lists { get; } =
        ["operations", "causes", "materials", "stock", "tool-kinds", "time-kinds", "outcomes", "verdicts", "got", "need", "statuses", "purchase-kinds"];

    /// <summary>What it means, in a few words; null for a word that the journal added.</summary>
    public string? Meaning => IsOwn ? null : Meanings.Of(List, Word);

    /// <summary>The word and its other spellings.</summary>
    public IEnumerable<string> Spellings => Also.Prepend(Word);

    /// <summary>Whether journal.yaml can add to a list.</summary>
    public static bool CanBeAdded(string list) => list is "operations" or "causes" or "materials" or "tool-kinds";

    /// <summary>All that can be said in a journal, list by list.</summary>
    public static IEnumerable<SayableWord> All(MakerJournal journal)
    {
        var words = journal.Vocabulary;
        return Of("operations", words.Operations, word => word.Title)
            .Concat(Of("causes", words.Causes, word => word.Title))
            .Concat(Of("materials", words.Materials, word => word.Title))
            .Concat(Of("stock", words.StockForms, word => word.Title))
            .Concat(Of("tool-kinds", words.ToolKinds, word => word.Title))
            .Concat(Of<TimeKind>("time-kinds"))
            .Concat(Of<Outcome>("outcomes"))
            .Concat(Of<Verdict>("verdicts"))
            .Concat(Of<Got>("got"))
            .Concat(Of<Need>("need"))
            .Concat(Of<BuildStatus>("statuses"))
            .Concat(Of<PurchaseKind>("purchase-kinds"));
    }

    private static IEnumerable<SayableWord> Of<T>(string list, WordList<T> words, Func<T, string> title)
        where T : class => words.Ids.Select(id => new SayableWord(list, id.Value, title(words[id]), words.Also(id), Meanings.Of(list, id.Value) is null));

    private static IEnumerable<SayableWord> Of<T>(string list)
        where T : struct, Enum => EnumNames.All<T>().Select(word => new SayableWord(list, word, Titles.FromId(word), [], IsOwn: false));
}
