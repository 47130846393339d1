namespace Journal.Site.Tests.Publishing;

/// <summary>Files of the repository that tests read.</summary>
internal static class Repository
{
    /// <summary>The repository's folder.</summary>
    public static string Root { get; } = Find();

    /// <summary>A file that <c>tests/run.sh</c> fetched or the test brought along; a test without it fails.</summary>
    public static string Data(string name) => Path.Combine(AppContext.BaseDirectory, "Data", name);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Journal.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests must run from inside the repository.");
    }
}
