using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Core.Parsing.Values;

namespace Journal.Core.Import;

/// <summary>Hours as other logs write them: every form of an entry, and a decimal comma.</summary>
internal static partial class WrittenHours
{
    private static readonly Minutes Day = new(24 * 60);

    /// <summary>The time; else why not.</summary>
    public static (Minutes Time, string? Fault) Read(string text)
    {
        var written = text.Trim();
        if (written.Length == 0)
        {
            return (Minutes.Zero, "there are no hours");
        }

        if (Thousands().IsMatch(written))
        {
            return (Minutes.Zero, $"“{written}” could mean decimals or thousands; write at most two decimals");
        }

        if (DecimalComma().IsMatch(written))
        {
            written = written.Replace(',', '.');
        }

        var time = Minutes.Zero;
        if (Stretch.TryParse(written, out var stretch))
        {
            time = stretch.Time;
        }
        else if (!Duration.TryParse(written, out time, out _))
        {
            return (Minutes.Zero, $"“{text.Trim()}” is not a time of a minute or more");
        }

        return time > Day ? (Minutes.Zero, $"{time} is more than a day") : time == Minutes.Zero ? (time, "there are no hours") : (time, null);
    }

    [GeneratedRegex("^[0-9]+,[0-9]{1,2}(?: ?h)?$", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();

    [GeneratedRegex("^[0-9]{1,3}(?:,[0-9]{3})+$", RegexOptions.CultureInvariant)]
    private static partial Regex Thousands();
}
