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
    // The folder is gone, most often because a publish put a new site in its place; or there is no standard output.
    Console.Error.WriteLine(Directory.Exists(".")
        ? "Could not begin: what you asked for cannot be written anywhere, for standard output is closed."
        : "Could not begin: the folder that you stand in is not there any more. Step into it anew (`cd \"$PWD\"`), then try again.");
    return ExitStatus.NotFinished;
}

return JournalProgram.Run(args, terminal);
