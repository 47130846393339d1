using System.Globalization;
using System.Net;
using System.Text;
using Journal.Core.Figures.Ordering;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Files;

namespace Journal.Cli.Tables;

/// <summary>The material to order as a page to print and take along: one file that needs nothing else.</summary>
internal static class OrderPage
{
    private const string Mark = "<!-- Made by journal order; made anew by the next. -->";

    /// <summary>Why a file cannot be written; null where it can. One that this command did not make is left alone.</summary>
    public static string? WhyNot(string file) =>
        Directory.Exists(file) ? $"{file} is a folder. Name a file, such as order.html."
            : File.Exists(file) && !File.ReadAllText(file).Contains(Mark, StringComparison.Ordinal) ? $"{file} is there already, and is not a page of this command. Name another."
            : null;

    /// <summary>Writes the page, over an older one.</summary>
    public static void Write(string file, string text) => SafeFile.Replace(file, text);

    /// <summary>The page.</summary>
    public static string Text(MakerJournal journal, StockOrder order)
    {
        var titles = new TitleBook(journal);
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $$"""
            <!doctype html>
            {{Mark}}
            <html lang="en">
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width">
            <title>{{Html($"Material for {order.Title}")}}</title>
            <style>
            body { font: 12pt/1.4 serif; margin: 2em auto; max-width: 48em; padding: 0 1em; }
            table { border-collapse: collapse; width: 100%; }
            th, td { border-bottom: 1px solid #999; padding: .3em .6em .3em 0; text-align: left; vertical-align: top; }
            td.figure, th.figure { text-align: right; font-variant-numeric: tabular-nums; }
            td.tick { width: 1.2em; border: 1px solid #999; }
            </style>
            <h1>{{Html($"Material for {order.Title}")}}</h1>
            <p>{{Html(OrderList.Lead(order))}}</p>

            """);
        Bars(page, order, titles);
        Others(page, order, titles);
        return page.ToString();
    }

    private static void Bars(StringBuilder page, StockOrder order, TitleBook titles)
    {
        if (order.Bars.Count == 0)
        {
            return;
        }

        page.Append("<h2>Bars</h2>\n<table>\n<tr><th></th><th>Material</th><th>Section</th><th class=\"figure\">Bars</th><th class=\"figure\">In all</th><th>Cut</th></tr>\n");
        foreach (var bars in order.Bars)
        {
            var cuts = string.Join("<br>", bars.Bars.Select(bar => Html(string.Join(", ", bar.Select(cut => $"{cut.Part.Title} {OrderList.Length(cut.Length)}")))));
            page.Append(CultureInfo.InvariantCulture, $"<tr><td class=\"tick\"></td><td>{Html(OrderList.MaterialOf(bars.Material, titles))}</td><td>{Html($"{bars.Form} {bars.Section}")}</td><td class=\"figure\">{bars.Bars.Count}</td><td class=\"figure\">{Html(OrderList.Length(bars.Total))}</td><td>{cuts}</td></tr>\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"</table>\n<p>{Html($"In bars of {OrderList.Length(order.Terms.Bar)}, with {OrderList.Length(order.Terms.Allowance)} a piece for sawing and facing.")}</p>\n");
    }

    private static void Others(StringBuilder page, StockOrder order, TitleBook titles)
    {
        if (order.Others.Count == 0)
        {
            return;
        }

        page.Append("<h2>Not in bars</h2>\n<table>\n<tr><th></th><th>Material</th><th>Stock</th><th class=\"figure\">Pieces</th><th>For</th></tr>\n");
        foreach (var other in order.Others)
        {
            page.Append(CultureInfo.InvariantCulture, $"<tr><td class=\"tick\"></td><td>{Html(OrderList.MaterialOf(other.Part.Material, titles))}</td><td>{Html(OrderList.Written(other.Part.Stock!))}</td><td class=\"figure\">{other.Pieces}</td><td>{Html(other.Part.Title)}</td></tr>\n");
        }

        page.Append("</table>\n");
    }

    private static string Html(string text) => WebUtility.HtmlEncode(text);
}
