namespace Journal.Cli.Tests;

/// <summary>The demonstration journal, as it lies in the repository.</summary>
internal static class Demo
{
    /// <summary>The folder of the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The demonstration's folder: <c>journal/</c> beside the solution.</summary>
    public static string Folder { get; } = Path.Combine(Root, "journal");

    private static string FindRoot()
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
