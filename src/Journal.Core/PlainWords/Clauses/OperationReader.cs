using Journal.Core.Trade;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>Finds the words for operations; what looks like one and is not is left out, and so is what belongs to a name.</summary>
internal static class OperationReader
{
    /// <summary>How many words may stand between a verb and its particle: “clocked the rear standard in”.</summary>
    private const int LongestObject = 5;

    public static List<OperationHit> Read(Account account)
    {
        var hits = new List<OperationHit>();
        for (var at = 0; at < account.Tokens.Count; at++)
        {
            if (account.Tokens[at].Kind != TokenKind.Word || account.NameOf[at] is not null)
            {
                continue;
            }

            if (Lexicon.Shared.NotTheOperation.TryLongest(account.Tokens, at, out _, out var other))
            {
                if (!Lexicon.Shared.Operations.TryLongest(account.Tokens, at, out _, out var longer) || longer <= other)
                {
                    at += other - 1;
                    continue;
                }
            }

            if (At(account, at) is { } hit)
            {
                hits.Add(hit);
                at = hit.Next - 1;
            }
        }

        return hits;
    }

    private static OperationHit? At(Account account, int at)
    {
        var isWord = Lexicon.Shared.Operations.TryLongest(account.Tokens, at, out var word, out var length);
        if (isWord && length > 1)
        {
            return new(word.Operation, word.Form, word.IsNoun, at, at + length);
        }

        return WithObject(account, at) ?? Apart(account, at) ?? (isWord ? new(word.Operation, word.Form, word.IsNoun, at, at + length) : MakersOwn(account, at));
    }

    // "clocked it in", "parted the blank off".
    private static OperationHit? Apart(Account account, int at)
    {
        if (!Lexicon.Shared.Verbs.TryGetValue(account.Word(at), out var verbs))
        {
            return null;
        }

        var isObject = account.Word(at + 1) is "it" or "them" or "the" or "a" or "an" or "both" or "each" or "this" or "that" or "my" or "all" or "everything" || (at + 1 < account.Tokens.Count && account.NameOf[at + 1] is not null);
        for (var behind = at + 2; isObject && behind < account.Tokens.Count && behind <= at + 1 + LongestObject && account.Tokens[behind].Kind == TokenKind.Word; behind++)
        {
            foreach (var (particle, word) in verbs)
            {
                if (account.Word(behind) == particle && account.Word(behind + 1) is not ("the" or "a" or "my" or "an"))
                {
                    return new(word.Operation, word.Form, word.IsNoun, at, at + 1, behind);
                }
            }
        }

        return null;
    }

    // "cut that thread", "milled both keyways", "made two gaskets": the object says which operation it was.
    private static OperationHit? WithObject(Account account, int at)
    {
        if (!Lexicon.Shared.Objects.TryGetValue(account.Word(at), out var objects))
        {
            return null;
        }

        for (var behind = at + 1; behind < account.Tokens.Count && behind <= at + LongestObject && account.Tokens[behind].Kind != TokenKind.Break && account.Tokens[behind].Kind != TokenKind.Mark; behind++)
        {
            if (objects.TryGetValue(account.Word(behind), out var operation))
            {
                return new(operation.Operation, operation.Form, false, at, at + 1);
            }

            if (account.Word(behind) is "in" or "on" or "with" or "and" or "to" or "for" or "from" or "it" or "them")
            {
                return null;
            }
        }

        return null;
    }

    // An operation that the journal added: its id said as words, "engine turning".
    private static OperationHit? MakersOwn(Account account, int at)
    {
        var operations = account.Journal.Vocabulary.Operations;
        for (var words = 3; words >= 1; words--)
        {
            if (at + words <= account.Tokens.Count && account.Tokens[at + words - 1].Kind == TokenKind.Word
                && operations.TryFind(string.Join('-', Enumerable.Range(at, words).Select(account.Word)), out var id)
                && !VocabularyLoader.Shared.Operations.Has(id) && account.Word(at + words - 1).EndsWith("ing", StringComparison.Ordinal) && account.Word(at + words - 1).Length > 5)
            {
                return new(id, VerbForm.Going, true, at, at + words);
            }
        }

        return null;
    }
}
