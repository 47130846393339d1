using System.Globalization;
using Journal.Core.PlainWords;
using Journal.Core.Model;

namespace Journal.Core.Tests.PlainWords;

/// <summary>The facts of a proposal.</summary>
internal static class ProposalFacts
{
    public static IReadOnlyList<Fact> Of(Proposal proposal, string text)
    {
        var facts = new List<Fact>();
        foreach (var job in proposal.Jobs)
        {
            AddJob(facts, job);
        }

        AddIf(facts, "total", proposal.Total);
        facts.AddRange(Texts("next", proposal.Next is { } next ? [next] : [], text));
        foreach (var mistake in proposal.Mistakes)
        {
            facts.Add(new("mistake", [], $"{mistake.What}|{Words(text, mistake.Words)}", true));
            AddIf(facts, "mistake.cause", mistake.Cause);
            AddIf(facts, "mistake.lost", mistake.Lost);
            AddIf(facts, "mistake.outcome", mistake.Outcome?.ToWord());
            AddIf(facts, "mistake.repeats", mistake.Repeats);
        }

        facts.AddRange(Texts("lesson", proposal.Lessons, text));
        facts.AddRange(Texts("snag", proposal.Snags, text));
        facts.AddRange(Texts("newTool", proposal.NewTools, text));
        facts.AddRange(Texts("newPart", proposal.NewParts, text));
        facts.AddRange(proposal.Bought.Select(item => new Fact("bought", [], $"{item.What}|{Words(text, item.Words)}", true)));
        facts.AddRange(proposal.Bought.Where(item => item.Cost is not null).Select(item => new Fact("bought.cost", [], Number(item.Cost!.Value))));
        facts.AddRange(proposal.Made.Select(item => new Fact("made", [], $"{item.Title}|{Words(text, item.Words)}", true)));
        facts.AddRange(proposal.Made.Select(item => new Fact("made.kind", [], item.Kind)));
        facts.AddRange(proposal.Heeded.Select(item => new Fact("heeded", [], item.Id.Value)));
        facts.AddRange(proposal.Mends.Select(item => new Fact("mends", [], item.Id.Value)));
        facts.AddRange(proposal.Cleared.Select(item => new Fact("cleared", [], item.Id.Value)));
        facts.AddRange(proposal.Finished.Select(item => new Fact("finished", [], item.Part.Value)));
        foreach (var trial in proposal.Trials)
        {
            facts.Add(new("trial", [], trial.On));
            AddIf(facts, "trial.minutes", trial.Time);
        }

        foreach (var reading in proposal.Readings)
        {
            facts.Add(new("reading", [], $"{reading.Part} {Size(reading.Actual)}"));
            AddIf(facts, "reading.required", reading.Required is { } required ? Plain(required) : null);
        }

        foreach (var setting in proposal.Settings)
        {
            AddIf(facts, "setting.rpm", setting.Rpm is { } rpm ? Number(rpm) : null);
            AddIf(facts, "setting.depth", setting.Depth is { } depth ? Size(depth) : null);
            AddIf(facts, "setting.feed", setting.Feed is { } feed ? Plain(feed) : null);
        }

        return facts;
    }

    private static void AddJob(List<Fact> facts, ProposedJob job)
    {
        var parts = job.Parts.Select(part => part.Value).DefaultIfEmpty("whole").ToList();
        var operations = job.Operations.Select(operation => operation.Value).DefaultIfEmpty("?").ToList();
        var of = parts.SelectMany(part => operations.Select(operation => $"{part} {operation}")).ToList();
        facts.AddRange(of.Select(pair => new Fact("job", [], pair)));
        foreach (var (kind, value) in new[] { ("job.minutes", job.Time?.Count.ToString(CultureInfo.InvariantCulture)), ("job.setup", job.SetUp?.Count.ToString(CultureInfo.InvariantCulture)), ("job.held", job.Held), ("job.datum", job.Datum) })
        {
            if (value is not null)
            {
                facts.Add(new(kind, of, value, kind is "job.held" or "job.datum"));
            }
        }

        facts.AddRange(job.Tools.Select(tool => new Fact("job.tool", of, tool.Value)));
    }

    private static IEnumerable<Fact> Texts(string kind, IReadOnlyList<ProposedText> texts, string text) =>
        texts.Select(item => new Fact(kind, [], kind is "next" or "newPart" ? item.Text : $"{item.Text}|{Words(text, item.Words)}", true));

    private static string Words(string text, Span span) => text[span.Start..span.End];

    private static void AddIf(List<Fact> facts, string kind, object? value)
    {
        if (value is not null)
        {
            facts.Add(new(kind, [], value is Minutes minutes ? minutes.Count.ToString(CultureInfo.InvariantCulture) : value.ToString()!));
        }
    }

    private static string Number(decimal value) => value.ToString("0.##########", CultureInfo.InvariantCulture);

    private static string Size(Length length) => $"{Number(length.Value)} {length.Unit.Symbol()}";

    private static string Plain(string value)
    {
        var words = value.Split(' ', 2);
        return decimal.TryParse(words[0], CultureInfo.InvariantCulture, out var number) ? string.Join(' ', [Number(number), .. words[1..]]) : value;
    }
}
