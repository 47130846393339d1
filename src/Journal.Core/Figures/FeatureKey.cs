using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A feature of a part, by which its readings and its mates find each other; small and capital letters are alike.</summary>
/// <param name="Part">The part's id; empty for the build as a whole.</param>
/// <param name="Name">The feature's name in small letters.</param>
internal readonly record struct FeatureKey(string Part, string Name)
{
    /// <summary>The key of a feature as a reading names it.</summary>
    public static FeatureKey Of(Id<Part>? part, string feature) =>
        new(part?.Value ?? "", feature.Trim().ToUpperInvariant());

    /// <summary>The key of a feature as a mate names it.</summary>
    public static FeatureKey Of(Feature feature) => Of(feature.Part, feature.Name);

    /// <summary>The key of a feature as a drawing names it: <c>quill.diameter</c>.</summary>
    public static FeatureKey Of(string partAndFeature)
    {
        var point = partAndFeature.IndexOf('.', StringComparison.Ordinal);
        return Of(new Id<Part>(partAndFeature[..point]), partAndFeature[(point + 1)..]);
    }
}
