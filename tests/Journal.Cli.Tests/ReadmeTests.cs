using System.Globalization;

namespace Journal.Cli.Tests;

/// <summary>The example of the README, played in the demonstration journal.</summary>
public class ReadmeTests
{
    [Fact]
    public void SayItInPlainWords_TheEntryIsWhatTheProgramWrites()
    {
        var blocks = Section("## Say it in plain words").Split("```");
        var (account, entry) = (blocks[1].TrimStart('\n'), blocks[3]["yaml\n".Length..]);
        var date = entry.Split('\n').Single(line => line.StartsWith("date: ", StringComparison.Ordinal))["date: ".Length..];
        using var journal = JournalOnDisk.Bare().With("evening.txt", account);
        foreach (var file in new[] { "journal.yaml", "tools.yaml" }.Concat(Directory.GetFiles(Path.Combine(Demo.Folder, "dividing-head"), "*.*").Select(path => Path.GetRelativePath(Demo.Folder, path))))
        {
            journal.With(file, File.ReadAllText(Path.Combine(Demo.Folder, file)));
        }

        var written = Answer.To(journal.Folder, terminal => terminal with { Now = DateTimeOffset.Parse($"{date}T20:00Z", CultureInfo.InvariantCulture) }, "write", "--from", "evening.txt", "--yes");

        Assert.Equal((0, ""), (written.Status, written.Error));
        var text = File.ReadAllText(written.Out.Trim());
        Assert.StartsWith(entry[..entry.LastIndexOf(" …", StringComparison.Ordinal)], text, StringComparison.Ordinal);
        Assert.EndsWith("\n---\n" + account, text, StringComparison.Ordinal);
    }

    private static string Section(string heading)
    {
        var readme = File.ReadAllText(Path.Combine(Demo.Root, "README.md"));
        var from = readme.IndexOf(heading, StringComparison.Ordinal);
        return readme[from..readme.IndexOf("\n## ", from + heading.Length, StringComparison.Ordinal)];
    }
}
