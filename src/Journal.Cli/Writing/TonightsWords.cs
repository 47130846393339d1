using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing;

/// <summary>What an evening's write-up says beside its job: as options, or asked for, each question skipped with Enter.</summary>
internal sealed class TonightsWords(OpenJournal open, Terminal terminal)
{
    private const int MostCausesListed = 8;

    private readonly Questions questions = new(terminal);
    private readonly ToolNames tools = new(open.Journal);

    /// <summary>The words.</summary>
    /// <param name="request">What was said beforehand.</param>
    /// <param name="job">The evening's job.</param>
    /// <param name="into">The file of the entry that they go into; null for a new one. What it says is not asked again.</param>
    /// <param name="pictures">The evening's pictures.</param>
    public WriteUp Of(EntryRequest request, NewJob job, string? into, EveningPictures pictures)
    {
        var asks = terminal.CanAsk && !request.WantsCaptions;
        return new WriteUp
        {
            Tools = request.Tools is { } said ? [.. said.Select(Known)] : asks && !Says(into, "tools") ? AskTools(job) : [],
            Title = request.Title ?? (asks && !Says(into, "title") ? questions.Line("Title (Enter: none)") : null),
            Mistakes = request.Mistakes is { } told ? [.. told.Select(what => new NewMistake(what))] : asks ? AskMistakes() : [],
            Next = request.Next ?? (asks && !Says(into, "next") ? questions.Line("What is the next step? (Enter: not said)") : null),
            Photos = [.. pictures.Names.Select(name => new NewPhoto(name, request.WantsCaptions ? Caption(name) : null))],
        };
    }

    private bool Says(string? file, string key) => file is not null && EveningEntry.Says(open.Folder, file, key);

    // In a script a line of standard input for each picture.
    private string? Caption(string name)
    {
        if (terminal.CanAsk)
        {
            return questions.Line($"{name} shows");
        }

        var line = terminal.In.ReadLine()?.Trim() ?? "";
        return ForeignBytes.In(line) is { } wrong ? throw new UsageException(wrong) : line.Length == 0 ? null : line;
    }

    private List<NewMistake> AskMistakes()
    {
        var mistakes = new List<NewMistake>();
        while (questions.Line(mistakes.Count == 0 ? "What went wrong? (Enter: nothing)" : "What else went wrong? (Enter: nothing)") is { } what)
        {
            mistakes.Add(new NewMistake(what)
            {
                Cause = questions.MaybeChoose("Why? (Enter: not said)", Causes()),
                Lost = questions.Maybe("How much time did it cost? (Enter: not said)", line => HoursText.IsDuration(line) ? (line, null) : (null, $"`{line}` is not a time. Write `20m` or `1h30`.")),
                Lesson = questions.Line("What will you do another time? That is the lesson (Enter: none)"),
            });
        }

        return mistakes;
    }

    // The causes of this maker's mistakes, the most frequent first, then those of the vocabulary.
    private Choices Causes()
    {
        var causes = open.Journal.Vocabulary.Causes;
        var told = open.Journal.Entries.SelectMany(entry => entry.Mistakes).Select(mistake => mistake.Cause).OfType<Id<Cause>>().CountBy(cause => cause).OrderByDescending(count => count.Value).Select(count => count.Key);
        return new Choices(
            "causes",
            [.. told.Concat(causes.Ids).Distinct().Take(MostCausesListed).Select(cause => cause.Value)],
            causes.Spellings,
            word => causes.TryFind(Hyphened(word), out var id) ? id.Value : null);
    }

    private List<string> AskTools(NewJob job)
    {
        var usual = job.Operations.Count == 0 ? [] : Usual.Tools(open.Journal, new(job.Operations[0]));
        while (questions.Line("Tools, with commas between (`none` for none)", usual.Count == 0 ? null : string.Join(", ", usual)) is { } line && line != "none")
        {
            var names = tools.On(line);
            if (names.FirstOrDefault(name => ToolNames.NewId(name) is null) is not { } unfit)
            {
                return [.. names.Select(Meant).Distinct()];
            }

            terminal.Complain(NoTool(unfit));
        }

        return [];
    }

    // A tool of the crib, else one of those near, else a new one by that name.
    private string Meant(string name)
    {
        if (tools.Find(name) is { } found)
        {
            return found.Value;
        }

        var (near, made) = (tools.Near(name).Select(id => id.Value).ToList(), ToolNames.NewId(name)!.Value.Value);
        if (near.Count > 0)
        {
            terminal.Complain($"The crib has no `{name}`. Perhaps one of these?  {string.Join("  ", near.Select((id, i) => $"{i + 1} {id}"))}");
            return questions.Maybe(
                $"Its number or id (Enter: a new tool, `{made}`)",
                line => int.TryParse(line, out var number) && number >= 1 && number <= near.Count ? (near[number - 1], null)
                    : tools.Find(line) is { } other ? (other.Value, null)
                    : (null, $"The crib has no `{line}`.")) ?? Known(made);
        }

        return Known(made);
    }

    private static string NoTool(string word) => $"`{word}` is not a valid tool id. Use lower-case words joined by hyphens, such as boring-head.";

    private string Known(string word)
    {
        if (!Id<Tool>.HasRightForm(word))
        {
            throw new UsageException(NoTool(word));
        }

        if (open.Journal.Tools.All(tool => tool.Id.Value != word))
        {
            terminal.Complain($"The crib has no `{word}`. {Suggestion.For(word, [.. open.Journal.Tools.Select(tool => tool.Id.Value)], "tools")} It counts as an unlisted tool.");
        }

        return word;
    }

    private static string Hyphened(string words) => words.Trim().ToLowerInvariant().Replace(' ', '-');
}
