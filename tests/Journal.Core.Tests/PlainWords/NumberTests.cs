using System.Globalization;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;

namespace Journal.Core.Tests.PlainWords;

/// <summary>Numbers in words, held against Unicode CLDR's spelled-out numbers for English.</summary>
public sealed class NumberTests
{
    private static readonly string[] Digits = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    [Fact]
    public void CldrRules_From0To10000_AreAppliedAsIcuDoes() =>
        Assert.Equal(SpelledNumbers.OfCldr.Digest, SpelledNumbers.OfCldr.DigestOfAll());

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void SpelledNumber_From0To10000_IsReadAndSaidBack(bool withAnd)
    {
        for (var number = 0; number <= 10_000; number++)
        {
            var words = SpelledNumbers.OfCldr.Say(number, withAnd);
            var read = Whole(words);
            Assert.True(read == number, $"{words} was read as {read}.");
            Assert.Equal(words, SpelledNumbers.OfCldr.Say((int)read!, withAnd));
        }
    }

    [Fact]
    public void Figures_From0To10000_AreReadAsTheirWordsAre()
    {
        for (var number = 0; number <= 10_000; number += 7)
        {
            Assert.Equal(Whole(SpelledNumbers.OfCldr.Say(number, withAnd: true)), Whole(number.ToString(CultureInfo.InvariantCulture)));
            Assert.Equal(number, Whole(number.ToString("N0", CultureInfo.InvariantCulture)));
        }
    }

    // CLDR's x.x rule: the whole, "point", the digits one by one.
    [Fact]
    public void Decimals_SpelledByCldr_KeepTheirDigits()
    {
        for (var thousandths = 1; thousandths < 10_000; thousandths += 13)
        {
            var number = thousandths / 1000m;
            var digits = number.ToString("0.000", CultureInfo.InvariantCulture)[2..];
            var words = $"{SpelledNumbers.OfCldr.Say((int)number, withAnd: false)} point {string.Join(' ', digits.Select(digit => Digits[digit - '0']))}";
            Assert.Equal(number, Whole(words));
        }
    }

    // Parts by CLDR's ordinals; "halves" and "quarters" are English, from memory.
    [Fact]
    public void Fractions_OfEveryCommonDenominator_AreRead()
    {
        foreach (var (below, word) in SpelledNumbers.OfCldr.Ordinals)
        {
            for (var above = 1; above < below; above++)
            {
                var words = $"{SpelledNumbers.OfCldr.Say(above, withAnd: false)} {word}{(above > 1 ? "s" : "")}";
                Assert.Equal((decimal)above / below, Whole(words));
                Assert.Equal(2 + (decimal)above / below, Whole($"two and {words}"));
            }
        }
    }

    [Theory]
    [InlineData("two and a half", 2.5)]
    [InlineData("an eighth", 0.125)]
    [InlineData("five thirty-seconds", 0.15625)]
    [InlineData("seven sixty-fourths", 0.109375)]
    [InlineData("1 1/2", 1.5)]
    [InlineData("2-3/8", 2.375)]
    [InlineData("3½", 3.5)]
    [InlineData("0,125", 0.125)]
    [InlineData("24,11", 24.11)]
    [InlineData("1,250", 1250)]
    [InlineData(".020", 0.020)]
    [InlineData("twelve point oh one", 12.01)]
    [InlineData("nought point two five", 0.25)]
    [InlineData("point seven five oh three", 0.7503)]
    [InlineData("fourteen hundred", 1400)]
    [InlineData("a hundred and twenty", 120)]
    public void SpokenNumber_AsMakersSayIt_IsRead(string words, double value) => Assert.Equal((decimal)value, Whole(words));

    [Theory]
    [InlineData("hour")]
    [InlineData("and")]
    [InlineData("tenth")]
    public void Words_ThatAreNoNumber_AreNone(string words) => Assert.Null(Whole(words));

    private static decimal? Whole(string words)
    {
        var tokens = Tokenizer.Tokens(words);
        return NumberGrammar.TryNumber(tokens, 0, out var number) && number.Next == tokens.Count ? number.Value : null;
    }
}
