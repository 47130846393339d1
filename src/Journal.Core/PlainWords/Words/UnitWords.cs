using Journal.Core.Model;
using System.Globalization;
using Journal.Core.Trade;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.PlainWords.Words;

/// <summary>What kind of thing a number counts.</summary>
internal enum UnitKind
{
    None,
    Time,
    Length,
    Speed,
    Money,
    SmallMoney,
    Other,
}

/// <summary>A unit said behind a number.</summary>
/// <param name="Kind">What it measures.</param>
/// <param name="Inch">Its worth on an inch drawing: minutes, or a length in <paramref name="InchUnit"/>.</param>
/// <param name="InchUnit">The unit of a length on an inch drawing.</param>
/// <param name="Metric">Its worth on a metric drawing.</param>
/// <param name="MetricUnit">The unit of a length on a metric drawing.</param>
internal sealed record UnitWord(UnitKind Kind, decimal Inch, LengthUnit InchUnit, decimal Metric, LengthUnit MetricUnit)
{
    /// <summary>Its worth on a drawing in some unit.</summary>
    public decimal On(LengthUnit drawing) => drawing == LengthUnit.Inch ? Inch : Metric;

    /// <summary>The unit of a length on a drawing in some unit.</summary>
    public LengthUnit UnitOn(LengthUnit drawing) => drawing == LengthUnit.Inch ? InchUnit : MetricUnit;
}

/// <summary>The words for units: ISO 80000-1 and NIST SP 811 for those of the standards, common practice for the shop's own.</summary>
internal sealed class UnitWords
{
    public UnitWords(YamlNode node)
    {
        foreach (var (_, unit) in node.Get("time").Pairs())
        {
            var minutes = unit.Get("minutes").Number()!.Value;
            Add(unit.Get("words"), new(UnitKind.Time, minutes, default, minutes, default));
        }

        foreach (var (_, unit) in node.Get("length").Pairs())
        {
            Add(unit.Get("words"), LengthOf(unit));
        }

        Add(node.Get("speed").Get("words"), Plain(UnitKind.Speed));
        Add(node.Get("money").Get("words"), Plain(UnitKind.Money));
        Add(node.Get("money").Get("small"), Plain(UnitKind.SmallMoney));
        Add(node.Get("other").Get("words"), Plain(UnitKind.Other));
    }

    public PhraseTable<UnitWord> Table { get; } = new();

    public IEnumerable<string> Words => Table.Words;

    private static UnitWord Plain(UnitKind kind) => new(kind, 1, default, 1, default);

    private static UnitWord LengthOf(YamlNode unit)
    {
        if (unit.Find("unit") is { } always)
        {
            var (factor, of) = (unit.Get("factor").Number()!.Value, always.Text() == "in" ? LengthUnit.Inch : LengthUnit.Millimetre);
            return new(UnitKind.Length, factor, of, factor, of);
        }

        var factors = unit.Get("factor");
        return new(UnitKind.Length, factors.Get("in").Number()!.Value, LengthUnit.Inch, factors.Get("mm").Number()!.Value, LengthUnit.Millimetre);
    }

    private void Add(YamlNode words, UnitWord unit)
    {
        foreach (var word in words.Items())
        {
            Table.Add(word.Text().ToLower(CultureInfo.InvariantCulture), unit);
        }
    }
}
