using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;

namespace Journal.Core.Parsing;

/// <summary>
/// An entry's text, read without the rest of the journal. What an entry tells other pages is in its keys, links and
/// pictures; where these are as they were, a change of words changes only what shows the words.
/// </summary>
/// <param name="Facts">A digest of everything in the file but the plain words of its text (<see cref="EntryFacts"/>).</param>
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
        return log.Problems.Count > 0 ? null : new EntryWords(EntryFacts.DigestOf(EntryFacts.Of(halves, photos), body), body);
    }
}
