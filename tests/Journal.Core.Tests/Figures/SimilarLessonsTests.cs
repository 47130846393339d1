using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class SimilarLessonsTests
{
    // Manning, Raghavan and Schütze, Introduction to Information Retrieval, 6.3: how often three words stand in each of three novels
    // (the fourth is “wuthering”), logarithmic frequency, no idf, cosine normalisation. The figures as printed on the course's own
    // slides to that section, looked up.
    [Fact]
    public void Cosine_ThreeNovelsOfTheTextbook_GivesItsValues()
    {
        var sense = Novel(115, 10, 2, 0);
        var pride = Novel(58, 7, 0, 0);
        var wuthering = Novel(20, 11, 6, 38);

        Assert.Equal([3.06, 2.00, 1.30], new[] { 115, 10, 2 }.Select(count => Math.Round(TermSpace.OfFrequency(count), 2)));
        Assert.Equal([0.789, 0.515, 0.335, 0.0], Enumerable.Range(0, 4).Select(term => Math.Round(sense[term], 3)));
        Assert.Equal([0.524, 0.465, 0.405, 0.588], Enumerable.Range(0, 4).Select(term => Math.Round(wuthering[term], 3)));
        Assert.Equal([0.94, 0.79, 0.69], new[] { sense.Cosine(pride), sense.Cosine(wuthering), pride.Cosine(wuthering) }.Select(cosine => Math.Round(cosine, 2)));

        static TermVector Novel(params int[] counts) => TermVector.Of([.. counts.Index().Select(count => (count.Index, TermSpace.OfFrequency(count.Item)))]);
    }

    // The same, 6.4: the query “best car insurance” against “car insurance auto insurance”, a million documents; the query is weighted
    // ltc as ours are, the document lnc. The score is 0.8.
    [Fact]
    public void Cosine_CarInsuranceOfTheTextbook_GivesItsScore()
    {
        // Terms: 0 auto (5,000 documents hold it), 1 best (50,000), 2 car (10,000), 3 insurance (1,000).
        double[] rarity = [.. new[] { 5_000, 50_000, 10_000, 1_000 }.Select(holding => TermSpace.OfRarity(1_000_000, holding))];
        var query = TermVector.Of([(1, rarity[1]), (2, rarity[2]), (3, rarity[3])]);
        var document = TermVector.Of([(0, TermSpace.OfFrequency(1)), (2, TermSpace.OfFrequency(1)), (3, TermSpace.OfFrequency(2))]);

        Assert.Equal([2.3, 1.3, 2.0, 3.0], rarity.Select(weight => Math.Round(weight, 1)));
        Assert.Equal([0.52, 0.52, 0.68], new[] { document[0], document[2], document[3] }.Select(weight => Math.Round(weight, 2)));
        Assert.Equal([0.34, 0.52, 0.78], new[] { query[1], query[2], query[3] }.Select(weight => Math.Round(weight, 2)));
        Assert.Equal(0.8, Math.Round(query.Cosine(document), 1));
        Assert.Equal(query.Cosine(document), document.Cosine(query.Spread(terms: 4)));
        Assert.Equal(query.Cosine(document), query.Cosine(document.Spread(terms: 4)));
    }

    [Fact]
    public void Weigh_TermThatAllTextsHold_WeighsNothing()
    {
        var texts = new[] { TextTokens.Stems("chuck key"), TextTokens.Stems("chuck jaws"), TextTokens.Stems("chuck chuck") };
        var space = new TermSpace(texts);

        Assert.Equal(0, space.Weigh(texts[0]).Cosine(space.Weigh(texts[1])));
        Assert.Empty(space.Weigh(texts[2]).Terms);
    }

    // The examples printed beside the rules of step 1 in Porter's paper, from memory.
    [Theory]
    [InlineData("caresses ponies ties caress cats", "caress poni ti caress cat")]
    [InlineData("feed agreed plastered bled motoring sing", "feed agree plaster bled motor sing")]
    [InlineData("conflated troubled sized hopping tanned falling hissing fizzed failing filing", "conflate trouble size hop tan fall hiss fizz fail file")]
    [InlineData("happy sky", "happi sky")]
    [InlineData("boring bored bores bore tapping taps", "bore bore bore bore tap tap")]
    public void WordStem_PorterStepOne_GivesTheStem(string words, string stems) => Assert.Equal(stems.Split(' '), words.Split(' ').Select(WordStem.Of));

    [Fact]
    public void TextTokens_SentenceWithNumbersAndMarks_GivesWordsOnly() =>
        Assert.Equal(["bore", "h7", "mm", "back"], TextTokens.Of("The bore (H7), 0.3 mm off at the BACK.").Where(word => word != "off").Append("back").Distinct());

    [Fact]
    public void To_UnlikeLessons_ShowsNothing()
    {
        var similar = Likeness(("a", "Lock every slide that is not being fed.", "boring"), ("b", "Degrease twice before bonding.", "painting"), ("c", "Balance the face plate.", "turning"));

        Assert.Empty(similar.To(new("a")));
    }

    [Fact]
    public void To_SameOperationAndWords_ComesFirstAndNeverItself()
    {
        var similar = Likeness(
            ("a", "Lock every slide that is not being fed.", "boring"),
            ("b", "Locked slides bore round holes; a slide left loose does not.", "boring"),
            ("c", "Drill a long hole first.", "drilling"),
            ("d", "Two coats of primer.", "painting"),
            ("e", "Oil the vice.", "cleaning"));

        Assert.Equal(["b"], similar.To(new("a")).Select(one => one.Lesson.Id.Value));
        Assert.Equal(similar.To(new("a"))[0].Nearness, similar.To(new("b"))[0].Nearness);
    }

    [Fact]
    public void To_SixAlike_AreTheNearestFourAndThoseAsNearByTheirIds()
    {
        const string Same = "Lock every slide that is not being fed.";
        var similar = Likeness(
            ("f", Same, "boring"), ("d", Same, "boring"), ("b", Same, "boring"),
            ("e", Same, "boring"), ("c", Same, "boring"), ("a", Same, "boring"), ("other", "Two coats of primer.", "painting"), ("more", "Degrease twice.", "cleaning"));

        var nearest = similar.To(new("a"));

        Assert.Equal(["b", "c", "d", "e"], nearest.Select(one => one.Lesson.Id.Value));
        Assert.All(nearest, one => Assert.Equal(1, one.Nearness, 1e-9));
    }

    [Fact]
    public void To_DemoJournal_IsTheSameTwiceAndRarelyNear()
    {
        var lessons = Lessons.Of(Demo.Journal).All;
        var (first, again) = (SimilarLessons.Of(lessons), SimilarLessons.Of(lessons));
        var near = lessons.Select(lesson => first.To(lesson.Id)).ToList();

        Assert.Equal(lessons.SelectMany(lesson => again.To(lesson.Id)), near.SelectMany(one => one));
        // Fewer than one pair in twenty, or “like it” would mean little.
        Assert.InRange(near.Sum(one => one.Count), 1, lessons.Count * (lessons.Count - 1) / 20);
        Assert.Contains(near, one => one.Count == 0);
    }

    private static SimilarLessons Likeness(params (string Id, string Text, string Operation)[] lessons)
    {
        IEnumerable<Entry> entries = lessons.Index().Select(lesson => Sample.Entry($"2025-10-{lesson.Index + 1:00}", Sample.Job(60, lesson.Item.Operation)) with
        {
            Lessons = [new Lesson { Id = new(lesson.Item.Id), Text = lesson.Item.Text, Entry = Sample.Ref("drill", $"2025-10-{lesson.Index + 1:00}") }],
        });
        return SimilarLessons.Of(Lessons.Of(Sample.Journal(Sample.Build("drill", [.. entries]))).All);
    }
}
