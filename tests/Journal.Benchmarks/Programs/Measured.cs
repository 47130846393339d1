using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace Journal.Benchmarks.Programs;

/// <summary>Runs another program and tells what it took, as the system accounts for it (POSIX <c>getrusage</c>).</summary>
internal static partial class Measured
{
    private const int Children = -1;

    /// <summary>Whether this process did so: <c>--measure program arguments</c>.</summary>
    public static int? Run(string[] args)
    {
        if (args.Length < 2 || args[0] != "--measure")
        {
            return null;
        }

        var start = new ProcessStartInfo(args[1]) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in args[2..])
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        _ = getrusage(Children, out var usage);
        var processor = TimeSpan.FromSeconds(usage.UserSeconds + usage.SystemSeconds) + TimeSpan.FromMicroseconds(usage.UserMicroseconds + usage.SystemMicroseconds);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{processor.Ticks} {usage.PeakKibibytes * 1024}"));
        return process.ExitCode;
    }

    // The beginning of the structure as 64-bit Linux has it; what follows is not used.
    [StructLayout(LayoutKind.Sequential, Size = 144)]
    private struct Usage
    {
        public long UserSeconds;
        public long UserMicroseconds;
        public long SystemSeconds;
        public long SystemMicroseconds;
        public long PeakKibibytes;
    }

#pragma warning disable IDE1006, SYSLIB1096, CA5392 // The name is the system's own.
    [LibraryImport("libc")]
    private static partial int getrusage(int who, out Usage usage);
#pragma warning restore IDE1006, SYSLIB1096, CA5392
}
