namespace Journal.Site.Sending;

/// <summary>
/// Addresses of files within a site. What a destination's manifest says is not ours to trust: an address that leads out
/// of the site's folder on any system is none.
/// </summary>
internal static class SiteAddress
{
    /// <summary>Whether an address stays within the folder it is put in, on every system.</summary>
    public static bool IsSafe(string address) =>
        address.Length is > 0 and <= 1000 && !address.Any(IsUnfit) && address.Split('/').All(IsName);

    /// <summary>Where a file lies in a folder of this machine.</summary>
    /// <exception cref="ArgumentException">The address leads out of the folder.</exception>
    public static string PathIn(string folder, string address) => IsSafe(address)
        ? Path.Combine(folder, address.Replace('/', Path.DirectorySeparatorChar))
        : throw new ArgumentException("The address leads out of the site.", nameof(address));

    /// <summary>An address behind a folder with <c>/</c>; the folder may be empty.</summary>
    public static string Behind(string folder, string address) => folder.Length == 0 ? address : folder == "/" ? $"/{address}" : $"{folder}/{address}";

    /// <summary>The folders that files lie in, and those above them within the site, each before the one that it lies in.</summary>
    public static IEnumerable<string> FoldersOf(IEnumerable<string> addresses) => addresses
        .SelectMany(address => address.Select((letter, at) => (letter, at)).Where(one => one.letter == '/').Select(one => address[..one.at]))
        .Distinct(StringComparer.Ordinal)
        .OrderByDescending(folder => folder.Length)
        .ThenBy(folder => folder, StringComparer.Ordinal);

    // A backslash parts names on Windows, a colon begins a drive or a stream of a file there.
    private static bool IsUnfit(char letter) => char.IsControl(letter) || char.IsSurrogate(letter) || letter is '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|';

    // Windows drops dots and spaces at the end of a name, so that ".. " would be "..".
    private static bool IsName(string name) => name.Length > 0 && name.TrimEnd('.', ' ').Length == name.Length;
}
