using System.Globalization;
using System.Text.RegularExpressions;
using Journal.Core.Model;

namespace Journal.Core.Parsing.Values;

/// <summary>Why a text is not a time.</summary>
internal enum TimeFault
{
    None,
    Form,
    Zero,
    Negative,
}

/// <summary>
/// The ways to write how long something took: <c>2.75</c>, <c>2h45</c>, <c>2h 45m</c>, <c>45m</c>, <c>2:45</c> and the
/// durations of ISO 8601 such as <c>PT2H45M</c>. Whole minutes; decimals are rounded half up.
/// </summary>
internal static partial class Duration
{
    /// <summary>Ten thousand hours: beyond any build, and sums of many stay within an integer.</summary>
    private const decimal MostMinutes = 600_000;

    /// <summary>Reads a time in any of the accepted forms, decimals rounded to whole minutes, halves up; else says what is wrong.</summary>
    public static bool TryParse(string text, out Minutes time, out TimeFault fault)
    {
        time = Minutes.Zero;
        fault = TimeFault.Form;
        var trimmed = text.Trim();
        var isNegative = trimmed.StartsWith('-') || trimmed.StartsWith('−');
        if (!TryMinutes(isNegative ? trimmed[1..].TrimStart() : trimmed, out var minutes) || minutes > MostMinutes)
        {
            return false;
        }

        var whole = (int)decimal.Round(minutes, MidpointRounding.AwayFromZero);
        if (isNegative || whole == 0)
        {
            fault = isNegative ? TimeFault.Negative : TimeFault.Zero;
            return false;
        }

        (time, fault) = (new Minutes(whole), TimeFault.None);
        return true;
    }

    private static bool TryMinutes(string text, out decimal minutes)
    {
        if (Number().IsMatch(text))
        {
            minutes = Read(text) * 60;
            return true;
        }

        foreach (var form in new[] { HoursAndMinutes(), Clock(), Iso8601() })
        {
            if (form.Match(text) is { Success: true } match)
            {
                minutes = Read(match, "d") * 1440 + Read(match, "h") * 60 + Read(match, "m") + Read(match, "s") / 60;
                return true;
            }
        }

        minutes = 0;
        return false;
    }

    private static decimal Read(Match match, string group) => match.Groups[group] is { Success: true } found ? Read(found.Value) : 0;

    private static decimal Read(string digits) =>
        decimal.TryParse(digits.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value < MostMinutes
            ? value
            : MostMinutes;

    [GeneratedRegex(@"^(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    [GeneratedRegex(@"^(?:(?<h>[0-9]+(?:\.[0-9]+)?) ?h(?:ours?|rs?)?(?: ?(?<m>[0-5]?[0-9]) ?(?:m|min|minutes?)?)?|(?<m>[0-9]+(?:\.[0-9]+)?) ?(?:m|min|minutes?))$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex HoursAndMinutes();

    [GeneratedRegex("^(?<h>[0-9]{1,3}):(?<m>[0-5][0-9])$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Clock();

    // ISO 8601-1:2019, 5.5.2: at least one component, a fraction (with comma or point) in the last one only.
    [GeneratedRegex(
        @"^P(?=[0-9T])(?:(?<d>[0-9]+)D)?(?:T(?=[0-9])(?:(?<h>[0-9]+)H)?(?:(?<m>[0-9]+)M)?(?:(?<s>[0-9]+(?:[.,][0-9]+)?)S)?|T(?:(?<h>[0-9]+)H)?(?<m>[0-9]+[.,][0-9]+)M|T(?<h>[0-9]+[.,][0-9]+)H)?$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Iso8601();
}
