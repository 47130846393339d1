namespace Journal.Core.Tests.PlainWords;

/// <summary>Precision and recall, by kind of fact and over all.</summary>
internal sealed class Scoring
{
    private static readonly HashSet<string> Small = ["a", "an", "the", "of", "to", "and", "it", "is", "was", "in", "on", "i", "that", "so", "then", "for", "with", "my", "ll"];
    private readonly SortedDictionary<string, (int Expected, int Proposed, int Right)> kinds = new(StringComparer.Ordinal);

    /// <summary>What was missed, and what was proposed and is not so, one line each.</summary>
    public List<string> Notes { get; } = [];

    public (double Precision, double Recall) Overall => Rates(kinds.Values.Aggregate((0, 0, 0), (sum, kind) => (sum.Item1 + kind.Expected, sum.Item2 + kind.Proposed, sum.Item3 + kind.Right)));

    public void Add(ExpectedAccount account, IReadOnlyList<Fact> proposed)
    {
        var left = proposed.ToList();
        foreach (var fact in account.Facts)
        {
            var at = left.FindIndex(other => Matches(fact, other));
            Count(fact.Kind, 1, 0, at < 0 ? 0 : 1);
            if (at < 0)
            {
                Notes.Add($"{Short(account)}  missed   {fact.Kind}: {string.Join('/', fact.Of)} {fact.Value}");
            }
            else
            {
                Count(left[at].Kind, 0, 1, 0);
                left.RemoveAt(at);
            }
        }

        foreach (var fact in left.Where(fact => !account.Either.Any(either => Allows(either, fact))))
        {
            Count(fact.Kind, 0, 1, 0);
            Notes.Add($"{Short(account)}  proposed {fact.Kind}: {string.Join('/', fact.Of)} {fact.Value}");
        }
    }

    /// <summary>The table, a line for each kind and one for all.</summary>
    public IEnumerable<string> Table()
    {
        yield return Line("kind", "said", "proposed", "right", "precision", "recall");
        foreach (var (kind, (expected, proposed, right)) in kinds)
        {
            yield return Line(kind, $"{expected}", $"{proposed}", $"{right}", Rate(right, proposed), Rate(right, expected));
        }

        var all = kinds.Values.Aggregate((0, 0, 0), (sum, kind) => (sum.Item1 + kind.Expected, sum.Item2 + kind.Proposed, sum.Item3 + kind.Right));
        yield return Line("all", $"{all.Item1}", $"{all.Item2}", $"{all.Item3}", Rate(all.Item3, all.Item2), Rate(all.Item3, all.Item1));
    }

    private static (double Precision, double Recall) Rates((int Expected, int Proposed, int Right) all) =>
        (all.Proposed == 0 ? 1 : (double)all.Right / all.Proposed, all.Expected == 0 ? 1 : (double)all.Right / all.Expected);

    private static string Rate(int part, int whole) => whole == 0 ? "-" : ((double)part / whole).ToString("0.000", System.Globalization.CultureInfo.InvariantCulture);

    private static string Line(params string[] cells) => string.Concat(cells.Select((cell, i) => i == 0 ? cell.PadRight(20) : cell.PadLeft(10)));

    private static string Short(ExpectedAccount account) => string.Join('/', account.File.Split('/')[^3..]).Replace(".json", "", StringComparison.Ordinal);

    private static bool Matches(Fact expected, Fact proposed) =>
        expected.Kind == proposed.Kind && (expected.Of.Count == 0 || expected.Of.Intersect(proposed.Of).Any() || expected.Of.Any(of => of.EndsWith('?')) || proposed.Of.Any(of => of.EndsWith('?')))
        && (expected.IsFree ? Alike(expected.Value, proposed.Value) : expected.Value == proposed.Value);

    /// <summary>Most telling words shared, of either the summary or the words it came from.</summary>
    private static bool Alike(string expected, string proposed)
    {
        foreach (var one in expected.Split('|'))
        {
            foreach (var other in proposed.Split('|'))
            {
                var (a, b) = (Words(one), Words(other));
                var shared = a.Intersect(b).Count();
                if (a.Count + b.Count > 0 && 2.0 * shared / (a.Count + b.Count) >= 0.5)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static HashSet<string> Words(string text) =>
        [.. new string([.. text.ToLowerInvariant().Select(letter => char.IsLetterOrDigit(letter) ? letter : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => !Small.Contains(word))];

    // What two honest readers could differ on scores neither way.
    private static bool Allows(string either, Fact fact)
    {
        var words = Words(either.Replace('-', ' '));
        var kind = fact.Kind.Split('.')[0];
        var telling = Words($"{fact.Value} {string.Join(' ', fact.Of)}".Replace('-', ' ').Replace('|', ' '));
        var named = words.Contains(kind) || words.Contains(kind + "s") || words.Contains(fact.Kind.Split('.')[^1]) || words.Contains(fact.Kind.Split('.')[^1] + "s");
        return telling.Intersect(words).Count() is >= 2 and var shared && shared * 2 >= words.Count || (named && (telling.Overlaps(words) || words.Count <= 3));
    }

    private void Count(string kind, int expected, int proposed, int right)
    {
        var before = kinds.GetValueOrDefault(kind);
        kinds[kind] = (before.Expected + expected, before.Proposed + proposed, before.Right + right);
    }
}
