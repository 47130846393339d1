namespace Journal.Cli.Tests;

public class FaultReportTests
{
    [Fact]
    public void Write_AFault_TellsWhereInTheCodeAndNothingOfTheJournal()
    {
        var path = FaultReport.Write(Thrown(), ["write", "--part", "secret-part", "--mistake=Secret words", "secret/folder"]);

        var report = File.ReadAllText(path!);
        File.Delete(path!);
        Assert.StartsWith("journal 0.", report, StringComparison.Ordinal);
        Assert.Contains("\ncommand: write --part … --mistake …\n", report, StringComparison.Ordinal);
        Assert.Contains("System.InvalidOperationException\n", report, StringComparison.Ordinal);
        Assert.Contains("System.FormatException\n", report, StringComparison.Ordinal);
        Assert.Contains($"{nameof(FaultReportTests)}.{nameof(Thrown)}", report, StringComparison.Ordinal);
        Assert.DoesNotContain("ecret", report, StringComparison.Ordinal);
    }

    private static InvalidOperationException Thrown()
    {
        try
        {
            throw new InvalidOperationException("Secret words of an entry", new FormatException("More secret words"));
        }
        catch (InvalidOperationException e)
        {
            return e;
        }
    }
}
