using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>A size as said.</summary>
/// <param name="Length">The size, in the build's unit where none was said.</param>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token behind it.</param>
/// <param name="IsSure">Whether it can hardly be anything else: it has a unit, or decimals.</param>
internal readonly record struct SizeSaid(Length Length, int First, int Next, bool IsSure)
{
    /// <summary>Whether a unit was said with it.</summary>
    public bool HasUnit { get; init; }

    /// <summary>Whether the point went without saying, so that it may be a number of something else.</summary>
    public bool IsShort { get; init; }
}

/// <summary>
/// Sizes where the unit, or the point, goes without saying. On an inch drawing whole thousandths are spoken as pairs, “six twenty-seven” for
/// 0.627 in, “one eighty-six and a half” for 0.1865 in, or figure by figure, “seven four nine seven” for 0.7497 in, “one five oh one two” for
/// 1.5012 in; on a metric one “twenty-five oh one” is 25.01 mm (common practice).
/// </summary>
internal sealed class ReadingSizes(Account account)
{
    /// <param name="quantity">A length or a bare number.</param>
    /// <param name="last">The length said before, whose unit a bare number of like size shares: “four hundred and four thou against four hundred and six”.</param>
    public SizeSaid? Of(Quantity quantity, Quantity? last) => Whole(quantity, last) is { } size ? Together(size) : OverAndUnder(quantity);

    private SizeSaid? Whole(Quantity quantity, Quantity? last)
    {
        if (quantity.IsDeviation)
        {
            return null;
        }

        if (quantity.Kind == UnitKind.Length)
        {
            return new(quantity.Length, quantity.First, quantity.Next, true) { HasUnit = true };
        }

        if (quantity.Kind != UnitKind.None || quantity.Value < 0)
        {
            return null;
        }

        return FigureByFigure(quantity) ?? Thousandths(quantity) ?? Hundredths(quantity) ?? (quantity.Value == 0 ? null : Alike(quantity, last) ?? Bare(quantity));
    }

    // "ten and two hundredths", "seven fifty minus three tenths".
    private SizeSaid Together(SizeSaid size)
    {
        var at = size.Next;
        var isJoined = account.Word(at) is "and" or "plus" or "minus" or "less";
        if (isJoined && account.QuantityAt(at + 1) is { Kind: UnitKind.Length, IsDeviation: false } part && IsPart(part, size))
        {
            return With(size, account.Word(at) is "minus" or "less" ? Less(part.Length) : part.Length, part.Next);
        }

        return size;
    }

    /// <summary>A measured size with the step said behind it: “an inch and an eighth thick, three thou over”.</summary>
    public SizeSaid WithStep(SizeSaid size)
    {
        for (var at = size.Next; at <= size.Next + 2; at++)
        {
            if (account.QuantityAt(at) is { IsDeviation: true } step)
            {
                return IsPart(step, size) ? With(size, IsLess(step) ? Less(step.Length) : step.Length, step.Next) : size;
            }

            if (account.Word(at) != "," && !account.HasCueAt(at, Cue.FeatureMeasured))
            {
                break;
            }
        }

        return size;
    }

    // "one hundredth over six": the step before the size.
    private SizeSaid? OverAndUnder(Quantity step)
    {
        if (!step.IsDeviation || account.QuantityAt(step.Next) is not { IsDeviation: false } quantity || Whole(quantity, null) is not { } size || !IsPart(step, size))
        {
            return null;
        }

        return With(size, IsLess(step) ? Less(step.Length) : step.Length, size.Next) with { First = step.First };
    }

    // A unit smaller than the size's own, and less than a twentieth of it.
    private bool IsPart(Quantity part, SizeSaid size) =>
        part.Said is { } said && said.On(account.Drawing) is > 0 and < 1 && part.Length.Unit == size.Length.Unit && part.Length.Value * 20 < size.Length.Value;

    private bool IsLess(Quantity step) => account.Word(step.Next - 1) is "under" or "below" or "shy" or "small" or "short" or "undersize" or "down" or "shallow";

    private static Length Less(Length length) => length with { Value = -length.Value };

    private static SizeSaid With(SizeSaid size, Length step, int next) =>
        size with { Length = size.Length with { Value = size.Length.Value + step.Value }, Next = next, IsSure = true };

    private SizeSaid? Alike(Quantity quantity, Quantity? last)
    {
        if (last?.Said is not { } said || said.On(account.Drawing) == 1 || quantity.First - last.Next > 14 || said.On(account.Drawing) == 0)
        {
            return null;
        }

        if (quantity is { IsFraction: false, Value.Scale: > 0 })
        {
            return null;
        }

        var share = quantity.Value / (last.Value / said.On(account.Drawing));
        return share is >= 0.5m and <= 2 ? new(new(quantity.Value * said.On(account.Drawing), last.Unit), quantity.First, quantity.Next, true) : null;
    }

    private SizeSaid? Bare(Quantity quantity)
    {
        var isThread = account.Word(quantity.First - 1) is "m" or "by" or "x" || account.Word(quantity.Next) is "by" or "x" or "/" or "ba";
        return isThread ? null : new(new(quantity.Value, account.Drawing), quantity.First, quantity.Next, !quantity.IsFraction && quantity.Value.Scale > 0);
    }

    private SizeSaid? Thousandths(Quantity quantity) =>
        quantity is { IsPair: true, Value: < 1000 } && account.Drawing == LengthUnit.Inch ? new(new(quantity.Value / 1000, LengthUnit.Inch), quantity.First, quantity.Next, true) { IsShort = true } : null;

    // "twenty-five oh one": the point goes without saying.
    private SizeSaid? Hundredths(Quantity quantity)
    {
        var isWhole = quantity is { IsFraction: false, Value: >= 1 and < 1000 } && quantity.Value == decimal.Truncate(quantity.Value) && IsSpoken(quantity.First);
        if (account.Drawing == LengthUnit.Inch || !isWhole || account.Word(quantity.Next) is not ("oh" or "o" or "zero") || Figure(quantity.Next + 1) is not (> 0 and { } digit) || Figure(quantity.Next + 2) is not null)
        {
            return null;
        }

        return new(new(quantity.Value + digit / 100m, account.Drawing), quantity.First, quantity.Next + 2, true) { IsShort = true };
    }

    // Three figures or four are thousandths or ten-thousandths; with five the first is whole inches.
    private SizeSaid? FigureByFigure(Quantity quantity)
    {
        if (account.Drawing != LengthUnit.Inch || Figure(quantity.First - 1) is not null || account.Word(quantity.First - 1) == "point")
        {
            return null;
        }

        const int Fewest = 3;
        const int Most = 5;
        var (value, next) = (0m, quantity.First);
        while (next - quantity.First <= Most && Figure(next) is { } digit)
        {
            value = value * 10 + digit;
            next++;
        }

        return (next - quantity.First) switch
        {
            Fewest => new(new(value / 1000m, LengthUnit.Inch), quantity.First, next, true) { IsShort = true },
            4 or Most => new(new(value / 10_000m, LengthUnit.Inch), quantity.First, next, true) { IsShort = true },
            _ => null,
        };
    }

    private int? Figure(int at) => !IsSpoken(at) ? null : account.Word(at) switch
    {
        "oh" or "o" or "zero" or "nought" => 0,
        "one" => 1,
        "two" => 2,
        "three" => 3,
        "four" => 4,
        "five" => 5,
        "six" => 6,
        "seven" => 7,
        "eight" => 8,
        "nine" => 9,
        _ => null,
    };

    private bool IsSpoken(int at) => at >= 0 && at < account.Tokens.Count && account.Tokens[at].Kind == TokenKind.Word;
}
