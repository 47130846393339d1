using System.Globalization;
using Journal.Core.PlainWords.Clauses;

namespace Journal.Core.PlainWords.Facts;

/// <summary>What the drawing asks, in the journal's form: <c>0.750 in</c>, <c>30 H7</c>, <c>0.750 to 0.752 in</c>, <c>1.5010 ±0.0005 in</c>.</summary>
internal static class RequiredSizes
{
    /// <summary>Below this many millimetres a size is one of run-out, play and the like, not of a part.</summary>
    public const decimal Tiny = 0.3m;

    /// <returns>The text, and the token behind the last that it took.</returns>
    public static (string Text, int Next) Of(Account account, ReadingSizes sizes, SizeSaid size)
    {
        var (word, next) = (account.Word(size.Next), size.Next);
        if (IsFit(word) && next < account.Tokens.Count)
        {
            return ($"{Number(size.Length.Value)} {account.TextOf(next, next + 1)}", next + 1);
        }

        if (word == "h" && account.QuantityAt(next + 1) is { Value: >= 4 and <= 13 } grade)
        {
            return (string.Create(CultureInfo.InvariantCulture, $"{Number(size.Length.Value)} H{Number(grade.Value)}"), grade.Next);
        }

        if (word == "to" && SizeAt(next + 1) is { } upper && upper.Length.Unit == size.Length.Unit && upper.Length.Value > size.Length.Value && upper.Length.Value < size.Length.Value * 1.1m)
        {
            return ($"{size.Length.Value.ToString(CultureInfo.InvariantCulture)} to {upper.Length}", upper.Next);
        }

        if (PlusOrMinus(next) is { } behind && SizeAt(behind) is { } tolerance && tolerance.Length.Value < size.Length.Value / 10)
        {
            return (string.Create(CultureInfo.InvariantCulture, $"{size.Length.Value} ±{tolerance.Length}"), tolerance.Next);
        }

        if (account.Word(Comma(next)) == "plus" && account.Word(Comma(next) + 1) is "nothing" or "zero" or "nought" && account.Word(Comma(Comma(next) + 2)) == "minus" && SizeAt(Comma(Comma(next) + 2) + 1) is { } minus)
        {
            return (string.Create(CultureInfo.InvariantCulture, $"{size.Length.Value} +{new decimal(0, 0, 0, false, (byte)minus.Length.Decimals)}/-{minus.Length}"), minus.Next);
        }

        return (size.Length.ToString(), next);

        SizeSaid? SizeAt(int at) => account.QuantityAt(at) is { } quantity ? sizes.Of(quantity, null) : null;

        int Comma(int at) => account.Word(at) == "," ? at + 1 : at;

        int? PlusOrMinus(int at) => account.Word(at) == "plus" && account.Word(at + 1) == "or" && account.Word(at + 2) == "minus" ? at + 3 : account.Word(at) == "±" ? at + 1 : account.Word(at) == "+" && account.Word(at + 1) == "-" ? at + 2 : account.Word(at) == "+" && account.Word(at + 1) == "/" && account.Word(at + 2) == "-" ? at + 3 : null;
    }

    // "30 H7", "17 k5": a fit behind the size stays with it.
    private static bool IsFit(string word) => word.Length is 2 or 3 or 4 && char.IsAsciiLetter(word[0]) && char.IsAsciiDigit(word[^1]);

    private static string Number(decimal value) => value.ToString("0.############", CultureInfo.InvariantCulture);
}
