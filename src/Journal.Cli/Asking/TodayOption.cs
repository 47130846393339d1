using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Journal.Cli.Asking;

/// <summary><c>--today 2025-10-03</c>: another date than the clock's.</summary>
internal static class TodayOption
{
    /// <summary>The option, one to a command.</summary>
    /// <param name="hidden">Whether help leaves it out, where the command needs no clock.</param>
    public static Option<DateOnly?> Create(bool hidden) => new("--today")
    {
        Description = "Take this date as today, such as 2025-10-03, instead of the clock's.",
        HelpName = "date",
        Hidden = hidden,
        CustomParser = Read,
    };

    private static DateOnly? Read(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (DateOnly.TryParseExact(word, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return date;
        }

        result.AddError($"`{word}` is not a date. Write year, month and day: `--today 2025-10-03`.");
        return null;
    }
}
