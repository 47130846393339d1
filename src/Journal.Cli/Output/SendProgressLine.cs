using System.Diagnostics;
using System.Globalization;
using Journal.Cli.Wording;
using Journal.Site.Sending;

namespace Journal.Cli.Output;

/// <summary>One line on a terminal that says how much has arrived and how long the rest will take; nothing elsewhere.</summary>
internal sealed class SendProgressLine(Terminal terminal) : IProgress<SendProgress>
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly Lock turn = new();
    private TimeSpan said;
    private int width;

    /// <inheritdoc/>
    public void Report(SendProgress value)
    {
        if (!terminal.IsTerminal)
        {
            return;
        }

        lock (turn)
        {
            if (value.Files >= value.OfFiles)
            {
                Say("");
            }
            else if (clock.Elapsed - said > Pause)
            {
                said = clock.Elapsed;
                Say(Line(value, clock.Elapsed));
            }
        }
    }

    /// <summary>What the line says after a time.</summary>
    public static string Line(SendProgress value, TimeSpan passed)
    {
        var left = value.Bytes == 0 ? 0 : passed.TotalSeconds / value.Bytes * (value.OfBytes - value.Bytes);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Sending: {value.Files} of {value.OfFiles} files, {Bytes.InWords(value.Bytes)} of {Bytes.InWords(value.OfBytes)}, about {Math.Ceiling(left):0} s left");
    }

    // Over the line before, which may have been longer.
    private void Say(string line)
    {
        terminal.Error.Write($"\r{line.PadRight(width)}\r{line}");
        width = line.Length;
    }
}
