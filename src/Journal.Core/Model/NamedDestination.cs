namespace Journal.Core.Model;

/// <summary>A place where viewers find the site, as journal.yaml names it. It never holds a secret.</summary>
/// <param name="Name">The word by which the maker calls it.</param>
/// <param name="Folder">The folder in it that the site goes to, with <c>/</c>; empty for its top.</param>
public abstract record NamedDestination(Id<NamedDestination> Name, string Folder);

/// <summary>A folder of this machine or of a disk that it can reach.</summary>
/// <param name="Name">The word by which the maker calls it.</param>
/// <param name="Folder">The folder; one that is not whole begins at the journal.</param>
public sealed record FolderDestination(Id<NamedDestination> Name, string Folder) : NamedDestination(Name, Folder);

/// <summary>A server that takes files over SSH.</summary>
/// <param name="Name">The word by which the maker calls it.</param>
/// <param name="Host">Its name or number.</param>
/// <param name="Folder">The folder there.</param>
public sealed record SftpDestination(Id<NamedDestination> Name, string Host, string Folder) : NamedDestination(Name, Folder)
{
    /// <summary>The port, 22 unless said otherwise (RFC 4251's registered one).</summary>
    public int Port { get; init; } = 22;

    /// <summary>Who signs in; null for the name by which the maker is signed in here.</summary>
    public string? User { get; init; }

    /// <summary>The file of the private key; null for an agent's keys and the usual files.</summary>
    public string? Key { get; init; }

    /// <summary>The fingerprint of the server's key, <c>SHA256:…</c>; null where a file of known hosts tells it.</summary>
    public string? HostKey { get; init; }

    /// <summary>The file of known hosts; null for the usual ones.</summary>
    public string? KnownHosts { get; init; }
}

/// <summary>A branch of a git repository.</summary>
/// <param name="Name">The word by which the maker calls it.</param>
/// <param name="Repository">Its address, or a path; one that is not whole begins at the journal.</param>
/// <param name="Branch">The branch.</param>
/// <param name="Folder">The folder in the branch.</param>
public sealed record GitDestination(Id<NamedDestination> Name, string Repository, string Branch, string Folder) : NamedDestination(Name, Folder);

/// <summary>A bucket of object storage that speaks the S3 protocol.</summary>
/// <param name="Name">The word by which the maker calls it.</param>
/// <param name="Bucket">The bucket.</param>
/// <param name="Folder">What all names in it begin with.</param>
public sealed record S3Destination(Id<NamedDestination> Name, string Bucket, string Folder) : NamedDestination(Name, Folder)
{
    /// <summary>The region's code; null where the service has none.</summary>
    public string? Region { get; init; }

    /// <summary>The service's address; null for the one that the region has.</summary>
    public Uri? Service { get; init; }

    /// <summary>The section of the credential file; null for the usual one.</summary>
    public string? Profile { get; init; }
}
