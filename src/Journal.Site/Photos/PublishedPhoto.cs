namespace Journal.Site.Photos;

/// <summary>A picture as it stands in the site.</summary>
/// <param name="Name">The beginning of its files' names: made from its contents, so that it is lasting and tells nothing.</param>
/// <param name="Width">Of the largest size, in pixels, upright.</param>
/// <param name="Height">Of the largest size, in pixels, upright.</param>
/// <param name="Ground">The colour that stands in while it loads, as <c>#rrggbb</c>.</param>
/// <param name="Widths">The widths it comes in, rising; the last is <paramref name="Width"/>.</param>
public sealed record PublishedPhoto(string Name, int Width, int Height, string Ground, IReadOnlyList<int> Widths)
{
    /// <summary>The address of a size from the root of the site.</summary>
    public string Address(int width, string extension) => $"photos/{Name}-{width.ToString(System.Globalization.CultureInfo.InvariantCulture)}.{extension}";

    /// <summary>The largest size, for those who want to see it alone.</summary>
    public string Largest => Address(Width, PictureMaker.Fallback);
}
