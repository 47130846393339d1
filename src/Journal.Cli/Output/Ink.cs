using Spectre.Console;

namespace Journal.Cli.Output;

/// <summary>The few ways in which our words are set; all plain where there is no colour.</summary>
internal static class Ink
{
    public static readonly Style Strong = new(decoration: Decoration.Bold);
    public static readonly Style Faint = new(decoration: Decoration.Dim);
    public static readonly Style Marking = new(foreground: Color.Blue);
    public static readonly Style Good = new(foreground: Color.Green);
    public static readonly Style Bad = new(foreground: Color.Red);
    public static readonly Style Odd = new(foreground: Color.Olive);
}
