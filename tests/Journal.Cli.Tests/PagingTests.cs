using Journal.Cli.Output;

namespace Journal.Cli.Tests;

public class PagingTests
{
    [Fact]
    public void LongAnswer_OnATerminalWithAPager_IsShownPageByPage()
    {
        using var journal = JournalOnDisk.Small();
        var paged = "";

        var answer = Answer.To(journal.Folder, terminal => terminal with { IsTerminal = true, Height = 5, Page = text => paged = text }, "hours");

        Assert.Equal((0, ""), (answer.Status, answer.Out));
        Assert.Equal(journal.Ask("hours").Out, paged);
    }

    [Fact]
    public void ShortAnswer_OnATerminalWithAPager_RunsThrough()
    {
        using var journal = JournalOnDisk.Empty();

        var answer = Answer.To(journal.Folder, terminal => terminal with { IsTerminal = true, Height = 5, Page = _ => Assert.Fail("It is short.") }, "hours");

        Assert.StartsWith("No hours yet.", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void LongEstimate_WithoutAPager_SaysTheAnswerLastToo()
    {
        using var journal = JournalOnDisk.Small();

        var answer = Answer.To(journal.Folder, terminal => terminal with { IsTerminal = true, Height = 10 }, "estimate", "bench-shaper");

        Assert.StartsWith("Even odds (50 %): ", answer.Out, StringComparison.Ordinal);
        Assert.Equal(2, answer.Out.Split("Even odds (50 %): ").Length - 1);
        Assert.Contains("Even odds (50 %): ", string.Join('\n', answer.Lines.TakeLast(3)), StringComparison.Ordinal);
        Assert.Equal(1, journal.Ask("estimate", "bench-shaper").Out.Split("Even odds (50 %): ").Length - 1);
    }

    [Fact]
    public void CsvAndJson_AreNeverPaged()
    {
        using var journal = JournalOnDisk.Small();

        var answer = Answer.To(journal.Folder, terminal => terminal with { IsTerminal = true, Height = 2, Page = _ => Assert.Fail("It is for a program.") }, "hours", "--format", "csv");

        Assert.StartsWith("build,part,", answer.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cat")]
    [InlineData("")]
    [InlineData(" ")]
    public void Pager_ThatIsNone_IsNone(string pager) => Assert.Null(MakersPager.Find(name => name == "PAGER" ? pager : "/usr/bin"));

    [Fact]
    public void Pager_NamedByNobodyAndNotThere_IsNone() => Assert.Null(MakersPager.Find(name => name == "PATH" ? "/nowhere" : null));

    [Fact]
    public void Pager_OfTheMaker_GetsTheText()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = JournalOnDisk.Bare();
        var file = Path.Combine(folder.Folder, "seen");

        MakersPager.Find(name => name == "PAGER" ? $"cat > '{file}'" : null)!("Über 12 mm\n");

        Assert.Equal("Über 12 mm\n", File.ReadAllText(file));
    }

    [Fact]
    public void Pager_ClosedEarly_IsNoFault()
    {
        if (!OperatingSystem.IsWindows())
        {
            MakersPager.Find(name => name == "PAGER" ? "exit 0" : null)!(new string('x', 1_000_000));
        }
    }
}
