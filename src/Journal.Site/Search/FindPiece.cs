using System.Security.Cryptography;
using System.Text;

namespace Journal.Site.Search;

/// <summary>
/// Things whose texts a browser loads together. Where a piece ends follows from the addresses of the things in it and
/// not from their number, so that a new entry changes the piece that it stands in and leaves the others as they were.
/// </summary>
internal sealed class FindPiece
{
    // Letters: pieces of one length would be simpler, but then every piece behind a new entry would be another.
    private const int Shortest = 14_000;
    private const int Longest = 38_000;
    private const int OneInSoMany = 4;

    private FindPiece(IReadOnlyList<Findable> things)
    {
        Things = things;
        Name = Hash(things[0].Address);
        Stamp = Hash(string.Join('\n', things.Select(thing => thing.Text)));
    }

    /// <summary>The things, in the order of the index.</summary>
    public IReadOnlyList<Findable> Things { get; }

    /// <summary>Its name, which stays when what it holds changes.</summary>
    public string Name { get; }

    /// <summary>Tells its texts from those of another publish: a browser may hold an index and texts of two.</summary>
    public string Stamp { get; }

    /// <summary>Its script, from the root of the site.</summary>
    public string ScriptAddress => $"find/text-{Name}.js";

    /// <summary>The pieces of all things.</summary>
    public static IReadOnlyList<FindPiece> Of(IReadOnlyList<Findable> things)
    {
        var (pieces, open, length) = (new List<FindPiece>(), new List<Findable>(), 0);
        foreach (var thing in things)
        {
            open.Add(thing);
            length += thing.Text.Length;
            if (length >= Longest || (length >= Shortest && EndsPiece(thing.Address)))
            {
                pieces.Add(new FindPiece(open));
                (open, length) = ([], 0);
            }
        }

        if (open.Count > 0)
        {
            pieces.Add(new FindPiece(open));
        }

        return pieces;
    }

    private static bool EndsPiece(string address)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Encoding.UTF8.GetBytes(address), hash);
        return hash[0] % OneInSoMany == 0;
    }

    private static string Hash(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..12];
}
