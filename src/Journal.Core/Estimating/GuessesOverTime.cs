using Journal.Core.Estimating.Method;
using Journal.Core.Model;
using Journal.Core.Statistics;

namespace Journal.Core.Estimating;

/// <summary>
/// Each finished part's hours against its first guess in order of finishing, with the habit and its range: a series and no
/// verdict (docs/estimating.md, How far guesses ran over).
/// </summary>
/// <param name="Parts">The parts that had a guess, in the order of finishing.</param>
/// <param name="Habit">The habit now, exp(a): hours taken for an hour of reference, which is nearly the guess.</param>
/// <param name="HabitLow">One habit in ten would lie below this.</param>
/// <param name="HabitHigh">One in ten above this.</param>
public sealed record GuessesOverTime(IReadOnlyList<GuessAndTaken> Parts, double Habit, double HabitLow, double HabitHigh)
{
    /// <summary>What the series cannot tell, in words that stand beneath it.</summary>
    public const string WhatCannotBeTold =
        "Whether guesses get better cannot be told from fewer than about a hundred parts, nor whether one maker gets quicker at an operation. This is what happened, and no verdict.";

    /// <summary>The series as a journal stood on a day; null without a finished part that had a guess.</summary>
    public static GuessesOverTime? Of(MakerJournal journal, DateOnly today) => Of(History.Of(journal, today));

    /// <summary>The series of a history; null where none of its parts had a guess.</summary>
    internal static GuessesOverTime? Of(History history)
    {
        List<HistoryPart> guessed = [.. history.Parts.Where(part => part.GuessHours is not null)];
        if (guessed.Count == 0)
        {
            return null;
        }

        var habit = new Maker(history.ForMethod()).WithGuesses;
        double At(double share) => Rounded.Share(SameEverywhere.Exp(habit.Shift + (Math.Sqrt(habit.ShiftVariance) * StandardNormal.Quantile(share))));
        return new GuessesOverTime([.. guessed.Select(GuessAndTaken.Of)], At(0.5), At(0.1), At(0.9));
    }
}

/// <summary>A finished part's first guess and what it took.</summary>
/// <param name="Part">The part, as <c>build/part</c>.</param>
/// <param name="Finished">The day it was finished.</param>
/// <param name="Guess">Hours guessed for all its pieces.</param>
/// <param name="Hours">Hours taken.</param>
/// <param name="Ratio">Hours taken for an hour guessed.</param>
public sealed record GuessAndTaken(string Part, DateOnly Finished, double Guess, double Hours, double Ratio)
{
    /// <summary>The line of a part, which must have a guess.</summary>
    internal static GuessAndTaken Of(HistoryPart part) => new(
        part.Ref.ToString(),
        part.Finished,
        Rounded.Hours(part.GuessHours!.Value),
        Rounded.Hours(part.Minutes.InHours),
        Rounded.Share(part.Minutes.InHours / part.GuessHours.Value));
}
