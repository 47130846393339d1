namespace Journal.Bench.Doors;

/// <summary>The bench cannot be served as it was asked for; the message says why, and what to do.</summary>
public sealed class BenchException : Exception
{
    /// <inheritdoc/>
    public BenchException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public BenchException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A failure without words.</summary>
    public BenchException()
    {
    }
}
