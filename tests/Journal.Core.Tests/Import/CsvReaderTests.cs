using CsCheck;
using Journal.Core.Import;

namespace Journal.Core.Tests.Import;

public sealed class CsvReaderTests
{
    // The examples of RFC 4180, section 2, rules 1 to 7, word for word.
    [Theory]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "aaa|bbb|ccc/zzz|yyy|xxx")]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx", "aaa|bbb|ccc/zzz|yyy|xxx")]
    [InlineData("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "field_name|field_name|field_name/aaa|bbb|ccc/zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|bbb|ccc/zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|b\r\nbb|ccc/zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\"\"bb\",\"ccc\"", "aaa|b\"bb|ccc")]
    public void Rfc4180_ItsExamples_AreRead(string text, string expected) =>
        Assert.Equal(expected, string.Join('/', CsvReader.Read(text, ',').Select(record => string.Join('|', record.Fields))));

    [Theory]
    [InlineData("a,\n,b\n", "a|/|b")] // empty fields at both ends
    [InlineData("a\rb\r", "a/b")] // line ends of old
    [InlineData("1/2\" bar,x\n", "1/2\" bar|x")] // inches in the midst
    [InlineData("\"a\" ,c\n", "a |c")] // a space behind the closing quote
    [InlineData("\"a\" b,c\n", "\"a\" b|c")] // a text that only begins with a quotation
    [InlineData("\"5/8\" bar\",c\n", "\"5/8\" bar\"|c")] // inches within quotes, not doubled
    [InlineData("\"a\"b\",\"c\"\"d\"\n", "\"a\"b\"|c\"d")]
    [InlineData("\n\na\n", "//a")]
    public void BeyondTheRfc_IsReadAsSpreadsheetsMeanIt(string text, string expected) =>
        Assert.Equal(expected, string.Join('/', CsvReader.Read(text, ',').Select(record => string.Join('|', record.Fields))));

    [Fact]
    public void Line_AfterQuotedLineEnds_IsThatOfTheFile() =>
        Assert.Equal([1, 4, 5], CsvReader.Read("\"a\r\nb\nc\",x\r\nd,e\r\nf", ',').Select(record => record.Line));

    [Fact]
    public void QuoteNotClosed_NamesTheLineWhereItOpens() =>
        Assert.StartsWith("Line 2:", Assert.Throws<ImportException>(() => CsvReader.Read("a,b\nc,\"d\ne,f\n", ',').ToList()).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("a,b;c,d", ',')]
    [InlineData("a;\"b,c,d\";e", ';')]
    [InlineData("a\tb", '\t')]
    [InlineData("a", ',')]
    public void Separator_IsTheOneThatPartsTheFirstLineMost(string text, char expected) => Assert.Equal(expected, CsvReader.SeparatorOf(text));

    [Fact]
    public void WrittenAndReadAgain_AnyFields_AreTheSame() => Gen.String[Gen.Char["ab,;\"\r\n é"], 0, 8].Array[1, 4].Array[1, 5].Sample(table =>
    {
        var text = string.Concat(table.Select(record => string.Join(';', record.Select(field => $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\r\n"));
        Assert.Equal(table, CsvReader.Read(text, ';').Select(record => record.Fields.ToArray()));
    });
}
