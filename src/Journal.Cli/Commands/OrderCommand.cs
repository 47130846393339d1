using System.CommandLine;
using System.CommandLine.Parsing;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Figures.Ordering;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Cli.Commands;

/// <summary><c>journal order</c>: the material still needed.</summary>
internal static class OrderCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var name = new Argument<string?>("plan or build") { Description = "A plan or a build. Left out: the build under way.", Arity = ArgumentArity.ZeroOrOne };
        var bar = Size("--bar", "How long a bar is, such as 3000 or 72 in. Left out: 1000 mm, or 36 in.");
        var allowance = Size("--allowance", "What sawing and facing both ends take of each piece. Left out: 5 mm, or 0.2 in.");
        var page = new Option<string?>("--page") { Description = "Write it as a page to print, such as order.html.", HelpName = "file" };
        return (Of(null, OrderTerms.Usual) with
        {
            Arguments = [name],
            Options = [bar, allowance, page],
            Narrowed = asked =>
            {
                var order = Of(asked.GetValue(name), unit => Terms(unit, asked.GetValue(bar), asked.GetValue(allowance)));
                return asked.GetValue(page) is { } file ? AsPage(order, asked.GetValue(name), unit => Terms(unit, asked.GetValue(bar), asked.GetValue(allowance)), Path.GetFullPath(file, terminal.Folder)) : order;
            },
        }).Create(terminal);
    }

    private static FigureCommand Of(string? name, Func<LengthUnit, OrderTerms> terms) => new()
    {
        Name = "order",
        Description = "The material to order: stock for parts not begun, with lengths added up into bars.",
        Example = "journal order bench-shaper --bar 500",
        Objection = journal => WhyNone(name, journal) ?? WhyNot(terms),
        Table = (journal, print) => OrderList.Print(journal, Order(name, journal, terms), print),
        Csv = journal => new CsvTable(["for", "material", "grade", "form", "section", "unit", "pieces", "length", "bars", "barLength", "parts"], Rows(Order(name, journal, terms))),
        Json = journal => Shape(Order(name, journal, terms)),
    };

    private static FigureCommand AsPage(FigureCommand command, string? name, Func<LengthUnit, OrderTerms> terms, string file) => command with
    {
        Table = (journal, print) =>
        {
            OrderPage.Write(file, OrderPage.Text(journal, Order(name, journal, terms)));
            print.Put(file);
        },
        Objection = journal => command.Objection(journal) ?? OrderPage.WhyNot(file),
    };

    private static StockOrder Order(string? name, MakerJournal journal, Func<LengthUnit, OrderTerms> terms) =>
        (name is null ? Current(journal) : journal.BuildNamed(name)) is { } build
            ? StockOrder.Of(journal, build, terms)
            : StockOrder.Of(journal, name is null ? journal.Plans[0] : journal.PlanNamed(name)!, terms);

    private static Build? Current(MakerJournal journal) => State.Of(journal).Current is { } state ? journal.Builds.Single(build => build.Id == state.Build) : null;

    private static string? WhyNone(string? name, MakerJournal journal)
    {
        string[] known = [.. journal.Plans.Select(one => one.Id.Value), .. journal.Builds.Select(one => one.Id.Value)];
        return name is not null ? known.Contains(name) ? null : EstimateSubjects.NoneNamed(name, "plan or build", known)
            : Current(journal) is null && journal.Plans.Count != 1 ? $"No build is under way. Name a plan or a build{(known.Length == 0 ? "" : $": {string.Join(", ", known)}")}."
            : null;
    }

    private static string? WhyNot(Func<LengthUnit, OrderTerms> terms)
    {
        var said = terms(LengthUnit.Millimetre);
        return said.Allowance.Millimetres >= said.Bar.Millimetres ? "The allowance is as long as a bar. See what you gave as `--bar` and `--allowance`." : null;
    }

    // Both in one unit, that of the drawing, unless the bar says its own.
    private static OrderTerms Terms(LengthUnit unit, string? bar, string? allowance)
    {
        var usual = OrderTerms.Usual(unit);
        return new OrderTerms(Read(bar, unit) ?? usual.Bar, Read(allowance, unit) ?? usual.Allowance);
    }

    private static Length? Read(string? text, LengthUnit unit) => text is not null && LengthText.TryParse(text, unit, out var length, out _) ? length : null;

    private static Option<string?> Size(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "length",
        CustomParser = result => ReadSize(name, result),
    };

    private static string? ReadSize(string name, ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (!LengthText.TryParse(word, LengthUnit.Millimetre, out var length, out _) || length.Value < 0 || (length.Value == 0 && name == "--bar"))
        {
            result.AddError($"`{word}` is not a length. Write it such as `{name} 500` or `{name} \"12 in\"`.");
        }

        return word;
    }

    private static IEnumerable<object?[]> Rows(StockOrder order) =>
        order.Bars.Select(bars => new object?[]
        {
            order.Name, bars.Material?.Family, bars.Material?.Grade, bars.Form, bars.Section, Measured.Word(order.Terms.Bar.Unit), bars.Cuts.Count(), bars.Total.Value, bars.Bars.Count,
            order.Terms.Bar.Value, string.Join(' ', bars.Cuts.Select(cut => cut.Part.Id).Distinct()),
        }).Concat(order.Others.Select(other => new object?[]
        {
            order.Name, other.Part.Material?.Family, other.Part.Material?.Grade, other.Part.Stock!.Form, other.Part.Stock.Size, null, other.Pieces, null, null, null, other.Part.Id,
        }));

    private static object Shape(StockOrder order) => new
    {
        For = order.Name,
        Unit = Measured.Word(order.Terms.Bar.Unit),
        BarLength = order.Terms.Bar.Value,
        Allowance = order.Terms.Allowance.In(order.Terms.Bar.Unit).Value,
        Stock = order.Bars.Select(bars => new
        {
            Material = bars.Material?.Family,
            bars.Material?.Grade,
            bars.Form,
            bars.Section,
            Pieces = bars.Cuts.Count(),
            Length = bars.Total.Value,
            Bars = bars.Bars.Select(bar => new
            {
                Cuts = bar.Select(cut => new { Part = cut.Part.Id, Length = Measured.Number(cut.Length, order.Terms.Bar.Unit) }),
                Left = BarOrder.LeftOf(bar, order.Terms).Value,
            }),
        }),
        Others = order.Others.Select(other => new { Part = other.Part.Id, Material = other.Part.Material?.Family, other.Part.Material?.Grade, other.Part.Stock!.Form, other.Part.Stock.Size, other.Pieces }),
        Supplied = order.Supplied.Select(part => part.Id),
        Unsaid = order.Unsaid.Select(part => part.Id),
    };
}
