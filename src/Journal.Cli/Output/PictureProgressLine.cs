using System.Diagnostics;
using System.Globalization;
using Journal.Site.Photos;

namespace Journal.Cli.Output;

/// <summary>One line on a terminal that says how many pictures are made and how long the rest will take; nothing elsewhere.</summary>
internal sealed class PictureProgressLine(Terminal terminal) : IProgress<PictureProgress>
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly Lock turn = new();
    private TimeSpan said;
    private int width;

    /// <inheritdoc/>
    public void Report(PictureProgress value)
    {
        if (!terminal.IsTerminal || value.Made == 0)
        {
            return;
        }

        lock (turn)
        {
            if (clock.Elapsed - said > Pause && value.Done < value.Of)
            {
                said = clock.Elapsed;
                var left = TimeSpan.FromSeconds(clock.Elapsed.TotalSeconds / value.Done * (value.Of - value.Done));
                Say(string.Create(CultureInfo.InvariantCulture, $"Pictures: {value.Done} of {value.Of}, about {Math.Ceiling(left.TotalSeconds):0} s left"));
            }
            else if (value.Done >= value.Of)
            {
                Say("");
            }
        }
    }

    // Over the line before, which may have been longer.
    private void Say(string line)
    {
        terminal.Error.Write($"\r{line.PadRight(width)}\r{line}");
        width = line.Length;
    }
}
