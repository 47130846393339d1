using System.Diagnostics;
using System.Globalization;
using Journal.Benchmarks.Import;
using Journal.Benchmarks.Pictures;
using Journal.Benchmarks.Publishing;

namespace Journal.Benchmarks.Programs;

/// <summary>What a run in a process of its own took.</summary>
/// <param name="Processor">Processor time of all its threads.</param>
/// <param name="PeakBytes">The most memory it had.</param>
internal sealed record ChildRun(TimeSpan Processor, long PeakBytes);

/// <summary>Runs work in a process of its own, so that its memory and processor time are its alone.</summary>
internal static class Child
{
    private const string Mark = "--child";

    /// <summary>Whether this process is such a child, and did its work.</summary>
    public static bool DidWork(string[] args)
    {
        if (args.Length < 2 || args[0] != Mark)
        {
            return false;
        }

        switch (args[1])
        {
            case "publish":
                PublishWork.Publish(args[2], args[3]);
                break;
            case "generate":
                new JournalGenerator(7).Write(args[2], int.Parse(args[3], CultureInfo.InvariantCulture));
                break;
            case "pictures-journal":
                PictureWork.WriteJournal(args[2]);
                break;
            case "pictures-floor":
                PictureWork.Floor(args[2]);
                break;
            case "floor":
                PublishWork.Floor(args[2], args[3], args[4]);
                break;
            case "take-in-floor":
                TakeInWork.Floor(args[2], args[3]);
                break;
            default:
                throw new ArgumentException($"No work is called {args[1]}.");
        }

        using var self = Process.GetCurrentProcess();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{self.TotalProcessorTime.Ticks} {self.PeakWorkingSet64}"));
        return true;
    }

    /// <summary>Runs a piece of work.</summary>
    public static ChildRun Run(params string[] work)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        foreach (var word in (string[])[Mark, .. work])
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd().Trim().Split('\n')[^1].Split(' ');
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{string.Join(' ', work)} ended with {process.ExitCode}.");
        }

        return new ChildRun(new TimeSpan(long.Parse(said[0], CultureInfo.InvariantCulture)), long.Parse(said[1], CultureInfo.InvariantCulture));
    }
}
