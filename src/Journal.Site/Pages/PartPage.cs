using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>A set-up of a route as made.</summary>
public sealed record SetUpView(int Number, string? Datum, string? Held, IReadOnlyList<StepView> Steps)
{
    /// <summary>How many rows of the table the set-up takes.</summary>
    public int Rows => Steps.Count + (Datum is null && Held is null ? 0 : 1);
}

/// <summary>A job of a set-up.</summary>
public sealed record StepView(LinkView Operations, DateView? Date, string Tools, string Hours, string SetUp, bool Mends);

/// <summary>A part sheet: everything that the journal knows of one part, also as a shop copy on paper.</summary>
public sealed record PartPage(
    PageFrame Frame,
    BalloonView Balloon,
    string Kind,
    IReadOnlyList<FactView> Facts,
    IReadOnlyList<SetUpView> Route,
    string RouteHours,
    string RouteSetUp,
    ChartView? AgainstGuess,
    IReadOnlyList<string> Departures,
    IReadOnlyList<CautionView> Cautions,
    IReadOnlyList<ToolLineView> Tools,
    IReadOnlyList<ReadingRowView> Readings,
    IReadOnlyList<RemarkView> Remarks,
    IReadOnlyList<PhotoView> Photos,
    IReadOnlyList<PurchaseView> Bought,
    IReadOnlyList<EntryLineView> Entries,
    IReadOnlyList<EntryLineView> PointingHere,
    IReadOnlyList<VideoView> Videos)
{
    internal static PartPage Of(Book book, Build build, Part part)
    {
        var reference = new PartRef(build.Id, part.Id);
        var desk = new Desk(book, Addresses.Of(reference));
        var entries = book.Worked[reference].ToList();
        var shown = entries.Where(book.Showing.Shows).ToList();
        var state = book.StateOf(build.Id);
        var finished = state.Finished.Select(one => one.Part).ToHashSet();
        var balloon = desk.Balloon(build, part, finished);
        var hours = book.HoursOf(build.Id).Parts.First(one => one.Part == part.Id);
        book.Routes.TryGetValue(reference, out var route);
        var frame = desk.Frame("part", part.Title, $"{part.Title} of {build.Title}: route as made, hours, readings, tools and lessons.", [Desk.FrontCrumb, Desk.Crumb(build)], TitleBlock(book, desk, build, part, balloon, shown));
        var (readings, remarks) = (ReadingRows.Of(book, reference), RemarksOf(book, desk, reference).ToList());
        var lines = (route?.SetUps.Sum(setUp => SetUpOf(book, setUp).Rows) ?? 0) + readings.Count + remarks.Count;
        return new PartPage(
            frame with { IsLong = lines > MostOnOnePage },
            balloon,
            string.Join(" · ", new[] { "Part sheet", part.Item is { } item ? $"item {item}" : null, part.Quantity == 1 ? "one off" : $"{Show.Number(part.Quantity)} off" }.OfType<string>()),
            FactsOf(part, hours.Minutes, route, entries, shown),
            route is null ? [] : [.. route.SetUps.Select(setUp => SetUpOf(book, setUp))],
            Show.Hours(route?.Minutes ?? Minutes.Zero),
            Show.HoursOrDash(hours.Work.In(TimeKind.SettingUp)),
            GuessByOperation(book, part, hours),
            [.. shown.Select(entry => entry.Departure).OfType<string>()],
            desk.Cautions(Core.Figures.Cautions.For(part, shown)),
            [.. ToolsOf(book, desk, reference, shown)],
            readings,
            remarks,
            [.. shown.SelectMany(entry => desk.Photos(entry).Select(photo => photo with { From = book.Link(entry.Ref) }))],
            [.. shown.SelectMany(entry => entry.Bought).Where(bought => bought.ForPart == part.Id).Select(bought => new PurchaseView(bought.What, Show.Money(bought.Cost, book.Journal.Currency)))],
            [.. shown.Select(desk.Line)],
            [.. book.BackLinks.To(reference).Select(link => link.Entry).Distinct().Where(book.Showing.Shows).Select(book.Entry).Except(shown).Select(desk.Line)],
            VideoView.Of(book, build, part));
    }

    // So many lines of route, readings and remarks surely fit on A4 and Letter in the usual setting, tried in print.
    private const int MostOnOnePage = 12;

    private static TitleBlockView TitleBlock(Book book, Desk desk, Build build, Part part, BalloonView balloon, List<Entry> shown)
    {
        var more = new List<FactView>();
        void Add(string label, string? value)
        {
            if (value is not null)
            {
                more.Add(new FactView(label, value));
            }
        }

        Add("Material", part.Material is { } material ? MaterialWords(book, material) : null);
        Add("Stock", StockWords(book, part));
        Add("Drawing", part.Drawing);
        Add("General tolerance", build.GeneralTolerance is { } tolerance ? "±" + LengthWords.Both(tolerance) : null);
        return new TitleBlockView
        {
            Title = part.Title,
            Supplementary = part.Item is { } item ? $"Item {item} of {build.Title}" : build.Title,
            DocumentType = "Part sheet",
            Status = char.ToUpperInvariant(balloon.Words[0]) + balloon.Words[1..],
            Identification = $"{build.Id}/{part.Id}",
            Issued = desk.LatestDate(shown),
            Sheet = $"{Show.Number(build.Parts.ToList().IndexOf(part) + 1)}/{Show.Number(build.Parts.Count)}",
            More = more,
        };
    }

    internal static string MaterialWords(Book book, Material material) =>
        Show.Lower(book.Journal.Vocabulary.Materials[material.Family].Title) + (material.Grade is { } grade ? $" {grade}" : "");

    internal static string? StockWords(Book book, Part part)
    {
        var stock = part.Stock is { } form ? Show.Lower(book.Journal.Vocabulary.StockForms[form.Form].Title) + (form.Size is { } size ? $" {size}" : "") : null;
        return (stock, part.Supplied) switch
        {
            (null, null) => null,
            (null, var from) => $"from {from}",
            (_, null) => stock,
            (_, "kit") => $"{stock}, from the kit",
            var (_, from) => $"{stock}, {from}",
        };
    }

    private static List<FactView> FactsOf(Part part, Minutes taken, Route? route, List<Entry> entries, List<Entry> shown)
    {
        var facts = new List<FactView> { new("Hours", Show.Hours(taken)) };
        if (part.Guess?.ForAll(part.Quantity) is { } guess)
        {
            var ratio = taken > Minutes.Zero ? $"{Show.Ratio(taken.Count / guess.MeanMinutes)} times over" : null;
            facts.Add(new FactView("Guess", Show.Hours(new Minutes((int)Math.Round(guess.MeanMinutes))), ratio));
        }

        if (part.Reguess is { } again)
        {
            facts.Add(new FactView("Second guess", Show.Hours(again.Likely)));
        }

        if (entries.Count > 0)
        {
            facts.Add(new FactView("Set-ups", Show.Number(route?.SetUpCount ?? 0)));
            facts.Add(new FactView("Days worked", Show.Number(entries.Select(entry => entry.Date).Distinct().Count())));
        }

        // Hours of an evening that is not shown count, but not which evening it was.
        if (shown.Count > 0)
        {
            facts.Add(new FactView("From", Show.Date(shown[0].Date)));
            facts.Add(new FactView("To", Show.Date(shown[^1].Date)));
        }

        return facts;
    }

    // How it was held is told by the entries; where none of them is shown, neither is that.
    private static SetUpView SetUpOf(Book book, SetUp setUp) => setUp.Steps.Any(step => book.Showing.Shows(step.Entry))
        ? new SetUpView(setUp.Number * 10, setUp.Datum, setUp.Held, [.. setUp.Steps.Select(step => StepOf(book, step))])
        : new SetUpView(setUp.Number * 10, null, null, [.. setUp.Steps.Select(step => StepOf(book, step))]);

    private static StepView StepOf(Book book, RouteStep step)
    {
        var words = book.OperationWords(step.Operations);
        var operations = char.ToUpperInvariant(words[0]) + words[1..];
        var shown = book.Showing.Shows(step.Entry);
        var tools = shown ? string.Join(", ", step.Made.Concat(step.Tools).Distinct().Where(book.Showing.Shows).Select(id => Show.Lower(book.Tool(id).Title))) : "";
        var job = book.Entry(step.Entry).Jobs.First(one => one.Number == step.Job);
        return new StepView(
            new LinkView(operations, shown ? Addresses.Of(step.Entry) : null),
            shown ? DateView.Of(step.Date) : null,
            tools,
            Show.Hours(step.Minutes),
            Show.HoursOrDash(job.Parts.Count == 1 ? job.SetUp : Minutes.Zero),
            step.Mends is not null);
    }

    private static ChartView? GuessByOperation(Book book, Part part, PartHours hours)
    {
        if (part.Guess?.ForAll(part.Quantity) is not { ByOperation.Count: > 0 } guess)
        {
            return null;
        }

        var guesses = guess.ByOperation.GroupBy(one => one.Operation).ToDictionary(same => same.Key, same => same.Sum(one => one.Time));
        var rows = hours.Work.Operations.Select(time => time.What).Concat(guesses.Keys).Distinct()
            .Select(id => new TakenAndGuess(book.Operation(id).Title, hours.Work.Operations.FirstOrDefault(time => time.What == id)?.Minutes ?? Minutes.Zero, guesses.TryGetValue(id, out var guessed) ? guessed : null));
        return GuessChart.Draw("against-guess", "By operation", $"Hours taken on {part.Title} against hours guessed, by operation.", [.. rows], "Operation");
    }

    private static IEnumerable<ToolLineView> ToolsOf(Book book, Desk desk, PartRef part, List<Entry> shown)
    {
        var used = shown.SelectMany(entry => entry.Jobs).Where(job => job.Parts.Any(share => share.Part == part.Part)).ToList();
        var made = used.SelectMany(job => job.Made).Distinct().ToList();
        return made.Concat(used.SelectMany(job => job.Tools)).Distinct().Where(book.Showing.Shows).Select(id =>
        {
            var figure = book.ToolFigure(id);
            return desk.ToolLine(id, made.Contains(id) ? $"{KindWord(book, figure.Tool)}made for this part, {Show.Hours(figure.MinutesToMake)}" : null);
        });
    }

    private static string KindWord(Book book, Tool tool) => tool.Kind is { } kind ? $"{Show.Lower(book.Journal.Vocabulary.ToolKinds[kind].Title)}, " : "";

    private static IEnumerable<RemarkView> RemarksOf(Book book, Desk desk, PartRef part)
    {
        foreach (var cost in book.Index.MistakesOn[part].Where(cost => book.Showing.Shows(cost.Ref.Entry)))
        {
            yield return desk.Mistake(cost, withPlace: true);
        }

        foreach (var lesson in book.Index.LessonsOn[part].Where(lesson => book.Showing.Shows(lesson.Id)))
        {
            yield return desk.Lesson(lesson, "Lesson");
        }
    }
}
