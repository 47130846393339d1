using System.Globalization;
using Journal.Cli.Output;
using Journal.Core.Model;

namespace Journal.Cli.Tests;

// RFC 4180, section 2: rule 1 (lines end in CRLF), 3 (header), 4 (as many fields on each line), 6 (fields with line
// breaks, double quotes and commas in double quotes) and 7 (a double quote inside is doubled).
public class CsvTests
{
    [Theory]
    [InlineData("aaa", "aaa")]
    [InlineData("b CRLF bb", "b CRLF bb")]
    [InlineData("b\r\nbb", "\"b\r\nbb\"")] // the example of rule 6
    [InlineData("b\"bb", "\"b\"\"bb\"")] // the example of rule 7
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("", "")]
    public void Field_EachKindOfText_IsQuotedWhereTheRuleSays(string text, string written)
    {
        Assert.Equal($"x,y\r\n{written},1\r\n", Write(new CsvTable(["x", "y"], [[text, 1]])));
    }

    [Fact]
    public void Field_NumbersDatesAndNothing_AreInvariant()
    {
        Assert.Equal("a,b,c,d\r\n1234.5,2025-10-03,165,\r\n", Write(new CsvTable(["a", "b", "c", "d"], [[1234.5m, new DateOnly(2025, 10, 3), new Minutes(165), null]])));
    }

    // The beginnings that OWASP's page on CSV injection lists, its example of a link, and sizes that begin alike.
    [Theory]
    [InlineData("=1+2", "'=1+2")]
    [InlineData("+1+2", "'+1+2")]
    [InlineData("-1+2", "'-1+2")]
    [InlineData("@SUM(1+2)", "'@SUM(1+2)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("=1+2\";=1+2", "\"'=1+2\"\";=1+2\"")]
    [InlineData("＝1+2", "'＝1+2")]
    [InlineData("-0.02", "-0.02")]
    [InlineData("+0.05/-0", "'+0.05/-0")]
    [InlineData("\u001b[2Jcleared\u0007", " [2Jcleared ")]
    [InlineData("C1 too: \u009b31m", "C1 too:  31m")]
    public void Field_WhatASpreadsheetOrTerminalWouldObey_IsMadeHarmless(string text, string written)
    {
        Assert.Equal($"x,y\r\n{written},-1\r\n", Write(new CsvTable(["x", "y"], [[text, -1]])));
    }

    [Fact]
    public void Hours_SmallJournal_HasARowForEachOperationAndAddsUp()
    {
        using var journal = JournalOnDisk.Small();

        var output = journal.Ask("hours", "--format", "csv").Out;

        var lines = output.Split("\r\n");
        Assert.Equal("build,part,operation,minutes", lines[0]);
        Assert.Equal("", lines[^1]);
        Assert.Equal(600, lines[1..^1].Sum(line => int.Parse(line.Split(',')[3], CultureInfo.InvariantCulture)));
        Assert.Contains("drill,whole,planning,34", lines);
        Assert.DoesNotContain('\n', output.Replace("\r\n", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Tooling_TitleWithCommaAndQuotes_IsQuoted()
    {
        using var journal = JournalOnDisk.Small();

        Assert.Contains("boring-head,\"50 mm boring head, \"\"the good one\"\"\",tool-holding,bought,85,2025-09-06,165,1,drill/head,boring,0\r\n", journal.Ask("tooling", "--format", "csv").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("timeline", "build,part,first,last,daysWorked,setUps,minutes", "drill,quill,2025-09-07,2025-09-07,1,0,94")]
    [InlineData("lessons", "id,text,build,entry,operation,minutesLost,repeated,heeded", "lap-last,Lap after everything else.,drill,2025-09-07-quill,turning,0,0,0")]
    [InlineData("costs", "build,kind,cost", "drill,stock,4.50")]
    [InlineData("next", "what,id,text,entry", "part-to-go,gib-screw,,")]
    public void EachCommand_SmallJournal_HasHeaderAndRows(string command, string header, string row)
    {
        using var journal = JournalOnDisk.Small();

        var lines = journal.Ask(command, "--format", "csv").Out.Split("\r\n");

        Assert.Equal(header, lines[0]);
        Assert.Contains(row, lines);
    }

    private static string Write(CsvTable table)
    {
        using var writer = new StringWriter();
        table.WriteTo(writer);
        return writer.ToString();
    }
}
