using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Cli.Writing.Amending;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Commands;

/// <summary><c>journal amend</c>: what an entry does not say yet.</summary>
internal static class AmendCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (entry, folder, build, options) = (EntryArgument.Create("The entry: its id, its date or words in it. Left out: the latest."), InOption.Create(), JobOptions.OfAny(), new AmendmentOptions());
        var command = new ExampledCommand("amend", "What an entry does not say yet: adds it, and touches nothing that stands there.", "journal amend 2025-09-06 --finished head") { entry };
        foreach (var option in options.All.Concat([build, folder]))
        {
            command.Add(option);
        }

        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var of = asked.GetValue(build) is { } named ? open.Build(named).Id : (Id<Build>?)null;
            var meant = EntryArgument.Find(asked.GetValue(entry) ?? [], open.Journal, of, open.Folder, open.Clock.Evening(terminal.Now));
            return Amend(open, meant, options.Of(asked, new AmendmentWords(open.Journal, meant)), options.WantsCaptions(asked), terminal);
        }));
        return command;
    }

    /// <summary>Adds what was said, or asks for it where nothing was.</summary>
    public static int Amend(OpenJournal open, Entry entry, Amendment said, bool wantsCaptions, Terminal terminal)
    {
        var questions = new AmendmentQuestions(new AmendmentWords(open.Journal, entry), terminal);
        if (said.IsEmpty && !terminal.CanAsk)
        {
            throw new UsageException("Say what to add, such as `--lesson \"Oil it first\"`. See `journal amend --help`.");
        }

        var asked = !said.IsEmpty ? said : wantsCaptions ? questions.AskCaptions() : questions.Ask(entry);
        var path = Path.Combine(open.Folder, entry.File.Replace('/', Path.DirectorySeparatorChar));
        if (!asked.IsEmpty)
        {
            using var slate = SlateFile.Take(open.Folder, terminal.Complain);
            var written = new EntryAmendment(open.Folder).Add(entry, asked);
            terminal.Out.WriteLine(written.File is null ? throw new UsageException(written.WhyNot) : path);
        }
        else if (wantsCaptions)
        {
            terminal.Complain(entry.Photos.Count == 0 ? $"{entry.Id} has no pictures." : "No words were added.");
        }
        else if (terminal.Edit is { } edit)
        {
            edit(path);
            terminal.Out.WriteLine(path);
        }
        else
        {
            terminal.Complain("Nothing was added. To change what stands there, set the variable VISUAL or EDITOR to your editor.");
        }

        return ExitStatus.Well;
    }
}
