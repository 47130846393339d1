namespace Journal.Core.TakingIn;

/// <summary>Nothing can be taken in. The message says why and what to do.</summary>
public sealed class TakeInException : Exception
{
    /// <inheritdoc/>
    public TakeInException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public TakeInException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A failure without words.</summary>
    public TakeInException()
    {
    }
}
