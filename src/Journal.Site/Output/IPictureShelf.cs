namespace Journal.Site.Output;

/// <summary>Takes the files of pictures as they are made: a site that is written, or one that is looked at.</summary>
internal interface IPictureShelf
{
    /// <summary>Takes in a file that lies elsewhere.</summary>
    /// <param name="address">Where it stands, from the root of the site.</param>
    /// <param name="from">The file.</param>
    /// <param name="hash">SHA-256 of its contents, in hexadecimal.</param>
    void Take(string address, string from, string hash);

    /// <summary>Whether it has a file already, as it was made: then it need not be read again to be looked over.</summary>
    /// <param name="address">Where it stands, from the root of the site.</param>
    /// <param name="hash">SHA-256 of its contents, in hexadecimal.</param>
    /// <param name="length">Its bytes.</param>
    bool Has(string address, string hash, long length);

    /// <summary>Takes in a file by its contents.</summary>
    void Write(string address, ReadOnlySpan<byte> bytes);
}
