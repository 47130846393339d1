using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Journal.Core.Writing.Files;

namespace Journal.Core.Import;

/// <summary>
/// Marks in the front matter of entries, as comments, that tell what was taken in: what bears one is not taken in twice,
/// in whatever order or under whatever name it comes again. An entry thrown away takes its marks with it.
/// </summary>
public sealed partial class TakenMarks
{
    private readonly HashSet<string> marks = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> seen = new(StringComparer.Ordinal);

    /// <summary>The marks of all entries of a build.</summary>
    /// <param name="folder">The build's folder.</param>
    public static TakenMarks In(string folder)
    {
        var found = new TakenMarks();
        foreach (var file in Directory.EnumerateFiles(folder, "*.md", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.Hidden | FileAttributes.ReparsePoint }))
        {
            foreach (var line in (BehindLinks.HasContents(file) ? File.ReadLines(file) : []).Skip(1).TakeWhile(line => line != "---"))
            {
                if (line.Contains("# taken in ", StringComparison.Ordinal) && Mark().Match(line) is { Success: true } match)
                {
                    found.marks.Add(match.Groups[1].Value);
                }
            }
        }

        return found;
    }

    /// <summary>Whether something with this mark was taken in before.</summary>
    public bool Has(string mark) => marks.Contains(mark);

    /// <summary>The mark of a row; rows that are alike in one log get marks of their own.</summary>
    public string OfRow(string row)
    {
        seen[row] = seen.GetValueOrDefault(row) + 1;
        return Of(Encoding.UTF8.GetBytes($"{seen[row]}\n{row}"));
    }

    /// <summary>The mark of a text.</summary>
    public static string Of(ReadOnlySpan<byte> text) => Convert.ToHexStringLower(SHA256.HashData(text))[..16];

    /// <summary>The comment that holds a mark.</summary>
    public static string Comment(string mark) => $"# taken in {mark}";

    [GeneratedRegex("# taken in ([0-9a-f]{16})$", RegexOptions.CultureInvariant)]
    private static partial Regex Mark();
}
