using System.Diagnostics;

namespace Journal.Cli.Tests;

// The built program as a process of its own: what no call from within can show.
public class ProcessTests
{
    [Fact]
    public void Next_InAnotherLocale_WritesUtf8WithoutByteOrderMarkOrColour()
    {
        using var journal = JournalOnDisk.Small();

        var (status, output, error) = Run("next", "--in", journal.Folder);

        Assert.Equal((0, 0), (status, error.Length));
        Assert.Equal("Bench drill\n"u8.ToArray(), output[..12]);
        Assert.True(output.AsSpan().IndexOf("– Indicate"u8) > 0);
        Assert.False(output.Contains((byte)0x1B));
    }

    [Fact]
    public void WrongUse_WritesNothingToStandardOutput()
    {
        var (status, output, error) = Run("huors");

        Assert.Equal((2, 0), (status, output.Length));
        Assert.NotEmpty(error);
    }

    private static (int Status, byte[] Out, byte[] Error) Run(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "journal.dll"), .. words])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["LANG"] = "de_DE.ISO-8859-1", ["LC_ALL"] = "de_DE.ISO-8859-1" },
        };
        using var program = Process.Start(start)!;
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        Task.WaitAll(program.StandardOutput.BaseStream.CopyToAsync(output), program.StandardError.BaseStream.CopyToAsync(error));
        program.WaitForExit();
        return (program.ExitCode, output.ToArray(), error.ToArray());
    }
}
