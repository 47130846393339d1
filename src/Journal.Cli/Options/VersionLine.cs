using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;
using Journal.Cli.Output;

namespace Journal.Cli.Options;

/// <summary>The program's name and version.</summary>
internal sealed class VersionLine(Terminal terminal) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        Write(terminal.Out);
        return ExitStatus.Well;
    }

    /// <summary>Writes the line.</summary>
    public static void Write(TextWriter output)
    {
        var version = typeof(VersionLine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
        output.WriteLine($"journal {version.Split('+')[0]}");
    }
}
