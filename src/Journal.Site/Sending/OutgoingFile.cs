namespace Journal.Site.Sending;

/// <summary>A file on its way.</summary>
/// <param name="Address">Where it goes, from the root of the site.</param>
/// <param name="Contents">What is in it.</param>
internal sealed record OutgoingFile(string Address, byte[] Contents)
{
    /// <summary>What it is and how long it may be kept.</summary>
    public FileHeaders FileHeaders => FileHeaders.Of(Address);
}
