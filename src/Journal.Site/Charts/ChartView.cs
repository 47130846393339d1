using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>A chart as a page shows it: a picture drawn from figures, and the same figures as a table.</summary>
/// <param name="Id">Unique on its page; the prefix of every id in the picture.</param>
/// <param name="Title">What the chart shows.</param>
/// <param name="Svg">The picture, without styles of its own: the page's classes colour it.</param>
/// <param name="Key">What stands under the picture, such as the list of numbered milestones; may be empty.</param>
/// <param name="Table">The figures.</param>
public sealed record ChartView(string Id, string Title, SafeHtml Svg, SafeHtml Key, ChartTable Table);

/// <summary>The figures of a chart. The first column heads its row; the others are right-aligned numbers.</summary>
public sealed record ChartTable(IReadOnlyList<string> Columns, IReadOnlyList<ChartRow> Rows, ChartRow? Total = null);

/// <summary>A row of a chart's table.</summary>
/// <param name="Name">What the row is about.</param>
/// <param name="Cells">One text for each further column.</param>
/// <param name="Address">The page of what the row is about, from the root of the site; null for none.</param>
public sealed record ChartRow(string Name, IReadOnlyList<string> Cells, string? Address = null);
