using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Cli.Writing.Told;

/// <summary>Shows what was understood of an account, asks for what is missing, and has it confirmed.</summary>
internal sealed class ToldQuestions(OpenJournal open, Build build, string account, Terminal terminal)
{
    private readonly Questions questions = new(terminal);

    /// <summary>The proposal as the maker confirmed it; null where nothing shall be written.</summary>
    /// <exception cref="OperationCanceledException">The maker ended the input.</exception>
    public Proposal? Confirmed(Proposal proposal, DateOnly evening)
    {
        var settled = ToldTimes.Settle(proposal);
        var items = ProposalItem.Of(settled);
        var print = new Printout(terminal with { Out = terminal.Error });
        print.Say($"{build.Title}, {Wording.Written.Date(evening)}", Ink.Strong);
        ProposalTable.PrintNumbered(items, account, print);
        return LeaveOut(items.Count) is { } numbers
            ? Completed(numbers.Aggregate(settled, (left, number) => items[number - 1].Without(left)), evening)
            : null;
    }

    /// <summary>What remarks say beside what was asked for: shown at once, confirmed with one answer. Nothing is asked where there is nothing.</summary>
    /// <exception cref="OperationCanceledException">The maker ended the input.</exception>
    public Proposal Rest(Proposal rest, DateOnly evening)
    {
        var items = ProposalItem.Of(rest);
        if (items.Count == 0)
        {
            return rest;
        }

        terminal.Complain("Your remarks say too:");
        ProposalTable.PrintNumbered(items, account, new Printout(terminal with { Out = terminal.Error }));
        return LeaveOut(items.Count) is { } numbers ? Completed(numbers.Aggregate(rest, (left, number) => items[number - 1].Without(left)), evening) : new Proposal();
    }

    private IReadOnlyList<int>? LeaveOut(int count) => questions.Ask(
        "Write this? (Enter: yes; `no`; or the numbers of what to leave out)",
        "yes",
        line => line.ToLowerInvariant() switch
        {
            "yes" or "y" => ((IReadOnlyList<int>?)[], null),
            "no" or "n" => (null, null),
            _ => Numbers(line, count),
        });

    private static (IReadOnlyList<int>? Numbers, string? Wrong) Numbers(string line, int count)
    {
        var words = line.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        var numbers = words.Select(word => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0).ToList();
        return numbers.TrueForAll(number => number >= 1 && number <= count) ? (numbers, null) : ([], $"Say `yes`, `no`, or numbers from 1 to {count.ToString(CultureInfo.InvariantCulture)}.");
    }

    // What is missing is asked after the rest is confirmed: what is left out needs no answers.
    private Proposal Completed(Proposal proposal, DateOnly evening)
    {
        var completed = proposal with
        {
            Jobs = [.. proposal.Jobs.Select(AskPart).Select(AskTime)],
            Bought = [.. proposal.Bought.Select(AskCost)],
            Made = [.. proposal.Made.Where(thing => IsWanted($"You made a {thing.Kind}, “{thing.Title}”.", thing.Title))],
            NewTools = [.. proposal.NewTools.Where(tool => IsWanted($"The crib has no “{tool.Text}”.", tool.Text))],
            NewParts = [.. proposal.NewParts.Where(part => IsWanted($"{build.Title} has no part “{part.Text}”.", part.Text))],
            Questions = [],
        };
        return proposal.Questions.Aggregate(completed, (told, question) => Answered(told, question, evening));
    }

    private ProposedJob AskPart(ProposedJob job) => job.Parts.Count > 0 || build.Parts.Count == 0 ? job
        : questions.Choose($"Part, for {Title(job)}", "whole", TonightsJob.PartsOf(build, open.Journal)) is { } part and not "whole" ? job with { Parts = [new(part)] }
        : job;

    private ProposedJob AskTime(ProposedJob job) => job.Time is not null ? job
        : questions.Maybe($"Hours, for {Title(job)} (Enter: leave it out)", line => HoursText.Read(line) is { } hours && HoursText.IsOfOneDay(hours) ? (hours, null) : (null, HoursText.WhyNot(line))) is { } said ? job with { Time = HoursText.TimeOf(said) }
        : job;

    private ProposedPurchase AskCost(ProposedPurchase item) => item.Cost is not null ? item
        : questions.Maybe($"Cost of {item.What} (Enter: leave it out)", line => decimal.TryParse(line, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _) ? (line, null) : (null, $"`{line}` is not an amount. Write it without a currency, such as 12.50.")) is { } cost
            ? item with { Cost = decimal.Parse(cost, CultureInfo.InvariantCulture) }
        : item;

    private bool IsWanted(string what, string title) =>
        ToolNames.NewId(title) is { } id && questions.YesOrNo($"{what} Add it as `{id}`?", offered: true);

    // A time without a job: what it was for is read as the account was.
    private Proposal Answered(Proposal told, Question question, DateOnly evening)
    {
        while (question.Time is { } time && questions.Line($"{question.Text} ({Quote.AsReason(account, question.Words)}; say what you did, such as `turning the crank`; Enter: leave it out)") is { } answer)
        {
            if (AccountReader.Read(answer, open.Journal, build, evening).Jobs is [var job])
            {
                return told with { Jobs = [.. told.Jobs, new ProposedJob { Parts = job.Parts, Operations = job.Operations, Time = time, Words = [question.Words] }] };
            }

            terminal.Complain("I cannot read a job in that. Name the operation, and the part.");
        }

        return told;
    }

    private static string Title(ProposedJob job) => string.Join(", ", new[]
    {
        job.Operations.Count == 0 ? "work" : string.Join(" and ", job.Operations),
        job.Parts.Count == 0 ? null : string.Join(" and ", job.Parts),
        job.Time?.ToString(),
    }.Where(text => text is not null));
}
