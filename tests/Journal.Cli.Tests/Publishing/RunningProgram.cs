using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Journal.Cli.Tests.Publishing;

/// <summary>The built program at work as a process of its own.</summary>
internal sealed class RunningProgram : IDisposable
{
    public const int Interrupt = 2;
    public const int Terminate = 15;
    public const int Halt = 19;

    private readonly Process process;
    private readonly Task<string> output;
    private readonly Task<string> error;

    private RunningProgram(ProcessStartInfo start)
    {
        process = Process.Start(start)!;
        output = process.StandardOutput.ReadToEndAsync();
        error = process.StandardError.ReadToEndAsync();
    }

    public int Id => process.Id;

    public bool HasEnded => process.HasExited;

    /// <summary>Starts the program in a folder, with a cache of its own.</summary>
    public static RunningProgram Start(string folder, string cache, params string[] words) => StartBehind([], folder, cache, words);

    /// <summary>Starts it behind another program that changes what the system lets it do, such as <c>setpriv</c>.</summary>
    public static RunningProgram StartBehind(IReadOnlyList<string> prefix, string folder, string cache, params string[] words)
    {
        string[] line = [.. prefix, .. BuiltProgram.Words, .. words];
        return new RunningProgram(new ProcessStartInfo(line[0], line[1..])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["JOURNAL_CACHE"] = cache },
        });
    }

    /// <summary>What it answered, once it has ended.</summary>
    /// <exception cref="TimeoutException">It seems never to end.</exception>
    public async Task<Answer> End()
    {
        await process.WaitForExitAsync().WaitAsync(TimeSpan.FromMinutes(3));
        return new Answer(process.ExitCode, await output, await error);
    }

    /// <summary>Ends it as a power cut would.</summary>
    public async Task Kill()
    {
        process.Kill();
        await process.WaitForExitAsync();
    }

    /// <summary>Asks it to end.</summary>
    public void Signal(int signal) => Assert.Equal(0, Send(process.Id, signal));

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill();
        }

        process.Dispose();
    }

    [DllImport("libc", EntryPoint = "kill")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Send(int process, int signal);
}
