using Journal.Core.Model;

namespace Journal.Site.Sending;

/// <summary>The transport of each kind of destination.</summary>
internal static class Transports
{
    /// <summary>The transport that an order needs.</summary>
    public static ITransport For(SendOrder order) => order.Destination switch
    {
        FolderDestination folder => new FolderTransport(Path.TrimEndingDirectorySeparator(AtJournal(folder.Folder, order)), order.Site, order.Journal, DraftOf(order)),
        GitDestination git => new GitTransport(git, WhereIs(git.Repository, order), order.Maker, order.Today),
        SftpDestination sftp => new SftpTransport(
            sftp with { Key = sftp.Key is { } key ? AtJournal(key, order) : null, KnownHosts = sftp.KnownHosts is { } hosts ? AtJournal(hosts, order) : null },
            Environment.GetEnvironmentVariable,
            DraftOf(order)),
        S3Destination s3 => new S3Transport(s3, Environment.GetEnvironmentVariable),
        _ => throw new ArgumentException("There is no transport for this kind of destination.", nameof(order)),
    };

    /// <summary>
    /// What stands behind the name of a file that is on its way. A part of it is of this journal alone, so that neither a
    /// file of the maker nor one that another journal is sending has that name.
    /// </summary>
    public static string DraftOf(SendOrder order) => $".{order.Id.ToString("N")[..8]}.being-sent";

    private static string AtJournal(string path, SendOrder order) => Path.GetFullPath(HomePath.Of(path), order.Journal);

    // A repository's address has a scheme, or host and path with a colon as scp writes them; all else is a path.
    private static string WhereIs(string repository, SendOrder order) =>
        repository.Contains("://", StringComparison.Ordinal) || (repository.IndexOf(':', StringComparison.Ordinal) > 1 && !Path.IsPathRooted(repository)) ? repository : AtJournal(repository, order);
}
