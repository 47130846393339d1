using System.Diagnostics;

namespace Journal.Cli.Tests;

public class CompletionTests
{
    [Theory]
    [InlineData("journal hou", "hours")]
    [InlineData("journal hours --f", "--format")]
    [InlineData("journal hours --format ", "csv\njson\ntable")]
    [InlineData("journal hours --format j", "json")]
    [InlineData("journal propose --format ", "json\ntable")]
    [InlineData("journal write --fr", "--from")]
    [InlineData("journal write --y", "--yes")]
    [InlineData("journal take-in --bl", "--blank")]
    [InlineData("journal take-in --separator ", ",\n;\ntab")]
    [InlineData("journal rename ", "build\nlesson\noperation\npart\ntool")]
    [InlineData("journal completions ", "bash\nfish\npowershell\nzsh")]
    public void Suggest_LineSoFar_GivesTheWordsThatFit(string line, string words)
    {
        using var folder = JournalOnDisk.Bare();

        var found = folder.Ask($"[suggest:{line.Length}]", line);

        Assert.Equal(0, found.Status);
        Assert.Equal(words.Split('\n'), found.Lines.Where(word => line.Contains(" --", StringComparison.Ordinal) && line[^1] != ' ' || word[0] != '-').Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("journal write --part ", "gib-screw head jaw quill whole")]
    [InlineData("journal write --build drill --part ", "gib-screw head quill whole")]
    [InlineData("journal stint begin --operation scr", "scraping screw-cutting")]
    [InlineData("journal lessons --for scr", "scraping screw-cutting")]
    [InlineData("journal write --tool ", "boring-head lathe")]
    [InlineData("journal write --build ", "drill vice")]
    [InlineData("journal add part lever --material bras", "brass")]
    [InlineData("journal readings --part ", "gib-screw head jaw quill whole")]
    [InlineData("journal add tool square --kind ga", "gauge")]
    [InlineData("journal add tool square --got ", "borrowed bought given had hired made")]
    [InlineData("journal add tool square --need ", "essential handy workaround")]
    [InlineData("journal begin ", "bench-shaper")]
    [InlineData("journal estimate ", "bench-shaper drill vice")]
    [InlineData("journal amend ", "2025-09-06-head 2025-09-07-quill 2025-09-07-second 2025-09-30-head-again")]
    [InlineData("journal amend --finished ", "gib-screw head jaw quill")]
    [InlineData("journal amend --cleared ", "chatter")]
    [InlineData("journal amend --cause setti", "setting-up")]
    [InlineData("journal show ", "2025-09-06-head 2025-09-07-quill 2025-09-07-second 2025-09-30-head-again")]
    [InlineData("journal write --build drill --captions --entry ", "2025-09-06-head 2025-09-07-quill 2025-09-07-second 2025-09-30-head-again")]
    [InlineData("journal write --build vice --captions --entry 2", "")]
    [InlineData("journal find --tool ", "boring-head lathe")]
    [InlineData("journal find --operation scr", "scraping screw-cutting")]
    [InlineData("journal rename part ", "gib-screw head jaw quill")]
    [InlineData("journal rename operation scr", "scraping screw-cutting")]
    [InlineData("journal rename lesson ", "indicate-both-ends lap-last")]
    [InlineData("journal rename build ", "drill vice")]
    [InlineData("journal split part ", "gib-screw head jaw quill")]
    [InlineData("journal order ", "bench-shaper drill vice")]
    [InlineData("journal hours --part ", "gib-screw head jaw quill whole")]
    [InlineData("journal propose --build ", "drill vice")]
    [InlineData("journal take-in --build ", "drill vice")]
    [InlineData("journal settings --for scr", "scraping screw-cutting")]
    [InlineData("journal estimate bench-shaper --twice ", "gib-screw head jaw quill ram screw slide")]
    [InlineData("journal estimate bench-shaper --without ", "gib-screw head jaw quill ram screw slide")]
    public void Suggest_WhatTheJournalKnows_IsOffered(string line, string words)
    {
        using var folder = JournalOnDisk.Small();

        var found = folder.Ask($"[suggest:{line.Length}]", line);

        Assert.Equal((0, ""), (found.Status, found.Error));
        Assert.Equal(words.Split(' '), found.Lines.Where(word => !word.StartsWith('-')).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Suggest_AnotherJournal_IsAsked()
    {
        using var folder = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare();
        var line = $"journal write --in {folder.Folder} --tool b";

        Assert.Equal(["boring-head"], elsewhere.Ask($"[suggest:{line.Length}]", line).Lines);
        Assert.Equal("", elsewhere.Ask("[suggest:22]", "journal write --tool b").Out.Trim());
    }

    [Theory]
    [InlineData("[suggest:25]", "journal stint begin --part=bo")]
    [InlineData("[suggest:5]", "journal write --build nope --part ")]
    [InlineData("[suggest:abc]", "journal")]
    [InlineData("[suggest:99999999999]", "journal")]
    public void Suggest_LineThatIsNotUnderstood_SaysNothing(string directive, string line)
    {
        using var folder = JournalOnDisk.Small();

        Assert.Equal((0, ""), (folder.Ask(directive, line) is var found ? found.Status : 0, found.Error));
    }

    [Fact]
    public void Completions_UnknownShell_NamesTheNearest()
    {
        using var folder = JournalOnDisk.Bare();

        Assert.Equal((2, "There is no completion script for `bahs`. Did you mean `bash`? See `journal completions --help`.\n"), (folder.Ask("completions", "bahs").Status, folder.Ask("completions", "bahs").Error));
        Assert.Equal("`journal completions` needs <shell>. See `journal completions --help`.\n", folder.Ask("completions").Error);
    }

    // The one shell of the four that is on every machine where the tests run; on Windows it is not.
    [Fact]
    public void Bash_RealShell_CompletesWithWhatTheProgramSays()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = JournalOnDisk.Bare();
        folder.With("completions.sh", folder.Ask("completions", "bash").Out);

        // A stand-in for the program says what it would, and what it was asked is seen in the answer.
        var script = """
            . ./completions.sh
            journal() { [ "$1" = '[suggest:10]' ] && [ "$2" = 'journal ho' ] && printf 'hours\ncosts\n'; }
            COMP_LINE='journal ho' COMP_POINT=10 COMP_WORDS=(journal ho) COMP_CWORD=1
            _journal
            echo "${COMPREPLY[@]}"
            """;
        using var bash = Process.Start(new ProcessStartInfo("bash", ["-c", script]) { WorkingDirectory = folder.Folder, RedirectStandardOutput = true })!;

        Assert.Equal("hours\n", bash.StandardOutput.ReadToEnd());
        bash.WaitForExit();
        Assert.Equal(0, bash.ExitCode);
    }
}
