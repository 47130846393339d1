using System.Net;
using Journal.Bench.Texts;

namespace Journal.Bench.Tests;

/// <summary>The pages for the desk stand behind the same gates as that of tonight.</summary>
public sealed class DeskAttackTests
{
    private static readonly string Entry = TextFiles.IdOf("drill/2025-09-06-head.md");
    private static readonly string Plan = TextFiles.IdOf("plans/bench-shaper.yaml");

    public static TheoryData<string> Asked => ["/files", $"/files/{Entry}", $"/words/{Entry}", "/write-up", "/write-up/words", "/pictures", $"/pictures/{Entry}", $"/picture/{Entry}", "/plans", $"/plans/{Plan}", "/site/index.html"];

    public static TheoryData<string> Sent => [$"/files/{Entry}", $"/typed/{Entry}", "/write-up", "/write-up/draft", "/write-up/look", $"/pictures/{Entry}", $"/plans/{Plan}", $"/begin/{Plan}"];

    [Theory]
    [MemberData(nameof(Asked))]
    public async Task Page_AskedForByAStranger_IsNotShown(string address)
    {
        await using var bench = await ServedBench.Start();

        var answer = await Wire.Send(bench.Address, Wire.Head(bench.Address, "GET", address));

        Assert.Equal(303, Wire.StatusOf(answer));
        Assert.DoesNotContain("Lean-to", answer, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sent))]
    public async Task Form_OfAStrangerOrForged_ChangesNothing(string address)
    {
        await using var bench = await ServedBench.Start();
        using var stranger = bench.Stranger();
        using var desk = await bench.Desk();
        using var phone = await bench.Phone();
        var before = Texts(bench);
        (string, string)[] fields = [("text", "forged"), ("seen", ""), ("save", "yes"), ("guess-ram", "99h")];

        await stranger.Post(address, fields);
        Assert.Equal(HttpStatusCode.Unauthorized, stranger.Status);
        await desk.Post(address, fields);
        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
        await desk.Look("/tonight");
        await desk.Post(address, [.. fields, ("token", phone.Token)]);
        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);

        Assert.Equal(before, Texts(bench));
    }

    [Fact]
    public async Task Page_OfTheSite_MayBeFramedByOursAloneAndRunsNoScriptOfOthers()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();

        var answer = await Wire.Send(bench.Address, Wire.Head(bench.Address, "GET", "/site/index.html", $"Cookie: {desk.Cookie!.Name}={desk.Cookie.Value}"));

        Assert.Contains("frame-ancestors 'self'", answer, StringComparison.Ordinal);
        Assert.Contains("script-src 'self';", answer, StringComparison.Ordinal);
        Assert.Contains("The Lean-to", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Text_TooLong_IsRefusedAndNothingIsSaved()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await bench.Desk();
        await desk.Look($"/files/{Entry}");
        var before = Texts(bench);

        await desk.Send($"/files/{Entry}", ("text", new string('x', 700_000)));

        Assert.Contains(desk.Status, new[] { HttpStatusCode.BadRequest, HttpStatusCode.RequestEntityTooLarge });
        Assert.Equal(before, Texts(bench));
    }

    private static SortedDictionary<string, string> Texts(ServedBench bench) => new(
        Directory.EnumerateFiles(bench.Disk.Folder, "*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".md" or ".yaml").ToDictionary(file => file, File.ReadAllText),
        StringComparer.Ordinal);
}
