namespace Journal.Site.Search;

/// <summary>The words of some texts and which texts hold each, by the texts' numbers from 0.</summary>
internal sealed class HeldWords
{
    private readonly Dictionary<string, List<int>> holders;

    private HeldWords(Dictionary<string, List<int>> holders) => this.holders = holders;

    /// <summary>Every word with the rising numbers of the texts that hold it, in ordinal order of the words.</summary>
    public IReadOnlyList<(string Word, List<int> Holders)> InOrder
    {
        get
        {
            var words = holders.Keys.ToArray();
            Array.Sort(words, StringComparer.Ordinal);
            return [.. words.Select(word => (word, holders[word]))];
        }
    }

    /// <summary>The words of these texts.</summary>
    public static HeldWords Of(IEnumerable<string> texts)
    {
        var words = new HeldWords(new(StringComparer.Ordinal));
        foreach (var (number, text) in texts.Index())
        {
            words.Add(number, text);
        }

        return words;
    }

    /// <summary>Words as they were counted before.</summary>
    public static HeldWords As(IEnumerable<(string Word, List<int> Holders)> words) => new(words.ToDictionary(word => word.Word, word => word.Holders, StringComparer.Ordinal));

    /// <summary>Takes a text for another.</summary>
    public void Replace(int number, string before, string after)
    {
        var bySpan = holders.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (var word in new SearchTokens(before))
        {
            if (bySpan.TryGetValue(word, out var numbers) && numbers.BinarySearch(number) is >= 0 and var at)
            {
                numbers.RemoveAt(at);
                if (numbers.Count == 0)
                {
                    bySpan.Remove(word);
                }
            }
        }

        Add(number, after);
    }

    private void Add(int number, string text)
    {
        var bySpan = holders.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (var word in new SearchTokens(text))
        {
            if (!bySpan.TryGetValue(word, out var numbers))
            {
                holders.Add(word.ToString(), numbers = []);
            }

            if (numbers.Count == 0 || numbers[^1] < number)
            {
                numbers.Add(number);
            }
            else if (numbers.BinarySearch(number) is < 0 and var place)
            {
                numbers.Insert(~place, number);
            }
        }
    }
}
