using System.Text;
using Journal.Core.Parsing.Text;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Journal.Cli.Output;

/// <summary>Results for people: sentences, headings, lists and tables, as wide as the terminal.</summary>
internal sealed class Printout
{
    private readonly Terminal terminal;
    private readonly IAnsiConsole console;
    private bool isEmpty = true;

    /// <summary>A printout on a terminal's standard output.</summary>
    public Printout(Terminal terminal)
    {
        this.terminal = terminal;
        console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = terminal.HasColour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = terminal.HasColour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new FixedOutput(terminal),
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
        });
        console.Profile.Capabilities.Unicode = true;
    }

    /// <summary>How many cells a line has.</summary>
    public int Width => terminal.Width;

    /// <summary>A heading, with a blank line above it unless it comes first.</summary>
    public void Heading(string text)
    {
        Gap();
        Say(text, Ink.Strong);
    }

    /// <summary>A blank line, unless nothing was said yet.</summary>
    public void Gap()
    {
        if (!isEmpty)
        {
            terminal.Out.WriteLine();
        }
    }

    /// <summary>A paragraph.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="style">How it is set; plain where left out.</param>
    /// <param name="indent">How many cells it stands in from the left.</param>
    public void Say(string text, Style? style = null, int indent = 0) => Hang(new string(' ', indent), text, style);

    /// <summary>A paragraph that begins with a mark or a word, its other lines standing in as far.</summary>
    public void Hang(string mark, string text, Style? style = null)
    {
        var indent = mark.GetCellWidth();
        foreach (var (i, line) in Wrapping.Lines(Printable.Of(text), Math.Max(20, Width - indent)).Index())
        {
            Put((i == 0 ? mark : new string(' ', indent)) + line, style);
        }
    }

    /// <summary>A line exactly as it is.</summary>
    public void Put(string line, Style? style = null)
    {
        isEmpty = false;
        if (terminal.HasColour && style is not null && line.Length > 0)
        {
            console.Write(new Text(line, style));
        }
        else
        {
            terminal.Out.Write(line);
        }

        terminal.Out.WriteLine();
    }

    /// <summary>A table.</summary>
    /// <param name="columns">Its columns.</param>
    /// <param name="rows">A cell for each column.</param>
    /// <param name="totals">The last row, below a rule of its own.</param>
    public void Table(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows, IReadOnlyList<string>? totals = null)
    {
        isEmpty = false;
        List<IReadOnlyList<string>> cells = [.. rows.Select(row => (IReadOnlyList<string>)[.. row.Select(Printable.Of)])];
        if (ColumnWidths.Of(columns, [[.. columns.Select(column => column.Title)], .. cells, .. totals is null ? [] : new[] { totals }], Width) is not { } widths)
        {
            Stack(columns, totals is null ? cells : [.. cells, totals]);
            return;
        }

        var table = new Table { Border = new ThinRule(), BorderStyle = Ink.Faint, ShowFooters = totals is not null, UseSafeBorder = false };
        foreach (var (i, column) in columns.Index())
        {
            table.AddColumn(new TableColumn(new Text(column.Title, Ink.Faint))
            {
                Alignment = column.IsFigure ? Justify.Right : Justify.Left,
                NoWrap = column.IsFigure,
                Width = widths[i],
                Padding = new Padding(0, 0, i == columns.Count - 1 ? 0 : 1, 0),
                Footer = totals is null ? null : new Text(totals[i], Ink.Strong),
            });
        }

        foreach (var row in cells)
        {
            table.AddRow(row.Select(cell => new Text(cell)));
        }

        WriteTrimmed(table);
    }

    // Where the columns do not fit beside each other they stand below each other, a row at a time.
    private void Stack(IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        var titles = columns.Max(column => column.Title.GetCellWidth());
        foreach (var (i, row) in rows.Index())
        {
            if (i > 0)
            {
                terminal.Out.WriteLine();
            }

            foreach (var (column, cell) in columns.Zip(row).Where(pair => pair.Second.Length > 0))
            {
                Hang($"{column.Title.PadRight(titles)}  ", cell);
            }
        }
    }

    // Cells are filled up with spaces; what is copied from a terminal or kept in a file should not end in them.
    private void WriteTrimmed(Table table)
    {
        if (terminal.HasColour)
        {
            console.Write(table);
            return;
        }

        var text = new StringBuilder();
        foreach (var segment in ((IRenderable)table).Render(RenderOptions.Create(console, console.Profile.Capabilities), Width))
        {
            text.Append(segment.Text);
        }

        foreach (var line in text.ToString().TrimEnd('\n').Split('\n'))
        {
            terminal.Out.WriteLine(line.TrimEnd());
        }
    }
}
