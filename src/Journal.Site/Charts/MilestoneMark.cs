using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>A day worth remembering, numbered in the picture and told in the key under it.</summary>
/// <param name="Date">The day.</param>
/// <param name="Text">What happened.</param>
/// <param name="Address">The page that tells of it, from the root of the site; null for none.</param>
internal sealed record MilestoneMark(DateOnly Date, string Text, string? Address = null)
{
    /// <summary>The numbered list under a picture.</summary>
    /// <param name="marks">The milestones, in order.</param>
    /// <param name="root">What leads from the page to the root of the site, such as <c>../</c>.</param>
    public static SafeHtml Key(IReadOnlyList<MilestoneMark> marks, string root) => marks.Count == 0
        ? SafeHtml.Empty
        : new SafeHtml($"<ol class=\"key flags\">{string.Concat(marks.Select((mark, i) => mark.KeyLine(i + 1, root)))}</ol>");

    private string KeyLine(int number, string root)
    {
        var (date, text) = (ChartText.Date(Date), ChartText.Escape(Text));
        var linked = Address is null ? $"<span>{text}</span>" : $"<a href=\"{ChartText.Escape(root + Address)}\">{text}</a>";
        return $"<li><span class=\"balloon\" aria-hidden=\"true\">{ChartText.Count(number)}</span><time datetime=\"{date}\">{date}</time> {linked}</li>";
    }
}

/// <summary>Where balloons go so that none covers another, each moved by whole steps from where it would like to be.</summary>
internal static class FlagPlaces
{
    /// <summary>From the middle of one balloon to the next, in pixels, at the least.</summary>
    public const double Pitch = 22;

    private const double PitchAcross = 100 * Pitch / Lettering.NarrowestPicture;

    /// <summary>The heights of the balloons, in order.</summary>
    /// <param name="wanted">Places across in per cent and down in pixels.</param>
    /// <param name="move">How far a balloon in the way is moved at a time, in pixels; upwards below 0.</param>
    public static IReadOnlyList<double> Heights(IEnumerable<(double X, double Y)> wanted, double move)
    {
        var placed = new List<(double X, double Y)>();
        foreach (var (x, y) in wanted)
        {
            var free = y;
            while (placed.Exists(other => Math.Abs(other.X - x) < PitchAcross && Math.Abs(other.Y - free) < Pitch))
            {
                free += move;
            }

            placed.Add((x, free));
        }

        return [.. placed.Select(place => place.Y)];
    }
}
