using System.Globalization;
using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>A part's hours against its guess.</summary>
/// <param name="Label">The part.</param>
/// <param name="Finished">The day it was finished.</param>
/// <param name="Guess">The hours guessed, more than 0.</param>
/// <param name="Taken">The hours taken, more than 0.</param>
/// <param name="Address">Its page, from the root of the site; null for none.</param>
internal sealed record GuessAndHours(string Label, DateOnly Finished, double Guess, double Taken, string? Address = null)
{
    /// <summary>Hours taken for an hour guessed.</summary>
    public double Ratio => Taken / Guess;
}

/// <summary>A ratio and how well it is known.</summary>
/// <param name="Middle">The ratio.</param>
/// <param name="Low">One in ten would lie below this.</param>
/// <param name="High">One in ten above this.</param>
internal sealed record RatioRange(double Middle, double Low, double High);

/// <summary>Hours taken for an hour guessed, part by part in order of finishing, on a log scale: twice as long lies as far above 1 as half as long below.</summary>
internal static class RatioChart
{
    private const double Height = 240;
    private const double Top = 20;
    private const double Base = Top + Height;

    /// <summary>Draws a dot for each part, the habit as a line and its doubt as a band.</summary>
    /// <param name="id">The chart's id, unique on its page.</param>
    /// <param name="title">What the chart shows.</param>
    /// <param name="description">What a reader who cannot see it should know.</param>
    /// <param name="parts">The parts in order of finishing.</param>
    /// <param name="habit">The maker's habit.</param>
    public static ChartView Draw(string id, string title, string description, IReadOnlyList<GuessAndHours> parts, RatioRange habit) => new(
        id,
        title,
        parts.Count == 0 ? Picture.Instead("No finished part had a guess yet.") : DrawAll(id, title, description, parts, habit),
        parts.Count == 0 ? SafeHtml.Empty : new("<p class=\"key\"><span>Dot: a part, the first finished at the left. Heavy line: the habit. Band: the habit is likely to lie in it, eight chances in ten.</span></p>"),
        Table(parts));

    private static SafeHtml DrawAll(string id, string title, string description, IReadOnlyList<GuessAndHours> parts, RatioRange habit)
    {
        var (least, greatest) = Doublings([.. parts.Select(part => part.Ratio), habit.Low, habit.High]);
        double Up(double ratio) => Base - (Height * (Math.Log2(ratio) - least) / (greatest - least));

        var picture = new Picture(id);
        picture.Block("area", 0, 100, Up(habit.High), Up(habit.Low) - Up(habit.High));
        for (var doubling = least; doubling <= greatest; doubling++)
        {
            var ratio = Math.Pow(2, doubling);
            picture.Level(doubling == 0 ? "axis" : "grid", 0, 100, Up(ratio));
            picture.Text("faint clear", 0, Up(ratio) - 4, doubling == 0 ? "as guessed" : $"{ChartText.Number(ratio)} times");
        }

        picture.Level("mid", 0, 100, Up(habit.Middle));
        for (var i = 0; i < parts.Count; i++)
        {
            picture.Dot("flag", Across(i, parts.Count), Up(parts[i].Ratio), 4.5);
        }

        picture.Text("faint", 0, Base + 18, ChartText.Date(parts[0].Finished));
        picture.Text("faint end", 100, Base + 18, ChartText.Date(parts[^1].Finished));
        return picture.Finish(title, description, Base + 24);
    }

    // Whole doublings that hold every ratio, from half to twice at least.
    private static (int Least, int Greatest) Doublings(IReadOnlyList<double> ratios) =>
        (Math.Min(-1, (int)Math.Floor(Math.Log2(ratios.Min()))), Math.Max(1, (int)Math.Ceiling(Math.Log2(ratios.Max()))));

    // Room at the left for the lettering; one part alone stands in the middle.
    private static double Across(int i, int count) => count == 1 ? 50 : 20 + (78.0 * i / (count - 1));

    private static Minutes Time(double hours) => new((int)Math.Round(60 * hours, MidpointRounding.AwayFromZero));

    private static ChartTable Table(IReadOnlyList<GuessAndHours> parts) => new(
        ["Part", "Finished", "Guess", "Taken", "Taken / guess"],
        [.. parts.Select(part => new ChartRow(
            part.Label,
            [ChartText.Date(part.Finished), ChartText.Hours(Time(part.Guess)), ChartText.Hours(Time(part.Taken)), part.Ratio.ToString("0.00", CultureInfo.InvariantCulture)],
            part.Address))]);
}
