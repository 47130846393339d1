using System.Security.Cryptography;
using System.Text;
using Journal.Core.Model;
using Journal.Core.Reading.Files;
using Journal.Core.Reading.Problems;
using Journal.Core.Reading.Text;

namespace Journal.Core.Reading;

/// <summary>
/// An entry's text, read without the rest of the journal. What an entry tells other pages is in its keys, links and
/// pictures; where these are as they were, a change of words changes only what shows the words.
/// </summary>
/// <param name="Facts">A digest of everything in the file but the plain words of its text.</param>
/// <param name="Body">The text; its links have no targets yet.</param>
public sealed record EntryWords(string Facts, Body Body)
{
    /// <summary>The words of an entry's file; null where anything in them is a problem.</summary>
    /// <param name="root">The journal's folder.</param>
    /// <param name="file">The entry's file, relative to it.</param>
    public static EntryWords? Read(string root, string file)
    {
        var log = new ProblemLog();
        var path = Path.Combine(root, file.Replace('/', Path.DirectorySeparatorChar));
        if (TextFile.Read(path, file, log) is not { } text || FrontMatter.Split(text, file, log) is not { } halves)
        {
            return null;
        }

        var (body, photos) = new BodyReader(file, log).Read(halves.Body, halves.BodyLine);
        return log.Problems.Any() ? null : new EntryWords(FactsOf(halves, body, photos), body);
    }

    /// <summary>
    /// The digest: the keys as written, then of the text its links and pictures, the cautions that its words call for, and
    /// the lines that may name a picture of the entry's list.
    /// </summary>
    internal static string FactsOf(FrontMatter halves, Body body, IReadOnlyList<(Photo Photo, Place Place)> photos)
    {
        var facts = new StringBuilder(halves.Yaml).Append('\0');
        facts.AppendJoin('\0', body.Links.Select(link => link.Written)).Append('\0');
        facts.AppendJoin('\0', photos.Select(photo => $"{photo.Photo.File}\t{photo.Photo.Alt}")).Append('\0');
        facts.AppendJoin('\0', CautionReader.SharedWords.In(body.Text).Select(caution => caution.Id).Order(StringComparer.Ordinal)).Append('\0');
        foreach (var line in body.Text.AsSpan().EnumerateLines())
        {
            if (MayNamePicture(line))
            {
                facts.Append(line).Append('\0');
            }
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(facts.ToString())))[..32];
    }

    private static bool MayNamePicture(ReadOnlySpan<char> line)
    {
        foreach (var ending in PhotoFiles.Endings)
        {
            if (line.Contains(ending, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
