using System.Net;

namespace Journal.Bench.Tests;

/// <summary>What each form takes, and what it refuses with a remedy, by the rules of the entry's keys.</summary>
public sealed class FormTests : IAsyncLifetime
{
    private ServedBench bench = null!;
    private BenchClient phone = null!;

    public static TheoryData<string, string, string> Refused => new()
    {
        { "remark", "text=", "Say what there is to remark." },
        { "mistake", "what=", "Say what went wrong." },
        { "mistake", "what=It broke&cause=bad-luck", "There is no cause" },
        { "mistake", "what=It broke&lost=a while", "is not a time" },
        { "reading", "other-feature=bore&actual=", "Say what was measured." },
        { "reading", "actual=12", "Say what was measured, such as" },
        { "reading", "other-feature=bore&part=spindle&actual=12", "There is no part" },
        { "reading", "other-feature=bore&actual=twelve", "number" },
        { "reading", "other-feature=bore&required=12 H99&actual=12", "" },
        { "reading", "other-feature=thread&required=M6&actual=6", "gauge" },
        { "setting", "cutter=HSS", "Say the speed, the feed or the depth" },
        { "setting", "rpm=fast", "is not a speed" },
        { "setting", "rpm=-3", "is not a speed" },
        { "bought", "what=Tap&cost=", "Say what it cost" },
        { "bought", "what=Tap&cost=-1", "Say what it cost" },
        { "finished", "part=spindle", "There is no part" },
        { "finished", "part=gib-screw&pieces=9", "is not a number of pieces from 1 to 4" },
        { "heeded", "of=none", "There is no such lesson" },
        { "cleared", "of=none", "There is no such snag" },
        { "begin", "part=spindle", "has no part" },
        { "begin", "part=head&operation=juggling", "There is no operation" },
        { "caption", "jot=none&caption=x", "in an entry already" },
    };

    public async Task InitializeAsync()
    {
        bench = await ServedBench.Start();
        phone = await bench.Phone();
    }

    public async Task DisposeAsync()
    {
        phone.Dispose();
        await bench.DisposeAsync();
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task Form_ThatMeansNothing_IsRefusedWithARemedy(string form, string fields, string said)
    {
        await phone.Post($"/tonight/{form}", [("token", phone.Token), ("id", "0123456789abcdef"), .. fields.Split('&').Select(field => field.Split('=')).Select(pair => (pair[0], pair[1]))]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, phone.Status);
        Assert.Contains(said, phone.Page.QuerySelector(".told.not")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(bench.Slate.Jots);
        Assert.Null(bench.Slate.Stint);
    }

    [Fact]
    public async Task Remark_ChangedAndTakenBack_IsAsItWasSaidLast()
    {
        await phone.Send("/tonight/remark", ("text", "It sinks"));
        var id = bench.Slate.Jots[0].Id!;

        await phone.Send("/tonight/remark", ("jot", id), ("text", "It sings"));
        Assert.Equal(("It sings", id), (Assert.Single(bench.Slate.Jots).Text, bench.Slate.Jots[0].Id));

        await phone.Post("/tonight/take-back", ("token", phone.Token), ("id", "0123456789abcdef"), ("jot", id));
        Assert.Empty(bench.Slate.Jots);
    }

    [Fact]
    public async Task Picture_SentTwiceAndTakenBack_IsThereOnceAndThenNot()
    {
        var picture = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNkYAAAAAYAAjCB0C8AAAAASUVORK5CYII=");
        await phone.SendPicture(picture, "../../evil.png", "image/png");
        await phone.SendPicture(picture, "again.png", "image/png");
        var photos = Path.Combine(bench.Disk.Folder, "drill", "photos");
        Assert.Equal("2025-10-03-1910.png", Path.GetFileName(Assert.Single(Directory.EnumerateFiles(photos))));
        Assert.Single(bench.Slate.Jots);

        await phone.Send("/tonight/caption", ("caption", "The bore, at last"));
        Assert.Equal("The bore, at last", bench.Slate.Jots[0]["caption"]);
        await phone.Post("/tonight/take-back", ("token", phone.Token), ("id", "0123456789abcdef"), ("jot", bench.Slate.Jots[0].Id!));

        Assert.Empty(Directory.EnumerateFiles(photos));
        Assert.Single(Directory.EnumerateFiles(Path.Combine(bench.Disk.Folder, ".bench", "taken-back")));
    }

    // Found by requests that nobody would send: an answer's head takes no such letters.
    [Fact]
    public async Task Remark_OfAnIdThatIsNoneOfOurs_IsAnsweredAllTheSame()
    {
        await phone.Post("/tonight/take-back", ("token", phone.Token), ("id", "0123456789abcdef"), ("jot", "🔧\r\nSet-Cookie: evil=1"));

        Assert.Equal(HttpStatusCode.OK, phone.Status);
    }

    [Fact]
    public async Task Kind_ThatIsNotKnown_BecomesALineOfTheText()
    {
        await phone.Send("/tonight/remark", ("text", "It sings"));
        var file = Path.Combine(bench.Disk.Folder, ".bench", "slate.json");
        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)).Replace("\"kind\": null", "\"kind\": \"of-a-later-program\"", StringComparison.Ordinal));

        Assert.Equal(0, bench.Ask("write", "--hours", "1h", "--part", "head", "--operation", "boring").Status);

        Assert.EndsWith("It sings\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }
}
