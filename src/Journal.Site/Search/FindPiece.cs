using System.Buffers;
using System.Security.Cryptography;
using System.Text;

namespace Journal.Site.Search;

/// <summary>
/// Things whose texts a browser loads together. Where a piece ends follows from the addresses of the things in it and
/// not from their number, so that a new entry changes the piece that it stands in and leaves the others as they were.
/// </summary>
/// <param name="Name">Its name, which stays when what it holds changes.</param>
/// <param name="First">The number of its first thing.</param>
/// <param name="Count">How many things it holds.</param>
internal sealed record FindPiece(string Name, int First, int Count)
{
    // Letters: pieces of one length would be simpler, but then every piece behind a new entry would be another.
    private const int Shortest = 14_000;
    private const int Longest = 38_000;
    private const int OneInSoMany = 4;
    private const string Beginning = "find/text-";

    /// <summary>Its script, from the root of the site.</summary>
    public string Address => $"{Beginning}{Name}.js";

    /// <summary>Whether a piece may stand at an address.</summary>
    public static bool IsAddress(string address) => address.StartsWith(Beginning, StringComparison.Ordinal);

    /// <summary>Where things are cut into pieces: each piece with its first thing and their number.</summary>
    public static IEnumerable<FindPiece> Cut(IReadOnlyList<Findable> things)
    {
        for (var (first, at, length) = (0, 0, 0); at < things.Count; at++)
        {
            length += things[at].Text.Length;
            if (at == things.Count - 1 || length >= Longest || (length >= Shortest && EndsPiece(things[at].Address)))
            {
                yield return new FindPiece(Hash(things[first].Address), first, at - first + 1);
                (first, length) = (at + 1, 0);
            }
        }
    }

    /// <summary>The stamp of texts, which tells them from those of another publish: a browser may hold an index and texts of two.</summary>
    public static string StampOf(IReadOnlyList<string> texts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var bytes = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(texts.Max(text => text.Length)) + 1);
        foreach (var (at, text) in texts.Index())
        {
            bytes[0] = (byte)'\n';
            var count = Encoding.UTF8.GetBytes(text, bytes.AsSpan(1));
            hash.AppendData(at == 0 ? bytes.AsSpan(1, count) : bytes.AsSpan(0, count + 1));
        }

        ArrayPool<byte>.Shared.Return(bytes);
        return InShort(hash.GetHashAndReset());
    }

    private static bool EndsPiece(string address)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Encoding.UTF8.GetBytes(address), hash);
        return hash[0] % OneInSoMany == 0;
    }

    private static string Hash(string text) => InShort(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static string InShort(ReadOnlySpan<byte> hash) => Convert.ToHexStringLower(hash[..6]);
}
