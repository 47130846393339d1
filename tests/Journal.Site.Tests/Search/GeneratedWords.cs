namespace Journal.Site.Tests.Search;

/// <summary>
/// Made-up words that fall as words of a language do: the r-th most frequent one about 1/(r + 2.7) as often as the
/// first (Mandelbrot 1953), out of 14,000. A text of 125,000 words then holds some 10,000 different ones.
/// </summary>
internal sealed class GeneratedWords
{
    private const int Different = 14_000;
    private static readonly string[] Beginnings = ["b", "br", "c", "ch", "cl", "d", "dr", "f", "fl", "g", "gr", "h", "j", "k", "l", "m", "n", "p", "pl", "qu", "r", "s", "sc", "st", "t", "tr", "v", "w"];
    private static readonly string[] Middles = ["a", "e", "i", "o", "u", "ea", "oo", "ai", "ou"];
    private static readonly string[] Ends = ["", "b", "ck", "d", "ft", "ll", "m", "n", "ng", "p", "r", "rm", "s", "st", "t"];
    private readonly Random random;
    private readonly string[] words;
    private readonly double[] upTo;

    public GeneratedWords(int seed)
    {
        random = new Random(seed);
        var made = new HashSet<string>();
        while (made.Count < Different)
        {
            made.Add(string.Concat(Enumerable.Range(0, 1 + random.Next(3)).Select(_ => One(Beginnings) + One(Middles) + One(Ends))));
        }

        words = [.. made.OrderBy(word => word.Length + random.Next(8))];
        var sum = 0.0;
        upTo = [.. Enumerable.Range(1, Different).Select(rank => sum += 1 / (rank + 2.7))];
    }

    public string Text(int count) => string.Join(' ', Enumerable.Range(0, count).Select(_ => Next()));

    private string Next()
    {
        var at = Array.BinarySearch(upTo, random.NextDouble() * upTo[^1]);
        return words[Math.Min(at < 0 ? ~at : at, words.Length - 1)];
    }


    private string One(string[] of) => of[random.Next(of.Length)];
}
