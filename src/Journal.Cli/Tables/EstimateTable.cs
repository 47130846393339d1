using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Estimating;
using Journal.Core.Model;

namespace Journal.Cli.Tables;

/// <summary>How long it will take, for people.</summary>
internal static class EstimateTable
{
    private const int MostTools = 8;

    /// <summary>“Even odds: 118 h, done by 4 March. Eight in ten: 160 h, by 20 May. Your guesses ran 1.3 times over, a third of it fixtures and putting right.”</summary>
    public static string Sentence(Estimate estimate) =>
        string.Join(' ', new[] { EstimateWords.Odds(estimate, day => EstimateWords.Day(day, estimate.Start)), EstimateWords.Guesses(estimate, "Your guesses") }.OfType<string>());

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
            var spentStays = estimate.MinutesSoFar is null ? "" : $"; what was spent on {(options.Without.Count == 1 ? "it" : "them")} stays counted";
            print.Say($"Left out of what is to come: {Count.List([.. options.Without.Select(part => part.Value)])}{spentStays}.");
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
                .. left is null ? Array.Empty<Column>() : [Column.Figures("Still to come")],
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
            [Column.Words("Part"), Column.Figures("1 in 10"), Column.Figures("Even"), Column.Figures("9 in 10"), Column.Words("Rests on")],
            estimate.Parts
                .Select(part => new[] { part.Title, EstimateWords.Hours(part.P10), EstimateWords.Hours(part.P50), EstimateWords.Hours(part.P90), part.Basis })
                .Append(["The whole", Cell(whole.P10), Cell(whole.P50), Cell(whole.P90), whole.Basis]),
            ["Together", EstimateWords.Hours(estimate.Hours.P10), EstimateWords.Hours(estimate.Hours.P50), EstimateWords.Hours(estimate.Hours.P90), ""]);
        print.Say("Ranges do not add up: not everything runs long at once.", Ink.Faint);
    }

    private static string Cell(double? hours) => hours is { } known ? EstimateWords.Hours(known) : "";

    private static void Ground(Estimate estimate, Printout print)
    {
        print.Heading("What it rests on");
        if (estimate.MostUncertain.Count > 0)
        {
            var names = estimate.MostUncertain.Select(part => TitleBook.Lower(Title(estimate, part.Part))).ToList();
            var share = ShareOf(estimate.MostUncertain.Sum(part => part.Share));
            print.Say($"{Count.Capital(share)} of the uncertainty is in: {Count.List(names)}.");
        }

        if (estimate.History.Parts > 0)
        {
            print.Say($"{Count.Of(estimate.History.Parts, "finished part")}, {new Minutes(estimate.History.Minutes)}. Recent and bigger parts count more, freaks are capped, and the whole build shares one luck.");
            print.Say(EstimateWords.Backtest(estimate));
        }

        foreach (var offer in estimate.Offers)
        {
            print.Say(offer.Words, Ink.Odd);
        }

        if (estimate.HoursAWeek is { } pace)
        {
            print.Say($"Dates from {Written.Date(estimate.Start)} on, with {EstimateWords.Hours(pace)} a week{(estimate.IsPaceSaid ? "" : ", as in your own weeks up to the last whole one, idle ones counted")}.");
        }
    }

    private static string ShareOf(double share) => Share.InWords(Math.Min(1, share));

    private static string Title(Estimate estimate, string part) =>
        part == "whole" ? "the whole" : estimate.Parts.First(one => one.Part == part).Title;

    private static void Cautions(Preparation preparation, Printout print)
    {
        if (preparation.Cautions.Count == 0)
        {
            return;
        }

        print.Heading("Take care");
        foreach (var caution in preparation.MostSerious)
        {
            print.Hang("– ", $"{caution.Title}.");
        }

        var rest = preparation.Cautions.Count - preparation.MostSerious.Count;
        print.Say(
            $"{(rest == 0 ? "" : $"And {Count.Of(rest, "more caution")} for such work; `--format json` lists all. ")}Reminders, not instruction: local codes and licensed practice come first.",
            Ink.Faint);
    }

    private static void Tools(Preparation preparation, TitleBook titles, Printout print)
    {
        var toFind = preparation.ToFind.ToList();
        if (toFind.Count == 0)
        {
            return;
        }

        print.Heading("Such work took these before, and they are not at hand");
        foreach (var tool in toFind.Take(MostTools))
        {
            print.Hang("– ", $"{tool.Tool.Title}: {Why(tool.Missing!.Value)}; {titles.InSentence(tool.Operations)}, {Count.Of(tool.Jobs, "job")}");
        }

        if (toFind.Count > MostTools)
        {
            print.Say($"And {toFind.Count - MostTools} more; `--format json` lists all.", Ink.Faint);
        }
    }

    private static string Why(WhyMissing why) => why switch
    {
        WhyMissing.Borrowed => "borrowed",
        WhyMissing.Hired => "hired",
        _ => "not in the crib",
    };
}
