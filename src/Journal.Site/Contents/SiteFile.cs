namespace Journal.Site.Contents;

/// <summary>Takes the bytes of a file, which are good until it returns.</summary>
internal delegate void TakeBytes(ReadOnlySpan<byte> bytes);

/// <summary>A file of the site.</summary>
/// <param name="Address">Where it stands, from the root of the site.</param>
/// <param name="Make">Makes it, and hands it over in one piece.</param>
internal sealed record SiteFile(string Address, Action<TakeBytes> Make)
{
    /// <summary>Its bytes, made anew.</summary>
    public byte[] ToBytes()
    {
        byte[] all = [];
        Make(bytes => all = bytes.ToArray());
        return all;
    }
}
