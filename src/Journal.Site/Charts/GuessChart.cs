using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>Hours taken beside hours guessed.</summary>
/// <param name="Label">What they were for.</param>
/// <param name="Taken">The hours taken.</param>
/// <param name="Guess">The hours guessed before the work; null for none.</param>
/// <param name="Address">Its page, from the root of the site; null for none.</param>
internal sealed record TakenAndGuess(string Label, Minutes Taken, Minutes? Guess, string? Address = null);

/// <summary>Hours taken against hours guessed: a bar, and the guess under it as a dimension line.</summary>
internal static class GuessChart
{
    private const double RowHeight = 68;
    private const double RowHeightWithoutGuess = 38;

    /// <summary>A dimension line shorter than this has its lettering beside it, in per cent.</summary>
    private const double RoomForGuess = 28;

    /// <summary>Draws bars and guesses, in the order given; the smaller ones beyond 24 are left to the table.</summary>
    public static ChartView Draw(string id, string title, string description, IReadOnlyList<TakenAndGuess> items, string what = "Part") => new(
        id,
        title,
        items.Count == 0 ? Picture.Instead("No hours to compare with a guess yet.") : DrawAll(id, title, description, items),
        SafeHtml.Empty,
        Table(items, what));

    private static SafeHtml DrawAll(string id, string title, string description, IReadOnlyList<TakenAndGuess> items)
    {
        var fold = Fold<TakenAndGuess>.Greatest(items, Longest);
        var greatest = Math.Max(fold.Shown.Max(Longest), 1);
        var rows = LabelRow.Stack(
            fold.Shown,
            item => item.Label,
            item => ChartText.Hours(item.Taken),
            item => item.Guess is null ? RowHeightWithoutGuess : RowHeight);

        var picture = new Picture(id);
        foreach (var (item, row) in fold.Shown.Zip(rows))
        {
            row.Draw(picture);
            picture.Hatched("bar", Hatch.Work, 0, 100.0 * item.Taken.Count / greatest, row.Baseline + 6, 11);
            if (item.Guess is { } guess)
            {
                DrawGuess(picture, guess, 100.0 * guess.Count / greatest, row.Baseline);
            }
        }

        return picture.Finish(title, description, rows[^1].Bottom + fold.DrawRest(picture, rows[^1].Bottom));
    }

    /// <summary>The guess as a dimension, its value over the line (ISO 129-1), or beside it where it is short.</summary>
    private static void DrawGuess(Picture picture, Minutes guess, double length, double baseline)
    {
        var beside = length < RoomForGuess;
        picture.Upright("axis", 0, baseline + 18, baseline + 43);
        picture.Upright("axis", length, baseline + 4, baseline + 43);
        picture.Dimension(0, length, baseline + 38);
        picture.Text(beside ? "faint clear" : "faint clear middle", beside ? length : length / 2, baseline + (beside ? 42 : 33), $"guess {ChartText.Hours(guess)}", beside ? 6 : 0);
    }

    private static double Longest(TakenAndGuess item) => Math.Max(item.Taken.Count, item.Guess?.Count ?? 0);

    private static ChartTable Table(IReadOnlyList<TakenAndGuess> items, string what) => new(
        [what, "Taken", "Guess", "Taken / guess"],
        [.. items.Select(item => new ChartRow(item.Label, [ChartText.Hours(item.Taken), ChartText.Hours(item.Guess), ChartText.Ratio(item.Taken, item.Guess)], item.Address))]);
}
