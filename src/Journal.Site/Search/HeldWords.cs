namespace Journal.Site.Search;

/// <summary>The words of some texts and which texts hold each.</summary>
/// <param name="Words">The words in ordinal order.</param>
/// <param name="Holders">For each word the numbers of the texts that hold it, from 0, rising.</param>
/// <param name="Common">Words that more than half of the texts hold: they tell nothing, and are in no other list.</param>
internal sealed record HeldWords(IReadOnlyList<string> Words, IReadOnlyList<IReadOnlyList<int>> Holders, IReadOnlyList<string> Common)
{
    /// <param name="texts">The texts.</param>
    /// <param name="enoughToTell">From so many texts on, a word can be common.</param>
    public static HeldWords Of(IEnumerable<string> texts, int enoughToTell)
    {
        var holders = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        var bySpan = holders.GetAlternateLookup<ReadOnlySpan<char>>();
        var count = 0;
        foreach (var text in texts)
        {
            foreach (var word in new FoldedWords(text))
            {
                if (!bySpan.TryGetValue(word, out var numbers))
                {
                    holders.Add(word.ToString(), numbers = []);
                }

                if (numbers.Count == 0 || numbers[^1] != count)
                {
                    numbers.Add(count);
                }
            }

            count++;
        }

        var sorted = holders.Keys.ToArray();
        Array.Sort(sorted, StringComparer.Ordinal);
        bool IsCommon(string word) => count >= enoughToTell && holders[word].Count * 2 > count;
        string[] telling = [.. sorted.Where(word => !IsCommon(word))];
        return new HeldWords(telling, [.. telling.Select(word => holders[word])], [.. sorted.Where(IsCommon)]);
    }
}
