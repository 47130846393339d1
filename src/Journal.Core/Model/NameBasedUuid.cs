using System.Security.Cryptography;
using System.Text;

namespace Journal.Core.Model;

/// <summary>Identities made from names, so that feeds keep theirs without a register: RFC 9562, 5.5, UUID version 5.</summary>
public static class NameBasedUuid
{
    // Drawn once at random (version 4); the namespace of everything that a journal names.
    private static readonly Guid OurNamespace = new("9d3c6f0e-51b7-4f0a-8f6e-2b1d9c7a4e35");

    /// <summary>The identity of a journal that gives none.</summary>
    public static Guid OfJournal(string title) => Of(OurNamespace, title);

    /// <summary>The UUID of a name within a namespace: SHA-1 over the namespace's bytes and the name in UTF-8.</summary>
    public static Guid Of(Guid space, string name)
    {
        var input = new byte[16 + Encoding.UTF8.GetByteCount(name)];
        space.TryWriteBytes(input, bigEndian: true, out _);
        Encoding.UTF8.GetBytes(name, input.AsSpan(16));
#pragma warning disable CA5350 // SHA-1 is what RFC 9562 asks for; nothing is kept secret by it.
        var hash = SHA1.HashData(input);
#pragma warning restore CA5350
        hash[6] = (byte)((hash[6] & 0x0F) | 0x50);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return new Guid(hash.AsSpan(0, 16), bigEndian: true);
    }
}
