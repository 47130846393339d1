using System.Globalization;
using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.PlainWords;

namespace Journal.Cli.Tables;

/// <summary>A proposal for people: each key with the words that it came from.</summary>
internal static class ProposalTable
{
    private const int LongestQuote = 160;

    /// <summary>The proposal.</summary>
    public static void Print(Proposal proposal, string account, Printout print)
    {
        var lines = Lines(proposal).ToList();
        if (lines.Count == 0)
        {
            print.Say("Nothing in it is sure enough to propose.");
        }

        foreach (var (key, value, spans) in lines)
        {
            print.Hang($"{key,-10}", value);
            foreach (var span in spans)
            {
                print.Hang("            “", $"{Quote(account, span)}”", Ink.Faint);
            }
        }

        foreach (var question in proposal.Questions)
        {
            print.Hang("?         ", $"{question.Text} “{Quote(account, question.Words)}”");
        }
    }

    /// <summary>The keys in the order of an entry's, with what they say and where it was said.</summary>
    public static IEnumerable<(string Key, string Value, IReadOnlyList<Span> Words)> Lines(Proposal proposal)
    {
        foreach (var job in proposal.Jobs)
        {
            yield return ("job", Job(job), job.Words);
        }

        if (proposal.Total is { } total)
        {
            yield return ("total", total.ToString(), proposal.TotalWords);
        }

        foreach (var mistake in proposal.Mistakes)
        {
            var more = new[] { mistake.Cause?.Value, mistake.Lost is { } lost ? $"lost {lost}" : null, mistake.Outcome?.ToWord(), mistake.Repeats is { } lesson ? $"repeats {lesson}" : null };
            yield return ("mistake", Joined([mistake.What, .. more]), [mistake.Words]);
        }

        foreach (var line in Remarks(proposal).Concat(Figures(proposal)).Concat(State(proposal)))
        {
            yield return line;
        }
    }

    private static IEnumerable<(string Key, string Value, IReadOnlyList<Span> Words)> Remarks(Proposal proposal)
    {
        foreach (var (key, texts) in new[] { ("lesson", proposal.Lessons), ("snag", proposal.Snags), ("new tool", proposal.NewTools), ("new part", proposal.NewParts) })
        {
            foreach (var text in texts)
            {
                yield return (key, text.Text, [text.Words]);
            }
        }

        foreach (var lesson in proposal.Heeded)
        {
            yield return ("heeded", lesson.Id.Value, [lesson.Words]);
        }

        foreach (var mistake in proposal.Mends)
        {
            yield return ("mends", mistake.Id.Value, [mistake.Words]);
        }

        foreach (var snag in proposal.Cleared)
        {
            yield return ("cleared", snag.Id.Value, [snag.Words]);
        }
    }

    private static IEnumerable<(string Key, string Value, IReadOnlyList<Span> Words)> Figures(Proposal proposal)
    {
        foreach (var reading in proposal.Readings)
        {
            yield return ("reading", Joined([reading.Part?.Value, $"{reading.Feature} {reading.Actual}", reading.Required is { } required ? $"required {required}" : null]), [reading.Words]);
        }

        foreach (var setting in proposal.Settings)
        {
            yield return ("setting", Joined([setting.Rpm is { } rpm ? string.Create(CultureInfo.InvariantCulture, $"{rpm} rpm") : null, setting.Depth is { } depth ? $"{depth} deep" : null, setting.Feed, setting.Verdict]), [setting.Words]);
        }
    }

    private static IEnumerable<(string Key, string Value, IReadOnlyList<Span> Words)> State(Proposal proposal)
    {
        foreach (var part in proposal.Finished)
        {
            yield return ("finished", part.Pieces is { } pieces ? string.Create(CultureInfo.InvariantCulture, $"{part.Part}, {pieces}") : part.Part.Value, [part.Words]);
        }

        foreach (var item in proposal.Bought)
        {
            yield return ("bought", Joined([item.What, item.Cost?.ToString(CultureInfo.InvariantCulture)]), [item.Words]);
        }

        foreach (var item in proposal.Made)
        {
            yield return ("made", Joined([item.Title, item.Kind]), [item.Words]);
        }

        foreach (var trial in proposal.Trials)
        {
            yield return ("trial", Joined([$"on {trial.On}", trial.Time?.ToString()]), [trial.Words]);
        }

        if (proposal.Next is { } next)
        {
            yield return ("next", next.Text, [next.Words]);
        }
    }

    private static string Job(ProposedJob job) => Joined(
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

    private static string Quote(string account, Span span)
    {
        var text = string.Join(' ', account[span.Start..span.End].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return text.Length > LongestQuote ? text[..LongestQuote] + "…" : text;
    }
}
