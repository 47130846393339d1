namespace Journal.Cli.Output;

/// <summary>A column of a table: words to the left and wrapped, figures to the right and whole.</summary>
/// <param name="Title">What stands above it.</param>
/// <param name="IsFigure">Whether it holds figures.</param>
internal sealed record Column(string Title, bool IsFigure)
{
    /// <summary>A column of words.</summary>
    public static Column Words(string title) => new(title, IsFigure: false);

    /// <summary>A column of figures.</summary>
    public static Column Figures(string title) => new(title, IsFigure: true);
}
