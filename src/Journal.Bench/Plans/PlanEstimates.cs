using System.Globalization;
using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Core.Checking;
using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Core.Parsing;
using Journal.Core.Parsing.Problems;

namespace Journal.Bench.Plans;

/// <summary>Estimates of plans whose guesses are being typed: always from the same draws, so that only what was typed moves them.</summary>
/// <param name="workshop">What all pages work with.</param>
internal sealed class PlanEstimates(Workshop workshop)
{
    private readonly Lock guard = new();
    private readonly FilesRead files = new();

    /// <summary>The estimate of a plan as it is being typed.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="text">The text of its file with the guesses.</param>
    /// <param name="without">Parts to leave out.</param>
    public EstimateView Of(Plan plan, string text, IReadOnlyList<Id<Part>> without)
    {
        JournalReading reading;
        lock (guard)
        {
            reading = JournalReader.Read(workshop.Folder, DateOnly.MaxValue, files, new TypedFile(plan.File, text));
        }

        var errors = reading.Problems.Where(problem => problem.Severity == Severity.Error && problem.Place.File == plan.File).ToList();
        if (errors.Count > 0 || reading.Journal?.Plans.FirstOrDefault(one => one.Id == plan.Id) is not { } typed)
        {
            return new EstimateView(null, [.. errors.Select(problem => $"{problem.Message} {problem.Remedy}")], []);
        }

        var result = Estimate.Of(reading.Journal, typed, new EstimateOptions { Today = workshop.Today, Without = [.. without.Where(part => typed.Parts.Any(one => one.Id == part))] });
        return result.IsEstimate ? ViewOf(result.Estimate) : new EstimateView(null, [.. result.Faults.Select(fault => $"{fault.Message} {fault.Remedy}")], []);
    }

    private static EstimateView ViewOf(Estimate estimate) => new(
        EstimateWords.Odds(estimate, day => EstimateWords.Day(day, estimate.Start)),
        [.. estimate.Differences.Select(DifferenceWords.Of), .. estimate.Remarks],
        [
            .. estimate.Parts.Select(part => new PartHoursView(part.Part, EstimateWords.Hours(part.P50), Range(part.P10, part.P90))),
            .. estimate.Whole is { P10: { } least, P50: { } even, P90: { } most } ? [new PartHoursView("whole", EstimateWords.Hours(even), Range(least, most))] : Array.Empty<PartHoursView>(),
        ]);

    private static string Range(double least, double most) => string.Create(CultureInfo.InvariantCulture, $"{EstimateWords.Hours(least)} to {EstimateWords.Hours(most)}");
}
