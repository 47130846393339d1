using System.Security.Cryptography;
using System.Text;
using Journal.Core.Model;
using Journal.Site.Output;

namespace Journal.Site.Sending;

/// <summary>
/// What a send has begun and finished, written down beside the site as it goes. After a break of any kind the next send
/// goes on from there, and takes away what the broken one may have brought and the site no longer has. Gone when a send
/// is done.
/// </summary>
internal sealed class SendLog : IDisposable
{
    private const string Begun = "begun";
    private const string Sent = "sent";
    private readonly string path;
    private readonly FileStream file;
    private readonly Dictionary<string, string> arrived = new(StringComparer.Ordinal);
    private readonly HashSet<string> doubtful = new(StringComparer.Ordinal);
    private readonly Lock turn = new();

    private readonly string place;

    private SendLog(string path, FileStream file, string place) => (this.path, this.file, this.place) = (path, file, place);

    /// <summary>Files that a broken send had begun to bring, and perhaps left half of.</summary>
    public IReadOnlyCollection<string> HalfBrought => [.. doubtful.Where(address => !arrived.ContainsKey(address))];

    /// <summary>Opens the log of a destination; a second send to it at the same time is refused.</summary>
    /// <exception cref="SendingException">Another send to it is at work.</exception>
    /// <param name="site">The site's folder.</param>
    /// <param name="destination">Where it goes. One of the same name elsewhere is another: nothing that was begun there is here.</param>
    public static SendLog Open(string site, NamedDestination destination)
    {
        var path = Path.Combine(Path.GetDirectoryName(site)!, $".{Path.GetFileName(site)}.sending-{destination.Name}");
        var place = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(WhereIs(destination))));
        try
        {
#pragma warning disable CA2000 // The log owns it.
            return new SendLog(path, new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None), place);
#pragma warning restore CA2000
        }
        catch (IOException e) when (PublishLock.IsHeld(e))
        {
            throw new SendingException($"Another send to `{destination.Name}` is running. Let it finish, then try again.", e);
        }
    }

    /// <summary>
    /// What lies at the destination: its manifest, corrected by what a broken send brought since. Files that it may
    /// have brought have no hash.
    /// </summary>
    /// <param name="manifest">The manifest there.</param>
    /// <param name="digest">The digest of that manifest: another one shows that someone else has sent since.</param>
    public IReadOnlyDictionary<string, string> Correct(IReadOnlyDictionary<string, string> manifest, string digest)
    {
        var (place, manifestThen) = Read();
        if (place != this.place)
        {
            doubtful.Clear();
        }

        if (place != this.place || manifestThen != digest)
        {
            arrived.Clear();
        }

        var there = new Dictionary<string, string>(manifest, StringComparer.Ordinal);
        foreach (var address in doubtful)
        {
            there[address] = arrived.GetValueOrDefault(address, "");
        }

        return there;
    }

    /// <summary>Begins to write under the digest of the manifest of today; what is doubtful stays so until the send is done.</summary>
    public void Start(string digest)
    {
        file.SetLength(0);
        Write($"{place} {digest}");
        foreach (var address in doubtful)
        {
            Write(arrived.TryGetValue(address, out var hash) ? $"{Sent} {hash} {address}" : $"{Begun} - {address}");
        }
    }

    /// <summary>Notes that a file is about to be brought.</summary>
    public void Begin(string address) => Write($"{Begun} - {address}");

    /// <summary>Notes that a file has been brought.</summary>
    public void Finish(string address, string hash) => Write($"{Sent} {hash} {address}");

    /// <summary>Everything is there and in the manifest: the log has done its work.</summary>
    public void Close()
    {
        file.Dispose();
        File.Delete(path);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        var isEmpty = file.CanRead && file.Length == 0;
        file.Dispose();
        if (isEmpty)
        {
            File.Delete(path);
        }
    }

    // How one gets there may change; where it is may not.
    private static string WhereIs(NamedDestination destination) => destination switch
    {
        SftpDestination sftp => $"{sftp.Host}\n{sftp.Folder}",
        S3Destination s3 => $"{s3.Service}\n{s3.Bucket}\n{s3.Folder}",
        GitDestination git => $"{git.Repository}\n{git.Branch}\n{git.Folder}",
        _ => destination.Folder,
    };

    private (string Place, string Manifest) Read()
    {
        using var reader = new StreamReader(file, Encoding.UTF8, leaveOpen: true);
        var first = (reader.ReadLine() ?? "").Split(' ');
        while (reader.ReadLine() is { } line)
        {
            // A line cut short by the end of a program says less than it could, and nothing that is not so.
            if (line.Split(' ', 3) is [var what, var hash, var address] && SiteAddress.IsSafe(address))
            {
                doubtful.Add(address);
                if (what == Sent && hash.Length == 64)
                {
                    arrived[address] = hash;
                }
                else
                {
                    arrived.Remove(address);
                }
            }
        }

        return first is [var where, var digest] ? (where, digest) : ("", "");
    }

    private void Write(string line)
    {
        lock (turn)
        {
            file.Write(Encoding.UTF8.GetBytes(line + "\n"));
            file.Flush();
        }
    }
}
