using System.Buffers;
using System.Security.Cryptography;
using System.Text;
using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Text;
using Journal.Core.Trade;

namespace Journal.Core.Parsing;

/// <summary>
/// What an entry's file says beside the plain words of its text: the keys as written, then of the text its links and
/// pictures, the cautions that its words call for, and the lines that may name a picture of the entry's list.
/// </summary>
public static class EntryFacts
{
    private static readonly SearchValues<string> PictureNames = SearchValues.Create(PhotoFiles.Endings, StringComparison.OrdinalIgnoreCase);

    /// <summary>A digest of them.</summary>
    public static string DigestOf(AsWritten written, Body body)
    {
        var facts = new StringBuilder(written.Keys).Append('\0').Append(written.Pictures).Append('\0');
        facts.AppendJoin('\0', body.Links.Select(link => link.Written)).Append('\0');
        facts.AppendJoin('\0', CautionLoader.SharedWords.In(body.Text).Select(caution => caution.Id).Order(StringComparer.Ordinal)).Append('\0');
        if (body.Text.AsSpan().ContainsAny(PictureNames))
        {
            foreach (var line in body.Text.AsSpan().EnumerateLines())
            {
                if (line.ContainsAny(PictureNames))
                {
                    facts.Append(line).Append('\0');
                }
            }
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(facts.ToString())))[..32];
    }

    /// <summary>What is kept of an entry's file for it.</summary>
    internal static AsWritten Of(FrontMatter halves, IReadOnlyList<(Photo Photo, Place Place)> inText) => new(
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(halves.Yaml))),
        string.Join('\0', inText.Select(photo => $"{photo.Photo.File}\t{photo.Photo.Alt}")));
}
