namespace Journal.Core.Import;

/// <summary>Nothing can be taken in. The message says why and what to do.</summary>
public sealed class ImportException : Exception
{
    /// <inheritdoc/>
    public ImportException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public ImportException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>The date that stands in the way because it can be read in several ways; null where something else does.</summary>
    public AmbiguousDate? Open { get; init; }

    /// <summary>A failure without words.</summary>
    public ImportException()
    {
    }
}
