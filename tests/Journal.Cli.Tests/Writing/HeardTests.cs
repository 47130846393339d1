namespace Journal.Cli.Tests.Writing;

/// <summary>What tonight's remarks say stands beside the questions of <c>journal write</c>, filled in; Enter takes it.</summary>
public class HeardTests
{
    private static readonly string[] Enters = [.. Enumerable.Repeat("", 20)];

    [Fact]
    public void Write_ThreeRemarks_EnterTakesWhatTheySay()
    {
        using var bench = WithRemarks("Bored the head for an hour and a half", "the bore came out at 25.02 mm", "Took it too deep, lost 20 minutes");

        var written = bench.AskAndAnswer(Enters, "write");

        Assert.Equal(0, written.Status);
        Assert.Contains("Part (from: “Bored the head for an hour and a …”) [head]: ", written.Error, StringComparison.Ordinal);
        Assert.Contains("Operation (from: “Bored the head for an hour and a …”) [boring]: ", written.Error, StringComparison.Ordinal);
        Assert.Contains("Hours (from: “Bored the head for an hour and a …”) [1h30]: ", written.Error, StringComparison.Ordinal);
        Assert.Contains("Your remarks say too:\n 1 reading   head; bore 25.02 mm\n", written.Error, StringComparison.Ordinal);
        var text = bench.Text("drill/2025-10-03-boring-head.md");
        Assert.StartsWith("---\ndate: 2025-10-03\npart: head\noperation: boring\nhours: 1h30\n", text, StringComparison.Ordinal);
        Assert.Contains("readings:\n  - {feature: bore, actual: 25.02 mm}\n", text, StringComparison.Ordinal);
        Assert.Contains("lost: 20m", text, StringComparison.Ordinal);
        Assert.EndsWith("---\n- Bored the head for an hour and a half\n- the bore came out at 25.02 mm\n- Took it too deep, lost 20 minutes\n", text, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_TypedAnswers_CountInsteadOfTheRemarks()
    {
        using var bench = WithRemarks("Bored the head for an hour and a half");

        bench.AskAndAnswer(["quill", "lapping", "45m", .. Enters], "write");

        Assert.StartsWith("---\ndate: 2025-10-03\npart: quill\noperation: lapping\nhours: 45m\n", bench.Text("drill/2025-10-03-lapping-quill.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_NoneAndNo_LeaveOutWhatTheRemarksSay()
    {
        using var bench = WithRemarks("Bored the head for an hour and a half, 30 minutes of that setting up", "the bore came out at 25.02 mm", "Next: face the back");

        var written = bench.AskAndAnswer(["", "", "", "none", "none", "", "", "no", "none"], "write");

        Assert.Contains("Of that, setting up (from: “Bored the head for an hour and a …”; `none`: not so) [30m]: ", written.Error, StringComparison.Ordinal);
        Assert.Contains("What is the next step? (from: “face the back”; `none`: not so) [face the back]: ", written.Error, StringComparison.Ordinal);
        Assert.StartsWith("---\ndate: 2025-10-03\npart: head\noperation: boring\nhours: 1h30\n---\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_RemarksOfTwoJobs_AreWrittenAsTwo()
    {
        using var bench = WithRemarks("Turned the quill for 40 minutes", "Drilled the head for 20 minutes");

        var written = bench.AskAndAnswer(Enters, "write");

        Assert.Contains("Job 1 of 2: quill; turning; 40m (from: “Turned the quill for 40 minutes”). Write it? [yes]: ", written.Error, StringComparison.Ordinal);
        Assert.Contains("jobs:\n  - {part: quill, operation: turning, hours: 40m}\n  - {part: head, operation: drilling, hours: 20m}\n", bench.Text("drill/2025-10-03-turning-quill.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_OneOfTwoJobsRefused_IsNotWritten()
    {
        using var bench = WithRemarks("Turned the quill for 40 minutes", "Drilled the head for 20 minutes");

        bench.AskAndAnswer(["no", .. Enters], "write");

        Assert.StartsWith("---\ndate: 2025-10-03\npart: head\noperation: drilling\nhours: 20m\n", bench.Text("drill/2025-10-03-drilling-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_AStintAndRemarks_TheClockGivesTheHoursAndTheRemarksTheRest()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 19:10").Ask("stint", "begin", "--part", "head", "--operation", "boring");
        bench.Ask("jot", "the bore of the head came out at 25.02 mm");

        var written = bench.At("2025-10-03 20:40").AskAndAnswer(Enters, "write");

        Assert.Equal(0, written.Status);
        var text = bench.Text("drill/2025-10-03-boring-head.md");
        Assert.Contains("  - {part: head, operation: boring, hours: 1h30}\n", text, StringComparison.Ordinal);
        Assert.Contains("  - {feature: bore, actual: 25.02 mm}\n", text, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    // Nobody confirmed it.
    [Fact]
    public void Write_AsAScript_EntersNothingThatWasOnlyRemarked()
    {
        using var bench = WithRemarks("Turned the quill for 40 minutes", "the bore came out at 25.02 mm", "Next: face the back");

        bench.Ask("write", "--part", "head", "--operation", "boring", "--hours", "1h");

        Assert.StartsWith("---\ndate: 2025-10-03\npart: head\noperation: boring\nhours: 1h\n---\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    private static AtTheBench WithRemarks(params string[] remarks)
    {
        var bench = new AtTheBench();
        foreach (var remark in remarks)
        {
            bench.Ask("jot", remark);
        }

        return bench;
    }
}
