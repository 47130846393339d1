namespace Journal.Site.Search;

/// <summary>The words of some texts and which texts hold each.</summary>
internal static class HeldWords
{
    /// <summary>Every word with the rising numbers, from 0, of the texts that hold it, in ordinal order of the words.</summary>
    public static IReadOnlyList<(string Word, List<int> Holders)> Of(IEnumerable<string> texts)
    {
        var holders = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        var bySpan = holders.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (var (number, text) in texts.Index())
        {
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
            }
        }

        var words = holders.Keys.ToArray();
        Array.Sort(words, StringComparer.Ordinal);
        return [.. words.Select(word => (word, holders[word]))];
    }
}
