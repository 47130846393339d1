using System.Globalization;
using Journal.Site.Html;
using Journal.Site.Photos;

namespace Journal.Site.Pages;

/// <summary>The HTML of a picture: WebP where the reader's browser knows it, JPEG elsewhere, as large as the page needs.</summary>
internal static class PictureElement
{
    /// <summary>How wide the style sheet makes a picture in a text: the whole width of a phone, half of a desk.</summary>
    public const string InText = "(min-width: 60rem) 42rem, 100vw";

    /// <summary>How wide it makes one of several side by side.</summary>
    public const string SideBySide = "(min-width: 40rem) 20rem, 100vw";

    /// <summary>The address of the size that every browser can show, from the root of the site.</summary>
    public static string AddressOf(PublishedPhoto photo) =>
        photo.Address(photo.Widths.FirstOrDefault(width => width >= 960, photo.Width), PictureMaker.Fallback);

    /// <summary>The element for a page.</summary>
    /// <param name="photo">The picture in its sizes.</param>
    /// <param name="root">The way up from the page to the root of the site.</param>
    /// <param name="alt">What it shows, for those who do not see it; escaped here.</param>
    /// <param name="isLazy">Whether it loads only when it comes near the view.</param>
    /// <param name="sizes">How wide it is on the page, as the <c>sizes</c> of HTML: <see cref="InText"/> or <see cref="SideBySide"/>.</param>
    public static SafeHtml Of(PublishedPhoto photo, string root, string alt, bool isLazy, string sizes)
    {
        return new SafeHtml(string.Create(
            CultureInfo.InvariantCulture,
            $"<picture><source type=\"image/webp\" srcset=\"{Set(photo, root, PictureMaker.Modern)}\" sizes=\"{sizes}\"><img src=\"{root}{AddressOf(photo)}\" srcset=\"{Set(photo, root, PictureMaker.Fallback)}\" sizes=\"{sizes}\" width=\"{photo.Width}\" height=\"{photo.Height}\"{(isLazy ? " loading=\"lazy\"" : "")} decoding=\"async\" alt=\"{SafeHtml.Escape(alt)}\"></picture>"));
    }

    private static string Set(PublishedPhoto photo, string root, string extension) =>
        string.Join(", ", photo.Widths.Select(width => string.Create(CultureInfo.InvariantCulture, $"{root}{photo.Address(width, extension)} {width}w")));
}
