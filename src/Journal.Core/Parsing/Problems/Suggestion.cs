namespace Journal.Core.Parsing.Problems;

/// <summary>Finds what the maker probably meant.</summary>
public static class Suggestion
{
    private const int MostListed = 8;
    private const int LongestWord = 100;
    private const string Meant = "Did you mean `";
    private const string Asked = "`?";

    /// <summary>
    /// The nearest of the known words, where one is near enough to be a slip: at most one edit in three letters
    /// (edits as of Damerau 1964: a letter too many, missing, wrong, or two swapped); null where none is.
    /// </summary>
    public static string? Nearest(string written, IReadOnlyCollection<string> known)
    {
        var least = Math.Max(1, written.Length / 3) + 1;
        string? nearest = null;
        if (written.Length > LongestWord)
        {
            return null;
        }

        foreach (var word in known)
        {
            if (Math.Abs(word.Length - written.Length) <= least && Edits(written, word) is var edits
                && (edits < least || (edits == least && nearest is not null && Alike(written, word) > Alike(written, nearest))))
            {
                (nearest, least) = (word, edits);
            }
        }

        return nearest ?? known.FirstOrDefault(word => written.Length >= 3 && word.StartsWith(written, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>“Did you mean …?” where a known word is near, else what there is to choose from.</summary>
    public static string For(string written, IReadOnlyCollection<string> known, string whatTheyAre)
    {
        if (Nearest(written, known) is { } nearest)
        {
            return $"{Meant}{nearest}{Asked}";
        }

        return known.Count == 0
            ? $"There are no {whatTheyAre} yet."
            : $"Known {whatTheyAre}: {string.Join(", ", known.Take(MostListed))}{(known.Count > MostListed ? ", …" : ".")}";
    }

    /// <summary>The word that a text of <see cref="For"/> offers, anywhere in a remedy; null where it offers none.</summary>
    public static string? OfferedIn(string remedy) =>
        remedy.IndexOf(Meant, StringComparison.Ordinal) is >= 0 and var at && remedy.IndexOf(Asked, at, StringComparison.Ordinal) is > 0 and var end ? remedy[(at + Meant.Length)..end] : null;

    // How many letters they share from the first on: few slips are made in a word's beginning.
    private static int Alike(string one, string other) => one.AsSpan().CommonPrefixLength(other);

    // Optimal string alignment distance; words here are short, so the plain table will do.
    private static int Edits(string from, string to)
    {
        var (a, b) = (from.ToUpperInvariant(), to.ToUpperInvariant());
        var (before, last, row) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = a[i - 1] == b[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1] + 1, last[j] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, last, row) = (last, row, before);
        }

        return last[b.Length];
    }
}
