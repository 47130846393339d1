using Journal.Cli.Commands;
using Journal.Cli.Output;

namespace Journal.Cli.Tests;

public class HelpTests
{
    public static TheoryData<string> Commands => [.. AllCommands.Create(Nowhere).Select(command => command.Name)];

    private static Terminal Nowhere => new(TextWriter.Null, TextWriter.Null) { Folder = "/", Today = default };

    [Theory]
    [MemberData(nameof(Commands))]
    public void Help_EachCommand_HasOptionsAndAnExampleThatIsUnderstood(string command)
    {
        using var disk = JournalOnDisk.Bare();
        using var journal = JournalOnDisk.Small()
            .With("phone/read-me.txt", "No pictures yet.")
            .With("journal.yaml", $"title: The Lean-to\ndestinations: {{disk: {{folder: {disk.Folder}/sent}}}}\n")
            .With("hours.csv", "2024-10-03,,,1h\n")
            .With("evening.txt", "Bored the head for an hour.\n");
        Assert.Equal(0, journal.Ask("publish", "--to", "site").Status);

        var help = journal.Ask(command, "--help");

        Assert.Equal((0, ""), (help.Status, help.Error));
        Assert.Contains(command switch { "completions" => "<shell>", "start" => "<folder>", "stint" => "begin", "add" or "rename" or "split" => "part", "merge" => "tool", _ => "--in <folder>" }, help.Out, StringComparison.Ordinal);
        Assert.All(help.Lines, line => Assert.True(line.Length <= 80, line));
        var example = help.Lines[^1].Trim().Replace("my-journal", journal.Folder, StringComparison.Ordinal).Split(" >")[0];
        Assert.StartsWith($"journal {command}", example, StringComparison.Ordinal);
        if (command is not ("preview" or "bench"))
        {
            Assert.Equal(0, journal.Ask(example.Split(' ')[1..]).Status);
        }
    }

    [Theory]
    [InlineData]
    [InlineData("--help")]
    [InlineData("-h")]
    public void Help_OfTheProgram_NamesEveryCommand(params string[] words)
    {
        using var folder = JournalOnDisk.Bare();

        var help = folder.Ask(words);

        Assert.Equal((0, ""), (help.Status, help.Error));
        Assert.All(AllCommands.Create(Nowhere), command => Assert.Contains($"\n  {command.Name} ", help.Out, StringComparison.Ordinal));
    }

    [Fact]
    public void Version_SaysNameAndNumber()
    {
        using var folder = JournalOnDisk.Bare();

        Assert.Matches(@"^journal \d+\.\d+\.\d+\n$", folder.Ask("--version").Out);
    }
}
