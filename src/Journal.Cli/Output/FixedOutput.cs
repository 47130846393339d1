using System.Text;
using Spectre.Console;

namespace Journal.Cli.Output;

/// <summary>Our terminal as the console library sees it: it measures nothing for itself.</summary>
internal sealed class FixedOutput(Terminal terminal) : IAnsiConsoleOutput
{
    /// <inheritdoc/>
    public TextWriter Writer => terminal.Out;

    /// <inheritdoc/>
    public bool IsTerminal => terminal.IsTerminal;

    /// <inheritdoc/>
    public int Width => terminal.Width;

    /// <inheritdoc/>
    public int Height => 24;

    /// <inheritdoc/>
    public void SetEncoding(Encoding encoding)
    {
        // The writer has its encoding already.
    }
}
