using Journal.Cli;
using Journal.Cli.Output;

using var stopping = new Stopping();
Terminal terminal;
try
{
    terminal = Terminal.OfThisProcess(stopping);
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    // Most often because a publish put a new site in its place.
    using var remarks = new StreamWriter(new OutgoingStream(Console.OpenStandardError));
    remarks.WriteLine("Could not start: the current folder no longer exists. Change into it again (`cd \"$PWD\"`), then try again.");
    return ExitStatus.NotFinished;
}

return JournalProgram.Run(args, terminal);
