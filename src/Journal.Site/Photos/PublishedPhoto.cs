namespace Journal.Site.Photos;

/// <summary>A picture as it stands in the site.</summary>
/// <param name="Address">From the root of the site.</param>
/// <param name="Width">In pixels, upright.</param>
/// <param name="Height">In pixels, upright.</param>
public sealed record PublishedPhoto(string Address, int Width, int Height);
