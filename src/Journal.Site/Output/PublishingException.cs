namespace Journal.Site.Output;

/// <summary>Publishing could not be finished; the old site stands as it was. The message says what to do.</summary>
public sealed class PublishingException : Exception
{
    /// <inheritdoc/>
    public PublishingException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public PublishingException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Two files of a site at one address.</summary>
    internal static PublishingException SameAddress(string address) =>
        new($"Two files want the address {address}. If one of your own template folder has that name, rename it.");

    /// <summary>A failure without words.</summary>
    public PublishingException()
    {
    }
}
