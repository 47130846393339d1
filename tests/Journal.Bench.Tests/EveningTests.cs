using System.Net;

namespace Journal.Bench.Tests;

/// <summary>An evening on the phone, forms alone, and what stands in the journal after it.</summary>
public sealed class EveningTests
{
    [Fact]
    public async Task Evening_OfAStintAndRemarks_StandsInItsEntry()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        Assert.Contains("Face the back of the boss.", phone.Page.QuerySelector("#where")!.TextContent, StringComparison.Ordinal);

        await phone.Send("/tonight/begin", ("part", "head"), ("operation", "boring"));
        bench.Clock.At("2025-10-03 20:00");
        await phone.Look("/tonight");
        await phone.Send("/tonight/remark", ("text", "It sings\nat 300 rpm"));
        await phone.Send("/tonight/mistake", ("what", "Touched the boss"), ("cause", "setting-up"), ("lost", "20m"), ("lesson", "Look first."));
        await phone.Send("/tonight/reading", ("part", "head"), ("other-feature", "bore"), ("required", "12 H7"), ("actual", "12,031"));
        Assert.Contains("0.013 mm too large", phone.Page.QuerySelector("#told .verdict.out")!.TextContent, StringComparison.Ordinal);
        await phone.Send("/tonight/setting", ("rpm", "320"), ("depth", "0.5"));
        await phone.Send("/tonight/bought", ("what", "Boring bar"), ("cost", "12,50"));
        await phone.Send("/tonight/heeded", ("of", "indicate-both-ends"));
        await phone.Send("/tonight/cleared", ("of", "chatter"));
        await phone.Send("/tonight/finished", ("part", "head"));
        bench.Clock.At("2025-10-03 20:40");
        await phone.Send("/tonight/end");
        Assert.Equal(HttpStatusCode.OK, phone.Status);
        var written = bench.Ask("write", "--next", "Lap it.");

        Assert.Equal(0, written.Status);
        Assert.Equal(
            """
            ---
            date: 2025-10-03
            jobs:
              - {part: head, operation: boring, hours: 1h30}
            next: Lap it.
            mistakes:
              - {what: Touched the boss, cause: setting-up, lost: 20m, lesson: Look first.}
            heeded:
              - indicate-both-ends
            finished:
              - head
            cleared:
              - chatter
            readings:
              - {feature: bore, required: 12 H7, actual: 12.031, part: head}
            settings:
              - {rpm: 320, depth: 0.5, verdict: worked}
            bought:
              - {what: Boring bar, cost: 12.50}
            ---
            It sings at 300 rpm

            """,
            bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Empty(bench.Problems);
        Assert.Empty(bench.Slate.Jots);
    }

    [Fact]
    public async Task Deed_SentAgain_IsDoneOnce()
    {
        await using var bench = await ServedBench.Start();
        using var phone = await bench.Phone();
        (string, string)[] sent = [("token", phone.Token), ("id", "0123456789abcdef"), ("text", "It sings")];

        await phone.Post("/tonight/remark", sent);
        await bench.Restart();
        await phone.Post("/tonight/remark", sent);

        Assert.Equal("It sings", Assert.Single(bench.Slate.Jots).Text);
    }
}
