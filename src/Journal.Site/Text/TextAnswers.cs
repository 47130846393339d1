using Journal.Core.Model;

namespace Journal.Site.Text;

/// <summary>Where the links and pictures of a text led when it was shown, so that it can be shown again without its journal.</summary>
/// <param name="Links">The address, relative to the page, of each link as written; null for plain text.</param>
/// <param name="Pictures">Each picture as written; null where there was none of that name.</param>
internal sealed record TextAnswers(IReadOnlyDictionary<string, string?> Links, IReadOnlyDictionary<string, TextPicture?> Pictures) : ITextTargets
{
    /// <summary>A text whose links find these answers.</summary>
    public static Body Asking(Body body) => body with { Links = [.. body.Links.Select(link => link with { Target = new LinkTarget(LinkKind.Entry, null, link.Written) })] };

    /// <inheritdoc/>
    public string? AddressOf(LinkTarget target) => Links.GetValueOrDefault(target.Id);

    /// <inheritdoc/>
    public TextPicture? PictureOf(string written) => Pictures.GetValueOrDefault(written);
}

/// <summary>Answers as another does and remembers which pictures were asked for.</summary>
internal sealed class RememberingTargets(ITextTargets targets) : ITextTargets
{
    private readonly Dictionary<string, TextPicture?> pictures = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public string? AddressOf(LinkTarget target) => targets.AddressOf(target);

    /// <inheritdoc/>
    public TextPicture? PictureOf(string written) => pictures[written] = targets.PictureOf(written);

    /// <summary>The answers, for the links of a text.</summary>
    public TextAnswers Answers(Body body) => new(
        body.Links.DistinctBy(link => link.Written).ToDictionary(link => link.Written, link => link.Target is { } target ? targets.AddressOf(target) : null, StringComparer.Ordinal),
        pictures);
}
