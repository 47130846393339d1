using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Charts;
using Journal.Site.Html;

namespace Journal.Site.Pages;

/// <summary>A hole and a shaft that must fit each other, as required and as built.</summary>
/// <param name="Hole">The part with the hole, and its feature.</param>
/// <param name="Shaft">The part with the shaft, and its feature.</param>
/// <param name="Least">The least clearance required; null where nothing tells.</param>
/// <param name="Greatest">The greatest clearance required; null where nothing tells.</param>
/// <param name="AsBuilt">The clearance as built; null until both are measured.</param>
/// <param name="Fit">The kind of fit required, in a word; empty where nothing tells.</param>
/// <param name="BuiltAs">Whether there is room as built, in a word; empty until both are measured.</param>
/// <param name="Within">Whether it is as required: <c>in</c>, <c>out</c>, or empty where nothing tells.</param>
/// <param name="Gauge">Where it lies between least and greatest.</param>
public sealed record MateRowView(
    LinkView Hole, LinkView Shaft, SizeView? Least, SizeView? Greatest, SizeView? AsBuilt, string Fit, string BuiltAs, string Within, SafeHtml Gauge);

/// <summary>The mates of a build as its page shows them.</summary>
internal static class MateRows
{
    /// <summary>A row for each mate of a build, in the order of build.yaml.</summary>
    public static IReadOnlyList<MateRowView> Of(SiteFigures figures, Build build) => [.. figures.Mates[build.Id].Select(mate => Row(figures, mate))];

    private static MateRowView Row(SiteFigures figures, MateFigure mate) => new(
        Feature(figures, mate.Build, mate.Mate.Hole),
        Feature(figures, mate.Build, mate.Mate.Shaft),
        mate.Least is { } least ? LengthFormat.Signed(least) : null,
        mate.Greatest is { } greatest ? LengthFormat.Signed(greatest) : null,
        mate.AsBuilt is { } built ? LengthFormat.Signed(built) : null,
        mate.Required switch { FitKind.Clearance => "clearance", FitKind.Transition => "transition", FitKind.Interference => "interference", _ => "" },
        mate.AsBuilt?.Value switch { null => "", > 0 => "clearance", < 0 => "interference", _ => "size for size" },
        mate.Within switch { true => "in", false => "out", null => "" },
        mate.AsBuilt is { } actual ? LimitsGauge.Draw(mate.Least?.Value, null, mate.Greatest?.Value, actual.Value) : SafeHtml.Empty);

    private static LinkView Feature(SiteFigures figures, Id<Build> build, Feature feature)
    {
        var link = figures.Link(new PartRef(build, feature.Part));
        return link with { Text = $"{link.Text}, {feature.Name}" };
    }
}
