using System.Security.Cryptography;
using System.Text;
using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Site.Output;

namespace Journal.Site.Sending;

/// <summary>
/// What a send has begun and finished, written down beside the site as it goes. After a break of any kind the next send
/// goes on from there, and takes away what the broken one may have brought and the site no longer has. Gone when a send
/// is done.
/// </summary>
/// <remarks>
/// Lines are only ever added, for whoever empties a file to write it anew may be stopped between the two. A line counts
/// with its end alone: half an address could be that of another file.
/// </remarks>
internal sealed class SendLog : IDisposable
{
    private const string Begun = "begun";
    private const string Sent = "sent";
    private const string Whole = "whole";
    private const int LengthOfName = 32;
    private readonly string path;
    private readonly FileStream file;
    private readonly string place;
    private readonly Dictionary<string, string> arrived = new(StringComparer.Ordinal);
    private readonly HashSet<string> doubtful = new(StringComparer.Ordinal);
    private readonly Lock turn = new();
    private bool isBroken;

    private SendLog(string path, FileStream file, string place) => (this.path, this.file, this.place) = (path, file, place);

    /// <summary>Whether a send before this one began something and was stopped before it had finished.</summary>
    public bool IsOfBrokenSend => isBroken;

    /// <summary>Files that a broken send had begun to bring or to take away, and perhaps left half of.</summary>
    public IReadOnlyCollection<string> HalfBrought => [.. doubtful.Where(address => !arrived.ContainsKey(address))];

    /// <summary>Opens the log of a destination; a second send to it at the same time is refused.</summary>
    /// <exception cref="SendingException">Another send to it is at work.</exception>
    /// <param name="site">The site's folder.</param>
    /// <param name="destination">Where it goes. One of the same name elsewhere is another: nothing that was begun there is here.</param>
    public static SendLog Open(string site, NamedDestination destination)
    {
        var path = Path.Combine(Path.GetDirectoryName(site)!, $".{Path.GetFileName(site)}.sending-{destination.Name}");
        var place = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(WhereIs(destination))));
        while (true)
        {
            try
            {
#pragma warning disable CA2000 // The log owns it.
                var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
#pragma warning restore CA2000
                if (IsStillThere(file, path))
                {
                    return new SendLog(path, file, place);
                }

                file.Dispose();
            }
            catch (IOException e) when (PublishLock.IsHeld(e))
            {
                throw new SendingException($"Another send to `{destination.Name}` is running. Let it finish, then try again.", e);
            }
        }
    }

    /// <summary>
    /// What lies at the destination: its manifest, corrected by what a broken send brought since. Files that it may
    /// have brought or taken away have no hash.
    /// </summary>
    /// <param name="manifest">The manifest there.</param>
    /// <param name="digest">The digest of that manifest: another one shows that someone else has sent since.</param>
    public IReadOnlyDictionary<string, string> Correct(IReadOnlyDictionary<string, string> manifest, string digest)
    {
        var (placeThen, manifestThen, whole) = Read();
        if (placeThen != place || whole == digest)
        {
            doubtful.Clear();
        }

        if (placeThen != place || manifestThen != digest)
        {
            arrived.Clear();
        }

        isBroken = placeThen == place;
        var there = new Dictionary<string, string>(manifest, StringComparer.Ordinal);
        foreach (var address in doubtful)
        {
            there[address] = arrived.GetValueOrDefault(address, "");
        }

        return there;
    }

    /// <summary>Begins to write under the digest of the manifest of today; what is doubtful stays so until the send is done.</summary>
    public void Start(string digest) => Write($"{place} {digest}");

    /// <summary>Notes that a file is about to be brought or taken away.</summary>
    public void Begin(string address) => Write($"{Begun} - {address}");

    /// <summary>Notes that a file has been brought.</summary>
    public void Finish(string address, string hash) => Write($"{Sent} {hash} {address}");

    /// <summary>Notes that all is there but the manifest: where that is found next time, nothing is doubtful.</summary>
    /// <param name="digest">The digest of the manifest that is about to be brought.</param>
    public void FinishAll(string digest) => Write($"{Whole} {digest} -");

    /// <summary>Everything is there and in the manifest: the log has done its work.</summary>
    public void Close() => TakeAway();

    /// <inheritdoc/>
    public void Dispose()
    {
        if (file.CanRead && file.Length <= LengthOfName + 1)
        {
            TakeAway();
        }

        file.Dispose();
    }

    // While it is held, where the system can: another send may open it as soon as it is let go.
    private void TakeAway()
    {
        if (OperatingSystem.IsWindows())
        {
            file.Dispose();
        }

        File.Delete(path);
        file.Dispose();
    }

    // The send before this one may have ended between our opening its log and locking it. Each log begins with a name of its own.
    private static bool IsStillThere(FileStream file, string path)
    {
        if (file.Length == 0)
        {
            file.Write(Encoding.ASCII.GetBytes($"{Guid.NewGuid():N}\n"));
            file.Flush();
        }

        var mine = new byte[LengthOfName];
        var length = RandomAccess.Read(file.SafeFileHandle, mine, fileOffset: 0);
        return OperatingSystem.IsWindows() || UnixFile.ReadPastLock(path, LengthOfName) == Encoding.ASCII.GetString(mine, 0, length);
    }

    // How one gets there may change; where it is may not.
    private static string WhereIs(NamedDestination destination) => destination switch
    {
        SftpDestination sftp => $"{sftp.Host}\n{sftp.Folder}",
        S3Destination s3 => $"{s3.Service}\n{s3.Bucket}\n{s3.Folder}",
        GitDestination git => $"{git.Repository}\n{git.Branch}\n{git.Folder}",
        _ => destination.Folder,
    };

    // Where the last send went, what manifest it found there, and which one it was about to bring when all else was there.
    private (string Place, string Manifest, string Whole) Read()
    {
        var told = (Place: "", Manifest: "", Whole: "");
        foreach (var line in WholeLines())
        {
            switch (line.Split(' ', 3))
            {
                case [var where, var digest]:
                    told = Read(told.Place, told.Manifest, where, digest);
                    break;
                case [Whole, var digest, _]:
                    told.Whole = digest;
                    break;
                case [Sent, { Length: 64 } hash, var address] when SiteAddress.IsSafe(address):
                    doubtful.Add(address);
                    arrived[address] = hash;
                    break;
                case [Begun, _, var address] when SiteAddress.IsSafe(address):
                    doubtful.Add(address);
                    arrived.Remove(address);
                    break;
                default:
                    break;
            }
        }

        return told;
    }

    // A later send to the same place goes on; one that found another manifest there cannot trust what had arrived before.
    private (string Place, string Manifest, string Whole) Read(string placeBefore, string manifestBefore, string where, string digest)
    {
        if (where != placeBefore)
        {
            doubtful.Clear();
        }

        if (where != placeBefore || digest != manifestBefore)
        {
            arrived.Clear();
        }

        return (where, digest, "");
    }

    // What is behind the last end of a line is cut off, so that the next line begins where a line begins.
    private string[] WholeLines()
    {
        var bytes = new byte[file.Length];
        file.Position = 0;
        file.ReadExactly(bytes);
        var end = bytes.AsSpan().LastIndexOf((byte)'\n') + 1;
        file.SetLength(end);
        file.Position = end;
        return Encoding.UTF8.GetString(bytes, 0, end).Split('\n', StringSplitOptions.RemoveEmptyEntries);
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
