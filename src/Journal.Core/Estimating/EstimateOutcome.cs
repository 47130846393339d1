using Journal.Core.Model;
using Journal.Core.Statistics;

namespace Journal.Core.Estimating;

/// <summary>
/// How the estimate of a plan did, once its build is finished: where in their ranges the true hours and the true day fell
/// (docs/estimating.md, After the build).
/// </summary>
/// <param name="Foreseen">The estimate as it stood on the day before the work began.</param>
/// <param name="Hours">The hours it took; without the work on the whole where the estimate did not include it.</param>
/// <param name="HoursPlace">The share of the draws that took less, 0 to 1.</param>
/// <param name="IsWholeLeftOut">Whether the hours are those of the parts alone.</param>
/// <param name="Day">The day of the last evening.</param>
/// <param name="DayPlace">The share of the draws that were done before that day; null where nothing was known of the pace.</param>
/// <param name="Parts">Each part of the plan on which time was spent, in the order of the plan.</param>
public sealed record EstimateOutcome(
    Estimate Foreseen, double Hours, double HoursPlace, bool IsWholeLeftOut, DateOnly Day, double? DayPlace, IReadOnlyList<PartOutcome> Parts)
{
    /// <summary>How a plan's estimate did; null where there was none, or its build is not finished or has no evenings.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="journal">The journal.</param>
    /// <param name="draws">How many possible builds are drawn.</param>
    public static EstimateOutcome? Of(Plan plan, MakerJournal journal, int draws = 10_000)
    {
        if (journal.BegunAs(plan) is not { Status: BuildStatus.Finished, Entries.Count: > 0 } build
            || Estimate.Of(journal, plan, new EstimateOptions { Today = EveOf(build), Draws = draws }).Estimate is not { } foreseen)
        {
            return null;
        }

        var taken = EstimateSubject.Of(journal, build.Id);
        var isWholeLeftOut = foreseen.Whole.P50 is null;
        var hours = (isWholeLeftOut ? taken.Spent.Values.Sum() : taken.SpentInAll).InHours;
        var day = build.Entries[^1].Date;
        return new EstimateOutcome(
            foreseen,
            Rounded.Hours(hours),
            Rounded.Share(ShareBelow(foreseen.Totals, hours)),
            isWholeLeftOut,
            day,
            foreseen.Days.Count == 0 ? null : Rounded.Share(ShareBelow(foreseen.Days, day)),
            [.. foreseen.Parts.Select(part => PartOutcome.Of(part, taken.SpentOn(new(part.Part)))).OfType<PartOutcome>()]);
    }

    /// <summary>The day before a build was begun, which must have an entry; that day itself where the calendar has no earlier one.</summary>
    public static DateOnly EveOf(Build build)
    {
        var begun = build.Started ?? build.Entries[0].Date;
        return begun > DateOnly.MinValue ? begun.AddDays(-1) : begun;
    }

    private static double ShareBelow<T>(IReadOnlyCollection<T> drawn, T happened)
        where T : IComparable<T> => (double)drawn.Count(one => one.CompareTo(happened) < 0) / drawn.Count;
}

/// <summary>A part's range as it was foreseen, and what it took.</summary>
/// <param name="Foreseen">Its range.</param>
/// <param name="Hours">The hours it took, to a thousandth.</param>
/// <param name="Place">Where in its distribution that fell, 0 to 1: the chance that was given to taking less.</param>
public sealed record PartOutcome(PartEstimate Foreseen, double Hours, double Place)
{
    /// <summary>Whether it fell in the range for eight in ten.</summary>
    public bool Held => Place is >= 0.1 and <= 0.9;

    // Hours are given to a thousandth.
    private const double Least = 0.001;

    // A part not begun is log-normal, so its range gives the whole distribution.
    /// <summary>How the range of a part that was not begun compares with the time it took; null where it took none.</summary>
    internal static PartOutcome? Of(PartEstimate foreseen, Minutes time)
    {
        if (time == Minutes.Zero)
        {
            return null;
        }

        var scale = SameEverywhere.Ln(foreseen.P90 / Math.Max(foreseen.P10, Least)) / (2 * StandardNormal.Quantile(0.9));
        var off = SameEverywhere.Ln(time.InHours / Math.Max(foreseen.P50, Least));
        return new PartOutcome(foreseen, Rounded.Hours(time.InHours), Rounded.Share(StandardNormal.Below(off / scale)));
    }
}
