using Journal.Core.Estimating;
using Journal.Core.Model;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>Past guesses and hours in order of finishing.</summary>
public sealed class GuessesOverTimeTests
{
    [Fact]
    public void Of_FinishedParts_StandInTheOrderOfFinishingWithTheirRatios()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.UnderWay, [Part("head", 4), Part("cap"), Part("quill", 2), Part("table", 3)],
            ("2025-03-01", "head", "boring", 5, null),
            ("2025-03-02", "quill", "turning", 1, "quill"),
            ("2025-03-03", "cap", "turning", 9, "cap"),
            ("2025-03-04", "head", "boring", 1, "head"),
            ("2025-03-05", "table", "boring", 1, null)).Journal();

        var guesses = GuessesOverTime.Of(journal, Day("2026-01-05"))!;

        Assert.Equal(
            [new GuessAndTaken("drill/quill", Day("2025-03-02"), 2, 1, 0.5), new GuessAndTaken("drill/head", Day("2025-03-04"), 4, 6, 1.5)],
            guesses.Parts);
    }

    // One part alone is its own Q, so x = ln g and r = ln(h/g); with n_e = 1: s² = 10 · 0.65² / 10, V = 1 / (1/s² + 1/0.2²),
    // a = V r / s². The habit is known to within exp(± 1.2816 √V) eight times in ten.
    [Fact]
    public void Of_OnePart_HasTheHabitAndItsDoubtAsByHand()
    {
        var journal = new Shop().With("drill", BuildStatus.UnderWay, [Part("head", 4)], ("2025-03-01", "head", "boring", 8, "head")).Journal();
        var doubt = 1 / ((1 / (0.65 * 0.65)) + 25);
        var habit = doubt * Math.Log(2) / (0.65 * 0.65);

        var guesses = GuessesOverTime.Of(journal, Day("2026-01-05"))!;

        Assert.Equal(Math.Exp(habit), guesses.Habit, 0.0006);
        Assert.Equal(Math.Exp(habit - (1.2816 * Math.Sqrt(doubt))), guesses.HabitLow, 0.0006);
        Assert.Equal(Math.Exp(habit + (1.2816 * Math.Sqrt(doubt))), guesses.HabitHigh, 0.0006);
    }

    [Fact]
    public void Of_NoGuesses_IsNothing() =>
        Assert.Null(GuessesOverTime.Of(new Shop().WithDrill(3, guesses: false).Journal(), Day("2026-01-05")));
}
