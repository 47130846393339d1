namespace Journal.Bench.Slates;

/// <summary>Something that a maker does on a page and that is kept, once.</summary>
/// <param name="Id">Its id, made in the browser: what is sent again under it is not done again.</param>
/// <param name="At">When it was done, which may be before it arrived.</param>
internal abstract record Deed(string Id, DateTimeOffset At)
{
    /// <summary>Does it.</summary>
    /// <param name="hands">The slate, in our hands.</param>
    /// <returns>What is said to the maker.</returns>
    /// <exception cref="RefusedException">It cannot be done; nothing is changed.</exception>
    public abstract string Do(Hands hands);
}

/// <summary>What came of a deed.</summary>
/// <param name="IsDone">Whether it is done, and on the disk.</param>
/// <param name="Said">What is said to the maker: what was kept, or why not and what to do.</param>
internal sealed record Outcome(bool IsDone, string Said);

/// <summary>A deed that cannot be done as it was said; the message says why, and what to do.</summary>
public sealed class RefusedException : Exception
{
    /// <inheritdoc/>
    public RefusedException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public RefusedException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <inheritdoc/>
    public RefusedException()
    {
    }
}
