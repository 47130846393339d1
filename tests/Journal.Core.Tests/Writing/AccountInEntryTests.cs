using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Core.Tests.Writing;

/// <summary>The text of an entry is the account to the letter, whatever stands in it; only a missing last line end is added.</summary>
public class AccountInEntryTests
{
    private const string Signs = "ab1 \t\n\r-#>*_[](){}:|`~'\"\\&<$%é“”…½😀\u00A0\u2028\u200B\u0301";

    [Theory]
    [InlineData("One line")]
    [InlineData("One line\n")]
    [InlineData("\n\n  A blank line before, and after.\n\n\n")]
    [InlineData("Windows\r\nline ends\r\n\r\nall through\r\n")]
    [InlineData("---\ntitle: not the entry’s\n---\n")]
    [InlineData("- 0.05 under\n1. Bored it\n# 10-32 tapped\n> and so on\n")]
    [InlineData("\tA tab, a non-breaking\u00A0space, and 😀\n")]
    public void Of_Account_IsTheText(string account) => AssertIsTheText(account);

    [Fact]
    public void Of_AnyAccount_IsTheText()
    {
        var random = new Random(20251003);
        for (var turn = 0; turn < 2000; turn++)
        {
            AssertIsTheText(string.Concat(Enumerable.Range(0, random.Next(1, 60)).Select(_ => Rune(random))));
        }
    }

    [Fact]
    public void WhyNot_TooLong_SaysHowLongItMayBe()
    {
        Assert.Null(AccountBody.WhyNot(new string('a', 65_536)));
        Assert.Contains("the limit is 65536", AccountBody.WhyNot(new string('a', 65_537)), StringComparison.Ordinal);
    }

    private static string Rune(Random random)
    {
        var runes = Signs.EnumerateRunes().ToList();
        return runes[random.Next(runes.Count)].ToString();
    }

    private static void AssertIsTheText(string account)
    {
        var entry = NewEntry.Of(new DateOnly(2025, 10, 3), [new NewJob("head", ["boring"], "1h")], new WriteUp { Account = account });

        var halves = FrontMatter.Split(entry, "", new ProblemLog());
        Assert.Equal(account.EndsWith('\n') ? account : account + "\n", halves?.Body);
    }
}
