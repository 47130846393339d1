using System.Collections.Concurrent;
using System.Net.Sockets;
using System.Runtime.CompilerServices;
using Journal.Core.Model;
using Renci.SshNet;
using Renci.SshNet.Common;

namespace Journal.Site.Sending;

/// <summary>Brings files to a server over SFTP.</summary>
internal sealed class SftpTransport(SftpDestination destination, Func<string, string?> variable, string draft) : ITransport
{
    private static readonly string[] UsualKeys = ["id_ed25519", "id_ecdsa", "id_rsa"];
    private readonly HostKeyCheck check = new(destination);
    private readonly SemaphoreSlim door = new(1, 1);
    private readonly ConcurrentDictionary<string, bool> folders = new(StringComparer.Ordinal);
    private readonly List<SftpClient> lost = [];
    private SftpClient? client;

    /// <inheritdoc/>
    public int AtOnce => 6;

    /// <inheritdoc/>
    public bool ArrivesAtOnce => false;

    private string Top => destination.Folder.Length == 0 ? "." : destination.Folder;

    /// <inheritdoc/>
    public string? Draft => draft;

    /// <inheritdoc/>
    public async Task OpenAsync(CancellationToken cancellation) => await Client(cancellation);

    /// <inheritdoc/>
    public Task<byte[]?> ReadAsync(string address, CancellationToken cancellation) => Use<byte[]?>(
        async sftp =>
        {
            try
            {
                return await Task.Run(() => sftp.ReadAllBytes(PathOf(address)), cancellation);
            }
            catch (SftpPathNotFoundException)
            {
                return null;
            }
        },
        cancellation);

    /// <inheritdoc/>
    public async IAsyncEnumerable<(string Address, long Length)> ListAsync([EnumeratorCancellation] CancellationToken cancellation)
    {
        foreach (var found in await Use(sftp => List(sftp, cancellation), cancellation))
        {
            yield return found;
        }
    }

    private async Task<List<(string Address, long Length)>> List(SftpClient sftp, CancellationToken cancellation)
    {
        var files = new List<(string, long)>();
        var open = new Stack<string>(await sftp.ExistsAsync(Top, cancellation) ? [""] : []);
        while (open.TryPop(out var folder))
        {
            await foreach (var found in sftp.ListDirectoryAsync(folder.Length == 0 ? Top : PathOf(folder), cancellation))
            {
                var address = SiteAddress.Behind(folder, found.Name);
                if (found.IsDirectory && found.Name is not ("." or ".."))
                {
                    open.Push(address);
                }
                else if (!found.IsDirectory)
                {
                    files.Add((address, found.Length));
                }
            }
        }

        return files;
    }

    /// <inheritdoc/>
    public Task PutAsync(OutgoingFile file, CancellationToken cancellation) => Use(sftp => Put(sftp, file, cancellation), cancellation);

    /// <inheritdoc/>
    public Task DeleteAsync(string address, CancellationToken cancellation) => Use(
        async sftp =>
        {
            try
            {
                await sftp.DeleteFileAsync(PathOf(address), cancellation);
            }
            catch (SftpPathNotFoundException)
            {
                // It is gone, which was the request.
            }

            return true;
        },
        cancellation);

    /// <inheritdoc/>
    public Task RemoveEmptyFoldersAsync(IReadOnlyCollection<string> deleted, CancellationToken cancellation) => Use(
        async sftp =>
        {
            folders.Clear();
            foreach (var folder in SiteAddress.FoldersOf(deleted))
            {
                await RemoveIfEmpty(sftp, PathOf(folder), cancellation);
            }

            return true;
        },
        cancellation);

    /// <inheritdoc/>
    public Task FinishAsync(CancellationToken cancellation) => Task.CompletedTask;

    /// <inheritdoc/>
    public bool MayPass(Exception failure) =>
        check.Refusal is null && failure is (SshConnectionException or SocketException or SshOperationTimeoutException or IOException);

    private async Task<bool> Put(SftpClient sftp, OutgoingFile file, CancellationToken cancellation)
    {
        var path = PathOf(file.Address);
        await MakeFolder(sftp, path, cancellation);
        using var contents = new MemoryStream(file.Contents, writable: false);
        try
        {
            await sftp.UploadFileAsync(contents, path + draft, cancellation);
            await Task.Run(() => Replace(sftp, path), cancellation);
            return true;
        }
        catch (SshException) when (sftp.IsConnected)
        {
            await TakeAway(sftp, path + draft);
            throw;
        }
    }

    /// <inheritdoc/>
    public string? Explain(Exception failure) => check.Refusal ?? failure switch
    {
        SshAuthenticationException => $"{destination.Host} refuses `{User}`. Check `user` and `key` of `{destination.Name}`, and whether your key is on the server. A passphrase or a password can be given in JOURNAL_SFTP_PASSPHRASE or JOURNAL_SFTP_PASSWORD.",
        SftpPermissionDeniedException => $"{destination.Host} does not let `{User}` write to {Top}.",
        SocketException or SshConnectionException or SshOperationTimeoutException or IOException => $"The connection to {destination.Host} failed: {failure.Message}",
        SshException => $"{destination.Host} could not write: {failure.Message.TrimEnd('.')}. Its disk may be full.",
        _ => null,
    };

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        client?.Dispose();
        lost.ForEach(old => old.Dispose());
        door.Dispose();
        return ValueTask.CompletedTask;
    }

    private string User => destination.User ?? Environment.UserName;

    private string PathOf(string address) => SiteAddress.IsSafe(address) ? SiteAddress.Behind(Top, address)
        : throw new SendingException($"{destination.Host} has a file with a name that no site uses: {address}. Choose a separate folder as the destination.");

    // What the library throws when the line is cut under several at once is anything; that it was cut is what counts.
    private async Task<T> Use<T>(Func<SftpClient, Task<T>> action, CancellationToken cancellation)
    {
        var sftp = await Client(cancellation);
        try
        {
            return await action(sftp);
        }
        catch (Exception e) when (!cancellation.IsCancellationRequested && !sftp.IsConnected)
        {
            throw new IOException("The connection was cut.", e);
        }
    }

    // The line may have been cut since; whoever comes first connects again. Others may still be about to learn of it, so
    // the old connection is cleared away at the end.
    private async Task<SftpClient> Client(CancellationToken cancellation)
    {
        await door.WaitAsync(cancellation);
        try
        {
            if (client is { IsConnected: true })
            {
                return client;
            }

            if (client is not null)
            {
                lost.Add(client);
            }

            client = new SftpClient(Connection()) { OperationTimeout = TimeSpan.FromMinutes(2), KeepAliveInterval = TimeSpan.FromSeconds(15) };
            client.HostKeyReceived += (_, key) => key.CanTrust = check.Trusts(key.HostKey);
            await client.ConnectAsync(cancellation);
            return client;
        }
        finally
        {
            door.Release();
        }
    }

    private ConnectionInfo Connection()
    {
        var methods = new List<AuthenticationMethod>();
        if (Keys() is { Length: > 0 } keys)
        {
            methods.Add(new PrivateKeyAuthenticationMethod(User, keys));
        }

        if (variable("JOURNAL_SFTP_PASSWORD") is { Length: > 0 } password)
        {
            methods.Add(new PasswordAuthenticationMethod(User, password));
        }

        if (methods.Count == 0)
        {
            throw new SendingException($"There is no key to sign in to {destination.Host}. Give its file with `key` at `{destination.Name}`, add it to your SSH agent, or set JOURNAL_SFTP_PASSWORD.");
        }

        var connection = new ConnectionInfo(destination.Host, destination.Port, User, [.. methods]) { Timeout = TimeSpan.FromSeconds(20) };
        foreach (var algorithm in connection.HostKeyAlgorithms.Keys.Where(name => !check.Wants(name)).ToList())
        {
            connection.HostKeyAlgorithms.Remove(algorithm);
        }

        return connection;
    }

    private IPrivateKeySource[] Keys()
    {
        var passphrase = variable("JOURNAL_SFTP_PASSPHRASE");
        if (destination.Key is { } named)
        {
#pragma warning disable CA2000 // Keys are needed as long as the program may have to sign in again.
            return [Key(named, passphrase)];
#pragma warning restore CA2000
        }

        var fromAgent = variable("SSH_AUTH_SOCK") is { Length: > 0 } socket ? new SshAgent(socket).KeySources() : [];
        var usual = UsualKeys.Select(name => Path.Combine(HomePath.Home, ".ssh", name)).Where(File.Exists);
        return [.. fromAgent, .. usual.Select(path => UsualKey(path, passphrase)).OfType<PrivateKeyFile>()];
    }

    private PrivateKeyFile Key(string path, string? passphrase)
    {
        try
        {
            return new PrivateKeyFile(path, passphrase);
        }
        catch (SshPassPhraseNullOrEmptyException e)
        {
            throw new SendingException($"The key {path} has a passphrase. Add the key to your SSH agent and leave out `key`, or set JOURNAL_SFTP_PASSPHRASE.", e);
        }
        catch (Exception e) when (e is SshException or IOException or UnauthorizedAccessException or System.Security.Cryptography.CryptographicException)
        {
            throw new SendingException($"The key {path} of `{destination.Name}` cannot be read: {e.Message}", e);
        }
    }

    // A usual key that cannot be opened is none: the agent may hold it already.
    private PrivateKeyFile? UsualKey(string path, string? passphrase)
    {
        try
        {
            return Key(path, passphrase);
        }
        catch (SendingException)
        {
            return null;
        }
    }

    private async Task MakeFolder(SftpClient sftp, string path, CancellationToken cancellation)
    {
        var folder = path[..path.LastIndexOf('/')];
        if (folder.Length == 0 || folders.ContainsKey(folder))
        {
            return;
        }

        await door.WaitAsync(cancellation);
        try
        {
            for (var end = folder.IndexOf('/', 1); ; end = folder.IndexOf('/', end + 1))
            {
                var step = end < 0 ? folder : folder[..end];
                if (folders.TryAdd(step, true) && !await sftp.ExistsAsync(step, cancellation))
                {
                    await sftp.CreateDirectoryAsync(step, cancellation);
                }

                if (end < 0)
                {
                    return;
                }
            }
        }
        catch
        {
            folders.Clear();
            throw;
        }
        finally
        {
            door.Release();
        }
    }

    // OpenSSH can rename over a file in one step; elsewhere the old one goes first.
    private void Replace(SftpClient sftp, string path)
    {
        try
        {
            sftp.RenameFile(path + draft, path, isPosix: true);
        }
        catch (NotSupportedException)
        {
            if (sftp.Exists(path))
            {
                sftp.DeleteFile(path);
            }

            sftp.RenameFile(path + draft, path);
        }
    }

    // The server itself refuses where something is left in it.
    private static async Task RemoveIfEmpty(SftpClient sftp, string path, CancellationToken cancellation)
    {
        try
        {
            await sftp.DeleteDirectoryAsync(path, cancellation);
        }
        catch (SshException) when (sftp.IsConnected)
        {
            // It is gone already, or it stays.
        }
    }

    private static async Task TakeAway(SftpClient sftp, string path)
    {
        try
        {
            await sftp.DeleteFileAsync(path, CancellationToken.None);
        }
        catch (Exception e) when (e is SshException or ObjectDisposedException or SocketException or IOException)
        {
            // The next send writes over it.
        }
    }
}
