namespace Journal.Site.Sending;

/// <summary>Paths that begin at the maker's home folder.</summary>
internal static class HomePath
{
    /// <summary>The home folder.</summary>
    public static string Home => Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);

    /// <summary>A path with <c>~</c> or <c>~/</c> at its beginning written out.</summary>
    public static string Of(string path) => path == "~" ? Home : path.StartsWith("~/", StringComparison.Ordinal) ? Path.Combine(Home, path[2..]) : path;
}
