namespace Journal.Core.Import;

/// <summary>Names of entries that a build does not have yet, compared as systems do that take large and small letters for one.</summary>
internal sealed class EntryNames
{
    private const int Longest = 90;
    // No entry lies behind a link; links may lead round in a circle.
    private static readonly EnumerationOptions EverywhereBelow = new() { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint };

    private readonly HashSet<string> taken;

    private EntryNames(IEnumerable<string> names) => taken = new HashSet<string>(names, StringComparer.OrdinalIgnoreCase);

    /// <summary>The names that a build has.</summary>
    public static EntryNames In(string folder) => new(
        Directory.EnumerateFiles(folder, "*", EverywhereBelow).Where(file => file.EndsWith(".md", StringComparison.OrdinalIgnoreCase)).Select(file => Path.GetFileNameWithoutExtension(file)));

    /// <summary>A name for a new entry: the one wished for, with a number behind it where that is taken.</summary>
    public string New(string wished)
    {
        var name = wished.Length > Longest ? wished[..Longest].TrimEnd('-') : wished;
        for (var number = 1; ; number++)
        {
            var tried = number == 1 ? name : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{name}-{number}");
            if (taken.Add(tried))
            {
                return tried + ".md";
            }
        }
    }
}
