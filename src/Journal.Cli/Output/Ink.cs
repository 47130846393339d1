using Spectre.Console;

namespace Journal.Cli.Output;

/// <summary>The text styles of the terminal. All are plain where it has no colour, so none may carry a meaning that the words do not.</summary>
internal static class Ink
{
    /// <summary>Headings and totals.</summary>
    public static readonly Style Strong = new(decoration: Decoration.Bold);

    /// <summary>Explanations that a reader may skip.</summary>
    public static readonly Style Faint = new(decoration: Decoration.Dim);

    /// <summary>The mark under the place of a problem.</summary>
    public static readonly Style Marking = new(foreground: Color.Blue);

    /// <summary>All is well; an added line.</summary>
    public static readonly Style Good = new(foreground: Color.Green);

    /// <summary>An error; a removed line.</summary>
    public static readonly Style Bad = new(foreground: Color.Red);

    /// <summary>A warning or a remark.</summary>
    public static readonly Style Odd = new(foreground: Color.Olive);
}
