using Journal.Core.Model;
using Journal.Core.Trade;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.PlainWords.Words;

/// <summary>Verbs that say that metal went, not how, and what tells it: the tool, the thing that it was done to, the machine.</summary>
internal sealed class ImpliedWords
{
    public ImpliedWords(YamlNode node, IReadOnlyDictionary<string, string[]> irregular)
    {
        foreach (var verb in node.Get("verbs").Items().Select(word => word.Text()))
        {
            foreach (var (word, form) in VerbForms.Of(verb, irregular))
            {
                Verbs.TryAdd(word, (verb, form));
            }
        }

        Fill(node.Get("tools"), Tools);
        Fill(node.Get("machines"), Machines);
        Fill(node.Get("things"), Things);
    }

    /// <summary>Each form, with its plain form.</summary>
    public Dictionary<string, (string Plain, VerbForm Form)> Verbs { get; } = new(StringComparer.Ordinal);

    public PhraseTable<Id<Operation>> Tools { get; } = new();

    public PhraseTable<Id<Operation>> Machines { get; } = new();

    public PhraseTable<Id<Operation>> Things { get; } = new();

    public IEnumerable<string> Words => Verbs.Keys.Concat(Tools.Words).Concat(Machines.Words).Concat(Things.Words);

    private static void Fill(YamlNode node, PhraseTable<Id<Operation>> table)
    {
        foreach (var (id, words) in node.Pairs())
        {
            foreach (var word in words.Items())
            {
                table.Add(word.Text(), new Id<Operation>(id));
            }
        }
    }
}
