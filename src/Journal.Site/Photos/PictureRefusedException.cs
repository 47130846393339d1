namespace Journal.Site.Photos;

/// <summary>A picture was refused before or while it was decoded; the message says why, in half a sentence.</summary>
public sealed class PictureRefusedException : Exception
{
    /// <inheritdoc/>
    public PictureRefusedException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public PictureRefusedException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A refusal without words.</summary>
    public PictureRefusedException()
    {
    }
}
