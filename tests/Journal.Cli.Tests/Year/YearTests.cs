using System.Runtime.CompilerServices;

namespace Journal.Cli.Tests.Year;

/// <summary>A year at one bench, as its maker typed it: <c>a-year.txt</c> beside this file.</summary>
public class YearTests
{
    [Fact]
    public void AYear_AsItsMakerTypedIt_IsAnsweredAsWritten()
    {
        using var bench = JournalOnDisk.Bare();

        var faults = new Transcript(bench.Folder, File.ReadAllLines(Path.Combine(Here(), "a-year.txt"))).Play();

        Assert.True(faults.Count == 0, string.Join("\n\n", faults));
    }

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
