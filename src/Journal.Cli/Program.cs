using Journal.Cli;
using Journal.Cli.Output;

return JournalProgram.Run(args, Terminal.OfThisProcess());
