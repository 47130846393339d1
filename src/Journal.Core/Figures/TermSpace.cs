namespace Journal.Core.Figures;

/// <summary>
/// Texts as vectors of weighted terms (Salton and Buckley, <i>Term-weighting approaches in automatic text retrieval</i>,
/// Information Processing and Management 24 (1988) 513–523). The weighting is the one called <c>ltc</c> in SMART notation, for both
/// sides (Manning, Raghavan and Schütze, <i>Introduction to Information Retrieval</i>, 6.4.3): the logarithm of how often a term
/// stands in the text, times the logarithm of how rare it is among the texts, the whole scaled to length 1. Two texts are as near as
/// the cosine of the angle between them: 1 for the same terms in the same shares, 0 for none in common.
/// </summary>
internal sealed class TermSpace
{
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly List<int> holding = [];
    private readonly int texts;

    /// <summary>The space of a collection: of each text, how often each term stands in it.</summary>
    public TermSpace(IEnumerable<IReadOnlyDictionary<string, int>> collection)
    {
        foreach (var text in collection)
        {
            texts++;
            foreach (var term in text.Keys)
            {
                if (!numbers.TryGetValue(term, out var number))
                {
                    numbers[term] = number = holding.Count;
                    holding.Add(0);
                }

                holding[number]++;
            }
        }
    }

    /// <summary>How many different terms there are.</summary>
    public int Terms => holding.Count;

    /// <summary>The weight of a term that stands in a text so many times: 1 + log₁₀ of it, 0 for none.</summary>
    public static double OfFrequency(int count) => count == 0 ? 0 : 1 + Math.Log10(count);

    /// <summary>The weight of a term that so many of all texts hold: log₁₀ of all by those; 0 for one that stands in all.</summary>
    public static double OfRarity(int texts, int holding) => Math.Log10((double)texts / holding);

    /// <summary>The vector of a text; terms that the collection does not hold are left out.</summary>
    public TermVector Weigh(IReadOnlyDictionary<string, int> text)
    {
        var (terms, weights, count) = (new int[text.Count], new double[text.Count], 0);
        foreach (var (term, times) in text)
        {
            if (numbers.TryGetValue(term, out var number) && OfFrequency(times) * OfRarity(texts, holding[number]) is > 0 and var weight)
            {
                (terms[count], weights[count]) = (number, weight);
                count++;
            }
        }

        return TermVector.Of(terms.AsSpan(0, count), weights.AsSpan(0, count));
    }
}

/// <summary>A text's terms and their weights, by the number of the term; of length 1, or empty.</summary>
internal sealed class TermVector
{
    private readonly int[] terms;
    private readonly double[] weights;

    private TermVector(int[] terms, double[] weights) => (this.terms, this.weights) = (terms, weights);

    /// <summary>The terms by falling weight, then by number.</summary>
    public IEnumerable<int> Heaviest
    {
        get
        {
            var (heavy, by) = ((int[])terms.Clone(), weights.Zip(terms, (weight, term) => (-weight, term)).ToArray());
            Array.Sort(by, heavy);
            return heavy;
        }
    }

    /// <summary>The terms, by number.</summary>
    public IReadOnlyList<int> Terms => terms;

    /// <summary>The weight of a term; 0 for one that the text does not hold.</summary>
    public double this[int term] => Array.BinarySearch(terms, term) is >= 0 and var at ? weights[at] : 0;

    /// <summary>A vector of weighted terms, each term once, scaled to length 1.</summary>
    public static TermVector Of(IReadOnlyCollection<(int Term, double Weight)> weighted) => Of([.. weighted.Select(one => one.Term)], [.. weighted.Select(one => one.Weight)]);

    /// <summary>A vector of weighted terms, each term once, scaled to length 1.</summary>
    public static TermVector Of(ReadOnlySpan<int> terms, ReadOnlySpan<double> weights)
    {
        var vector = new TermVector(terms.ToArray(), weights.ToArray());
        Array.Sort(vector.terms, vector.weights);
        var length = 0.0;
        foreach (var weight in vector.weights)
        {
            length += weight * weight;
        }

        length = Math.Sqrt(length);
        for (var i = 0; i < vector.weights.Length; i++)
        {
            vector.weights[i] /= length;
        }

        return vector;
    }

    /// <summary>The weight of every term of a space, 0 for those that the text does not hold: to be compared with many.</summary>
    /// <param name="terms">How many terms the space has.</param>
    public double[] Spread(int terms)
    {
        var spread = new double[terms];
        for (var i = 0; i < this.terms.Length; i++)
        {
            spread[this.terms[i]] = weights[i];
        }

        return spread;
    }

    /// <summary>The cosine of the angle to another vector, spread out: to the last bit what it is to the vector itself.</summary>
    public double Cosine(ReadOnlySpan<double> spread)
    {
        var sum = 0.0;
        for (var i = 0; i < terms.Length; i++)
        {
            sum += spread[terms[i]] * weights[i];
        }

        return sum;
    }

    /// <summary>The cosine of the angle to another vector: 0 to 1.</summary>
    public double Cosine(TermVector other)
    {
        var (sum, i, j) = (0.0, 0, 0);
        while (i < terms.Length && j < other.terms.Length)
        {
            var order = terms[i].CompareTo(other.terms[j]);
            sum += order == 0 ? weights[i] * other.weights[j] : 0;
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
        }

        return sum;
    }
}
