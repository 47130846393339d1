using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing.Amending;

/// <summary>
/// Asks what shall be added to an entry: a word and what belongs to it on one line, such as <c>lesson Oil it first</c>, until
/// an empty line. A word may be cut short: <c>l Oil it first</c>.
/// </summary>
internal sealed class AmendmentQuestions(AmendmentWords words, Terminal terminal)
{
    private static readonly string[] Verbs = ["lesson", "reading", "setting", "finished", "snag", "cleared", "mistake", "next", "caption"];

    private readonly Questions questions = new(terminal);

    /// <summary>All that was said; empty where nothing was.</summary>
    /// <exception cref="OperationCanceledException">The maker ended the input.</exception>
    public Amendment Ask(Entry entry)
    {
        terminal.Complain($"{entry.Ref}: {entry.Title}");
        terminal.Complain($"A line for each thing, such as `lesson Oil it first`: {string.Join(", ", Verbs)}.");
        var said = new Amendment();
        while (questions.Line(said.IsEmpty && terminal.Edit is not null ? "Add (Enter: the editor)" : "Add (Enter: done)") is { } line)
        {
            try
            {
                said = With(said, entry, line);
            }
            catch (UsageException e)
            {
                terminal.Complain(e.Message);
            }
        }

        return said;
    }

    /// <summary>A line for each picture that has no words yet.</summary>
    /// <exception cref="OperationCanceledException">The maker ended the input.</exception>
    public Amendment AskCaptions() => new()
    {
        Captions = [.. words.Wordless.Select(file => (File: file, Words: questions.Line($"{file} shows"))).Where(one => one.Words is not null).Select(one => new NewPhoto(one.File, one.Words))],
    };

    private Amendment With(Amendment said, Entry entry, string line)
    {
        var parts = line.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var meant = Verbs.Where(verb => verb.StartsWith(parts[0].TrimEnd(':'), StringComparison.OrdinalIgnoreCase)).ToList();
        if (meant is not [var verb])
        {
            throw new UsageException(meant.Count == 0 ? $"Begin with one of {string.Join(", ", Verbs)}." : $"`{parts[0]}` may be {string.Join(" or ", meant)}.");
        }

        return (parts.Length > 1 ? parts[1] : questions.Line($"  {verb}")) is { } text ? With(said, entry, verb, text) : said;
    }

    private Amendment With(Amendment said, Entry entry, string verb, string text) => verb switch
    {
        "lesson" => said with { Lessons = [.. said.Lessons, text] },
        "reading" => said with { Readings = [.. said.Readings, words.Reading(text)] },
        "setting" => said with { Settings = [.. said.Settings, words.Setting(text)] },
        "finished" => said with { Finished = [.. said.Finished.Where(one => one.Part != words.Finished(text).Part), words.Finished(text)] },
        "snag" => said with { Snags = [.. said.Snags, text] },
        "cleared" => said with { Cleared = [.. said.Cleared.Append(words.Snag(text)).Distinct()] },
        "mistake" => said with { Mistakes = [.. said.Mistakes, Mistake(text)] },
        "caption" => said with { Captions = [.. said.Captions, words.Caption(text)] },
        _ when entry.Next is { } next => throw new UsageException($"It has a next step already: “{next}” Change that in the editor."),
        _ => said with { Next = text },
    };

    private NewMistake Mistake(string what)
    {
        var cause = Checked("  Why (Enter: not said)", words.Cause);
        var lost = Checked("  Time lost (Enter: not said)", AmendmentWords.Lost);
        return new NewMistake(what) { Cause = cause, Lost = lost, Lesson = questions.Line("  Lesson (Enter: none)") };
    }

    private string? Checked(string question, Func<string?, string?> read)
    {
        while (true)
        {
            try
            {
                return read(questions.Line(question));
            }
            catch (UsageException e)
            {
                terminal.Complain(e.Message);
            }
        }
    }
}
