using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>
/// Sentences into clauses: at signs, and where <see cref="ClauseOpenings"/> finds that one opens without a sign.
/// </summary>
internal static class ClauseSplitter
{
    /// <summary>Longer than any clause that is spoken: then it is cut, so that no rule looks further.</summary>
    private const int LongestClause = 40;

    public static List<Clause> Split(Account account)
    {
        var clauses = new List<Clause>();
        var (sentence, paragraph, start) = (0, 0, 0);
        var (openings, filling) = (new ClauseOpenings(account), new ClauseFilling(account));
        for (var at = 0; at < account.Tokens.Count; at++)
        {
            var end = EndsSentence(account, at);
            if (end != Ending.None || openings.OpensAt(start, at))
            {
                Close(account, clauses, filling, start, at, sentence, paragraph);
                start = end == Ending.None ? at : at + 1;
                if (end is Ending.Sentence or Ending.Question or Ending.Paragraph)
                {
                    if (end == Ending.Question && clauses.Count > 0)
                    {
                        MarkQuestion(clauses, sentence);
                    }

                    sentence++;
                    paragraph += end == Ending.Paragraph ? 1 : 0;
                }
            }
        }

        Close(account, clauses, filling, start, account.Tokens.Count, sentence, paragraph);
        return clauses;
    }

    private static void MarkQuestion(List<Clause> clauses, int sentence)
    {
        for (var i = clauses.Count - 1; i >= 0 && clauses[i].Sentence == sentence; i--)
        {
            clauses[i].IsQuestion = true;
        }
    }

    private enum Ending
    {
        None,
        Clause,
        Sentence,
        Question,
        Paragraph,
    }

    private static Ending EndsSentence(Account account, int at)
    {
        var token = account.Tokens[at];
        if (account.IsInQuantity(at))
        {
            return Ending.None;
        }

        if (token.Kind == TokenKind.Break)
        {
            return at + 1 < account.Tokens.Count && account.Tokens[at + 1].Kind == TokenKind.Break ? Ending.Paragraph : Ending.Sentence;
        }

        if (token.Kind != TokenKind.Mark)
        {
            return Ending.None;
        }

        return token.Text switch
        {
            "." when at + 1 < account.Tokens.Count && account.Tokens[at + 1] is { IsGlued: true, Kind: TokenKind.Word } && account.Tokens[at + 1].Text.Length == 1 => Ending.None,
            "." when IsClipped(account, at) => Ending.None,
            "." or "!" or ";" => Ending.Sentence,
            "?" => Ending.Question,
            "," or ":" or "(" or ")" or "-" or "…" or "+" or "&" when !JoinsList(account, at) => Ending.Clause,
            _ => Ending.None,
        };
    }

    // "Cyl. 1 bored", "approx. 40 min": the point belongs to the clipped word.
    private static bool IsClipped(Account account, int at) =>
        at > 0 && at + 1 < account.Tokens.Count && account.Tokens[at].IsGlued && account.Tokens[at - 1].Kind == TokenKind.Word
        && Lexicon.Shared.Short.ContainsKey(account.Tokens[at - 1].Text) && account.Tokens[at + 1] is { IsCapital: false, Kind: not TokenKind.Break };

    // "drilled, tapped and reamed", "the front, the rear": a comma between words of one kind; and a hyphen inside a code.
    private static bool JoinsList(Account account, int at)
    {
        var token = account.Tokens[at];
        if (token.Text == "-" && token.IsGlued && at + 1 < account.Tokens.Count && account.Tokens[at + 1].IsGlued)
        {
            return true;
        }

        if (token.Text is not ("," or "&" or "+") || at == 0 || at + 1 >= account.Tokens.Count)
        {
            return false;
        }

        return (account.OperationEnding(at) && account.OperationBeginning(at + 1) is not null) || JoinsParts(account, at);
    }

    // "base plate, flywheel + beam": parts in a row, and nothing told of the second alone.
    private static bool JoinsParts(Account account, int at)
    {
        var next = account.Word(at + 1) is "the" or "both" or "a" ? at + 2 : at + 1;
        if (account.NameOf[at - 1] is not { IsPart: true } || account.NameOf.ElementAtOrDefault(next) is not { IsPart: true } second)
        {
            return false;
        }

        var behind = second.Next;
        return behind >= account.Tokens.Count || account.Tokens[behind].Kind != TokenKind.Word || account.Word(behind) is "and" or "with" || account.QuantityAt(behind) is not null;
    }

    private static void Close(Account account, List<Clause> clauses, ClauseFilling filling, int start, int end, int sentence, int paragraph)
    {
        while (start < end && account.Tokens[start].Kind is TokenKind.Break)
        {
            start++;
        }

        for (; start < end; start += LongestClause)
        {
            var next = Math.Min(end, start + LongestClause);
            var clause = new Clause { First = start, Next = next, Sentence = sentence, Paragraph = paragraph };
            clause.Index = clauses.Count;
            filling.Fill(clause);
            clauses.Add(clause);
        }
    }
}
