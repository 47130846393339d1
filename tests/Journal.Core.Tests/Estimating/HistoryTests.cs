using Journal.Core.Estimating;
using Journal.Core.Model;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>Which parts an estimate rests on, with their hours and guesses.</summary>
public sealed class HistoryTests
{
    [Fact]
    public void Of_PartsFinishedOutOfOrder_ComeInTheOrderOfFinishing()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.UnderWay, [Part("head", 9), Part("quill"), Part("cap")],
            ("2025-03-01", "head", "boring", 4, null),
            ("2025-03-02", "quill", "turning", 2, "quill"),
            ("2025-03-05", "head", "boring", 6.5, "head"),
            ("2025-03-06", "cap", "turning", 1, null)).Journal();

        var history = History.Of(journal, Day("2025-04-01"));

        Assert.Equal(["drill/quill", "drill/head"], history.Parts.Select(part => part.Ref.ToString()));
        Assert.Equal([null, 9.0], history.Parts.Select(part => part.GuessHours));
        Assert.Equal(new Minutes(12 * 60 + 30), history.Minutes);
    }

    [Fact]
    public void Of_AnEarlierDay_KnowsNothingOfWhatCameLater()
    {
        var journal = new Shop().WithDrill(4).Journal();

        Assert.Equal(4, History.Of(journal, Day("2025-12-31")).Parts.Count);
        Assert.Equal(2, History.Of(journal, Day("2025-01-16")).Parts.Count);
        Assert.False(History.Of(journal, Day("2025-01-16")).Builds[0].IsFinished);
        Assert.Empty(History.Of(journal, Day("2025-01-01")).Parts);
    }

    [Fact]
    public void Of_AFinishedBuild_CountsItsPartsAsFinishedOnTheirLastDay()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.Finished, [Part("head"), Part("quill"), Part("never-made")],
            ("2025-03-01", "quill", "turning", 2, null),
            ("2025-03-03", "head", "boring", 4, null),
            ("2025-03-09", "whole", "painting", 3, null)).Journal();

        var history = History.Of(journal, Day("2025-04-01"));

        Assert.Equal([("drill/quill", Day("2025-03-01")), ("drill/head", Day("2025-03-03"))], history.Parts.Select(part => (part.Ref.ToString(), part.Finished)));
        Assert.Equal((new Minutes(360), new Minutes(180)), (history.Builds[0].OnParts, history.Builds[0].OnWhole));
    }

    [Fact]
    public void Of_FixturesOnAPart_AreKnownApart()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.Finished, [Part("head", 4)],
            ("2025-03-01", "head", "fixture-making", 2.5, null),
            ("2025-03-02", "head", "boring", 4, "head")).Journal();

        Assert.Equal(new Minutes(150), History.Of(journal, Day("2025-04-01")).Parts[0].FixturesAndPuttingRight);
    }

    [Fact]
    public void Of_AGuessForOnePieceOfSix_IsForEachPiece()
    {
        var screws = Part("screws", quantity: 6) with { Guess = new Guess { Likely = Time(2.5), ByOperation = [(new("turning"), Time(1)), (new("boring"), Time(1.5))], ForOnePiece = true } };
        var journal = new Shop().With("drill", BuildStatus.Finished, [screws], ("2025-03-01", "screws", "turning", 10, "screws")).Journal();

        Assert.Equal(15, History.Of(journal, Day("2025-04-01")).Parts[0].GuessHours);
    }
}
