using System.Net;

namespace Journal.Bench.Tests;

/// <summary>The switch: what it does, in which order, and what it never guesses.</summary>
public sealed class StintTests
{
    [Fact]
    public async Task Begin_WhileAnotherJobRuns_EndsThatOne()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        await phone.Send("/tonight/begin", ("part", "head"), ("operation", "boring"));
        bench.Clock.At("2025-10-03 20:10");

        await phone.Send("/tonight/begin", ("part", "gib-screw"), ("operation", "turning"));
        bench.Clock.At("2025-10-03 20:25");
        await phone.Send("/tonight/end");

        Assert.Contains("- {part: head, operation: boring, hours: 1h}\n  - {part: gib-screw, operation: turning, hours: 15m}\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems);
    }

    [Fact]
    public async Task Pause_AndGoOn_LeaveTheBreakOut()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        await phone.Send("/tonight/begin");
        bench.Clock.At("2025-10-03 19:40");
        await phone.Send("/tonight/pause");
        Assert.Equal("Break", phone.Page.QuerySelector("#switch h2")!.TextContent);
        bench.Clock.At("2025-10-03 20:00");
        await phone.Send("/tonight/go-on");
        bench.Clock.At("2025-10-03 20:10");

        await phone.Send("/tonight/end");

        Assert.Contains("hours: 40m", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task End_Forgotten_IsAskedAboutAndNeverGuessed()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        await phone.Send("/tonight/begin");
        bench.Clock.At("2025-10-04 18:00");
        await phone.Look("/tonight");
        Assert.Contains("was not ended. When did you stop?", phone.Page.QuerySelector("#switch.forgotten")!.TextContent, StringComparison.Ordinal);

        await phone.Post("/tonight/end", ("token", phone.Token), ("id", "0123456789abcdef"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, phone.Status);
        Assert.NotNull(bench.Slate.Stint);
        await phone.Look("/tonight");
        await phone.Send("/tonight/end", ("ended", "21:40"));

        Assert.Contains("hours: 2h30", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Begin_ThatArrivesAfterAnothersStint_IsKeptAsARemark()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        await phone.Send("/tonight/begin", ("part", "head"), ("operation", "boring"));

        await phone.Post("/tonight/begin", ("token", phone.Token), ("id", "0123456789abcdef"), ("part", "quill"), ("operation", "lapping"), ("at", "0"), ("now", "600000"));

        Assert.Equal(("head", "Begun at 19:00: Bench drill, Quill, lapping."), (bench.Slate.Stint!.Part, Assert.Single(bench.Slate.Jots).Text));
    }

    [Fact]
    public async Task End_SentAgain_EndsOneStintAlone()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        await phone.Send("/tonight/begin");
        bench.Clock.At("2025-10-03 19:40");
        (string, string)[] end = [("token", phone.Token), ("id", "0123456789abcdef")];
        await phone.Post("/tonight/end", end);
        await phone.Send("/tonight/begin");

        await phone.Post("/tonight/end", end);

        Assert.NotNull(bench.Slate.Stint);
    }

    [Fact]
    public async Task Command_AndPhone_ShareTheSwitch()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        bench.Ask("stint", "begin", "--part", "head", "--operation", "boring");
        bench.Clock.At("2025-10-03 19:40");
        await phone.Look("/tonight");
        Assert.Contains("Head casting, boring", phone.Page.QuerySelector("#switch")!.TextContent, StringComparison.Ordinal);

        await phone.Send("/tonight/pause");

        Assert.Contains("paused since 19:40", bench.Ask("stint", "show").Out.Replace('\n', ' '), StringComparison.Ordinal);
    }
}
