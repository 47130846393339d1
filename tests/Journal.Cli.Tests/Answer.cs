using System.Text.Json;
using Journal.Cli.Output;

namespace Journal.Cli.Tests;

/// <summary>All that a maker gets from one call of the program.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Out">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record Answer(int Status, string Out, string Error)
{
    /// <summary>Nine o'clock that evening in Universal Time.</summary>
    public static DateTimeOffset Evening { get; } = new(2025, 10, 3, 21, 0, 0, TimeSpan.Zero);

    /// <summary>The lines of standard output.</summary>
    public IReadOnlyList<string> Lines => Out.TrimEnd('\n').Split('\n');

    /// <summary>Standard output as JSON.</summary>
    public JsonElement Json => JsonDocument.Parse(Out).RootElement;

    /// <summary>Asks the program in a folder, not on a terminal, on the evening of 3 October 2025.</summary>
    public static Answer To(string folder, params string[] words) => To(folder, terminal => terminal, words);

    /// <summary>The same with another terminal.</summary>
    public static Answer To(string folder, Func<Terminal, Terminal> change, params string[] words)
    {
        var (output, error) = (new StringWriter { NewLine = "\n" }, new StringWriter { NewLine = "\n" });
        var terminal = new Terminal(output, error) { Folder = folder, Today = new DateOnly(2025, 10, 3), Now = Evening };
        var status = JournalProgram.Run(words, change(terminal));
        return new Answer(status, output.ToString(), error.ToString());
    }
}
