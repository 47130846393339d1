using Journal.Core.Model;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>An account taken apart: text, words, names, quantities, clauses.</summary>
internal sealed class Account
{
    private static readonly List<CueHit> NoCues = [];
    private Quantity?[] quantityOf = [];
    private List<CueHit>?[] cuesAt = [];
    private OperationHit?[] operationAt = [];
    private bool[] endsOperation = [];

    private Account(string text, MakerJournal journal, Build build)
    {
        Text = text;
        Journal = journal;
        Build = build;
        Names = new NameIndex(build, journal.Tools);
        Tokens = Tokenizer.Tokens(text);
    }

    public string Text { get; }

    public MakerJournal Journal { get; }

    public Build Build { get; }

    public NameIndex Names { get; }

    public List<Token> Tokens { get; }

    /// <summary>The name that a token belongs to.</summary>
    public NameMention?[] NameOf { get; private set; } = [];

    public List<Quantity> Quantities { get; private set; } = [];

    public List<Clause> Clauses { get; private set; } = [];

    public LengthUnit Drawing => Build.Units;

    public static Account Of(string text, MakerJournal journal, Build build)
    {
        var account = new Account(text, journal, build);
        Spelling.Mend(account.Tokens, account.Names);
        account.NameOf = NameReader.Read(account.Tokens, account.Names);
        var grammar = new QuantityGrammar(account.Tokens, build.Units, Locale.HalfHourOf(journal.TimeZone));
        account.Quantities = QuantityReader.Read(grammar, at => account.NameOf[at] is not null);
        account.quantityOf = new Quantity?[account.Tokens.Count];
        foreach (var quantity in account.Quantities)
        {
            Array.Fill(account.quantityOf, quantity, quantity.First, quantity.Next - quantity.First);
        }

        account.FindCues();
        account.FindOperations();
        account.Clauses = ClauseSplitter.Split(account);
        ImpliedReader.Read(account);
        Frames.Settle(account);
        return account;
    }

    /// <summary>Every word for an operation, in order.</summary>
    public List<OperationHit> Operations { get; private set; } = [];

    /// <summary>The hints that begin at a token.</summary>
    public List<CueHit> CuesAt(int at) => at >= 0 && at < Tokens.Count ? cuesAt[at] ?? NoCues : NoCues;

    public bool HasCueAt(int at, Cue cue)
    {
        foreach (var hit in CuesAt(at))
        {
            if (hit.Cue == cue)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a token stands inside a quantity, or ends one.</summary>
    public bool IsInQuantity(int at) => quantityOf[at] is { } quantity && quantity.First < at;

    /// <summary>The quantity that a token belongs to.</summary>
    public Quantity? QuantityOver(int at) => at >= 0 && at < Tokens.Count ? quantityOf[at] : null;

    /// <summary>The quantity that begins at a token.</summary>
    public Quantity? QuantityAt(int at) => at >= 0 && at < Tokens.Count && quantityOf[at] is { } quantity && quantity.First == at ? quantity : null;

    /// <summary>The word for an operation that begins at a token.</summary>
    public OperationHit? OperationBeginning(int at) => at >= 0 && at < Tokens.Count ? operationAt[at] : null;

    /// <summary>Whether a word for an operation ends right before a token.</summary>
    public bool OperationEnding(int at) => at > 0 && endsOperation[at - 1];

    private void FindCues()
    {
        cuesAt = new List<CueHit>?[Tokens.Count];
        for (var at = 0; at < Tokens.Count; at++)
        {
            foreach (var (cue, length) in Lexicon.Shared.Cues.At(Tokens, at))
            {
                var isInName = NameOf[at] is { } name && name.First <= at && at + length <= name.Next && cue is not (Cue.Fixture or Cue.Jig or Cue.Tool or Cue.Held or Cue.Gauge or Cue.Gauged);
                isInName |= cue == Cue.Unreal && Word(at) == "i'd" && Word(at + 1) is ("call" or "say");
                var known = cuesAt[at];
                if (!isInName && (known is null || !known.Exists(hit => hit.Cue == cue)))
                {
                    (cuesAt[at] ??= []).Add(new(cue, at, at + length));
                }
            }
        }
    }

    private void FindOperations()
    {
        operationAt = new OperationHit?[Tokens.Count];
        endsOperation = new bool[Tokens.Count];
        Operations = OperationReader.Read(this);
        foreach (var operation in Operations)
        {
            operationAt[operation.First] = operation;
            endsOperation[operation.Next - 1] = true;
        }
    }

    /// <summary>Whether the maker said “um” or the like before a token: such words are no tokens, but they part what is said.</summary>
    public bool HasPauseBefore(int at) => at > 0 && at < Tokens.Count && Text.AsSpan(Tokens[at - 1].End, Math.Max(0, Tokens[at].Start - Tokens[at - 1].End)).IndexOfAnyInRange('a', 'z') >= 0;

    /// <summary>The clause that a token stands in, by its index.</summary>
    public int ClauseAt(int token)
    {
        var (low, high) = (0, Clauses.Count - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = Clauses[middle].First <= token ? (middle, high) : (low, middle - 1);
        }

        return low;
    }

    /// <summary>The clauses right before and behind one, in its sentence.</summary>
    public IEnumerable<Clause> Neighbours(Clause clause)
    {
        foreach (var at in new[] { clause.Index - 1, clause.Index + 1 })
        {
            if (at >= 0 && at < Clauses.Count && Clauses[at].Sentence == clause.Sentence)
            {
                yield return Clauses[at];
            }
        }
    }

    /// <summary>The word at a token, as meant; empty beyond the end.</summary>
    public string Word(int at) => at >= 0 && at < Tokens.Count ? Tokens[at].Meant : "";

    /// <summary>The piece of the text from a token up to another.</summary>
    public Span SpanOf(int first, int next) => new(Tokens[first].Start, Tokens[Math.Max(first, next - 1)].End);

    /// <summary>The maker's own words of a piece.</summary>
    public string TextOf(int first, int next)
    {
        var span = SpanOf(first, next);
        return Text[span.Start..span.End];
    }
}
