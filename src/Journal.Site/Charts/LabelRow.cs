namespace Journal.Site.Charts;

/// <summary>
/// A row of a picture measured: its label over the drawing, in one line or two, and a figure at the right. Labels
/// stand over what they name, never beside it, so a long one costs height and no width.
/// </summary>
/// <param name="Lines">The label, broken into lines.</param>
/// <param name="Figure">The figure at the right; may be empty.</param>
/// <param name="Top">Where the row begins, in pixels.</param>
/// <param name="Bottom">Where the next one begins.</param>
internal sealed record LabelRow(IReadOnlyList<string> Lines, string Figure, double Top, double Bottom)
{
    private const double FirstBaseline = 13;

    /// <summary>The baseline of the label's last line; the drawing goes below it.</summary>
    public double Baseline => Top + FirstBaseline + (Lettering.LineHeight * (Lines.Count - 1));

    /// <summary>Rows one below the other.</summary>
    /// <param name="items">What the rows are about.</param>
    /// <param name="label">A row's label.</param>
    /// <param name="figure">A row's figure.</param>
    /// <param name="height">A row's height under a label of one line.</param>
    /// <param name="top">Where the first begins.</param>
    public static IReadOnlyList<LabelRow> Stack<T>(IEnumerable<T> items, Func<T, string> label, Func<T, string> figure, Func<T, double> height, double top = 0)
    {
        var rows = new List<LabelRow>();
        foreach (var item in items)
        {
            var right = figure(item);
            var lines = Lettering.Lines(label(item), Lettering.NarrowestPicture - Lettering.Width(right) - 12);
            var bottom = top + height(item) + (Lettering.LineHeight * (lines.Count - 1));
            rows.Add(new LabelRow(lines, right, top, bottom));
            top = bottom;
        }

        return rows;
    }

    /// <summary>Writes the label, and the figure level with its first line.</summary>
    public void Draw(Picture picture, string labelClasses = "", string figureClasses = "end", double indent = 0)
    {
        for (var i = 0; i < Lines.Count; i++)
        {
            picture.Text(labelClasses, 0, Top + FirstBaseline + (Lettering.LineHeight * i), Lines[i], indent);
        }

        if (Figure.Length > 0)
        {
            picture.Text(figureClasses, 100, Top + FirstBaseline, Figure);
        }
    }
}
