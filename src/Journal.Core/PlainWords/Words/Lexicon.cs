using System.Globalization;
using Journal.Core.Model;
using Journal.Core.PlainWords.Names;
using Journal.Core.Trade;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.PlainWords.Words;

/// <summary>The words of <c>shared/plain-words.yaml</c>, ready to be looked for. Read once.</summary>
internal sealed class Lexicon
{
    private static readonly HashSet<string> Particles = ["in", "out", "off", "on", "up", "down", "through", "together", "over"];
    private static readonly Lazy<Lexicon> Read = new(() => new(SharedData.Load("plain-words.yaml")));

    private readonly Lazy<SlipIndex> verbSlips;

    private Lexicon(YamlNode root)
    {
        verbSlips = new(() => new(Operations.Words.Concat(Verbs.Keys).Where(word => word.Length > SlipIndex.ShortestWord)));
        Units = new UnitWords(root.Get("units"));
        Numbers = new NumberWords(root.Get("numbers"));
        foreach (var (name, list) in root.Get("cues").Pairs())
        {
            var cue = Words.TryFindCue(name);
            foreach (var phrase in list.Get("words").Items())
            {
                Cues.Add(phrase.Text(), cue);
            }
        }

        AddAll(root.Get("not-the-operation"), "phrases", NotTheOperation, true);
        AddAll(root.Get("not-names"), "phrases", NotNames, true);
        var irregular = root.Get("irregular").Get("verbs").Pairs()
            .ToDictionary(pair => pair.Key, pair => pair.Value.Items().Select(form => form.Text()).ToArray(), StringComparer.Ordinal);
        foreach (var (id, words) in root.Get("operations").Pairs())
        {
            AddOperation(new(id), words, irregular);
        }

        Implied = new ImpliedWords(root.Get("implied"), irregular);
        foreach (var (_, group) in root.Get("by-object").Pairs())
        {
            AddObjects(group);
        }

        foreach (var (id, words) in root.Get("causes").Pairs())
        {
            AddAll(words, "words", Causes, new Id<Cause>(id));
        }

        foreach (var (id, words) in root.Get("outcomes").Pairs())
        {
            EnumNames.TryFind<Outcome>(id, out var outcome);
            AddAll(words, "words", Outcomes, outcome);
        }

        ToolNames = [.. root.Get("tool-names").Get("names").Pairs().Select(pair => (pair.Key, (IReadOnlyList<string>)[.. pair.Value.Items().Select(word => word.Text())]))];
        Short = root.Get("short").Get("words").Pairs().ToDictionary(pair => pair.Key, pair => pair.Value.Text(), StringComparer.Ordinal);
        Ordinary = [.. Short.Keys, .. root.Get("ordinary").Get("words").Items().Select(word => word.Text()), .. Cues.Words, .. Operations.Words, .. Verbs.Keys, .. NotTheOperation.Words, .. Causes.Words, .. Outcomes.Words, .. Units.Words, .. Numbers.Words, .. Implied.Words];
    }

    /// <summary>The words that the program carries.</summary>
    public static Lexicon Shared => Read.Value;

    public UnitWords Units { get; }

    public NumberWords Numbers { get; }

    public PhraseTable<Cue> Cues { get; } = new();

    /// <summary>Operations by nouns, fixed phrases and verbs of several words.</summary>
    public PhraseTable<OperationWord> Operations { get; } = new();

    /// <summary>Verbs with a particle that may stand behind the object, by their first word: “clocked it in”.</summary>
    public Dictionary<string, List<(string Particle, OperationWord Word)>> Verbs { get; } = new(StringComparer.Ordinal);

    /// <summary>Phrases that hold the name of something else: “mill table”.</summary>
    public PhraseTable<bool> NotNames { get; } = new();

    /// <summary>Verbs whose object says which operation it was: “cut the thread”.</summary>
    public Dictionary<string, Dictionary<string, OperationWord>> Objects { get; } = new(StringComparer.Ordinal);

    /// <summary>What makers say for tools, by words of the title.</summary>
    public IReadOnlyList<(string In, IReadOnlyList<string> Said)> ToolNames { get; }

    /// <summary>Verbs that say that metal went, not how.</summary>
    public ImpliedWords Implied { get; }

    public PhraseTable<bool> NotTheOperation { get; } = new();

    public PhraseTable<Id<Cause>> Causes { get; } = new();

    public PhraseTable<Outcome> Outcomes { get; } = new();

    /// <summary>Short and clipped spellings, and the words they stand for.</summary>
    public IReadOnlyDictionary<string, string> Short { get; }

    /// <summary>Slips of the verbs of the trade.</summary>
    public SlipIndex VerbSlips => verbSlips.Value;

    /// <summary>Every word that stands in a list: none of them is a slip of another.</summary>
    public HashSet<string> Ordinary { get; }

    private static void AddAll<T>(YamlNode node, string key, PhraseTable<T> table, T value)
    {
        foreach (var phrase in node.Find(key)?.Items() ?? [])
        {
            table.Add(phrase.Text(), value);
        }
    }

    private void AddOperation(Id<Operation> id, YamlNode words, Dictionary<string, string[]> irregular)
    {
        AddAll(words, "nouns", Operations, new OperationWord(id, VerbForm.Phrase, IsNoun: true));
        AddAll(words, "phrases", Operations, new OperationWord(id, VerbForm.Phrase, IsNoun: false));
        foreach (var verb in words.Find("verbs")?.Items() ?? [])
        {
            AddVerb(id, verb.Text().Split(' '), irregular);
        }
    }

    // The verb is the last word before the particles: "rough turn", "clock in", "centre drill".
    private void AddVerb(Id<Operation> id, string[] words, Dictionary<string, string[]> irregular)
    {
        var last = Array.FindLastIndex(words, word => !Particles.Contains(word));
        if (last == 0 && words.Length == 1 && !words[0].StartsWith("re", StringComparison.Ordinal))
        {
            AddVerb(id, ["re" + words[0]], irregular.TryGetValue(words[0], out var forms) ? new(irregular, StringComparer.Ordinal) { ["re" + words[0]] = [.. forms.Select(form => "re" + form)] } : irregular);
        }

        foreach (var (word, form) in VerbForms.Of(words[last], irregular))
        {
            var operation = new OperationWord(id, form, IsNoun: false);
            Operations.Add([.. words[..last], word, .. words[(last + 1)..]], operation);
            if (last == 0 && words.Length == 2)
            {
                if (!Verbs.TryGetValue(word, out var list))
                {
                    Verbs[word] = list = [];
                }

                list.Add((words[1], operation));
            }
        }
    }

    // Verbs that say little, each with the things that tell which operation it was.
    private void AddObjects(YamlNode group)
    {
        var things = group.Get("things").Pairs().SelectMany(pair => pair.Value.Items().Select(word => (Word: word.Text(), Operation: new Id<Operation>(pair.Key)))).ToList();
        foreach (var (form, words) in group.Get("verbs").Pairs())
        {
            EnumNames.TryFind<VerbForm>(form, out var verbForm);
            foreach (var verb in words.Items().Select(word => word.Text()))
            {
                var objects = Objects.TryGetValue(verb, out var known) ? known : Objects[verb] = new(StringComparer.Ordinal);
                foreach (var (word, operation) in things)
                {
                    objects[word] = new(operation, verbForm, false);
                }
            }
        }
    }

    private static class Words
    {
        public static Cue TryFindCue(string name) => EnumNames.TryFind<Cue>(name, out var cue)
            ? cue
            : throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"shared/plain-words.yaml has a list that nothing reads: {name}."));
    }
}

/// <summary>A word for an operation.</summary>
internal sealed record OperationWord(Id<Operation> Operation, VerbForm Form, bool IsNoun);
