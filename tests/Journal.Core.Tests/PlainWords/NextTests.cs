namespace Journal.Core.Tests.PlainWords;

/// <summary>The next step in the maker's words.</summary>
public sealed class NextTests
{
    [Theory]
    [InlineData("Bored the head. Next: ream the pinion hole.", "ream the pinion hole")]
    [InlineData("turned the quill nxt job is the spindle", "spindle")]
    [InlineData("Turned the quill, and the spindle is next.", "spindle")]
    [InlineData("Drilled and tapped the whole of the base tonight, an hour and a half of it. On Thursday I'm boring the table arm.", "boring the table arm")]
    [InlineData("Drilled and tapped the whole of the base tonight, 1h30. Sat: bore the table arm.", "bore the table arm")]
    [InlineData("Lapping I haven't done; forty minutes, tops, and that's next.", "Lapping")]
    public void Step_ToCome_IsTheNext(string account, string next) => Assert.Equal(next, Told.OfTheDrill(account).Next?.Text);

    [Theory]
    [InlineData("Bored the head. Next: hone it, no, lap it.", "lap it")]
    [InlineData("bored the head next week i turn the spindle and maybe the quill no just the spindle", "turn the spindle")]
    [InlineData("Bored the head. Next week: the rack or the spindle. Spindle.", "Spindle")]
    [InlineData("Turned the quill for an hour and cleaned up the shop behind me. On Saturday the base gets painted, or I go out. No. Keyway first.", "Keyway first")]
    public void Step_Corrected_IsTheLastWord(string account, string next) => Assert.Equal(next, Told.OfTheDrill(account).Next?.Text);

    [Theory]
    [InlineData("Sat. The quill again, turned it, 40 min.")]
    [InlineData("Put the vice next to the lathe and turned the quill.")]
    [InlineData("Turned the quill. Next month's film is the pulley.")]
    [InlineData("Turned the quill. Last Saturday I bored the head.")]
    [InlineData("Turned the quill for an hour and a half. Tomorrow no workshop.")]
    public void Day_OrPlace_IsNoStep(string account) => Assert.Null(Told.OfTheDrill(account).Next);
}
