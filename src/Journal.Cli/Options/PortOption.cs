using System.CommandLine;

namespace Journal.Cli.Options;

/// <summary><c>--port number</c>: the port of a page on this machine.</summary>
internal static class PortOption
{
    /// <summary>The option, one to a command.</summary>
    /// <param name="usual">The port where none is named.</param>
    public static Option<int?> Create(int usual)
    {
        var port = new Option<int?>("--port") { Description = $"The port on this machine. Default: {usual}, or any free one.", HelpName = "number" };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() is < 1 or > 65535)
            {
                result.AddError("`--port` must be a number from 1 to 65535.");
            }
        });
        return port;
    }
}
