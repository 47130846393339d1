using Journal.Core.Model;

namespace Journal.Core.Tests.PlainWords;

/// <summary>What went wrong, by the signs that stand near each other.</summary>
public sealed class MistakeTests
{
    [Theory]
    [InlineData("Bored the head. Broke a tap in the clamp hole because I was rushing, lost 20 min getting it out.", "haste", 20, null)]
    [InlineData("Turned the spindle. Dropped 10 min to a wrong zero on the cross slide, recut it.", "wrong-zero", 10, Outcome.Rework)]
    [InlineData("milled the table and i lost count at hole nine so it's in the wrong place but it stays", "lost-count", null, Outcome.UsedAsIs)]
    [InlineData("Milled the base. The casting moved in the vice and the cutter dug in. I filed it out, five minutes.", "work-moved", null, Outcome.Rework)]
    [InlineData("Lapped the quill. I'd started with the coarse paste, and ten minutes were lost on the scratches.", null, 10, null)]
    [InlineData("Filed the lever. I ran into a blowhole, plugged it with epoxy, and it cost me an hour.", "casting-fault", 60, Outcome.Repair)]
    public void Signs_TogetherNearEachOther_AreAMistake(string account, string? cause, int? lost, Outcome? outcome)
    {
        var mistake = Assert.Single(Told.OfTheDrill(account).Mistakes);
        Assert.Equal((cause, lost, outcome), (mistake.Cause?.Value, mistake.Lost?.Count, mistake.Outcome));
    }

    [Theory]
    [InlineData("Turned the quill, half a thou under, fine.")]
    [InlineData("My mate broke a tap in his and lost an hour.")]
    [InlineData("Nothing went wrong tonight, no mistakes.")]
    [InlineData("I nearly milled the same flat twice but caught it, so nothing cut.")]
    [InlineData("Speed was 600 and it chattered, so I dropped it to 200.")]
    [InlineData("Turned a plug from scrap bar.")]
    [InlineData("Bored the head. There is a scratch on the base.")]
    public void Sign_AloneOrOfAnother_IsNoMistake(string account) => Assert.Empty(Told.OfTheDrill(account).Mistakes);

    [Fact]
    public void KnownLesson_NotHeeded_IsRepeated() =>
        Assert.Equal("cool-before-last-cut", Assert.Single(Told.OfTheDrill("Bored the table arm. Took the last cut warm again, did not let it come down to the temperature of the shop, so it is too big, lost half an hour. I knew better.").Mistakes).Repeats?.Value);
}
