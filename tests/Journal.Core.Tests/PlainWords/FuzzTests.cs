using System.Text;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.Tests.PlainWords;

/// <summary>Hostile and random text: it ends, it throws nothing, and every proposal points into the text.</summary>
public sealed class FuzzTests
{
    private static readonly DateOnly Day = new(2026, 12, 1);
    private static readonly Build Build = Demo.Journal.Builds.First(build => build.Id.Value == "dividing-head");

    public static TheoryData<string, string> Hostile => new()
    {
        { "a megabyte of one word", string.Concat(Enumerable.Repeat("bored ", 170_000)) },
        { "one word of a megabyte", new string('a', 1_000_000) },
        { "letters and figures", string.Concat(Enumerable.Repeat("a1", 40_000)) },
        { "numbers", string.Concat(Enumerable.Repeat("two hundred and ", 12_000)) },
        { "halves", string.Concat(Enumerable.Repeat("and a half ", 16_000)) },
        { "points", string.Concat(Enumerable.Repeat("point ", 20_000)) },
        { "nested clauses", string.Concat(Enumerable.Repeat("which I bored because he said that when ", 4_000)) },
        { "corrections", string.Concat(Enumerable.Repeat("an hour, no, ", 12_000)) },
        { "brackets", new string('(', 500_000) },
        { "breaks", new string('\n', 500_000) },
        { "apostrophes", string.Concat(Enumerable.Repeat("'", 50_000)) },
        { "hyphens", string.Concat(Enumerable.Repeat("a-", 40_000)) },
        { "half a pair", new string('\ud800', 100_000) },
        { "right to left", string.Concat(Enumerable.Repeat("\u202e\u05d0 bored ", 10_000)) },
        { "marks above", "a" + new string('\u0301', 500_000) },
        { "odd spaces", string.Concat(Enumerable.Repeat("bored\u2003the\u00a0body\u200b ", 8_000)) },
        { "times", string.Concat(Enumerable.Repeat("from half six to nine ", 8_000)) },
        { "nothing", "" },
        { "naught", "\0\0\0" },
    };

    [Theory]
    [MemberData(nameof(Hostile))]
    public void HostileText_OfAnyKind_EndsWithPlacesInTheText(string what, string text)
    {
        Assert.NotEmpty(what);
        AssertPlaces(text, AccountReader.Read(text, Demo.Journal, Build, Day));
    }

    [Fact]
    public void RandomWords_OfTheListsAndTheJournal_EndWithPlacesInTheText()
    {
        string[] words = [.. Lexicon.Shared.Ordinary.Order(StringComparer.Ordinal), "body", "spindle", "worm wheel", "four-jaw", "1h20", "30.013", ",", ".", "\n", "?", "£3.20", "2:40", "M6", "…", "–"];
        var random = new Random(20261201);
        for (var account = 0; account < 200; account++)
        {
            var text = new StringBuilder();
            for (var word = random.Next(120); word >= 0; word--)
            {
                text.Append(words[random.Next(words.Length)]).Append(' ');
            }

            var said = text.ToString();
            var proposal = AccountReader.Read(said, Demo.Journal, Build, Day);
            AssertPlaces(said, proposal);
            Assert.Equivalent(proposal.Jobs.Select(job => job.Words), AccountReader.Read(said, Demo.Journal, Build, Day).Jobs.Select(job => job.Words));
        }
    }

    private static void AssertPlaces(string text, Proposal proposal)
    {
        var spans = proposal.Jobs.SelectMany(job => job.Words).Concat(proposal.TotalWords)
            .Concat(proposal.Mistakes.Select(one => one.Words)).Concat(proposal.Lessons.Select(one => one.Words)).Concat(proposal.Readings.Select(one => one.Words))
            .Concat(proposal.Settings.Select(one => one.Words)).Concat(proposal.Bought.Select(one => one.Words)).Concat(proposal.Made.Select(one => one.Words))
            .Concat(proposal.Snags.Select(one => one.Words)).Concat(proposal.Trials.Select(one => one.Words)).Concat(proposal.NewTools.Select(one => one.Words))
            .Concat(proposal.Questions.Select(one => one.Words));
        Assert.All(spans, span => Assert.True(span.Start >= 0 && span.Start < span.End && span.End <= text.Length));
        Assert.All(proposal.Jobs, job => Assert.True(job.SetUp is null || job.Time is null || job.SetUp <= job.Time));
    }
}
