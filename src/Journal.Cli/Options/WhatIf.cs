using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Journal.Core.Estimating;
using Journal.Core.Model;

namespace Journal.Cli.Options;

/// <summary><c>--hours-a-week</c>, <c>--start</c>, <c>--without</c>, <c>--twice</c> and <c>--seed</c>: the same estimate under other conditions.</summary>
internal sealed class WhatIf
{
    private readonly Option<decimal?> hoursAWeek = new("--hours-a-week")
    {
        Description = "What if: so many hours a week. Default: the plan's, else as in your own weeks.",
        HelpName = "hours",
        CustomParser = ReadHours,
    };

    private readonly Option<DateOnly?> start = new("--start")
    {
        Description = "What if: start on this day, such as 2026-11-07. Default: the plan's, else today.",
        HelpName = "date",
        CustomParser = ReadDate,
    };

    private readonly Option<string[]> without = new("--without")
    {
        Description = "What if: leave out this part, or buy it in; repeat the option for each.",
        HelpName = "part",
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
    };

    private readonly Option<string[]> twice = new("--twice")
    {
        Description = "What if: make this part twice; repeat the option for each.",
        HelpName = "part",
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
    };

    private readonly Option<int?> seed = new("--seed")
    {
        Description = "Another seed for the random draws; the same seed gives the same estimate.",
        HelpName = "number",
        CustomParser = ReadSeed,
    };

    /// <summary>The options, one set to a command.</summary>
    public IReadOnlyList<Option> Options => [hoursAWeek, start, without, twice, seed];

    /// <summary>What was asked.</summary>
    public EstimateOptions Of(ParseResult asked, DateOnly today)
    {
        var options = new EstimateOptions
        {
            Today = today,
            HoursAWeek = asked.GetValue(hoursAWeek),
            Start = asked.GetValue(start),
            Without = Parts(asked.GetValue(without)),
            Twice = Parts(asked.GetValue(twice)),
        };
        return asked.GetValue(seed) is { } given ? options with { Seed = given } : options;
    }

    private static IReadOnlyList<Id<Part>> Parts(string[]? named) => [.. (named ?? []).Distinct().Select(part => new Id<Part>(part))];

    private static decimal? ReadHours(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (decimal.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hours) && hours is > 0 and <= 168)
        {
            return hours;
        }

        result.AddError($"`{word}` is not a possible number of hours a week. Give those of a usual week: `--hours-a-week 5.5`.");
        return null;
    }

    private static DateOnly? ReadDate(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (SaidDate.TryRead(word, out var date))
        {
            return date;
        }

        result.AddError($"`{word}` is not a date. Write year, month and day: `--start 2026-11-07`.");
        return null;
    }

    private static int? ReadSeed(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var seed))
        {
            return seed;
        }

        result.AddError($"`{word}` is not a valid seed. Use a whole number: `--seed 7`.");
        return null;
    }
}
