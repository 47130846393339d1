using System.Security.Cryptography;
using System.Text.Json.Serialization;
using Journal.Bench.Common;
using Journal.Bench.Pages;
using Journal.Bench.Requests;
using Journal.Bench.Texts;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing;
using Journal.Core.Writing.Texts;

namespace Journal.Bench.Plans;

/// <summary>An estimate as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(EstimateView))]
internal sealed partial class EstimateViewJson : JsonSerializerContext;

/// <summary>Plans: the guesses of their parts, what the estimate makes of them, what if without a part, and the beginning.</summary>
internal sealed class PlanRoutes(Workshop workshop)
{
    /// <summary>A plan of hundreds of parts has some fields for each.</summary>
    private const int MostFields = 4000;

    private readonly PlanEstimates estimates = new(workshop);

    /// <summary>All that can be asked for.</summary>
    public IEnumerable<Route> All =>
    [
        Route.Get(Addresses.Plans, List),
        Route.Get($"{Addresses.Plans}/*", Open),
        Route.Post($"{Addresses.Plans}/*", Send),
        Route.Post($"{Addresses.Begin}/*", Begin),
    ];

    private Reply List(Asked asked)
    {
        var journal = workshop.Journal.Journal;
        return Reply.Page(workshop.Look.Fill("plans", new PlansPage(
            workshop.Frame(asked, "Plan", Addresses.Plans),
            [.. journal.Plans.Select(plan => new PlanRow(AddressOf(plan), plan.Title, $"{Casing.Capital(Count.Of(plan.Parts.Count, "part"))}{(journal.BegunAs(plan) is null ? "" : ", begun")}"))])));
    }

    private Reply Open(Asked asked)
    {
        if (Find(asked) is not { } plan || OpenedText.Open(workshop.Folder, plan.File) is not { } opened)
        {
            return Reply.Nothing;
        }

        return Page(asked, plan, opened.Text, opened.Text, [], asked.Query("saved") is null ? null : new ToldView("Saved.", IsDone: true, Verdict: null), null, 200);
    }

    // Saved where that was pressed; else only the estimate is made of what was typed.
    private async Task<Reply> Send(Asked asked)
    {
        var form = await asked.ReadForm(mostFields: MostFields);
        if (Find(asked) is not { } plan || OpenedText.Open(workshop.Folder, plan.File) is not { } opened)
        {
            return Reply.Nothing;
        }

        IReadOnlyList<Id<Part>> without = [.. form.All("without").Select(part => new Id<Part>(part))];
        var guesses = Guesses(form, plan);
        var (text, whyNot) = PlanGuesses.With(opened.Text, guesses);
        if (form["save"] is not null && WhyChanged(form, opened.Text, guesses) is { } changed)
        {
            whyNot = changed;
        }
        else if (form["save"] is not null && workshop.Journal.Journal.BegunAs(plan) is null)
        {
            var outcome = await workshop.Writer.Do(new GuessesWritten(NewId(), workshop.Clock.GetUtcNow(), plan, guesses));
            if (outcome.IsDone)
            {
                return Reply.See($"{AddressOf(plan)}?saved=yes#told");
            }

            whyNot = outcome.Said;
        }

        return asked.IsByScript ? Reply.Json(text is null ? new EstimateView(null, [whyNot], []) : estimates.Of(plan, text, without), EstimateViewJson.Default.EstimateView)
            : Page(asked, plan, opened.Text, text, without, whyNot.Length == 0 ? null : new ToldView(whyNot, IsDone: false, Verdict: null), form, whyNot.Length == 0 ? 200 : 422);
    }

    private async Task<Reply> Begin(Asked asked)
    {
        await asked.ReadForm();
        if (Find(asked) is not { } plan || OpenedText.Open(workshop.Folder, plan.File) is not { } opened)
        {
            return Reply.Nothing;
        }

        var outcome = await workshop.Writer.Do(new PlanBegun(NewId(), workshop.Clock.GetUtcNow(), plan.Id, workshop.Today));
        return Page(asked, plan, opened.Text, opened.Text, [], new ToldView(outcome.Said, outcome.IsDone, Verdict: null), null, outcome.IsDone ? 200 : 422);
    }

    private Reply Page(Asked asked, Plan plan, string text, string? typed, IReadOnlyList<Id<Part>> without, ToldView? told, Form? form, int status)
    {
        var estimate = typed is null ? new EstimateView(null, [], []) : estimates.Of(plan, typed, without);
        PartHoursView HoursOf(string part) => estimate.Parts.FirstOrDefault(one => one.Part == part) ?? new PartHoursView(part, "–", "–");
        return Reply.Page(
            workshop.Look.Fill("plan", new PlanPage
            {
                Frame = workshop.Frame(asked, plan.Title, Addresses.Plans),
                Title = plan.Title,
                Id = TextFiles.IdOf(plan.File),
                File = $"{Addresses.Files}/{TextFiles.IdOf(plan.File)}",
                IsBegun = workshop.Journal.Journal.BegunAs(plan) is not null,
                Told = told,
                Parts = [.. plan.Parts.Select(part => PartOf(part, PlanGuesses.Of(text, part.Id.Value), form, without.Contains(part.Id), HoursOf(part.Id.Value)))],
                Whole = HoursOf("whole"),
                Estimate = estimate,
                Script = workshop.Look.AddressOf("plan.js"),
            }),
            status);
    }

    private PlanPartForm PartOf(Part part, string was, Form? form, bool isOut, PartHoursView hours)
    {
        var titles = new TitleBook(workshop.Journal.Journal);
        var detail = new[] { part.Quantity > 1 ? Count.Of(part.Quantity, "piece") : null, part.Operations.Count == 0 ? null : titles.InSentence(part.Operations), part.Like is { } like ? $"like {like}" : null };
        return new PlanPartForm(part.Id.Value, part.Title, string.Join("; ", detail.OfType<string>()), form is null ? was : Typed(form, $"guess-{part.Id}") ?? was, was, isOut, hours.Even, hours.Range);
    }

    private static IReadOnlyList<NewGuess> Guesses(Form form, Plan plan) =>
    [
        .. plan.Parts.Select(part => (Part: part.Id.Value, Typed: Typed(form, $"guess-{part.Id}")))
            .Where(one => one.Typed is not null && one.Typed != Typed(form, $"was-{one.Part}"))
            .Select(one => new NewGuess(one.Part, one.Typed!)),
    ];

    // What someone else changed after the page was opened is not written over.
    private static string? WhyChanged(Form form, string text, IReadOnlyList<NewGuess> guesses) =>
        guesses.Select(guess => (guess.Part, guess.Guess, Now: PlanGuesses.Of(text, guess.Part))).FirstOrDefault(one => one.Now != Typed(form, $"was-{one.Part}") && one.Now != one.Guess) is { Part: { } part } other
            ? $"`{part}`: its guess was changed elsewhere after you opened the page; it now says “{other.Now}”. Nothing was saved. Load the page again." : null;

    private Plan? Find(Asked asked) => workshop.Journal.Journal.Plans.FirstOrDefault(plan => TextFiles.IdOf(plan.File) == asked.LastStep);

    private static string AddressOf(Plan plan) => $"{Addresses.Plans}/{TextFiles.IdOf(plan.File)}";

    private static string NewId() => RandomNumberGenerator.GetHexString(32, lowercase: true);

    // What was left empty was said: that there is no guess.
    private static string? Typed(Form form, string field) => form.Has(field) ? form.Raw(field).Trim() : null;
}
