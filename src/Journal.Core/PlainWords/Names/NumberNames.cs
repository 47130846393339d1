namespace Journal.Core.PlainWords.Names;

/// <summary>Figures that stand in names of chucks and the like, as words: a “4-jaw” is a four-jaw.</summary>
internal static class NumberNames
{
    private static readonly string[] Names = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    public static bool IsNumber(string word) => Array.IndexOf(Names, word) >= 0;

    public static string InWords(string text) => text.Length is 1 or 2 && int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) && number < Names.Length ? Names[number] : text;
}
