using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>How long it will take, for people.</summary>
internal static class EstimateTable
{
    private const int MostTools = 8;

    /// <summary>“Even odds: 118 h, done by 4 March. Eight in ten: 160 h, by 20 May. Your guesses ran 1.3 times over, a third of it fixtures and putting right.”</summary>
    public static string Sentence(Estimate estimate) =>
        string.Join(' ', new[] { EstimateWords.Odds(estimate, day => EstimateWords.Day(day, estimate.Start)), EstimateWords.Guesses(estimate, "your guesses") }.OfType<string>());

    /// <summary>The sentence, what to know of it, then chances, parts, uncertainty, the past, cautions and tools.</summary>
    public static void Print(Estimate estimate, Preparation preparation, MakerJournal journal, EstimateOptions options, Printout print)
    {
        print.Say(Sentence(estimate), Ink.Strong);
        if (estimate.MinutesSoFar is { } spent)
        {
            print.Say($"{(spent == 0 ? "Nothing" : new Minutes(spent))} spent so far; {EstimateWords.Hours(estimate.Hours.P50)} in all at even odds, {EstimateWords.Hours(estimate.Hours.P80)} at eight in ten.");
        }

        foreach (var remark in estimate.Remarks)
        {
            print.Say(remark, Ink.Odd);
        }

        if (options.Without.Count > 0)
        {
            var spentStays = estimate.MinutesSoFar is null ? "" : $"; what was spent on {(options.Without.Count == 1 ? "it" : "them")} still counts";
            print.Say($"Left out of the remaining work: {Count.List([.. options.Without.Select(part => part.Value)])}{spentStays}.");
        }

        Differences(estimate, print);
        Chances(estimate, print);
        Parts(estimate, print);
        Ground(estimate, print);
        GuessTable.Print(estimate, new TitleBook(journal), print);
        Cautions(preparation, print);
        Tools(preparation, new TitleBook(journal), print);
    }

    private static void Differences(Estimate estimate, Printout print)
    {
        foreach (var difference in estimate.Differences)
        {
            print.Say(DifferenceWords.Of(difference));
        }
    }

    private static void Chances(Estimate estimate, Printout print)
    {
        var (hours, finish) = (estimate.Hours, estimate.Finish);
        var left = estimate.Left;
        List<(string Chance, double Hours, double? Left, DateOnly? By)> rows =
        [
            ("1 in 10", hours.P10, left?.P10, null),
            ("Even odds", hours.P50, left?.P50, finish?.P50),
            ("8 in 10", hours.P80, left?.P80, finish?.P80),
            ("9 in 10", hours.P90, left?.P90, finish?.P90),
        ];
        print.Heading(estimate.Title);
        print.Table(
            [
                Column.Words("Chance"), Column.Figures("Hours in all"),
                .. left is null ? Array.Empty<Column>() : [Column.Figures("Still to do")],
                .. finish is null ? Array.Empty<Column>() : [Column.Figures("Done by")],
            ],
            rows.Select(row => (string[])
            [
                row.Chance, EstimateWords.Hours(row.Hours),
                .. left is null ? Array.Empty<string>() : [EstimateWords.Hours(row.Left!.Value)],
                .. finish is null ? Array.Empty<string>() : [Written.Date(row.By)],
            ]));
    }

    private static void Parts(Estimate estimate, Printout print)
    {
        print.Heading("Part by part");
        var whole = estimate.Whole;
        print.Table(
            [Column.Words("Part"), Column.Figures("1 in 10"), Column.Figures("Even"), Column.Figures("9 in 10"), Column.Words("Based on")],
            estimate.Parts
                .Select(part => new[] { part.Title, EstimateWords.Hours(part.P10), EstimateWords.Hours(part.P50), EstimateWords.Hours(part.P90), part.Basis })
                .Append(["Build as a whole", Cell(whole.P10), Cell(whole.P50), Cell(whole.P90), whole.Basis]),
            ["Total", EstimateWords.Hours(estimate.Hours.P10), EstimateWords.Hours(estimate.Hours.P50), EstimateWords.Hours(estimate.Hours.P90), ""]);
        print.Say("The ranges do not add up to the total: not everything runs late at once.", Ink.Faint);
    }

    private static string Cell(double? hours) => hours is { } known ? EstimateWords.Hours(known) : "";

    private static void Ground(Estimate estimate, Printout print)
    {
        print.Heading("What it is based on");
        if (estimate.MostUncertain.Count > 0)
        {
            var names = estimate.MostUncertain.Select(part => Casing.Lower(Title(estimate, part.Part))).ToList();
            var share = ShareOf(estimate.MostUncertain.Sum(part => part.Share));
            print.Say($"{Casing.Capital(share)} of the uncertainty comes from: {Count.List(names)}.");
        }

        if (estimate.History.Parts > 0)
        {
            print.Say($"{Count.Of(estimate.History.Parts, "finished part")}, {new Minutes(estimate.History.Minutes)}. Recent and larger parts count more, extreme ones are capped, and all parts of the build share some of the luck.");
            print.Say(EstimateWords.Backtest(estimate));
        }

        foreach (var offer in estimate.Offers)
        {
            print.Say(offer.Words, Ink.Odd);
        }

        if (estimate.HoursAWeek is { } pace)
        {
            print.Say($"Dates count from {Written.Date(estimate.Start)}, at {EstimateWords.Hours(pace)} a week{(estimate.IsPaceSaid ? "" : ", as in your own weeks up to the last full one, idle ones included")}.");
        }
    }

    private static string ShareOf(double share) => Fraction.InWords(Math.Min(1, share));

    private static string Title(Estimate estimate, string part) =>
        part == "whole" ? "the build as a whole" : estimate.Parts.First(one => one.Part == part).Title;

    private static void Cautions(Preparation preparation, Printout print)
    {
        if (preparation.Cautions.Count == 0)
        {
            return;
        }

        print.Heading("Cautions");
        foreach (var caution in preparation.MostSerious)
        {
            print.Hang("– ", $"{caution.Title}.");
        }

        var rest = preparation.Cautions.Count - preparation.MostSerious.Count;
        print.Say(
            $"{(rest == 0 ? "" : $"And {Count.Of(rest, "more caution")} for such work; see `--format json`. ")}Reminders, not instruction: local codes and licensed practice come first.",
            Ink.Faint);
    }

    private static void Tools(Preparation preparation, TitleBook titles, Printout print)
    {
        var toFind = preparation.ToFind.ToList();
        if (toFind.Count == 0)
        {
            return;
        }

        print.Heading("Used for such work before, and not at hand now");
        foreach (var tool in toFind.Take(MostTools))
        {
            print.Hang("– ", $"{tool.Tool.Title}: {Why(tool.Missing!.Value)}; {titles.InSentence(tool.Operations)}, {Count.Of(tool.Jobs, "job")}");
        }

        if (toFind.Count > MostTools)
        {
            print.Say($"And {toFind.Count - MostTools} more; see `--format json`.", Ink.Faint);
        }
    }

    private static string Why(WhyMissing why) => why switch
    {
        WhyMissing.Borrowed => "borrowed",
        WhyMissing.Hired => "hired",
        _ => "not in the crib",
    };
}
