using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Cli.Writing;
using Journal.Core.PlainWords;

namespace Journal.Cli.Commands;

/// <summary><c>journal propose</c>: keys read from an account in plain words. It writes nothing.</summary>
internal static class ProposeCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (folder, build) = (InOption.Create(), JobOptions.Build());
        var file = new Argument<string?>("file") { Description = "The account, a text file; `-` or left out: standard input.", Arity = ArgumentArity.ZeroOrOne };
        var date = TodayOption.Named("--date", "The evening, such as 2025-10-03. Left out: tonight; before four in the morning, last evening.", "--today");
        var format = FormatOption.WithoutCsv();
        var command = new ExampledCommand("propose", "Keys read from an account in plain words, each with the words it came from. Writes nothing.", "journal propose evening.txt") { file, build, date, format, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
            Propose(open, asked.GetValue(file), asked.GetValue(build), asked.GetValue(date), asked.GetValue(format), terminal)));
        return command;
    }

    private static int Propose(OpenJournal open, string? file, string? named, DateOnly? date, OutputFormat format, Terminal terminal)
    {
        var build = open.Build(named);
        var text = AccountText.Read(file, terminal);
        var proposal = AccountReader.Read(text, open.Journal, build, date ?? open.Clock.Evening(terminal.Now));
        if (format == OutputFormat.Json)
        {
            Json.Write(ProposalShape.Of(proposal), terminal.Out);
        }
        else
        {
            ProposalTable.Print(proposal, text, new Printout(terminal));
        }

        terminal.Out.Flush();
        return ExitStatus.Well;
    }
}
