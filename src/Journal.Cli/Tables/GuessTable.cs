using Journal.Core.Wording;
using System.Globalization;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Estimating;
using Journal.Core.Model;

namespace Journal.Cli.Tables;

/// <summary>Past guesses and hours in order of finishing, for people.</summary>
internal static class GuessTable
{
    // The latest ones show how guesses fare now; the rest is in JSON and on the timeline page.
    private const int Latest = 8;

    // From an eighth to eight times on a log scale, two cells for each doubling.
    private const int Cells = 12;

    /// <summary>The latest parts, each ratio as a figure and as a mark on a log scale, the habit, and what cannot be told.</summary>
    public static void Print(Estimate estimate, TitleBook titles, Printout print)
    {
        if (estimate.Guesses is not { } guesses)
        {
            return;
        }

        print.Heading("Your guesses over time");
        print.Table(
            [Column.Words("Part"), Column.Figures("Finished"), Column.Figures("Guess"), Column.Figures("Took"), Column.Figures("Times"), Column.Words("⅛     1     8")],
            guesses.Parts.TakeLast(Latest).Select(part => new[]
            {
                titles.Of(PartRef.Parse(part.Part)), Written.Date(part.Finished), EstimateWords.Hours(part.Guess), EstimateWords.Hours(part.Hours), Times(part.Ratio), Mark(part.Ratio),
            }));
        var earlier = guesses.Parts.Count - Latest;
        print.Say($"{(earlier > 0 ? $"And {Count.Of(earlier, "earlier part")}; `--format json` lists all. " : "")}Your habit: {Times(guesses.Habit)} times, and with eight chances in ten between {Times(guesses.HabitLow)} and {Times(guesses.HabitHigh)}.");
        print.Say(GuessesOverTime.WhatCannotBeTold, Ink.Faint);
    }

    private static string Times(double ratio) => ratio.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Mark(double ratio)
    {
        var at = Math.Clamp((int)Math.Round(Cells * (Math.Log2(ratio) + 3) / 6), 0, Cells);
        var line = new char[Cells + 1];
        Array.Fill(line, '·');
        line[Cells / 2] = '|';
        line[at] = 'o';
        return new string(line);
    }
}
