using System.Globalization;
using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>How the estimate of a plan did, once its build is finished.</summary>
/// <param name="Words">A text on the hours, and one on the day where the pace was known.</param>
/// <param name="Parts">Each part's range with what it took; null without parts.</param>
public sealed record OutcomeView(IReadOnlyList<string> Words, ChartView? Parts)
{
    /// <summary>Of a build; null where it is not finished or had no plan that is shown.</summary>
    internal static OutcomeView? Of(SiteFigures figures, Build build) =>
        figures.ShownPlans.FirstOrDefault(plan => plan.Id.Value == build.Id.Value) is { } plan && EstimateOutcome.Of(plan, figures.Journal) is { } outcome
            ? new OutcomeView([.. WordsOn(outcome)], PartsOf(figures, build, outcome))
            : null;

    private static IEnumerable<string> WordsOn(EstimateOutcome outcome)
    {
        var (hours, finish) = (outcome.Foreseen.Hours, outcome.Foreseen.Finish);
        var what = outcome.IsWholeLeftOut ? "The parts" : "It";
        yield return $"Foreseen on the eve of the work: {EstimateWords.Hours(hours.P50)} at even odds, {EstimateWords.Hours(hours.P80)} eight times in ten. "
            + $"{what} took {EstimateWords.Hours(outcome.Hours)}: of a hundred such builds {InAHundred(outcome.HoursPlace)} would have taken less.";
        if (finish is { P50: { } half, P80: { } eight } && outcome.DayPlace is { } place)
        {
            yield return $"It was to be finished by {Show.PlainDate(half)} at even odds, by {Show.PlainDate(eight)} eight times in ten. "
                + $"It was finished on {Show.PlainDate(outcome.Day)}: of a hundred {InAHundred(place)} would have been done before.";
        }
    }

    /// <summary>A share from 0 to 1 as words for so many in a hundred, such as <c>about 62</c>.</summary>
    internal static string InAHundred(double place) => Math.Round(100 * place) switch
    {
        < 1 => "hardly one",
        > 99 => "nearly all",
        var count => $"about {count.ToString(CultureInfo.InvariantCulture)}",
    };

    private static ChartView? PartsOf(SiteFigures figures, Build build, EstimateOutcome outcome) => outcome.Parts.Count == 0 ? null : BacktestChart.Draw(
        "outcome",
        "Each part: the range foreseen, and what it took",
        $"The ranges foreseen for the parts of {build.Title} on the eve of the work, and the hours that they took.",
        [
            .. outcome.Parts.Select(part => (figures.Link(new PartRef(build.Id, new(part.Foreseen.Part))), part))
                .Select(pair => new ForecastAndTaken(
                    pair.Item1.Text, Time(pair.part.Foreseen.P10), Time(pair.part.Foreseen.P50), Time(pair.part.Foreseen.P90), Time(pair.part.Hours), pair.Item1.Address)),
        ]);

    private static Minutes Time(double hours) => new((int)Math.Round(60 * hours, MidpointRounding.AwayFromZero));
}
