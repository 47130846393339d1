namespace Journal.Site.Sending;

/// <summary>
/// git could not reach the repository, or the connection broke: trying again may help. git has one exit status (128) for this
/// and for all that no second try helps, such as a refused key, so its words decide, here and nowhere else.
/// </summary>
internal sealed class GitUnreachableException : SendingException
{
    // What git, curl and OpenSSH say in English when a name does not resolve or a connection fails (from memory).
    private static readonly string[] Sayings =
    [
        "could not resolve", "temporary failure in name resolution", "connection refused", "connection reset", "connection timed out",
        "connection closed", "failed to connect", "couldn't connect", "operation timed out", "network is unreachable", "no route to host",
        "the remote end hung up unexpectedly", "early eof",
    ];

    /// <inheritdoc/>
    public GitUnreachableException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public GitUnreachableException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A failure without words.</summary>
    public GitUnreachableException()
    {
    }

    /// <summary>Whether this is what git says when it cannot reach the repository.</summary>
    public static bool IsSaidBy(string complaint) => Array.Exists(Sayings, saying => complaint.Contains(saying, StringComparison.OrdinalIgnoreCase));
}
