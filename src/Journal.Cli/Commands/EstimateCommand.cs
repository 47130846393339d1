using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Checking;
using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Cli.Commands;

/// <summary><c>journal estimate</c>: how long will it take, and when will it be done?</summary>
internal static class EstimateCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var name = new Argument<string>("plan or build") { Description = "A plan (its file name without .yaml) or a build (its folder's name)." };
        var (folder, format, today, whatIf) = (InOption.Create(), FormatOption.Create(), TodayOption.Create(hidden: false), new WhatIf());
        var command = new ExampledCommand(
            "estimate", "How long a build will take and when it will be done: hours and dates, with ranges.", "journal estimate bench-shaper --hours-a-week 6")
        {
            name, folder, format, today,
        };
        foreach (var option in whatIf.Options)
        {
            command.Add(option);
        }

        command.SetAction(asked => Run(
            asked.GetRequiredValue(name), asked.GetValue(folder), asked.GetValue(format), whatIf.Of(asked, asked.GetValue(today) ?? terminal.Today), terminal));
        return command;
    }

    private static int Run(string name, string? named, OutputFormat format, EstimateOptions options, Terminal terminal)
    {
        if (JournalPlace.Find(named, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(named, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        // What is dated after today is not known yet, and no problem here: `journal check` tells it.
        var reading = JournalReader.Read(folder, DateOnly.MaxValue);
        if (EstimateSubjects.TellErrors(name, folder, reading, terminal))
        {
            terminal.Complain($"There is no estimate for {name} until that is corrected.");
            return ExitStatus.Flawed;
        }

        if (reading.Journal is not { } journal)
        {
            terminal.Complain(Flaws.Tell(reading, named)!);
            return ExitStatus.Flawed;
        }

        var (build, plan) = (journal.BuildNamed(name), journal.PlanNamed(name));
        if (build is null && plan is null)
        {
            terminal.Complain(EstimateSubjects.NoneNamed(name, "plan or build", [.. journal.Plans.Select(one => one.Id.Value), .. journal.Builds.Select(one => one.Id.Value)]));
            return ExitStatus.WrongUse;
        }

        var result = build is not null ? Estimate.Of(journal, build, options) : Estimate.Of(journal, plan!, options);
        if (!result.IsEstimate)
        {
            foreach (var fault in result.Faults)
            {
                terminal.Complain($"{fault.Message} {fault.Remedy}");
            }

            return result.Faults.Any(fault => IsWrongUse(fault.Kind)) ? ExitStatus.WrongUse : ExitStatus.Flawed;
        }

        var preparation = build is not null
            ? Preparation.For(build, journal, CautionLoader.Shared)
            : Preparation.For(plan!, journal, CautionLoader.Shared);
        Show(result.Estimate, preparation, journal, options, format, terminal);
        terminal.Out.Flush();
        if (Flaws.Tell(reading, named) is { } flaws)
        {
            terminal.Complain(flaws);
        }

        return reading.IsFlawed ? ExitStatus.Flawed : ExitStatus.Well;
    }

    private static bool IsWrongUse(EstimateFaultKind kind) => kind is EstimateFaultKind.UnknownWithout or EstimateFaultKind.UnknownTwice or EstimateFaultKind.AlreadyFinished;

    private static void Show(
        Estimate estimate, Preparation preparation, MakerJournal journal, EstimateOptions options, OutputFormat format, Terminal terminal)
    {
        switch (format)
        {
            case OutputFormat.Json:
                Json.Write(Shape(estimate, preparation), terminal.Out);
                break;
            case OutputFormat.Csv:
                Csv(estimate).WriteTo(terminal.Out);
                break;
            default:
                terminal.Show(print => EstimateTable.Print(estimate, preparation, journal, options, print), EstimateTable.Sentence(estimate));
                break;
        }
    }

    private static CsvTable Csv(Estimate estimate) => new(
        ["part", "p10", "p50", "p90", "basis"],
        estimate.Parts.Select(part => new object?[] { part.Part, part.P10, part.P50, part.P90, part.Basis })
            .Append(["whole", estimate.Whole.P10, estimate.Whole.P50, estimate.Whole.P90, estimate.Whole.Basis]));

    private static object Shape(Estimate estimate, Preparation preparation) => new
    {
        estimate.Plan,
        estimate.Hours,
        estimate.Quantiles,
        Finish = estimate.Finish ?? new FinishRange(null, null, null),
        estimate.Parts,
        estimate.Whole,
        estimate.History,
        estimate.Backtest,
        estimate.Seed,
        estimate.Title,
        Sentence = EstimateTable.Sentence(estimate),
        estimate.FinishQuantiles,
        estimate.MostUncertain,
        estimate.Overrun,
        estimate.MinutesSoFar,
        estimate.Left,
        estimate.HoursAWeek,
        estimate.Start,
        estimate.Remarks,
        estimate.Differences,
        estimate.Guesses,
        Offers = estimate.Offers.Select(Shape),
        Cautions = preparation.Cautions.Select(caution => new { caution.Id, caution.Title }),
        ToolsToFind = preparation.ToFind.Select(tool => new { tool.Tool.Id, tool.Tool.Title, Why = tool.Missing!.Value.ToWord(), tool.Jobs, tool.Operations }),
    };

    private static object Shape(LikeOffer offer) => new { Part = offer.Part.Id, Like = offer.Like.ToString(), offer.Words };
}
