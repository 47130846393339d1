using System.Globalization;

namespace Journal.Benchmarks.Programs;

/// <summary>Results as a table for the contributor guide.</summary>
internal sealed class ResultTable
{
    private readonly TextWriter output;

    /// <summary>Begins a table.</summary>
    public ResultTable(string title, TextWriter output)
    {
        this.output = output;
        output.WriteLine($"| {title} | measured | at most |");
        output.WriteLine("| --- | --- | --- |");
    }

    /// <summary>Whether all rows so far are within their limits.</summary>
    public bool IsWell { get; private set; } = true;

    /// <summary>A row.</summary>
    public void Row(string what, double measured, double most, string unit = "")
    {
        IsWell &= measured <= most;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {measured:0.00}{unit} | {most:0.##}{unit} |"));
    }
}
