using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>A plan on the front page.</summary>
/// <param name="Kind">How far it is, in a word.</param>
/// <param name="Link">Its estimate sheet.</param>
/// <param name="Gist">The estimate in a sentence; null where there is none.</param>
public sealed record PlanCardView(string Kind, LinkView Link, string? Gist)
{
    /// <summary>The card of a plan, which must be shown.</summary>
    internal static PlanCardView Of(SiteFigures figures, Plan plan)
    {
        var forecast = figures.Forecast(plan);
        return new(PlanPage.StateWords(forecast.Build), new LinkView(plan.Title, Addresses.Of(plan.Id)), PlanPage.GistOf(figures, forecast));
    }
}

/// <summary>A line of the plan.</summary>
/// <param name="Part">The part with its number of pieces; a link where its build has a sheet for it.</param>
/// <param name="Material">Material and stock; null where neither is given or the part may not be named.</param>
/// <param name="Operations">What is to be done; a dash where that is not given or may not be told.</param>
/// <param name="Guess">The maker's own guess and second guess; a dash for none.</param>
/// <param name="Basis">What the estimate of the part rests on; empty where there is no estimate.</param>
/// <param name="Like">The finished part that it is said to be like; null for none.</param>
public sealed record PlannedPartView(LinkView Part, string? Material, string Operations, string Guess, string Basis, LinkView? Like);

/// <summary>An estimate sheet: what a plan, or what is left of a build, will take, and what that rests on.</summary>
public sealed record PlanPage(
    PageFrame Frame,
    string Kind,
    string? Gist,
    IReadOnlyList<FactView> Facts,
    IReadOnlyList<string> Notes,
    ChartView? Ranges,
    IReadOnlyList<PlannedPartView> Parts,
    string Guessed,
    ChartView? ChanceOfHours,
    ChartView? ChanceOfDays,
    IReadOnlyList<string> Ground,
    ChartView? Backtest,
    IReadOnlyList<ToolLineView> ToolsToFind,
    IReadOnlyList<ToolLineView> ToolsAtHand,
    IReadOnlyList<CautionView> Cautions,
    IReadOnlyList<CautionView> MoreCautions)
{
    private const int MostTools = 16;

    /// <summary>The estimate sheet of a plan, which must be shown; once its build is begun, it is about that build.</summary>
    internal static PlanPage Of(SiteFigures figures, Plan plan)
    {
        var (views, forecast) = (new SharedViews(figures, Addresses.Of(plan.Id)), figures.Forecast(plan));
        var estimate = forecast.Result.Estimate;
        var gist = GistOf(figures, forecast);
        var (serious, tools) = (forecast.Preparation.MostSerious, forecast.Preparation.Tools.Where(tool => figures.Visibility.Shows(tool.Tool.Id)).ToList());
        return new PlanPage(
            views.Frame(
                "estimate",
                plan.Title,
                $"{plan.Title}: hours and dates with ranges, from this maker’s own history. {gist}",
                forecast.Build is { } build ? [SharedViews.FrontCrumb, SharedViews.Crumb(build)] : [SharedViews.FrontCrumb],
                TitleBlock(views, plan, forecast)),
            $"{StateWords(forecast.Build)} · estimate sheet",
            gist,
            estimate is null ? [] : [.. FactsOf(figures, forecast, estimate)],
            [.. forecast.Result.Faults.Select(fault => $"No estimate yet. {fault.Message}"), .. estimate is null ? [] : RemarksOn(figures, forecast, estimate)],
            estimate is null ? null : RangesOf(figures, forecast, estimate),
            [.. forecast.Parts.Select(part => Line(figures, forecast, estimate, part)), .. WholeLine(figures, forecast, estimate)],
            GuessedInAll(forecast) is { } guess ? Show.Hours(guess) : "–",
            estimate is null ? null : HoursChart(estimate),
            estimate is null || !forecast.HasDates ? null : DaysChart(estimate),
            estimate is null ? [] : [.. GroundOf(figures, forecast, estimate)],
            estimate is null ? null : BacktestOf(figures, estimate),
            [.. tools.Where(tool => tool.Missing is not null).Select(tool => ToolLine(figures, tool))],
            [.. tools.Where(tool => tool.Missing is null).Take(MostTools).Select(tool => ToolLine(figures, tool))],
            views.Cautions(serious),
            views.Cautions(forecast.Preparation.Cautions.Except(serious)));
    }

    /// <summary>How far a plan is, in a word: a plan until its build is begun, then what the build is.</summary>
    internal static string StateWords(Build? build) => build is null ? "Plan" : BuildPage.StatusWords(build.Status);

    /// <summary>The estimate in one sentence; of a finished build, what was estimated and what it took. Null where there is no estimate.</summary>
    internal static string? GistOf(SiteFigures figures, PlanForecast forecast)
    {
        if (forecast.Result.Estimate is not { } estimate)
        {
            return null;
        }

        if (forecast.IsFinished)
        {
            return $"Estimated: {EstimateWords.Hours(estimate.Hours.P50)} at even odds (50 %), {EstimateWords.Hours(estimate.Hours.P80)} at eight in ten (80 %). It took {Show.Hours(Taken(figures, forecast.Build!))}.";
        }

        var odds = EstimateWords.Odds(forecast.HasDates ? estimate : estimate with { Finish = null }, Show.PlainDate);
        return EstimateWords.Guesses(estimate, "the maker’s guesses") is { } guesses ? $"{odds} {guesses}" : odds;
    }

    private static Minutes Taken(SiteFigures figures, Build build) => figures.Hours.Builds.First(one => one.Build == build.Id).Minutes;

    private static TitleBlockView TitleBlock(SharedViews views, Plan plan, PlanForecast forecast)
    {
        var estimate = forecast.Result.Estimate;
        return new TitleBlockView
        {
            Title = plan.Title,
            Supplementary = estimate is null ? "No estimate yet" : $"Estimate from {Show.Count(estimate.History.Parts, "finished part", "finished parts")}",
            DocumentType = "Estimate sheet",
            Status = forecast.Build is null ? "In preparation" : StateWords(forecast.Build),
            Identification = plan.Id.Value,
            Issued = views.LatestDate(views.Figures.Journal.Entries),
            More = estimate is null || !forecast.HasDates ? [] :
            [
                new FactView("Dates from", Show.Date(estimate.Start)),
                new FactView("Hours a week", estimate.HoursAWeek is { } pace ? Show.Hours(Time(pace)) : "–"),
                new FactView("Seed", Show.Number(estimate.Seed)),
            ],
        };
    }

    private static IEnumerable<FactView> FactsOf(SiteFigures figures, PlanForecast forecast, Estimate estimate)
    {
        if (estimate.MinutesSoFar is { } spent)
        {
            yield return new FactView("So far", Show.Hours(new Minutes(spent)));
        }

        if (forecast.IsFinished)
        {
            yield return new FactView("Taken", Show.Hours(Taken(figures, forecast.Build!)));
        }

        if (GuessedInAll(forecast) is { } guess)
        {
            yield return new FactView("Own guess", Show.Hours(guess));
        }

        yield return new FactView("1 in 10 under", EstimateWords.Hours(estimate.Hours.P10));
        yield return new FactView("Half under", EstimateWords.Hours(estimate.Hours.P50));
        yield return new FactView("8 in 10 under", EstimateWords.Hours(estimate.Hours.P80));
        yield return new FactView("9 in 10 under", EstimateWords.Hours(estimate.Hours.P90));
        foreach (var (day, chance) in forecast.HasDates && estimate.Finish is { } finish ? new[] { (finish.P50, "even odds"), (finish.P80, "8 in 10") } : [])
        {
            yield return new FactView("Done by", day is { } known ? Show.Date(known) : "–", chance);
        }
    }

    // All guesses together; null where a part has none, since a sum of some would read as a guess for all.
    private static Minutes? GuessedInAll(PlanForecast forecast) =>
        forecast.Parts.Count == 0 || forecast.Parts.Any(part => part.Guess is null) ? null
        : forecast.Parts.Sum(part => Time(part.Guess!.ForAll(part.Quantity))) + forecast.Whole.Values.Sum();

    private static Minutes Time(Guess guess) => new((int)Math.Round(guess.MeanMinutes, MidpointRounding.AwayFromZero));

    private static Minutes Time(double hours) => new((int)Math.Round(60 * hours, MidpointRounding.AwayFromZero));

    // The plan names its own parts; a part that only its build has may be known from hidden evenings alone.
    private static bool IsTold(SiteFigures figures, PlanForecast forecast, Part part) =>
        SheetOf(forecast, part) is not null || forecast.Plan.Parts.Any(planned => planned.Id == part.Id);

    private static PartRef? SheetOf(PlanForecast forecast, Part part) => forecast.Build is { } build && build.HasPart(part.Id) ? new PartRef(build.Id, part.Id) : null;

    private static string TitleOf(SiteFigures figures, PlanForecast forecast, Part part) => IsTold(figures, forecast, part) ? part.Title : "An unpublished part";

    private static LinkView LinkOf(SiteFigures figures, PlanForecast forecast, Part part)
    {
        var title = TitleOf(figures, forecast, part);
        return new(part.Quantity == 1 ? title : $"{title}, {Show.Number(part.Quantity)} off", SheetOf(forecast, part) is { } sheet ? Addresses.Of(sheet) : null);
    }

    private static IEnumerable<string> RemarksOn(SiteFigures figures, PlanForecast forecast, Estimate estimate) => estimate.Remarks.Except(
        forecast.Parts.Where(part => part.Like is { } like && !IsTold(figures, forecast, part)).Select(Remarks.OnLike));

    private static ChartView RangesOf(SiteFigures figures, PlanForecast forecast, Estimate estimate)
    {
        var links = forecast.Parts.ToDictionary(part => part.Id.Value, part => LinkOf(figures, forecast, part));
        var ranges = estimate.Parts.Select(part => new HoursRange(
            links[part.Part].Text, Time(part.P10), Time(part.P50), Time(part.P90), (part.Reguess ?? part.Guess) is { } guess ? Time(guess) : null, links[part.Part].Address));
        if (estimate.Whole is { P10: { } low, P50: { } middle, P90: { } high })
        {
            var guess = forecast.Whole.Values.Sum();
            ranges = ranges.Append(new HoursRange("Build as a whole", Time(low), Time(middle), Time(high), guess == Minutes.Zero ? null : guess));
        }

        return RangeChart.Draw("ranges", "Hours by part, with ranges", $"For each part the hours that are enough in 1 of 10 and in 9 of 10 cases, with the maker’s own guess. Most of the uncertainty comes from {MostUncertain(figures, forecast, estimate)}.", [.. ranges]);
    }

    private static string MostUncertain(SiteFigures figures, PlanForecast forecast, Estimate estimate) => string.Join(", ", estimate.MostUncertain.Select(one =>
        one.Part == "whole" ? "the build as a whole" : Casing.Lower(TitleOf(figures, forecast, forecast.Parts.First(part => part.Id.Value == one.Part)))));

    private static PlannedPartView Line(SiteFigures figures, PlanForecast forecast, Estimate? estimate, Part part)
    {
        var like = part.Like is { } named && figures.Journal.Builds.Any(build => build.Id == named.Build && build.HasPart(named.Part)) ? named : (PartRef?)null;
        var basis = estimate?.Parts.FirstOrDefault(one => one.Part == part.Id.Value)?.Basis ?? "";
        return new PlannedPartView(
            LinkOf(figures, forecast, part),
            !IsTold(figures, forecast, part) ? null : Joined(", ", part.Material is { } material ? PartPage.MaterialWords(figures, material) : null, PartPage.StockWords(figures, part)),
            part.Operations.Count == 0 || !IsTold(figures, forecast, part) ? "–" : figures.OperationWords(part.Operations),
            (part.Guess, part.Reguess) switch
            {
                (null, null) => "–",
                ({ } first, { } second) => $"{Show.Hours(Time(first.ForAll(part.Quantity)))}, then {Show.Hours(Time(second.ForAll(part.Quantity)))}",
                var (first, second) => Show.Hours(Time((first ?? second)!.ForAll(part.Quantity))),
            },
            ForViewers(part.Like is null ? basis : basis.Replace($"; like {part.Like}", "", StringComparison.Ordinal)),
            like is { } sheet ? figures.Link(sheet) : null);
    }

    private static IEnumerable<PlannedPartView> WholeLine(SiteFigures figures, PlanForecast forecast, Estimate? estimate)
    {
        if (forecast.Whole.Count > 0 || estimate?.Whole.P50 is not null)
        {
            var guess = forecast.Whole.Values.Sum();
            yield return new PlannedPartView(
                new LinkView("Build as a whole", null), null, forecast.Whole.Count == 0 ? "–" : figures.OperationWords(forecast.Whole.Keys), Show.HoursOrDash(guess), ForViewers(estimate?.Whole.Basis ?? ""), null);
        }
    }

    // The words are written for the maker; on the site others read them.
    private static string ForViewers(string basis) =>
        basis.Replace("your second guess", "second guess", StringComparison.Ordinal).Replace("your guess", "own guess", StringComparison.Ordinal);

    private static ChartView HoursChart(Estimate estimate) => CurveChart.Draw(
        "chance-of-hours",
        "Chance of being done within so many hours",
        $"Even odds (50 %) of at most {EstimateWords.Hours(estimate.Hours.P50)}; eight in ten (80 %), at most {EstimateWords.Hours(estimate.Hours.P80)}.",
        [.. estimate.Quantiles.Select(one => new HoursChance(one.P, one.Hours))]);

    private static ChartView? DaysChart(Estimate estimate) => estimate.FinishQuantiles.Count == 0 ? null : CurveChart.DrawDays(
        "chance-of-days",
        "Chance of being done by a day",
        estimate.Finish is { P50: { } half, P80: { } eight } ? $"Even odds (50 %) by {Show.Date(half)}; eight in ten (80 %) by {Show.Date(eight)}." : "Some of these dates are more than a century away.",
        [.. estimate.FinishQuantiles.Where(one => one.Date is not null).Select(one => new DayChance(one.P, one.Date!.Value))]);

    private static IEnumerable<string> GroundOf(SiteFigures figures, PlanForecast forecast, Estimate estimate)
    {
        if (estimate.History.Parts > 0)
        {
            yield return $"{Show.Count(estimate.History.Parts, "finished part", "finished parts")}, {Show.Hours(new Minutes(estimate.History.Minutes))} of work. Recent and larger parts count more; extreme ones are capped.";
        }

        if (estimate.MostUncertain.Count > 0)
        {
            yield return $"Most of the uncertainty comes from: {MostUncertain(figures, forecast, estimate)}.";
        }

        if (estimate.HoursAWeek is not null)
        {
            yield return "Dates follow the maker’s own weeks, idle ones included.";
        }

        yield return EstimateWords.Backtest(estimate);
    }

    private static ChartView? BacktestOf(SiteFigures figures, Estimate estimate)
    {
        var parts = estimate.Backtest.PartForecasts.Select(forecast =>
        {
            var link = figures.Link(PartRef.Parse(forecast.Part));
            return new ForecastAndTaken(link.Text, Time(forecast.P10), Time(forecast.P50), Time(forecast.P90), Time(forecast.Hours), link.Address);
        });
        return estimate.Backtest.Parts == 0 ? null : BacktestChart.Draw(
            "backtest", "Finished parts: the range forecast, and the hours taken", EstimateWords.Backtest(estimate), [.. parts]);
    }

    private static ToolLineView ToolLine(SiteFigures figures, ToolForWork tool)
    {
        var why = tool.Missing switch
        {
            WhyMissing.Borrowed => "borrowed last time",
            WhyMissing.Hired => "hired last time",
            WhyMissing.NotInCrib => "not in the crib",
            _ => tool.Tool.Need == Need.Workaround ? "workaround for this workshop’s limits" : tool.Tool.Need == Need.Essential ? "essential" : null,
        };
        return new ToolLineView(figures.Link(tool.Tool.Id), Joined(" · ", why, figures.OperationWords(tool.Operations.Take(3))));
    }

    private static string? Joined(string between, params IEnumerable<string?> words) =>
        string.Join(between, words.OfType<string>()) is { Length: > 0 } text ? text : null;
}
