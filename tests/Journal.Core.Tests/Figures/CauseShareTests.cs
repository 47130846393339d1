using CsCheck;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class CauseShareTests
{
    // The check sheet of 166 defects in D. C. Montgomery, Introduction to Statistical Quality Control (2005), its counts as
    // quoted by a manual on Pareto analysis that was looked up (one name changed); the percentages are worked by hand from them.
    private static readonly (string Cause, int Count)[] CheckSheet =
    [
        ("parts-damaged", 34), ("machining-problems", 29), ("supplied-parts-rusted", 13), ("masking-insufficient", 17), ("misaligned-weld", 2),
        ("processing-out-of-order", 4), ("wrong-part-issued", 3), ("unfinished-fairing", 3), ("adhesive-failure", 6), ("powdery-primer", 1),
        ("paint-out-of-limits", 2), ("paint-damaged-by-etching", 1), ("film-on-parts", 5), ("primer-cans-damaged", 1), ("voids-in-casting", 2),
        ("delaminated-composite", 2), ("incorrect-dimensions", 36), ("improper-test-procedure", 1), ("salt-spray-failure", 4),
    ];

    [Fact]
    public void ByCount_PublishedCheckSheet_GivesItsParetoOrderAndShares()
    {
        var causes = CauseShare.ByCount(Counted(CheckSheet), Knowing(CheckSheet));

        Assert.Equal(166, causes.Sum(cause => cause.Mistakes));
        Assert.Equal(
            ["incorrect-dimensions", "parts-damaged", "machining-problems", "masking-insufficient", "supplied-parts-rusted", "adhesive-failure", "film-on-parts"],
            causes.Take(7).Select(cause => cause.Cause!.Value.Value));
        Assert.Equal([21.69, 20.48, 17.47, 10.24, 7.83, 3.61, 3.01], causes.Take(7).Select(cause => Math.Round(100 * cause.Share, 2)));
        Assert.Equal([21.69, 42.17, 59.64, 69.88, 77.71, 81.33, 84.34], causes.Take(7).Select(cause => Math.Round(100 * cause.Cumulative, 2)));
        Assert.Equal(1.0, causes[^1].Cumulative);
    }

    [Fact]
    public void ByMinutes_Ties_GoByCountThenVocabularyThenNoCause()
    {
        var mistakes = new[] { ("haste", 30), ("handling", 15), ("handling", 15), ("measuring", 30), (null, 30), ("datum-choice", 40) };

        var causes = CauseShare.ByMinutes(MistakesOf(mistakes), Sample.Vocabulary);

        Assert.Equal(["datum-choice", "handling", "measuring", "haste", null], causes.Select(cause => cause.Cause?.Value));
        Assert.Equal([0.25, 0.4375, 0.625, 0.8125, 1.0], causes.Select(cause => cause.Cumulative));
    }

    [Fact]
    public void ByMinutes_NothingLost_HasZeroSharesThroughout()
    {
        var causes = CauseShare.ByMinutes(MistakesOf([("haste", 0), ("measuring", 0)]), Sample.Vocabulary);

        Assert.Equal([("measuring", 1, 0.0, 0.0), ("haste", 1, 0.0, 0.0)], causes.Select(cause => (cause.Cause!.Value.Value, cause.Mistakes, cause.Share, cause.Cumulative)));
    }

    [Fact]
    public void Of_AnyJournal_SharesFallAndGatherToOne() => Generated.Journals.Sample(journal =>
    {
        var lessons = Lessons.Of(journal);
        foreach (var causes in new[] { lessons.CausesByMinutes, lessons.CausesByCount }.Where(causes => causes.Any(cause => cause.Share > 0)))
        {
            Assert.Equal(1.0, causes[^1].Cumulative);
            Assert.All(causes.Zip(causes.Skip(1)), pair => Assert.True(pair.First.Share >= pair.Second.Share && pair.First.Cumulative <= pair.Second.Cumulative));
        }
    });

    private static IReadOnlyList<MistakeCost> Counted((string Cause, int Count)[] sheet) =>
        MistakesOf([.. sheet.SelectMany(line => Enumerable.Repeat<(string?, int)>((line.Cause, 1), line.Count))]);

    private static IReadOnlyList<MistakeCost> MistakesOf((string? Cause, int Lost)[] mistakes) =>
        MistakeCost.Of(Sample.Journal(Sample.Build("drill", Sample.Entry("2025-10-03") with
        {
            Mistakes = [.. mistakes.Select(mistake => new Mistake { What = "It went wrong.", Lost = new(mistake.Lost), Cause = mistake.Cause is null ? null : new(mistake.Cause) })],
        })));

    private static Vocabulary Knowing((string Cause, int Count)[] sheet) => Sample.Vocabulary with
    {
        Causes = WordList<Cause>.Of(sheet.Select(line => (new Id<Cause>(line.Cause), new Cause(new(line.Cause), line.Cause), (IReadOnlyList<string>)[]))),
    };
}
