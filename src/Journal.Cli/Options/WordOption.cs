using System.CommandLine;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Options;

/// <summary>An option that takes a word of the vocabulary, by any of its spellings.</summary>
/// <typeparam name="T">What the word stands for.</typeparam>
/// <param name="Name">The option, such as <c>--for</c>.</param>
/// <param name="HelpName">What stands behind it.</param>
/// <param name="Description">One sentence on what it does.</param>
/// <param name="Plural">What such words are called.</param>
/// <param name="Words">The words, those that the journal adds among them.</param>
internal sealed record WordOption<T>(string Name, string HelpName, string Description, string Plural, Func<Vocabulary, WordList<T>> Words)
    where T : class
{
    /// <summary>The option, one to a command.</summary>
    public Option<string?> Create() => new(Name) { Description = Description, HelpName = HelpName };

    /// <summary>Why no word can be meant; null where one can, or none was asked for.</summary>
    public string? Objection(string? word, MakerJournal journal) => word is null || Words(journal.Vocabulary).TryFind(word, out _)
        ? null
        : $"`{Name}` does not know `{word}`. {Suggestion.For(word, Words(journal.Vocabulary).Spellings, Plural)}";

    /// <summary>Whether a thing is the one asked for.</summary>
    public bool Takes(string? word, Id<T>? thing, MakerJournal journal) =>
        word is null || (Words(journal.Vocabulary).TryFind(word, out var wanted) && thing == wanted);
}

/// <summary>Options that take a word of the vocabulary.</summary>
internal static class WordOptions
{
    /// <summary><c>--for turning</c>.</summary>
    public static WordOption<Operation> For { get; } = new("--for", "operation", "Only this operation.", "operations", vocabulary => vocabulary.Operations);

    /// <summary><c>--material cast-iron</c>.</summary>
    public static WordOption<MaterialFamily> Material { get; } = new("--material", "family", "Only this family of materials.", "materials", vocabulary => vocabulary.Materials);
}
