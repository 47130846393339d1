using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Names;

/// <summary>Finds the journal's names in an account from left to right, the longest at each place.</summary>
internal static class NameReader
{
    /// <summary>For each token the name that it belongs to.</summary>
    public static NameMention?[] Read(IReadOnlyList<Token> tokens, NameIndex index)
    {
        var names = new NameMention?[tokens.Count];
        for (var at = 0; at < tokens.Count; at++)
        {
            if (tokens[at].Kind is TokenKind.Mark or TokenKind.Break || index.At(tokens, at) is not { } name || IsVerb(tokens, name))
            {
                continue;
            }

            if (IsOfSomethingElse(tokens, at - 1, name) || (name.IsPart && IsOfSomethingElse(tokens, at, name)))
            {
                at = name.Next - 1;
                continue;
            }

            for (var i = name.First; i < name.Next; i++)
            {
                names[i] = name;
            }

            at = name.Next - 1;
        }

        return names;
    }

    // "mill table", "cross slide": the phrase reaches beyond the name.
    private static bool IsOfSomethingElse(IReadOnlyList<Token> tokens, int at, NameMention name) =>
        at >= 0 && Lexicon.Shared.NotNames.TryLongest(tokens, at, out _, out var length) && at + length >= name.Next && length > name.Next - name.First;

    // A name of one word may be a verb here: "we drill it", "I file the edge", "to mill the slot", "clamp it".
    private static bool IsVerb(IReadOnlyList<Token> tokens, NameMention name)
    {
        if (name.Next - name.First > 1)
        {
            return false;
        }

        var isVerb = Lexicon.Shared.Operations.TryLongest(tokens, name.First, out var word, out _) && word.Form is VerbForm.Plain or VerbForm.Third or VerbForm.Past or VerbForm.Going;
        var before = name.First > 0 ? tokens[name.First - 1].Meant : "";
        var after = name.Next < tokens.Count ? tokens[name.Next].Meant : "";
        var isLed = before is "the" or "a" or "an" or "my" or "this" or "that" or "with" or "his" or "her" or "on" or "in" or "by" or "new" or "old" or "each" or "both" or "for" or "of";
        // "the spigot mics 0.998".
        if (name.IsPlural && !isLed && name.Next < tokens.Count && (tokens[name.Next].Kind == TokenKind.Number || after is "at" or "point" or "up" or "out"))
        {
            return true;
        }

        return !isLed && ((isVerb && after is "it" or "the" or "them" or "a" or "an" or "both" or "this" or "that" or "my" or "out" or "off") || before is "to" or "i" or "we" or "you" or "he" or "they" or "could" or "will" or "must" or "should" && isVerb);
    }
}
