using System.Globalization;
using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>Own guesses over time: each finished part's hours against its guess, and what that cannot tell.</summary>
public sealed record GuessesView(ChartView Chart, string Habit, string NotTold)
{
    /// <summary>Of the journal as the date of its latest entry sees it; null without a finished part that had a guess.</summary>
    internal static GuessesView? Of(SiteFigures figures)
    {
        if (figures.Journal.LatestDate is not { } today || GuessesOverTime.Of(figures.Journal, today) is not { } guesses)
        {
            return null;
        }

        var habit = $"The habit is {Times(guesses.Habit)} times the guess, and with eight chances in ten between {Times(guesses.HabitLow)} and {Times(guesses.HabitHigh)}.";
        return new GuessesView(
            RatioChart.Draw(
                "guesses",
                "Hours taken for an hour guessed, in order of finishing",
                $"{Show.Count(guesses.Parts.Count, "part", "parts")} with a guess, on a log scale. {habit}",
                [.. guesses.Parts.Select(part => PartOf(figures, part))],
                new RatioRange(guesses.Habit, guesses.HabitLow, guesses.HabitHigh)),
            habit,
            GuessesOverTime.WhatCannotBeTold);
    }

    private static GuessAndHours PartOf(SiteFigures figures, GuessAndTaken taken)
    {
        var link = figures.Link(PartRef.Parse(taken.Part));
        return new(link.Text, taken.Finished, taken.Guess, taken.Hours, link.Address);
    }

    private static string Times(double ratio) => ratio.ToString("0.00", CultureInfo.InvariantCulture);
}
