namespace Journal.Cli.Tests;

/// <summary>The demonstration journal, as it lies in the repository.</summary>
internal static class Demo
{
    /// <summary>Its folder: <c>journal/</c> beside the solution.</summary>
    public static string Folder { get; } = Path.Combine(Root(), "journal");

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Journal.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException("Journal.sln is not above the tests.");
    }
}
