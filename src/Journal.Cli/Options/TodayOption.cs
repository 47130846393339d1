using System.CommandLine;
using System.CommandLine.Parsing;

namespace Journal.Cli.Options;

/// <summary><c>--today 2025-10-03</c>: another date than the clock's.</summary>
internal static class TodayOption
{
    /// <summary>The option, one to a command.</summary>
    /// <param name="hidden">Whether help leaves it out, where the command needs no clock.</param>
    public static Option<DateOnly?> Create(bool hidden) => new("--today")
    {
        Description = "Use this date as today, such as 2025-10-03.",
        HelpName = "date",
        Hidden = hidden,
        CustomParser = Read,
    };

    /// <summary>An option of another name that takes a date, such as that of an evening; also called <c>--today</c> where that means the same.</summary>
    public static Option<DateOnly?> Named(string name, string description, params string[] aliases) => new(name, aliases)
    {
        Description = description,
        HelpName = "date",
        CustomParser = Read,
    };

    private static DateOnly? Read(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (SaidDate.TryRead(word, out var date))
        {
            return date;
        }

        result.AddError($"`{word}` is not a date. Write year, month and day: `{((OptionResult)result.Parent!).Option.Name} 2025-10-03`.");
        return null;
    }
}
