using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>A size as said.</summary>
/// <param name="Length">The size, in the build's unit where none was said.</param>
/// <param name="Next">The token behind it.</param>
/// <param name="IsSure">Whether it can hardly be anything else: it has a unit, or decimals.</param>
internal readonly record struct SizeSaid(Length Length, int Next, bool IsSure);

/// <summary>
/// Sizes where the unit goes without saying. On an inch drawing whole thousandths are spoken as pairs: “six twenty-seven” is 0.627 in,
/// “one eighty-six and a half” 0.1865 in (common practice).
/// </summary>
internal sealed class ReadingSizes(Account account)
{
    /// <param name="quantity">A length or a bare number.</param>
    /// <param name="last">The length said before, whose unit a bare number of like size shares: “four hundred and four thou against four hundred and six”.</param>
    public SizeSaid? Of(Quantity quantity, Quantity? last)
    {
        if (quantity.Kind == UnitKind.Length)
        {
            return new(quantity.Length, quantity.Next, true);
        }

        if (quantity.Kind != UnitKind.None || quantity.Value <= 0)
        {
            return null;
        }

        return Thousandths(quantity) ?? Alike(quantity, last) ?? Bare(quantity);
    }

    private SizeSaid? Alike(Quantity quantity, Quantity? last)
    {
        if (last?.Said is not { } said || said.On(account.Drawing) == 1 || quantity.First - last.Next > 14 || said.On(account.Drawing) == 0)
        {
            return null;
        }

        var share = quantity.Value / (last.Value / said.On(account.Drawing));
        return share is >= 0.5m and <= 2 ? new(new(quantity.Value * said.On(account.Drawing), last.Unit), quantity.Next, true) : null;
    }

    private SizeSaid? Bare(Quantity quantity)
    {
        var isThread = account.Word(quantity.First - 1) is "m" or "by" or "x" || account.Word(quantity.Next) is "by" or "x" or "/";
        return isThread ? null : new(new(quantity.Value, account.Drawing), quantity.Next, quantity.Value.Scale > 0);
    }

    private SizeSaid? Thousandths(Quantity quantity)
    {
        var isHundreds = account.Drawing == LengthUnit.Inch && account.Tokens[quantity.First].Kind == TokenKind.Word && quantity is { IsFraction: false, Value: >= 1 and < 10 } && quantity.Value == decimal.Truncate(quantity.Value) && quantity.Next == quantity.First + 1;
        if (!isHundreds || !NumberGrammar.TryNumber(account.Tokens, quantity.Next, out var rest) || rest.Value is < 10 or >= 100 || account.Tokens[quantity.Next].Kind != TokenKind.Word)
        {
            return null;
        }

        return new(new((quantity.Value * 100 + rest.Value) / 1000, LengthUnit.Inch), rest.Next, true);
    }
}
