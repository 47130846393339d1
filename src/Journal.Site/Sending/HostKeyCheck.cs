using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using Journal.Core.Model;

namespace Journal.Site.Sending;

/// <summary>Decides whether a server is the one that the maker means. Nothing is sent to one that nobody vouches for.</summary>
internal sealed class HostKeyCheck(SftpDestination destination)
{
    private readonly KnownHosts hosts = KnownHosts.Of(destination.KnownHosts is { } file ? [file] : [Path.Combine(HomePath.Home, ".ssh", "known_hosts"), "/etc/ssh/ssh_known_hosts"]);

    /// <summary>Why the server was refused; null where it was not.</summary>
    public string? Refusal { get; private set; }

    /// <summary>Whether a key exchange may offer an algorithm: only keys that can be judged are asked for.</summary>
    public bool Wants(string algorithm)
    {
        var types = destination.HostKey is null ? hosts.TypesOf(destination.Host, destination.Port) : [];
        var type = algorithm is "rsa-sha2-256" or "rsa-sha2-512" ? "ssh-rsa" : algorithm;
        return !algorithm.Contains("-cert-", StringComparison.Ordinal) && (types.Count == 0 || types.Contains(type));
    }

    /// <summary>Whether a server with this key is trusted.</summary>
    /// <param name="key">The key as the protocol has it (RFC 4253, section 6.6).</param>
    public bool Trusts(byte[] key)
    {
        var print = $"SHA256:{Convert.ToBase64String(SHA256.HashData(key)).TrimEnd('=')}";
        Refusal = destination.HostKey is { } wanted ? JudgeFingerprint(wanted, print) : JudgeKnown(key, print);
        return Refusal is null;
    }

    private string? JudgeFingerprint(string wanted, string print) => wanted.TrimEnd('=') == print ? null
        : $"The key of {destination.Host} is {print}, and `host-key` of `{destination.Name}` is different. Either the key was changed, or something is intercepting the connection: ask whoever runs the server. Nothing was sent.";

    private string? JudgeKnown(byte[] key, string print) => hosts.Judge(destination.Host, destination.Port, TypeOf(key), key) switch
    {
        HostKeyVerdict.Known => null,
        HostKeyVerdict.Changed => $"The key of {destination.Host} has changed: it is now {print}. Either it was renewed, or something is intercepting the connection: ask whoever runs the server before you accept the new key. Nothing was sent.",
        HostKeyVerdict.Revoked => $"The key of {destination.Host} is marked as revoked. Nothing was sent.",
        _ => $"{destination.Host} is not a known host: its key is {print}. Ask whoever runs the server whether that is right, then write `host-key: \"{print}\"` at `{destination.Name}` in journal.yaml, or sign in once with `ssh`. Nothing was sent.",
    };

    private static string TypeOf(byte[] key)
    {
        var length = key.Length < 4 ? 0 : (int)Math.Min(BinaryPrimitives.ReadUInt32BigEndian(key), (uint)(key.Length - 4));
        return Encoding.ASCII.GetString(key, Math.Min(4, key.Length), length);
    }
}
