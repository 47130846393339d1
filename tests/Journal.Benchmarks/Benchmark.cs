using System.Diagnostics;
using System.Globalization;

namespace Journal.Benchmarks;

/// <summary>
/// One thing measured in process time beside a floor: the least that any program for the job must do. The two run in turns
/// and the medians are compared, since the machine's speed swings and the ratio does not.
/// </summary>
internal abstract class Benchmark : IBenchmark
{
    private const int WarmUps = 5;
    private const int Turns = 15;

    /// <summary>Its name on the command line.</summary>
    public abstract string Name { get; }

    /// <summary>What is measured and what its floor is.</summary>
    protected abstract string What { get; }

    /// <summary>The most seconds of process time it may take.</summary>
    protected abstract double MostSeconds { get; }

    /// <summary>The most that the work may take, in floors; no limit unless one is set.</summary>
    protected virtual double MostFloors => double.PositiveInfinity;

    /// <summary>The work.</summary>
    protected abstract void Work();

    /// <summary>The floor.</summary>
    protected abstract void Floor();

    /// <summary>Measures and tells; false where it took too long.</summary>
    public bool Measure(TextWriter output)
    {
        var first = Seconds(Work);
        for (var i = 0; i < WarmUps; i++)
        {
            Floor();
            Work();
        }

        var (work, floor) = (new List<double>(), new List<double>());
        for (var i = 0; i < Turns; i++)
        {
            floor.Add(Seconds(Floor));
            work.Add(Seconds(Work));
        }

        var (median, least) = (Median.Of(work), Median.Of(floor));
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"""
            {Name}: {What}
              first {first * 1000:0} ms, then {median * 1000:0} ms, floor {least * 1000:0} ms, ratio {median / least:0.00}; at most {MostSeconds * 1000:0} ms{(double.IsFinite(MostFloors) ? $" and a ratio of {MostFloors.ToString("0.00", CultureInfo.InvariantCulture)}" : "")}
            """));
        return first <= MostSeconds && median <= MostSeconds && median <= MostFloors * least;
    }

    private static double Seconds(Action action)
    {
        using var process = Process.GetCurrentProcess();
        GC.Collect();
        var before = process.TotalProcessorTime;
        action();
        process.Refresh();
        return (process.TotalProcessorTime - before).TotalSeconds;
    }
}
