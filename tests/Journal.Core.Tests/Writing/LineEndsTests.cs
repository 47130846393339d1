using Journal.Core.Writing.Texts;

namespace Journal.Core.Tests.Writing;

public sealed class LineEndsTests
{
    [Theory]
    [InlineData("a\r\nb\nc\r\n", "a\r\nb\r\nc\r\n", "a\r\nb\nc\r\n")]
    [InlineData("a\r\nb\nc\r\n", "a\nx\nc\n", "a\r\nx\nc\r\n")]
    [InlineData("a\nb\r\n", "a\r\nnew\r\nb\r\n", "a\nnew\nb\r\n")]
    [InlineData("a\r\nb", "a\nb\nc", "a\r\nb\r\nc")]
    [InlineData("a\rb", "a\nb", "a\rb")]
    [InlineData("a\r\n\r\nb\r\n", "b\n", "b\r\n")]
    [InlineData("", "a\r\nb\r\n", "a\nb\n")]
    [InlineData("a\n", "", "")]
    public void Kept_OfWhatABrowserSends_HasTheEndsOfTheFile(string before, string typed, string kept) => Assert.Equal(kept, LineEnds.Kept(before, typed));

    [Fact]
    public void Kept_OfAnyTextUntouched_IsThatText()
    {
        var random = new Random(5);
        for (var times = 0; times < 500; times++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(12)).Select(_ => random.GetItems(["a", "", "b c", "\r\n", "\n", "\r", "\u2028"], 1)[0]));

            Assert.Equal(text, LineEnds.Kept(text, text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n')));
        }
    }
}
