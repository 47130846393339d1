using Journal.Core.Checking;
using Journal.Core.Model;

namespace Journal.Core.Tests;

/// <summary>The demonstration journal, as it lies in the repository.</summary>
internal static class Demo
{
    private static readonly Lazy<MakerJournal> Read = new(() => JournalReader.Read(Path.Combine(Root(), "journal"), DateOnly.MaxValue).Journal!);

    /// <summary>All of it.</summary>
    public static MakerJournal Journal => Read.Value;

    /// <summary>The text of <c>shared/cautions.yaml</c>.</summary>
    public static string CautionsFile => File.ReadAllText(Path.Combine(Root(), "shared", "cautions.yaml"));

    /// <summary>The repository.</summary>
    public static string Root()
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
