namespace Journal.Site.Photos;

/// <summary>How pictures are made. A change of any of it makes them anew.</summary>
internal sealed record PictureSettings(IReadOnlyList<int> Widths, int WebpQuality, int JpegQuality)
{
    /// <summary>For a phone, a phone held close or a small window, and a views.</summary>
    public static PictureSettings Usual { get; } = new([480, 960, 1600], 80, 82);

    /// <summary>The settings in a file's name; the first number is that of the method.</summary>
    public string Key => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"1-{string.Join('-', Widths)}-w{WebpQuality}-j{JpegQuality}");
}
