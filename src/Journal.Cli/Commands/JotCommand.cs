using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Commands;

/// <summary><c>journal jot</c>: a remark from the bench, kept for tonight's entry.</summary>
internal static class JotCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (folder, today) = (InOption.Create(), TodayOption.Create(hidden: true));
        var words = new Argument<string[]>("words") { Description = "The remark.", Arity = ArgumentArity.OneOrMore };
        var command = new ExampledCommand("jot", "Note a remark for tonight's entry; `journal write` puts it into the text.", "journal jot \"It sings at 300 rpm\"") { words, folder, today };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
            Jot(open, string.Join(' ', asked.GetValue(words)!).Trim(), asked.GetValue(today), terminal)));
        return command;
    }

    private static int Jot(OpenJournal open, string text, DateOnly? today, Terminal terminal)
    {
        if (text.Length == 0)
        {
            throw new UsageException("`journal jot` needs <words>.");
        }

        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        var evening = today ?? open.Clock.Evening(terminal.Now);
        slate.Keep(slate.Slate.With(new Jot(terminal.Now.ToUniversalTime(), evening, OneLine(text))));
        terminal.Complain($"Kept, {open.Clock.Time(terminal.Now)}: {Count.Of(slate.Slate.Jots.Count(jot => jot.Evening == evening), "remark")} for the entry of {Wording.Written.Date(evening)}.");
        if (slate.Slate.Stint is { } running)
        {
            terminal.Complain(StintText.Of(running, open.Journal, open.Clock, terminal.Now));
        }

        return ExitStatus.Well;
    }

    private static string OneLine(string text) => string.Join(' ', text.Split(['\r', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
