using Journal.Cli.Tables;
using Journal.Core.Model;

namespace Journal.Cli.Tests;

public class CheckTests
{
    [Fact]
    public void WellJournal_IsOneFriendlyLine()
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal("No problems: 2 builds, 4 entries, 2 tools.\n", journal.Ask("check").Out);
    }

    [Fact]
    public void Problem_ShowsPlaceLineMarkAndRemedy()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-slip.md", "---\npart: head\noperation: borring\nhours: 1h\n---\n");

        Assert.Equal(
            """
            drill/2025-10-01-slip.md
              3:12    error
                  There is no operation `borring`.
                  operation: borring
                             ^
                  Did you mean `boring`? New words go under `operations` in journal.yaml.

            1 error in 1 file. Errors stop publishing: the site stays as it is until they
            are corrected.

            """,
            journal.Ask("check").Out);
    }

    [Fact]
    public void Problems_OfTwoFiles_AreGroupedAndCounted()
    {
        using var journal = JournalOnDisk.Small()
            .With("drill/2025-10-01-slip.md", "---\npart: haed\noperation: borring\nhours: 1h\n---\n")
            .With("drill/2025-10-02-slip.md", "---\noperation: boring\nhours: 1h\nphotos: {file: photos/no.jpg, caption: The bore}\n---\n");

        var lines = journal.Ask("check").Lines;

        Assert.Single(lines, line => line == "drill/2025-10-01-slip.md");
        Assert.Equal(2, lines.Count(line => line == "drill/2025-10-02-slip.md"));
        Assert.Contains(lines, line => line.StartsWith("2 errors, 1 omission and 1 warning in 2 files.", StringComparison.Ordinal));
    }

    // What stops publishing comes first, whatever the files are called.
    [Fact]
    public void Problems_ErrorsComeBeforeOmissionsAndWarnings()
    {
        using var journal = JournalOnDisk.Small()
            .With("drill/2025-10-01-a.md", "---\noperation: boring\nhours: 1h\nphotos: {file: photos/no.jpg, caption: The bore}\n---\n")
            .With("drill/2025-10-02-b.md", "---\npart: head\noperation: borring\nhours: 1h\n---\n");

        var severities = journal.Ask("check").Lines.Select(line => line.Trim().Split(' ')[^1]).Where(word => word is "error" or "omission" or "warning");

        Assert.Equal(["error", "omission", "warning"], severities);
    }

    [Fact]
    public void PagesOfARepository_InABuild_AreNoEntries()
    {
        using var journal = JournalOnDisk.Small().With("drill/README.md", "# Drawings\n").With("drill/drawings/Contributing.md", "Please do.\n").With("drill/LICENSE.md", "Mine.\n");

        Assert.Equal("All well: 2 builds, 4 entries, 2 tools.\n", journal.Ask("check").Out);
    }

    [Theory]
    [InlineData("note, ", 0)]
    [InlineData("\t", 0)]
    [InlineData("😀 ", 0)] // two units, two cells
    [InlineData("焊 ", 1)] // one unit, two cells
    public void Mark_AfterLettersOfEachWidth_StandsUnderTheWord(string before, int widerThanLong)
    {
        using var folder = JournalOnDisk.Bare().With("note.md", before + "borring");

        var (line, mark) = Show(folder, before.Length + 1);

        Assert.Equal(line.IndexOf("borring", StringComparison.Ordinal) + widerThanLong, mark.Length - 1);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(150)]
    [InlineData(299)]
    public void LongLine_IsCutAroundThePlace(int column)
    {
        var letters = string.Concat(Enumerable.Range(0, 300).Select(i => (char)('a' + (i % 26))));
        using var folder = JournalOnDisk.Bare().With("note.md", letters);

        var (line, mark) = Show(folder, column);

        Assert.InRange(line.Length, 20, 60);
        Assert.Equal(letters[column - 1], line[mark.Length - 1]);
    }

    private static (string Line, string Mark) Show(JournalOnDisk folder, int column) =>
        SourceLines.Of(Path.Combine(folder.Folder, "note.md")).Show(new Place("note.md", 1, column), 60)!.Value;

    // Nine in the evening in Universal Time is the morning after on Kiritimati.
    [Theory]
    [InlineData("Pacific/Kiritimati", 0)]
    [InlineData("Pacific/Honolulu", 1)]
    public void Check_EntryOfTomorrowHere_IsJudgedByTheZoneOfTheBench(string zone, int status)
    {
        using var journal = JournalOnDisk.Small().With("journal.yaml", $"title: The Lean-to\ntime-zone: {zone}\n").With("drill/2025-10-04-late.md", "---\npart: head\nhours: 1h\n---\n");

        var answer = journal.Ask("check");

        Assert.Equal(status, answer.Status);
        Assert.Equal(status == 1, answer.Out.Contains("2025-10-04 is in the future", StringComparison.Ordinal));
        Assert.Equal(status, journal.Ask("publish", "--to", Path.Combine(journal.Folder, "..", Path.GetFileName(journal.Folder) + "-site")).Status);
        if (status == 0)
        {
            Directory.Delete(journal.Folder + "-site", recursive: true);
        }
    }

    [Theory]
    [InlineData(8, false)]
    [InlineData(9, true)]
    public void Publish_ManyWarnings_AreCountedAndNotAllListed(int warnings, bool areCounted)
    {
        using var journal = JournalOnDisk.Small();
        for (var i = 1; i <= warnings; i++)
        {
            journal.With($"drill/2025-09-1{i}.md", "---\noperation: boring\nhours: 1h\n---\n");
        }

        var published = journal.Ask("publish", "--to", journal.Folder + "-site");
        Directory.Delete(journal.Folder + "-site", recursive: true);

        Assert.Equal(0, published.Status);
        Assert.Equal(areCounted, published.Error.Contains("Nine warnings; see `journal check`.", StringComparison.Ordinal) || published.Error.Contains("9 warnings; see `journal check`.", StringComparison.Ordinal));
        Assert.Equal(!areCounted, published.Error.Contains("The job has no part", StringComparison.Ordinal));
    }
}
