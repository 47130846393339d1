using System.Globalization;
using System.Text;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>
/// A picture in the making. Places across are in per cent of the width and places down in pixels, so the same
/// drawing suits a phone and a desk while its lettering keeps its size. Colours come from the page's classes.
/// </summary>
/// <param name="id">The chart's id, the prefix of every id in the picture.</param>
internal sealed class Picture(string id)
{
    private readonly StringBuilder _body = new();
    private readonly SortedSet<Hatch> _hatches = [];
    private readonly string _id = ChartText.Escape(id);
    private bool _hasArrows;

    /// <summary>What stands where there is nothing to draw.</summary>
    public static SafeHtml Instead(string sentence) => new($"<p class=\"note\">{ChartText.Escape(sentence)}</p>");

    /// <summary>A line of lettering; the classes <c>middle</c> and <c>end</c> set what stands at its place.</summary>
    public void Text(string classes, double x, double y, string text, double dx = 0) =>
        Add($"<text{Class(classes)} x=\"{Across(x)}\"{(dx == 0 ? "" : $" dx=\"{Px(dx)}\"")} y=\"{Px(y)}\">{ChartText.Escape(text)}</text>");

    /// <summary>A line down the picture.</summary>
    public void Upright(string classes, double x, double top, double bottom) =>
        Add($"<line class=\"{classes}\" x1=\"{Across(x)}\" x2=\"{Across(x)}\" y1=\"{Px(top)}\" y2=\"{Px(bottom)}\"/>");

    /// <summary>A line across the picture.</summary>
    public void Level(string classes, double from, double to, double y) =>
        Add($"<line class=\"{classes}\" x1=\"{Across(from)}\" x2=\"{Across(to)}\" y1=\"{Px(y)}\" y2=\"{Px(y)}\"/>");

    /// <summary>A line across the picture with an arrow at each end, as a dimension is drawn (ISO 129-1).</summary>
    public void Dimension(double from, double to, double y)
    {
        _hasArrows = true;
        var arrow = $"url(#{_id}-arrow)";
        Add($"<line class=\"dimension\" x1=\"{Across(from)}\" x2=\"{Across(to)}\" y1=\"{Px(y)}\" y2=\"{Px(y)}\" marker-start=\"{arrow}\" marker-end=\"{arrow}\"/>");
    }

    /// <summary>A filled rectangle.</summary>
    public void Block(string classes, double x, double width, double top, double height) =>
        Add($"<rect class=\"{classes}\" x=\"{Across(x)}\" y=\"{Px(top)}\" width=\"{Across(width)}\" height=\"{Px(height)}\"/>");

    /// <summary>A section-lined rectangle.</summary>
    public void Hatched(string classes, Hatch hatch, double x, double width, double top, double height)
    {
        _hatches.Add(hatch);
        Add($"<rect{Class(classes)} fill=\"url(#{_id}-{Name(hatch)})\" x=\"{Across(x)}\" y=\"{Px(top)}\" width=\"{Across(width)}\" height=\"{Px(height)}\"/>");
    }

    /// <summary>A dot.</summary>
    public void Dot(string classes, double x, double y, double radius) =>
        Add($"<circle class=\"{classes}\" cx=\"{Across(x)}\" cy=\"{Px(y)}\" r=\"{Px(radius)}\"/>");

    /// <summary>A numbered balloon.</summary>
    public void Flag(int number, double x, double y)
    {
        Dot("flag", x, y, 9.5);
        Text("flag-text", x, y, ChartText.Count(number));
    }

    /// <summary>A small shape of its own, drawn in pixels around its place.</summary>
    public void Shape(string attributes, double x, double y, string path) =>
        Add($"<svg x=\"{Across(x)}\" y=\"{Px(y)}\" width=\"1\" height=\"1\" overflow=\"visible\"><path {attributes} d=\"{path}\"/></svg>");

    /// <summary>A lozenge: what did not go as the rest, or comes from the maker.</summary>
    public void Lozenge(double x, double y) => Shape("class=\"own\"", x, y, "M0-6.5 6.5 0 0 6.5-6.5 0z");

    /// <summary>A curve through points given by per cent across and share of the height, 0 to 1, upwards.</summary>
    public void Curve(IReadOnlyList<CurvePlace> places, double top, double height) =>
        Stretched(top, height, $"<path class=\"curve\" d=\"{Path(places)}\"/>");

    /// <summary>The same with what lies under it washed in.</summary>
    public void Hill(IReadOnlyList<CurvePlace> places, double top, double height)
    {
        var path = Path(places);
        var foot = $"V1000H{Px(10 * places[0].Across)}z";
        Stretched(top, height, $"<path class=\"area\" d=\"{path}{foot}\" opacity=\".55\"/><path class=\"curve\" d=\"{path}\"/>");
    }

    /// <summary>The picture, its title and description read out in its place (WAI-ARIA 1.2, <c>img</c>).</summary>
    public SafeHtml Finish(string title, string description, double height) => new(
        $"<svg role=\"img\" aria-labelledby=\"{_id}-title {_id}-desc\" width=\"100%\" height=\"{Px(height)}\">\n" +
        $"<title id=\"{_id}-title\">{ChartText.Escape(title)}</title><desc id=\"{_id}-desc\">{ChartText.Escape(description)}</desc>\n" +
        $"{Definitions()}{_body}</svg>");

    private void Stretched(double top, double height, string paths) => Add(
        $"<svg x=\"0\" y=\"{Px(top)}\" width=\"100%\" height=\"{Px(height)}\" viewBox=\"0 0 1000 1000\" preserveAspectRatio=\"none\">{paths}</svg>");

    private string Definitions()
    {
        var all = string.Concat(_hatches.Select(Pattern)) + (_hasArrows ? Arrow() : "");
        return all.Length == 0 ? "" : $"<defs>{all}</defs>\n";
    }

    private string Pattern(Hatch hatch)
    {
        var (size, turn, classes) = hatch switch
        {
            Hatch.Work => (5, 45, "hatch"),
            Hatch.Lost => (5, -45, "hatch lost"),
            _ => (8, 45, "hatch idle"),
        };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"<pattern id=\"{_id}-{Name(hatch)}\" width=\"{size}\" height=\"{size}\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate({turn})\"><line class=\"{classes}\" x1=\"0\" y1=\"0\" x2=\"0\" y2=\"{size}\"/></pattern>");
    }

    private string Arrow() =>
        $"<marker id=\"{_id}-arrow\" viewBox=\"0 0 12 6\" refX=\"12\" refY=\"3\" markerWidth=\"11\" markerHeight=\"6\" markerUnits=\"userSpaceOnUse\" orient=\"auto-start-reverse\"><path class=\"arrow\" d=\"M12 3 0 .8v4.4z\"/></marker>";

    private void Add(string element) => _body.Append(element).Append('\n');

    private static string Path(IReadOnlyList<CurvePlace> places) =>
        "M" + string.Join('L', places.Select(place => $"{Px(10 * place.Across)} {Px(1000 * (1 - place.Up))}"));

    private static string Name(Hatch hatch) => hatch switch
    {
        Hatch.Work => "work",
        Hatch.Lost => "lost",
        _ => "idle",
    };

    private static string Class(string classes) => classes.Length == 0 ? "" : $" class=\"{classes}\"";

    private static string Across(double perCent) => perCent == 0 ? "0" : ChartText.Number(perCent) + "%";

    private static string Px(double pixels) => ChartText.Number(pixels);
}

/// <summary>What section lining stands for.</summary>
internal enum Hatch
{
    /// <summary>Time well spent.</summary>
    Work,

    /// <summary>Time lost.</summary>
    Lost,

    /// <summary>Time in which nothing was done.</summary>
    Idle,
}

/// <summary>A place on a curve: per cent across, share of the height upwards.</summary>
internal readonly record struct CurvePlace(double Across, double Up);
