using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>
/// The small picture beside a reading: where it lies between its limits. The table's own cells say the same in
/// figures, so the picture is hidden from screen readers.
/// </summary>
internal static class LimitsGauge
{
    private const double ZoneFrom = 20;
    private const double ZoneTo = 80;
    private const double ReachOutside = 16;
    private const double DotRadius = 3.5;

    /// <summary>Draws the gauge; nothing where neither limit is known.</summary>
    /// <param name="least">The least size allowed; null where only a greatest is given.</param>
    /// <param name="nominal">The nominal size; null where none is given.</param>
    /// <param name="greatest">The greatest size allowed; null where only a least is given.</param>
    /// <param name="actual">The size measured; all four are in one unit.</param>
    public static SafeHtml Draw(decimal? least, decimal? nominal, decimal? greatest, decimal actual)
    {
        if (least is null && greatest is null)
        {
            return SafeHtml.Empty;
        }

        var scale = Scale.Of(least, nominal, greatest, actual);
        var from = least is null ? 0 : ZoneFrom;
        var to = greatest is null ? 100 : ZoneTo;
        var isOutside = actual < least || actual > greatest;
        var nominalAt = nominal is { } size ? scale.At(size) : -1;
        return new SafeHtml(
            "<svg class=\"limits\" viewBox=\"0 0 100 16\" aria-hidden=\"true\">" +
            $"<rect x=\"{Px(from)}\" y=\"3\" width=\"{Px(to - from)}\" height=\"10\"/>" +
            "<line x1=\"0\" x2=\"100\" y1=\"8\" y2=\"8\"/>" +
            (least is null ? "" : Tick(ZoneFrom, 2, 14)) +
            (greatest is null ? "" : Tick(ZoneTo, 2, 14)) +
            (nominalAt is >= 0 and <= 100 ? Tick(nominalAt, 5, 11) : "") +
            $"<circle{(isOutside ? " class=\"out\"" : "")} cx=\"{Px(PlaceOf(actual, least, greatest, scale))}\" cy=\"8\" r=\"{Px(DotRadius)}\"/></svg>");
    }

    /// <summary>A size outside the limits is drawn clearly outside, however small the difference, and never beyond the picture.</summary>
    private static double PlaceOf(decimal actual, decimal? least, decimal? greatest, Scale scale)
    {
        var x = scale.At(actual);
        return actual < least ? Math.Clamp(x, ZoneFrom - ReachOutside, ZoneFrom - DotRadius - 1)
            : actual > greatest ? Math.Clamp(x, ZoneTo + DotRadius + 1, ZoneTo + ReachOutside)
            : Math.Clamp(x, ZoneFrom - ReachOutside, ZoneTo + ReachOutside);
    }

    private static string Tick(double x, double top, double bottom) =>
        $"<line x1=\"{Px(x)}\" x2=\"{Px(x)}\" y1=\"{Px(top)}\" y2=\"{Px(bottom)}\"/>";

    private static string Px(double pixels) => ChartText.Number(pixels);

    /// <summary>
    /// Puts the limits at the ends of the zone. A single limit has no width to measure by: the farther of nominal and
    /// actual then lies as far inside, or outside, as there is room.
    /// </summary>
    private sealed record Scale(decimal Origin, double OriginAt, double PerUnit)
    {
        /// <summary>The scale for limits of which at least one is known.</summary>
        /// <exception cref="ArgumentException">Neither limit is known.</exception>
        public static Scale Of(decimal? least, decimal? nominal, decimal? greatest, decimal actual) => (least, greatest) switch
        {
            ({ } low, { } high) when high > low => new Scale(low, ZoneFrom, (ZoneTo - ZoneFrom) / (double)(high - low)),
            ({ } only, { }) => new Scale(only, (ZoneFrom + ZoneTo) / 2, 0),
            ({ } low, null) => new Scale(low, ZoneFrom, (ZoneTo - ZoneFrom) / Farthest(low, nominal, actual)),
            (null, { } high) => new Scale(high, ZoneTo, (ZoneTo - ZoneFrom) / Farthest(high, nominal, actual)),
            _ => throw new ArgumentException("A gauge needs a limit.", nameof(least)),
        };

        /// <summary>Where a size lies; in the picture from 0 to 100.</summary>
        public double At(decimal size) => OriginAt + ((double)(size - Origin) * PerUnit);

        private static double Farthest(decimal limit, decimal? nominal, decimal actual)
        {
            var farthest = Math.Max(Math.Abs(actual - limit), Math.Abs((nominal ?? limit) - limit));
            return farthest == 0 ? 1 : (double)farthest;
        }
    }
}
