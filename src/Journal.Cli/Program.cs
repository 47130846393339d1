using Journal.Cli;
using Journal.Cli.Output;

using var stopping = new Stopping();
return JournalProgram.Run(args, Terminal.OfThisProcess(stopping));
