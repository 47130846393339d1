using Journal.Core.Parsing.Problems;
using Journal.Site.Photos;

namespace Journal.Site.Publishing;

/// <summary>Which journal to publish, and where.</summary>
/// <param name="Folder">The journal's folder.</param>
/// <param name="To">The site's folder.</param>
/// <param name="Today">The day that <c>publish: after</c> is compared with.</param>
/// <param name="Template">A maker's own copy of the templates; null for ours.</param>
public sealed record PublishOrder(string Folder, string To, DateOnly Today, string? Template = null)
{
    /// <summary>Where made pictures and records are kept; null for the user's cache folder.</summary>
    public string? Cache { get; init; }

    /// <summary>Is told how far the pictures are.</summary>
    public IProgress<PictureProgress>? Progress { get; init; }

    /// <summary>Is told what reading the journal had to say, before publishing begins.</summary>
    public Action<IReadOnlyList<Problem>>? Read { get; init; }

    /// <summary>The cache at <see cref="Cache"/>, or the user's own.</summary>
    internal UserCache Kept => Cache is { } folder ? new UserCache(folder) : UserCache.OfUser();
}
