using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Runtime.InteropServices;

namespace Journal.Benchmarks.Programs;

/// <summary>
/// Programs as they are shipped: one file, compiled ahead of time, as <c>pack.sh</c> makes them on the system it runs on.
/// The floor and a bare .NET program are one file too, compiled ahead as far as their libraries allow (ReadyToRun): the
/// libraries that they use do not bear more.
/// </summary>
internal sealed class ShippedProgram
{
    private const string BareProject = """
        <Project Sdk="Microsoft.NET.Sdk">
          <PropertyGroup>
            <OutputType>Exe</OutputType>
            <TargetFramework>net10.0</TargetFramework>
            <InvariantGlobalization>true</InvariantGlobalization>
          </PropertyGroup>
        </Project>
        """;

    private readonly string file;

    private ShippedProgram(string file) => this.file = file;

    /// <summary>The program.</summary>
    public static ShippedProgram Journal(string root) => Make(Path.Combine(Source(), "src", "Journal.Cli"), Path.Combine(root, "program"), "journal", "-p:Native=true");

    /// <summary>These benchmarks, of which <c>--child</c> does one piece of work.</summary>
    public static ShippedProgram Benchmarks(string root) => Make(Path.Combine(Source(), "tests", "Journal.Benchmarks"), Path.Combine(root, "benchmarks"), "Journal.Benchmarks", OneFile);

    /// <summary>A program that says one line.</summary>
    public static ShippedProgram Bare(string root)
    {
        var source = Directory.CreateDirectory(Path.Combine(root, "bare-source")).FullName;
        File.WriteAllText(Path.Combine(source, "bare.csproj"), BareProject);
        File.WriteAllText(Path.Combine(source, "Program.cs"), "System.Console.WriteLine(\"1.0\");\n");
        return Make(source, Path.Combine(root, "bare"), "bare", OneFile);
    }

    /// <summary>Runs it and waits.</summary>
    /// <param name="cache">The cache folder that it may use.</param>
    /// <param name="words">Its arguments.</param>
    public ChildRun Run(string cache, params string[] words)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true, Environment = { ["JOURNAL_CACHE"] = cache } };
        foreach (var word in (string[])["--measure", file, .. words])
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd().Trim().Split('\n')[^1].Split(' ');
        process.WaitForExit();
        return process.ExitCode == 0
            ? new ChildRun(new TimeSpan(long.Parse(said[0], CultureInfo.InvariantCulture)), long.Parse(said[1], CultureInfo.InvariantCulture))
            : throw new InvalidOperationException($"{file} {string.Join(' ', words)} ended with {process.ExitCode}.");
    }

    /// <summary>Starts it, with its standard output to be read.</summary>
    /// <param name="cache">The cache folder that it may use.</param>
    /// <param name="words">Its arguments.</param>
    public Process Start(string cache, params string[] words) =>
        Process.Start(new ProcessStartInfo(file, words) { RedirectStandardOutput = true, RedirectStandardError = true, Environment = { ["JOURNAL_CACHE"] = cache } })!;

    private static string[] OneFile => ["--self-contained", "-p:PublishSingleFile=true", "-p:PublishReadyToRun=true"];

    private static ShippedProgram Make(string project, string to, string name, params string[] how)
    {
        string[] words = ["publish", project, "-c", "Release", "-r", RuntimeInformation.RuntimeIdentifier, "-p:PackAsTool=false", "-p:DebugType=none", "-o", to, "-v", "q", "-nologo", .. how];
        using var process = Process.Start(new ProcessStartInfo("dotnet", words) { RedirectStandardOutput = true })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? new ShippedProgram(Path.Combine(to, OperatingSystem.IsWindows() ? name + ".exe" : name)) : throw new InvalidOperationException(said);
    }

    /// <summary>The folder of the source, which stands in the assembly's metadata.</summary>
    public static string Source() => typeof(ShippedProgram).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(one => one.Key == "Source").Value!;
}
