namespace Journal.Cli.Tests;

public sealed class LessonsForTests
{
    // Written down before the ranking was written or run: the lesson that a maker who knows the demonstration journal would
    // want to be told first.
    [Theory]
    [InlineData("--for boring --material cast-iron --part head", "bench-drill-2025-10-04-head-boring-1")]
    [InlineData("--for gear-cutting", "cutter-on-centre")]
    [InlineData("--for hardening --part jaw-plate", "quench-edge-on")]
    [InlineData("--for reaming", "reamer-follows")]
    [InlineData("--for screw-cutting --part screw", "run-out-groove")]
    [InlineData("--for slotting --part table", "bench-drill-2025-10-30-table-slots-1")]
    [InlineData("--for parting-off", "short-parting")]
    [InlineData("--for drilling --tool rotary-table", "pilot-then-ring")]
    [InlineData("--for taper-turning", "clock-the-taper")]
    [InlineData("--for fixture-making", "write-the-count")]
    public void LessonsFor_Demo_PutsTheObviousOneFirst(string asked, string first)
    {
        var answer = Answer.To(Demo.Folder, ["lessons", .. asked.Split(' '), "--format", "json"]);

        Assert.Equal(first, answer.Json.GetProperty("lessons")[0].GetProperty("id").GetString());
    }
}
