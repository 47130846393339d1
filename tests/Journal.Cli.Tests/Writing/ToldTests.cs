namespace Journal.Cli.Tests.Writing;

/// <summary><c>journal write --from</c>: an evening told in plain words becomes an entry.</summary>
public class ToldTests
{
    private const string Typed = "Set up the head on the face plate, half an hour, then bored it for an hour and a quarter with the boring head.\n\nBore came out at 25.02 mm, at 320 rpm.\n\nNext: face the back of the boss.\n";

    [Fact]
    public void WriteFrom_Yes_AccountBecomesTheTextAndItsKeysStandAbove()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", Typed);

        var written = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.Equal(0, written.Status);
        var text = bench.Text(FileOf(written));
        Assert.EndsWith("---\n" + Typed, text, StringComparison.Ordinal);
        Assert.Contains("part: head\noperation: boring\n", text, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    private static string FileOf(Answer written) => $"drill/{Path.GetFileName(written.Out.Trim())}";
}
