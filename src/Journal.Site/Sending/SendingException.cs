namespace Journal.Site.Sending;

/// <summary>Sending could not be finished; readers have whole pages all the same. The message says what to do.</summary>
public class SendingException : Exception
{
    /// <inheritdoc/>
    public SendingException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public SendingException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A failure without words.</summary>
    public SendingException()
    {
    }
}
