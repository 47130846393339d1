namespace Journal.Site.Photos;

/// <summary>A picture that someone sends: looked at before it is kept, its size and its end, by its contents and not by its name.</summary>
public static class IncomingPicture
{
    /// <summary>The ending that its name is to have, such as <c>.jpg</c>.</summary>
    /// <exception cref="PictureRefusedException">It is no picture that can be shown, too large, or cut off; the message says so in half a sentence.</exception>
    public static string EndingOf(byte[] bytes)
    {
        PictureReader.Measure(bytes);
        return bytes switch
        {
            [0xFF, 0xD8, ..] => ".jpg",
            [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => ".png",
            [(byte)'R', (byte)'I', (byte)'F', (byte)'F', ..] => ".webp",
            [(byte)'G', (byte)'I', (byte)'F', ..] => ".gif",
            [(byte)'B', (byte)'M', ..] => ".bmp",
            _ => ".tif",
        };
    }
}
