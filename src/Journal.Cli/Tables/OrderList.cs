using System.Globalization;
using Journal.Cli.Output;
using Journal.Core.Figures.Ordering;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>The material to order, for people.</summary>
internal static class OrderList
{
    /// <summary>Bars with how to cut them, then what is not sold by length, then what nothing is ordered for.</summary>
    public static void Print(MakerJournal journal, StockOrder order, Printout print)
    {
        var titles = new TitleBook(journal);
        print.Say(Lead(order), Ink.Strong);
        if (order.Bars.Count > 0)
        {
            print.Gap();
            print.Table(
                [Column.Words("Material"), Column.Words("Section"), Column.Figures("Pieces"), Column.Figures("In all"), Column.Figures("Bars"), Column.Words("For")],
                order.Bars.Select(bars => new[]
                {
                    MaterialOf(bars.Material, titles), $"{bars.Form} {bars.Section}", Number(bars.Cuts.Count()), Length(bars.Total), Number(bars.Bars.Count),
                    string.Join(", ", bars.Cuts.Select(cut => cut.Part.Title).Distinct()),
                }));
            print.Say($"In bars of {Length(order.Terms.Bar)}, with {Length(order.Terms.Allowance)} a piece for sawing and facing.", Ink.Faint);
            PrintCuts(order, titles, print);
        }

        if (order.Others.Count > 0)
        {
            print.Heading("Not in bars");
            foreach (var other in order.Others)
            {
                print.Hang("– ", $"{MaterialOf(other.Part.Material, titles)}, {Written(other.Part.Stock!)}{(other.Pieces == 1 ? "" : $", {Count.Of(other.Pieces, "piece")}")}: {other.Part.Title}");
            }
        }

        PrintRest(order, print);
    }

    /// <summary>What it is made of, with its grade.</summary>
    public static string MaterialOf(Material? material, TitleBook titles) =>
        material is null ? "Material not said" : titles.Of(material.Family) + (material.Grade is null ? "" : $" {material.Grade}");

    /// <summary>A length for people.</summary>
    public static string Length(Length length) => (length with { Value = decimal.Round(length.Value, length.Unit == LengthUnit.Inch ? 3 : 1) / 1.000000000000m }).ToString();

    /// <summary>The stock as the part says it.</summary>
    public static string Written(Stock stock) => stock.Size is null ? stock.Form.Value : $"{stock.Form} {stock.Size}";

    /// <summary>How many bars, in a sentence.</summary>
    public static string Lead(StockOrder order)
    {
        var bars = order.Bars.Sum(one => one.Bars.Count);
        return order.Bars.Count + order.Others.Count == 0
            ? $"{order.Title}: nothing to order; every part is begun, finished or supplied, or says nothing of its stock."
            : $"{order.Title}: {Count.Of(bars, "bar")} of {Count.Of(order.Bars.Count, "section")}{(order.Others.Count == 0 ? "" : $", and {Count.Of(order.Others.Count, "other thing")}")}.";
    }

    private static void PrintCuts(StockOrder order, TitleBook titles, Printout print)
    {
        print.Heading("How to cut them");
        foreach (var bars in order.Bars)
        {
            foreach (var (i, bar) in bars.Bars.Index())
            {
                var left = BarOrder.LeftOf(bar, order.Terms);
                var cuts = string.Join(", ", bar.Select(cut => $"{cut.Part.Title} {Length(cut.Length)}"));
                var rest = left.Value < 0 ? "longer than a bar: ask for one of its own length" : $"{Length(left)} left";
                print.Hang("– ", $"{MaterialOf(bars.Material, titles)} {bars.Form} {bars.Section}{(bars.Bars.Count == 1 ? "" : $", bar {Number(i + 1)}")}: {cuts}; {rest}");
            }
        }
    }

    private static void PrintRest(StockOrder order, Printout print)
    {
        if (order.Supplied.Count > 0)
        {
            print.Gap();
            print.Say($"Supplied: {string.Join(", ", order.Supplied.Select(part => part.Title))}.", Ink.Faint);
        }

        if (order.Unsaid.Count > 0)
        {
            print.Gap();
            print.Say($"No stock said for: {string.Join(", ", order.Unsaid.Select(part => part.Title))}. Give the part a `stock`, such as `round 32 x 180`.", Ink.Odd);
        }
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
