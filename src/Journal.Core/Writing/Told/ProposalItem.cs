using System.Globalization;
using Journal.Core.Model;
using Journal.Core.PlainWords;

namespace Journal.Core.Writing.Told;

/// <summary>One thing of a proposal, as people read it.</summary>
/// <param name="Key">What it is, such as <c>mistake</c>.</param>
/// <param name="Value">What it says.</param>
/// <param name="Words">Where it was said.</param>
/// <param name="Without">The proposal without it.</param>
public sealed record ProposalItem(string Key, string Value, IReadOnlyList<Span> Words, Func<Proposal, Proposal> Without)
{
    /// <summary>All things of a proposal in the order of an entry's keys; its questions are none.</summary>
    public static IReadOnlyList<ProposalItem> Of(Proposal proposal) => [.. Work(proposal), .. Remarks(proposal), .. Figures(proposal), .. State(proposal)];

    private static IEnumerable<ProposalItem> Work(Proposal proposal)
    {
        foreach (var job in proposal.Jobs)
        {
            yield return new("job", TitleOf(job), job.Words, told => told with { Jobs = But(told.Jobs, job) });
        }

        if (proposal.Total is { } total)
        {
            yield return new("total", total.ToString(), proposal.TotalWords, told => told with { Total = null, TotalWords = [] });
        }

        foreach (var mistake in proposal.Mistakes)
        {
            var more = new[] { mistake.Cause?.Value, mistake.Lost is { } lost ? $"lost {lost}" : null, mistake.Outcome?.ToWord(), mistake.Repeats is { } lesson ? $"repeats {lesson}" : null };
            yield return new("mistake", Joined([mistake.What, .. more]), [mistake.Words], told => told with { Mistakes = But(told.Mistakes, mistake) });
        }
    }

    private static IEnumerable<ProposalItem> Remarks(Proposal proposal) =>
    [
        .. Texts("lesson", proposal.Lessons, (told, texts) => told with { Lessons = texts }, told => told.Lessons),
        .. Texts("snag", proposal.Snags, (told, texts) => told with { Snags = texts }, told => told.Snags),
        .. Texts("new tool", proposal.NewTools, (told, texts) => told with { NewTools = texts }, told => told.NewTools),
        .. Texts("new part", proposal.NewParts, (told, texts) => told with { NewParts = texts }, told => told.NewParts),
        .. proposal.Heeded.Select(one => new ProposalItem("heeded", one.Id.Value, [one.Words], told => told with { Heeded = But(told.Heeded, one) })),
        .. proposal.Mends.Select(one => new ProposalItem("mends", one.Id.Value, [one.Words], told => told with { Mends = But(told.Mends, one) })),
        .. proposal.Cleared.Select(one => new ProposalItem("cleared", one.Id.Value, [one.Words], told => told with { Cleared = But(told.Cleared, one) })),
    ];

    private static IEnumerable<ProposalItem> Texts(string key, IReadOnlyList<ProposedText> texts, Func<Proposal, IReadOnlyList<ProposedText>, Proposal> with, Func<Proposal, IReadOnlyList<ProposedText>> of) =>
        texts.Select(text => new ProposalItem(key, text.Text, [text.Words], told => with(told, But(of(told), text))));

    private static IEnumerable<ProposalItem> Figures(Proposal proposal)
    {
        foreach (var reading in proposal.Readings)
        {
            var size = Joined([reading.Part?.Value, $"{reading.Feature} {reading.Actual}", reading.Required is { } required ? $"required {required}" : null]);
            yield return new("reading", size, [reading.Words], told => told with { Readings = But(told.Readings, reading) });
        }

        foreach (var setting in proposal.Settings)
        {
            var cut = Joined([setting.Rpm is { } rpm ? string.Create(CultureInfo.InvariantCulture, $"{rpm} rpm") : null, setting.Depth is { } depth ? $"{depth} deep" : null, setting.Feed, setting.Verdict]);
            yield return new("setting", cut, [setting.Words], told => told with { Settings = But(told.Settings, setting) });
        }
    }

    private static IEnumerable<ProposalItem> State(Proposal proposal)
    {
        foreach (var part in proposal.Finished)
        {
            yield return new("finished", part.Pieces is { } pieces ? string.Create(CultureInfo.InvariantCulture, $"{part.Part}, {pieces}") : part.Part.Value, [part.Words], told => told with { Finished = But(told.Finished, part) });
        }

        foreach (var item in proposal.Bought)
        {
            yield return new("bought", Joined([item.What, item.Cost?.ToString(CultureInfo.InvariantCulture)]), [item.Words], told => told with { Bought = But(told.Bought, item) });
        }

        foreach (var item in proposal.Made)
        {
            yield return new("made", Joined([item.Title, item.Kind]), [item.Words], told => told with { Made = But(told.Made, item) });
        }

        foreach (var trial in proposal.Trials)
        {
            yield return new("trial", Joined([$"on {trial.On}", trial.Time?.ToString()]), [trial.Words], told => told with { Trials = But(told.Trials, trial) });
        }

        if (proposal.Next is { } next)
        {
            yield return new("next", next.Text, [next.Words], told => told with { Next = null });
        }
    }

    /// <summary>A job in short: “flywheel; boring; 1h30”.</summary>
    public static string TitleOf(ProposedJob job) => Joined(
    [
        job.Parts.Count == 0 ? null : string.Join(" and ", job.Parts),
        job.Operations.Count == 0 ? "other" : string.Join(" and ", job.Operations),
        job.Time?.ToString(),
        job.SetUp is { } setUp ? $"set-up {setUp}" : null,
        job.Held is { } held ? $"held {held}" : null,
        job.Datum is { } datum ? $"datum {datum}" : null,
        job.Tools.Count == 0 ? null : $"with {string.Join(", ", job.Tools)}",
        job.Mends is { } mends ? $"mends {mends}" : null,
    ]);

    private static string Joined(IEnumerable<string?> pieces) => string.Join("; ", pieces.Where(piece => !string.IsNullOrEmpty(piece)));

    private static IReadOnlyList<T> But<T>(IReadOnlyList<T> list, T one)
        where T : class => [.. list.Where(other => !ReferenceEquals(other, one))];
}
