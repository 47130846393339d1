using System.Diagnostics;

namespace Journal.Cli.Tests;

// The tool package as a maker gets it: made, installed into an empty folder, and run where no repository is.
public sealed class ToolPackageTests
{
    [Fact]
    public void Installed_IntoAnEmptyFolder_StartsWritesChecksAndPublishesWithoutTheRepository()
    {
        using var place = JournalOnDisk.Bare();
        using var journal = JournalOnDisk.Small();
        var packages = Path.Combine(place.Folder, "packages");
        var tools = Path.Combine(place.Folder, "tools");
        var project = Path.Combine(Repository(), "src", "Journal.Cli", "Journal.Cli.csproj");

        Run(place.Folder, "dotnet", "pack", project, "--configuration", Configuration(), "--no-build", "--output", packages, "-v", "q", "-nologo");
        Run(place.Folder, "dotnet", "tool", "install", "Journal.Tool", "--tool-path", tools, "--add-source", packages, "--no-cache");
        var program = Path.Combine(tools, "journal");

        Assert.Matches(@"^journal \d+\.\d+\.\d+\n$", Run(place.Folder, program, "--version"));
        Assert.Equal("No problems: 2 builds, 4 entries, 2 tools.\n", Run(journal.Folder, program, "check", "--today", "2025-10-03"));
        Run(journal.Folder, program, "publish", "--to", "site");
        Assert.Contains("Boring the head", File.ReadAllText(Path.Combine(journal.Folder, "site", "drill", "entry", "2025-09-06-head.html")), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(journal.Folder, "site", "style.css")));

        // A maker's first evening: a journal begun, an entry written, the site published.
        Run(place.Folder, program, "start", "bench");
        var bench = Path.Combine(place.Folder, "bench");
        Run(bench, program, "write", "--part", "arm", "--operation", "turning", "--hours", "45m", "--title", "The second arm");
        Run(bench, program, "publish", "--to", "../bench-site");
        Assert.Contains(
            Directory.EnumerateFiles(Path.Combine(place.Folder, "bench-site", "tap-wrench", "entry")),
            page => File.ReadAllText(page).Contains("The second arm", StringComparison.Ordinal));
    }

    private static string Repository()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Journal.sln")))
        {
            folder = folder.Parent!;
        }

        return folder.FullName;
    }

    // …/bin/Debug/net10.0: the program that the tests run is the one to pack.
    private static string Configuration() => new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;

    private static string Run(string folder, string program, params string[] words)
    {
        var start = new ProcessStartInfo(program, words)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment =
            {
                // A clean path: what the program needs beside the runtime must be in the package.
                ["PATH"] = "/usr/bin:/bin",
                ["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1",
                ["DOTNET_NOLOGO"] = "1",
                ["MSBUILDDISABLENODEREUSE"] = "1",
                ["JOURNAL_CACHE"] = Path.Combine(folder, ".cache"),
            },
        };
        foreach (var name in start.Environment.Keys.Where(name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) && name != "MSBUILDDISABLENODEREUSE").ToList())
        {
            start.Environment.Remove(name);
        }

        using var process = Process.Start(start)!;
        var complaints = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', words)}\n{said}{complaints.Result}");
        return said;
    }
}
