using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>A set-up of a route as made.</summary>
/// <param name="Number">10, 20, 30 … in the order of the work.</param>
/// <param name="Datum">What everything was measured from, in the maker's words; null where none of its jobs says so, or none is shown.</param>
/// <param name="Held">How the work was held, in the maker's words; null as for the datum.</param>
/// <param name="Steps">Its jobs in order.</param>
public sealed record SetUpView(int Number, string? Datum, string? Held, IReadOnlyList<StepView> Steps)
{
    /// <summary>How many rows of the table the set-up takes.</summary>
    public int Rows => Steps.Count + (Datum is null && Held is null ? 0 : 1);
}

/// <summary>A job of a set-up.</summary>
/// <param name="Operations">What was done, with a link to the entry.</param>
/// <param name="Date">The evening; null where it is not shown.</param>
/// <param name="Tools">The tools made and used, in words.</param>
/// <param name="Hours">The part's share of the job, in hours and minutes.</param>
/// <param name="SetUp">The setting up in it; a dash for none, or where the job was on several parts.</param>
/// <param name="Mends">Whether the job put a mistake right.</param>
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
    /// <summary>The sheet of a part on the build's parts list. Hours count hidden evenings.</summary>
    internal static PartPage Of(SiteFigures figures, Build build, Part part)
    {
        var reference = new PartRef(build.Id, part.Id);
        var views = new SharedViews(figures, Addresses.Of(reference));
        var entries = figures.Worked[reference].ToList();
        var shown = entries.Where(figures.Visibility.Shows).ToList();
        var state = figures.StateOf(build.Id);
        var finished = state.Finished.Select(one => one.Part).ToHashSet();
        var balloon = views.Balloon(build, part, finished);
        var hours = figures.HoursOf(build.Id).Parts.First(one => one.Part == part.Id);
        figures.Routes.TryGetValue(reference, out var route);
        var frame = views.Frame("part", part.Title, $"{part.Title} of {build.Title}: route as made, hours, readings, tools and lessons.", [SharedViews.FrontCrumb, SharedViews.Crumb(build)], TitleBlock(figures, views, build, part, balloon, shown));
        var (readings, remarks) = (ReadingRows.Of(figures, reference), RemarksOf(figures, views, reference).ToList());
        var lines = (route?.SetUps.Sum(setUp => SetUpOf(figures, setUp).Rows) ?? 0) + readings.Count + remarks.Count;
        return new PartPage(
            frame with { IsLong = lines > MostOnOnePage },
            balloon,
            string.Join(" · ", new[] { "Part sheet", part.Item is { } item ? $"item {item}" : null, part.Quantity == 1 ? "one off" : $"{Show.Number(part.Quantity)} off" }.OfType<string>()),
            FactsOf(part, hours.Minutes, route, entries, shown),
            route is null ? [] : [.. route.SetUps.Select(setUp => SetUpOf(figures, setUp))],
            Show.Hours(route?.Minutes ?? Minutes.Zero),
            Show.HoursOrDash(hours.Work.In(TimeKind.SettingUp)),
            GuessByOperation(figures, part, hours),
            [.. shown.Select(entry => entry.Departure).OfType<string>()],
            views.Cautions(Core.Figures.Cautions.For(part, shown)),
            [.. ToolsOf(figures, views, reference, shown)],
            readings,
            remarks,
            [.. shown.SelectMany(entry => views.Photos(entry).Select(photo => photo with { From = figures.Link(entry.Ref) }))],
            [.. shown.SelectMany(entry => entry.Bought).Where(bought => bought.ForPart == part.Id).Select(bought => new PurchaseView(bought.What, Show.Money(bought.Cost, figures.Journal.Currency)))],
            [.. shown.Select(views.Line)],
            [.. figures.BackLinks.To(reference).Select(link => link.Entry).Distinct().Where(figures.Visibility.Shows).Select(figures.Entry).Except(shown).Select(views.Line)],
            VideoView.Of(figures, build, part));
    }

    // This many lines of route, readings and remarks always fit on A4 and Letter in the usual setting; tried in print.
    private const int MostOnOnePage = 12;

    private static TitleBlockView TitleBlock(SiteFigures figures, SharedViews views, Build build, Part part, BalloonView balloon, List<Entry> shown)
    {
        var more = new List<FactView>();
        void Add(string label, string? value)
        {
            if (value is not null)
            {
                more.Add(new FactView(label, value));
            }
        }

        Add("Material", part.Material is { } material ? MaterialWords(figures, material) : null);
        Add("Stock", StockWords(figures, part));
        Add("Drawing", part.Drawing);
        Add("General tolerance", build.GeneralTolerance is { } tolerance ? "±" + LengthFormat.Both(tolerance) : null);
        return new TitleBlockView
        {
            Title = part.Title,
            Supplementary = part.Item is { } item ? $"Item {item} of {build.Title}" : build.Title,
            DocumentType = "Part sheet",
            Status = char.ToUpperInvariant(balloon.Words[0]) + balloon.Words[1..],
            Identification = $"{build.Id}/{part.Id}",
            Issued = views.LatestDate(shown),
            Sheet = $"{Show.Number(build.Parts.ToList().IndexOf(part) + 1)}/{Show.Number(build.Parts.Count)}",
            More = more,
        };
    }

    /// <summary>A material family in the journal's own words, in small letters, with the grade as the maker wrote it.</summary>
    internal static string MaterialWords(SiteFigures figures, Material material) =>
        Casing.Lower(figures.Journal.Vocabulary.Materials[material.Family].Title) + (material.Grade is { } grade ? $" {grade}" : "");

    /// <summary>What a part is made from and where that comes from; null where neither is given.</summary>
    internal static string? StockWords(SiteFigures figures, Part part)
    {
        var stock = part.Stock is { } form ? Casing.Lower(figures.Journal.Vocabulary.StockForms[form.Form].Title) + (form.Size is { } size ? $" {size}" : "") : null;
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
            var ratio = taken > Minutes.Zero ? $"took {Show.Ratio(taken.Count / guess.MeanMinutes)} times the guess" : null;
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

    // Holding and datum come from the entries; where none of the set-up's entries is shown, these are not shown either.
    private static SetUpView SetUpOf(SiteFigures figures, SetUp setUp) => setUp.Steps.Any(step => figures.Visibility.Shows(step.Entry))
        ? new SetUpView(setUp.Number * 10, setUp.Datum, setUp.Held, [.. setUp.Steps.Select(step => StepOf(figures, step))])
        : new SetUpView(setUp.Number * 10, null, null, [.. setUp.Steps.Select(step => StepOf(figures, step))]);

    private static StepView StepOf(SiteFigures figures, RouteStep step)
    {
        var words = figures.OperationWords(step.Operations);
        var operations = char.ToUpperInvariant(words[0]) + words[1..];
        var shown = figures.Visibility.Shows(step.Entry);
        var tools = shown ? string.Join(", ", step.Made.Concat(step.Tools).Distinct().Where(figures.Visibility.Shows).Select(id => Casing.Lower(figures.Tool(id).Title))) : "";
        var job = figures.Entry(step.Entry).Jobs.First(one => one.Number == step.Job);
        return new StepView(
            new LinkView(operations, shown ? Addresses.Of(step.Entry) : null),
            shown ? DateView.Of(step.Date) : null,
            tools,
            Show.Hours(step.Minutes),
            Show.HoursOrDash(job.Parts.Count == 1 ? job.SetUp : Minutes.Zero),
            step.Mends is not null);
    }

    private static ChartView? GuessByOperation(SiteFigures figures, Part part, PartHours hours)
    {
        if (part.Guess?.ForAll(part.Quantity) is not { ByOperation.Count: > 0 } guess)
        {
            return null;
        }

        var guesses = guess.ByOperation.GroupBy(one => one.Operation).ToDictionary(same => same.Key, same => same.Sum(one => one.Time));
        var rows = hours.Work.Operations.Select(time => time.What).Concat(guesses.Keys).Distinct()
            .Select(id => new TakenAndGuess(figures.Operation(id).Title, hours.Work.Operations.FirstOrDefault(time => time.What == id)?.Minutes ?? Minutes.Zero, guesses.TryGetValue(id, out var guessed) ? guessed : null));
        return GuessChart.Draw("against-guess", "By operation", $"Hours taken on {part.Title} against hours guessed, by operation.", [.. rows], "Operation");
    }

    private static IEnumerable<ToolLineView> ToolsOf(SiteFigures figures, SharedViews views, PartRef part, List<Entry> shown)
    {
        var used = shown.SelectMany(entry => entry.Jobs).Where(job => job.Parts.Any(share => share.Part == part.Part)).ToList();
        var made = used.SelectMany(job => job.Made).Distinct().ToList();
        return made.Concat(used.SelectMany(job => job.Tools)).Distinct().Where(figures.Visibility.Shows).Select(id =>
        {
            var figure = figures.ToolFigure(id);
            return views.ToolLine(id, made.Contains(id) ? $"{KindWord(figures, figure.Tool)}made for this part, {Show.Hours(figure.MinutesToMake)}" : null);
        });
    }

    private static string KindWord(SiteFigures figures, Tool tool) => tool.Kind is { } kind ? $"{Casing.Lower(figures.Journal.Vocabulary.ToolKinds[kind].Title)}, " : "";

    private static IEnumerable<RemarkView> RemarksOf(SiteFigures figures, SharedViews views, PartRef part)
    {
        foreach (var cost in figures.Index.MistakesOn[part].Where(cost => figures.Visibility.Shows(cost.Ref.Entry)))
        {
            yield return views.Mistake(cost, withPlace: true);
        }

        foreach (var lesson in figures.Index.LessonsOn[part].Where(lesson => figures.Visibility.Shows(lesson.Id)))
        {
            yield return views.Lesson(lesson, "Lesson");
        }
    }
}
