using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Site.Sending;

/// <summary>What the files of known hosts say of a server's key.</summary>
internal enum HostKeyVerdict
{
    /// <summary>No line tells of the server.</summary>
    Unknown,

    /// <summary>The key is the one written down.</summary>
    Known,

    /// <summary>Another key of the same type is written down.</summary>
    Changed,

    /// <summary>The key is marked as one that must not be trusted.</summary>
    Revoked,
}

/// <summary>
/// The lines of OpenSSH's files of known hosts, as sshd(8), “SSH_KNOWN_HOSTS FILE FORMAT”, describes them (from memory):
/// patterns of names with commas between, <c>!</c> to leave one out, <c>*</c> and <c>?</c>, or a name's HMAC-SHA1 behind
/// <c>|1|</c>; a port other than 22 as <c>[host]:port</c>. Lines of authorities are not used.
/// </summary>
internal sealed class KnownHosts
{
    private readonly List<(bool IsRevoked, string Hosts, string Type, byte[] Key)> lines = [];

    /// <summary>The lines of texts.</summary>
    public KnownHosts(IEnumerable<string> texts)
    {
        foreach (var line in texts.SelectMany(text => text.Split('\n')))
        {
            Add(line.Trim());
        }
    }

    /// <summary>The known hosts of files; those that are not there are left out.</summary>
    public static KnownHosts Of(IEnumerable<string> files) => new(files.Where(File.Exists).Select(File.ReadAllText));

    /// <summary>What is known of a key.</summary>
    public HostKeyVerdict Judge(string host, int port, string type, byte[] key)
    {
        var ours = Of(host, port).ToList();
        if (ours.Any(line => line.IsRevoked && line.Key.AsSpan().SequenceEqual(key)))
        {
            return HostKeyVerdict.Revoked;
        }

        var kept = ours.Where(line => !line.IsRevoked).ToList();
        return kept.Any(line => line.Key.AsSpan().SequenceEqual(key)) ? HostKeyVerdict.Known
            : kept.Any(line => line.Type == type) ? HostKeyVerdict.Changed
            : HostKeyVerdict.Unknown;
    }

    /// <summary>The types of key that are written down for a server.</summary>
    public IReadOnlyCollection<string> TypesOf(string host, int port) => [.. Of(host, port).Where(line => !line.IsRevoked).Select(line => line.Type).Distinct()];

    private IEnumerable<(bool IsRevoked, string Hosts, string Type, byte[] Key)> Of(string host, int port)
    {
        var name = port == 22 ? host : string.Create(CultureInfo.InvariantCulture, $"[{host}]:{port}");
        return lines.Where(line => Fits(line.Hosts, name.ToLowerInvariant()));
    }

    private static bool Fits(string hosts, string name)
    {
        if (hosts.StartsWith("|1|", StringComparison.Ordinal))
        {
            return hosts.Split('|') is [_, _, var salt, var hash] && TryBase64(salt) is { } saltBytes && TryBase64(hash) is { } wanted
#pragma warning disable CA5350 // The format has SHA-1; it hides names, and proves nothing.
                && HMACSHA1.HashData(saltBytes, Encoding.UTF8.GetBytes(name)).AsSpan().SequenceEqual(wanted);
#pragma warning restore CA5350
        }

        var patterns = hosts.ToLowerInvariant().Split(',');
        return patterns.Any(pattern => IsLike(name, pattern)) && !patterns.Any(pattern => pattern.StartsWith('!') && IsLike(name, pattern[1..]));
    }

    private static bool IsLike(string name, string pattern) => Regex.IsMatch(
        name,
        $"^{Regex.Escape(pattern).Replace("\\*", ".*", StringComparison.Ordinal).Replace("\\?", ".", StringComparison.Ordinal)}$",
        RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    private void Add(string line)
    {
        var words = line.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        var isMarked = words.Length > 0 && words[0][0] == '@';
        if (line.StartsWith('#') || (isMarked && words[0] != "@revoked"))
        {
            return;
        }

        if ((isMarked ? words[1..] : words) is [var hosts, var type, var key, ..] && TryBase64(key) is { } bytes)
        {
            lines.Add((isMarked, hosts, type, bytes));
        }
    }

    private static byte[]? TryBase64(string text)
    {
        var bytes = new byte[text.Length];
        return Convert.TryFromBase64String(text, bytes, out var length) ? bytes[..length] : null;
    }
}
