using System.Diagnostics;

namespace Journal.Cli.Tests;

/// <summary>The built program where a shell gives it less than usual: no folder to stand in, nowhere to write to.</summary>
public sealed class OddSurroundingsTests : IDisposable
{
    private readonly JournalOnDisk journal = JournalOnDisk.Small();

    [Fact]
    public void FolderThatIsGone_IsToldInASentence()
    {
        var (status, said) = Shell("mkdir gone; cd gone; rmdir ../gone; \"$@\"", "check", "--in", journal.Folder);

        Assert.Equal(3, status);
        Assert.Equal("Could not start: the current folder no longer exists. Change into it again (`cd \"$PWD\"`), then try again.\n", said);
    }

    [Theory]
    [InlineData("\"$@\" >&-", "hours", 3)]
    [InlineData("\"$@\" >/dev/full 2>/dev/full", "hours", 3)]
    [InlineData("\"$@\" 2>/dev/full", "check", 0)]
    [InlineData("\"$@\" 2>&-", "check", 0)]
    public void NowhereToWriteTo_NeverEndsWithAStack(string line, string command, int status)
    {
        var answer = Shell(line, command, "--in", journal.Folder);

        Assert.Equal(status, answer.Status);
        Assert.DoesNotContain("Unhandled", answer.Said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"$@\" >&-", "Standard output is closed. Redirect it, such as with `> results.txt`.")]
    [InlineData("\"$@\" >/dev/full", "No space left on device. Redirect standard output elsewhere.")]
    public void ResultsThatCannotBeShown_AreToldAsSuch(string line, string reason)
    {
        journal.With("old.csv", "date,hours,note\n" + string.Concat(Enumerable.Repeat($"2024-10-03,1m,{new string('x', 60)}\n", 40)));

        var (status, said) = Shell(line, "take-in", "old.csv", "--build", "drill");

        Assert.Equal(3, status);
        Assert.Equal($"The results could not be shown: {reason} If the command writes files, they are written; do not repeat it.\n", said);
        Assert.True(File.Exists(Path.Combine(journal.Folder, "drill/taken-in/2024-10-03-hours.md")));
    }

    [Fact]
    public void JotWhereNothingCanBeSaid_IsKeptAndEndsWell()
    {
        var (status, _) = Shell("\"$@\" 2>/dev/full", "jot", "--in", journal.Folder, "Shim under the strap.");

        Assert.Equal(0, status);
        Assert.Contains(Directory.EnumerateFiles(journal.Folder, "*", SearchOption.AllDirectories), file => File.ReadAllText(file).Contains("Shim under the strap.", StringComparison.Ordinal));
    }

    [Fact]
    public void WordsThatAreNotUtf8_AreRefused_ForTheyWouldBeKeptMutilated()
    {
        var (status, said) = Shell("\"$@\" \"$(printf 'It ran schr\\344g')\"", "jot");

        Assert.Equal(2, status);
        Assert.Equal("“It ran schr\uFFFDg” contains bytes that are not UTF-8 (shown as “\uFFFD”). Set the terminal or the script to UTF-8, then try again.\n", said);
        Assert.False(Directory.Exists(Path.Combine(journal.Folder, ".bench")));
    }

    public void Dispose() => journal.Dispose();

    private (int Status, string Said) Shell(string line, params string[] words)
    {
        var start = new ProcessStartInfo("sh", ["-c", line, "sh", .. BuiltProgram.Words, .. words]) { WorkingDirectory = journal.Folder, RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said + error.GetAwaiter().GetResult());
    }
}
