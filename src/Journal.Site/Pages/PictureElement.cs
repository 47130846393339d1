using System.Globalization;
using Journal.Site.Photos;
using Journal.Site.Templates;

namespace Journal.Site.Pages;

/// <summary>The HTML of a picture: WebP where the reader's browser knows it, JPEG elsewhere, as large as the page needs.</summary>
internal static class PictureElement
{
    // What the style sheet makes of it: the whole width of a phone, about half of a desk.
    private const string Sizes = "(min-width: 60rem) 40rem, 100vw";

    public static Html Of(PublishedPhoto photo, string root, string alt, bool isLazy)
    {
        var middle = photo.Widths.FirstOrDefault(width => width >= 960, photo.Width);
        return new Html(string.Create(
            CultureInfo.InvariantCulture,
            $"<picture><source type=\"image/webp\" srcset=\"{Set(photo, root, PictureMaker.Modern)}\" sizes=\"{Sizes}\"><img src=\"{root}{photo.Address(middle, PictureMaker.Fallback)}\" srcset=\"{Set(photo, root, PictureMaker.Fallback)}\" sizes=\"{Sizes}\" width=\"{photo.Width}\" height=\"{photo.Height}\"{(isLazy ? " loading=\"lazy\"" : "")} decoding=\"async\" alt=\"{Html.Escape(alt)}\"></picture>"));
    }

    private static string Set(PublishedPhoto photo, string root, string extension) =>
        string.Join(", ", photo.Widths.Select(width => string.Create(CultureInfo.InvariantCulture, $"{root}{photo.Address(width, extension)} {width}w")));
}
