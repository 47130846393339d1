namespace Journal.Site.Photos;

/// <summary>A picture in all its sizes, as it is kept in the cache and goes to the site.</summary>
/// <param name="Width">Of the largest size, in pixels, upright.</param>
/// <param name="Height">Of the largest size, in pixels, upright.</param>
/// <param name="Ground">The colour shown while it loads, as <c>#rrggbb</c>.</param>
/// <param name="Files">A WebP and a JPEG file of each size.</param>
internal sealed record MadePicture(int Width, int Height, string Ground, IReadOnlyList<MadeFile> Files)
{
    /// <summary>The widths in pixels that it comes in, smallest first.</summary>
    public IReadOnlyList<int> Widths => [.. Files.Select(file => file.Width).Distinct().Order()];
}

/// <summary>A file of a picture: one size in one format.</summary>
/// <param name="Width">In pixels.</param>
/// <param name="Extension"><c>webp</c> or <c>jpg</c>.</param>
/// <param name="Hash">SHA-256 of its contents, in hexadecimal.</param>
/// <param name="Length">How many bytes it has; 0 where an earlier version did not note it.</param>
internal sealed record MadeFile(int Width, string Extension, string Hash, long Length = 0)
{
    /// <summary>The name of the file in the picture's folder of the cache, such as <c>960.webp</c>.</summary>
    public string Name => $"{Width.ToString(System.Globalization.CultureInfo.InvariantCulture)}.{Extension}";
}
