using Journal.Core.Checking;
using Journal.Core.Parsing;
using Journal.Core.Tests.Parsing;
using Journal.Core.Writing.Texts;

namespace Journal.Core.Tests.Writing;

public sealed class MendTests
{
    private const string File = "drill/2025-10-05-typed.md";

    [Theory]
    [InlineData("---\npart: haed\noperation: boring\nhours: 1h\n---\n", 2, 7, "head")]
    [InlineData("---\npart: head\noperation: [boring, \"drillng\"]\nhours: 1h\n---\n", 3, 22, "drilling")]
    [InlineData("---\npart: head\noperation: boring\nhours: 1h\nmistakes:\n  - {what: Slipped, cause: mesuring}\n---\n", 6, 28, "measuring")]
    public void Of_AWordThatIsNearlyRight_IsTheRightWordInItsPlace(string text, int line, int column, string word)
    {
        var mend = Assert.Single(Read(text).Problems.Where(problem => problem.Place.File == File).Select(problem => Mend.Of(problem, text)).OfType<Mend>());

        Assert.Equal((line, column, word), (mend.Line, mend.Column, mend.Word));
        var lines = text.Split('\n');
        lines[line - 1] = lines[line - 1].Remove(column - 1, mend.Length).Insert(column - 1, word);
        Assert.DoesNotContain(Read(string.Join('\n', lines)).Problems, problem => problem.Place.File == File);
    }

    [Fact]
    public void Of_AWordThatNothingIsNear_IsNone()
    {
        const string Text = "---\npart: zzzzzz\noperation: boring\nhours: 1h\n---\n";

        Assert.All(Read(Text).Problems.Where(problem => problem.Place.File == File), problem => Assert.Null(Mend.Of(problem, Text)));
    }

    private static JournalReading Read(string text)
    {
        using var journal = JournalOnDisk.WithDrill();
        return JournalReader.Read(journal.Root, new(2025, 12, 31), kept: null, new TypedFile(File, text));
    }
}
