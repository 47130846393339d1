using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Journal.Cli.Options;

/// <summary>A time of day, such as <c>22:40</c>.</summary>
internal static class ClockTime
{
    /// <summary>Whether a word is one.</summary>
    public static bool TryRead(string word, out TimeOnly time) =>
        TimeOnly.TryParseExact(word.Trim(), ["H:mm", "HH:mm", "H.mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out time);

    /// <summary>An option that takes one.</summary>
    public static Option<TimeOnly?> Option(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "time",
        CustomParser = Read,
    };

    private static TimeOnly? Read(ArgumentResult result)
    {
        if (TryRead(result.Tokens[0].Value, out var time))
        {
            return time;
        }

        result.AddError($"`{result.Tokens[0].Value}` is not a time of day. Use hours and minutes, such as 22:40.");
        return null;
    }
}
