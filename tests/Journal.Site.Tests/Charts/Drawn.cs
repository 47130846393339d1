using System.Globalization;
using System.Xml.Linq;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

/// <summary>A chart read back as a browser would.</summary>
internal sealed class Drawn(ChartView view)
{
    public ChartView View { get; } = view;

    public IElement Svg { get; } = new HtmlParser().ParseDocument(view.Svg.Markup).QuerySelector("svg") ?? throw new InvalidOperationException("No picture.");

    public IElement Key { get; } = new HtmlParser().ParseDocument(view.Key.Markup).Body!;

    /// <summary>All lettering of the picture, in order.</summary>
    public IReadOnlyList<string> Texts => [.. Svg.QuerySelectorAll("text").Select(text => text.TextContent)];

    /// <summary>A number of every element that the selector finds, per cent as a number.</summary>
    public IReadOnlyList<double> Numbers(string selector, string attribute) =>
        [.. Svg.QuerySelectorAll(selector).Select(element => Number(element.GetAttribute(attribute)!))];

    public static double Number(string text) => double.Parse(text.TrimEnd('%'), CultureInfo.InvariantCulture);

    /// <summary>Reads the picture as XML, which forgives nothing.</summary>
    public XElement AsXml() => XElement.Parse(View.Svg.Markup);

    public static Minutes Hours(int hours, int minutes = 0) => new((60 * hours) + minutes);

    public static IReadOnlyList<Bar> Bars(int count) => [.. Enumerable.Range(1, count).Select(i => new Bar($"Part {i}", new Minutes(i), $"build/part/p-{i}.html"))];
}
