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

    /// <summary>The version that was built, without the mark of the sources.</summary>
    public static string Version { get; } =
        typeof(VersionLine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    /// <summary>Writes the line.</summary>
    public static void Write(TextWriter output) => output.WriteLine($"journal {Version}");
}
