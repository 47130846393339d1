namespace Journal.Core.Tests.Parsing;

public sealed class YamlFaultTests
{
    [Theory]
    [InlineData("title: [a, b", "4:8", "the bracket or brace opened here is not closed")]
    [InlineData("title: {a: b", "4:8", "the bracket or brace opened here is not closed")]
    [InlineData("title: [", "4:8", "the bracket or brace opened here is not closed")]
    [InlineData("snags: [a, {text: b]", "4:12", "the bracket or brace opened here is not closed")]
    [InlineData("title: \"open", "4:8", "the quotation mark opened here is not closed")]
    [InlineData("title: a: b", "4:9", "there is a second `: ` in the value")]
    [InlineData("title: a\n  next: b", "5:7", "the line above is not finished")]
    [InlineData("title: `b`", "4:8", "a value cannot start with this character")]
    [InlineData("title: a\n\tnext: b", "5:1", "there is a tab where only spaces are allowed")]
    [InlineData("tools:\n\t- lathe", "5:1", "there is a tab where only spaces are allowed")]
    [InlineData("mistakes:\n  - what: a\n\tcause: haste\nnext: b", "6:1", "there is a tab where only spaces are allowed")]
    [InlineData("mistakes:\n  - what: a\n  \tlost: 5m", "6:3", "there is a tab where only spaces are allowed")]
    [InlineData("title: \"a\\qb\"", "4:8", "a backslash in double quotes")]
    [InlineData("title a", "4:1", "`key: value` was expected here")]
    [InlineData("title: - a", "4:8", "a list cannot start on the same line as its key")]
    [InlineData("snags:\n  - text: b\n   id: d", "6:4", "indented differently from the list above")]
    public void NotYaml_SlipsOfEveryDay_AreToldInPlainWords(string lines, string place, string words)
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"part: head\nhours: 1h\n{lines}");

        var problem = Assert.Single(problems);
        Assert.Equal($"{place} not-yaml", $"{problem.Place.Line}:{problem.Place.Column} {problem.Kind.Code}");
        Assert.StartsWith("This is not YAML: ", problem.Message, StringComparison.Ordinal);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
    }
}
