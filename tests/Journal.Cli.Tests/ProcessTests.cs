using System.Diagnostics;

namespace Journal.Cli.Tests;

// The built program as a process of its own: what no call from within can show.
public class ProcessTests
{
    [Fact]
    public async Task Next_InAnotherLocale_WritesUtf8WithoutByteOrderMarkOrColour()
    {
        using var journal = JournalOnDisk.Small();

        var (status, output, error) = await Run("next", "--in", journal.Folder);

        Assert.Equal((0, 0), (status, error.Length));
        Assert.Equal("Bench drill\n"u8.ToArray(), output[..12]);
        Assert.True(output.AsSpan().IndexOf("– Indicate"u8) > 0);
        Assert.False(output.Contains((byte)0x1B));
    }

    [Fact]
    public async Task WrongUse_WritesNothingToStandardOutput()
    {
        var (status, output, error) = await Run("huors");

        Assert.Equal((2, 0), (status, output.Length));
        Assert.NotEqual("", error);
    }

    private static async Task<(int Status, byte[] Out, string Error)> Run(params string[] words)
    {
        var start = BuiltProgram.With(words);
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        (start.Environment["LANG"], start.Environment["LC_ALL"]) = ("de_DE.ISO-8859-1", "de_DE.ISO-8859-1");
        using var program = Process.Start(start)!;
        using var output = new MemoryStream();
        var complaints = program.StandardError.ReadToEndAsync();
        await program.StandardOutput.BaseStream.CopyToAsync(output);
        var error = await complaints;
        await program.WaitForExitAsync();
        return (program.ExitCode, output.ToArray(), error);
    }
}
