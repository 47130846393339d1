using System.Diagnostics.CodeAnalysis;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>What a feed is counted by.</summary>
public enum FeedPer
{
    /// <summary>By hand: no number.</summary>
    Hand,

    /// <summary>Per minute.</summary>
    Minute,

    /// <summary>Per turn of the spindle.</summary>
    Turn,

    /// <summary>Per tooth of the cutter.</summary>
    Tooth,
}

/// <summary>
/// How far the tool moves, as the maker gives it: <c>0.1 mm/rev</c>, <c>0.05 mm/tooth</c>, <c>120 mm/min</c>,
/// <c>4 thou/rev</c>, <c>2 ipm</c>, <c>hand</c>.
/// </summary>
/// <param name="Amount">How far; zero for <see cref="FeedPer.Hand"/>.</param>
/// <param name="Per">What it is counted by.</param>
public readonly record struct Feed(Length Amount, FeedPer Per)
{
    private static readonly (string Word, FeedPer Per)[] Words =
    [
        ("minute", FeedPer.Minute), ("min", FeedPer.Minute),
        ("revolution", FeedPer.Turn), ("turn", FeedPer.Turn), ("rev", FeedPer.Turn), ("r", FeedPer.Turn),
        ("tooth", FeedPer.Tooth), ("flute", FeedPer.Tooth), ("z", FeedPer.Tooth),
    ];

    /// <summary>The three short forms of inch drawings: inches per minute, per revolution, per tooth.</summary>
    private static readonly (string Word, FeedPer Per)[] InchWords =
    [
        ("ipm", FeedPer.Minute), ("ipr", FeedPer.Turn), ("ipt", FeedPer.Tooth),
    ];

    /// <summary>Reads a feed.</summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="defaultUnit">The unit of the drawing, for <c>0.1/rev</c>.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="fault">What is wrong where it cannot be read.</param>
    public static bool TryParse(string text, LengthUnit defaultUnit, out Feed feed, [NotNullWhen(false)] out Fault? fault)
    {
        feed = default;
        if (!LengthText.TryBegin(text, out var cursor, out fault))
        {
            return false;
        }

        if (cursor.TakeWord("by hand") || cursor.TakeWord("hand"))
        {
            feed = new(new(0, defaultUnit), FeedPer.Hand);
            return LengthText.TryEnd(cursor, out fault);
        }

        if (!LengthText.TryTake(cursor, out var measure, out fault)
            || !TryTakePer(cursor, ref measure, out var per, out fault)
            || !LengthText.TryEnd(cursor, out fault))
        {
            return false;
        }

        if (measure.Value == 0)
        {
            fault = new(FaultCode.NotPositive, "A feed must be more than zero.", "Write the feed used, or `hand`.", measure.Start);
            return false;
        }

        feed = new(new(measure.Value, measure.Unit ?? defaultUnit), per);
        return true;
    }

    /// <summary>The feed per turn of the spindle; null by hand, or where speed or teeth are missing.</summary>
    public Length? PerTurn(decimal? rpm, int? teeth) => Per switch
    {
        FeedPer.Turn => Amount,
        FeedPer.Tooth when teeth > 0 => Amount with { Value = Amount.Value * teeth.Value },
        FeedPer.Minute when rpm > 0 => Amount with { Value = Amount.Value / rpm.Value },
        _ => null,
    };

    /// <summary>The feed per minute; null by hand, or where speed or teeth are missing.</summary>
    public Length? PerMinute(decimal? rpm, int? teeth) => Per == FeedPer.Minute
        ? Amount
        : PerTurn(rpm, teeth) is { } turn && rpm > 0 ? turn with { Value = turn.Value * rpm.Value } : null;

    /// <summary>The feed per tooth; null by hand, or where speed or teeth are missing.</summary>
    public Length? PerTooth(decimal? rpm, int? teeth) => Per == FeedPer.Tooth
        ? Amount
        : PerTurn(rpm, teeth) is { } turn && teeth > 0 ? turn with { Value = turn.Value / teeth.Value } : null;

    private static bool TryTakePer(Cursor cursor, ref Measure measure, out FeedPer per, [NotNullWhen(false)] out Fault? fault)
    {
        fault = null;
        cursor.SkipBlanks();
        foreach (var (word, counted) in InchWords)
        {
            if (measure.Unit is null && cursor.TakeWord(word))
            {
                measure = measure with { Unit = LengthUnit.Inch };
                per = counted;
                return true;
            }
        }

        var says = cursor.Take("/") || cursor.TakeWord("per") || cursor.TakeWord("a");
        cursor.SkipBlanks();
        var found = Array.Find(Words, entry => cursor.TakeWord(entry.Word));
        per = found.Per;
        if (!says || found.Word is null)
        {
            fault = new(
                FaultCode.FeedPerWhat,
                "It does not say whether it is per minute, per turn or per tooth.",
                "Write `0.1 mm/rev`, `0.05 mm/tooth`, `120 mm/min` or `hand`.",
                cursor.Position);
            return false;
        }

        return true;
    }
}
