using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing.Told;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;
using Journal.Site.Photos;

namespace Journal.Cli.Writing;

/// <summary>An evening as it was asked for.</summary>
/// <param name="Evening">Its jobs, complete, and what is to be added to the crib and the parts list.</param>
/// <param name="Words">What its entry says beside them.</param>
internal sealed record TonightsWriting(ToldEvening Evening, WriteUp Words);

/// <summary>What an evening's write-up says beside its job: as options, or asked for, each question skipped with Enter.</summary>
internal sealed class TonightsWords(OpenJournal open, Terminal terminal)
{
    private readonly Questions questions = new(terminal);
    private readonly ToolNames tools = new(open.Journal);

    /// <summary>The words.</summary>
    /// <param name="request">What was said beforehand.</param>
    /// <param name="jobs">The evening's jobs.</param>
    /// <param name="into">The file of the entry that they go into; null for a new one. What it says is not asked again.</param>
    /// <param name="pictures">The evening's pictures.</param>
    /// <param name="heard">What the remarks say.</param>
    public TonightsWriting Of(EntryRequest request, IReadOnlyList<ToldJob> jobs, string? into, EveningPictures pictures, Heard heard)
    {
        var asks = terminal.CanAsk && !request.WantsCaptions;
        var offered = asks ? heard.Proposal : new Proposal();
        var tools = request.Tools is { } said ? [.. said.Select(Tool)] : asks && jobs.Count == 1 && !Says(into, "tools") ? AskTools(jobs[0].Job, heard) : [];
        var title = request.Title ?? (asks && !Says(into, "title") ? questions.Line("Title (Enter: none)") : null);
        var mistakes = request.Mistakes is { } told ? [.. told.Select(what => new NewMistake(what))] : asks ? new MistakeQuestions(open, terminal).Ask(offered, heard, jobs) : [];
        var taught = mistakes.Select(mistake => mistake.Lesson).OfType<string>().ToHashSet();
        var rest = new ToldQuestions(open, pictures.Build, heard.Text, terminal).Rest(Offered.Rest(offered, taught, isNew: into is null), pictures.Evening);
        var evening = ToldEvening.Of(rest, jobs, pictures.Evening, new ToldLimits(open.Journal, pictures.Build));
        return new TonightsWriting(evening with { Jobs = [.. evening.Jobs.Select((job, i) => job with { Tools = [.. tools, .. job.Tools] })] }, new WriteUp
        {
            Tools = tools,
            Title = title,
            Facts = evening.Facts with { Mistakes = mistakes, Next = request.Next ?? (asks && !Says(into, "next") ? AskNext(offered.Next, heard) : null) },
            Photos = [.. pictures.Names.Select(name => new NewPhoto(name, request.WantsCaptions ? Caption(name) : null))],
        });
    }

    private string? AskNext(ProposedText? heardNext, Heard heard) => heardNext is { } next
        ? questions.Known("What is the next step?", next.Text, heard.Because(next.Words))
        : questions.Line("What is the next step? (Enter: not said)");

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

    private List<string> AskTools(NewJob job, Heard heard)
    {
        var named = heard.Proposal.Jobs.FirstOrDefault(one => one.Tools.Count > 0);
        var usual = Offered.Tools(heard, open.Journal, job);
        var question = named is null ? "Tools, with commas between (`none` for none)" : $"Tools, with commas between ({heard.Because(named.Words)}; `none` for none)";
        while (questions.Line(question, usual.Count == 0 ? null : string.Join(", ", usual)) is { } line && line != "none")
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
                    : (null, $"The crib has no `{line}`.")) ?? Tool(made);
        }

        return Tool(made);
    }

    private static string NoTool(string word) => $"`{word}` is not a valid tool id. Use lower-case words joined by hyphens, such as boring-head.";

    /// <summary>A tool by its id; one that the crib has not is told of.</summary>
    /// <exception cref="UsageException">It is no id.</exception>
    public string Tool(string word)
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
}
