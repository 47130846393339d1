using System.Diagnostics;
using System.Text.Json;

namespace Journal.Browser.Tests;

/// <summary>The Nu HTML checker has nothing to say about any page.</summary>
[Collection(SharedDemo.Name)]
public sealed class HtmlCheckerTests(DemoSite site)
{
    private static readonly string Checker = Path.Combine(DemoSite.Root, "tests/.tools/node_modules/vnu-jar/build/dist/vnu.jar");

    [Fact]
    public async Task Pages_All_HaveNoErrorAndNoWarning()
    {
        Assert.True(File.Exists(Checker), $"{Checker} is missing; tests/run.sh installs it.");

        // By their addresses: a page from a file has no origin, and then 'self' would allow nothing.
        var start = new ProcessStartInfo("java") { RedirectStandardOutput = true };
        string[] options = ["-Xss4m", "-Dnu.validator.servlet.allow-forbidden-hosts=true", "-jar", Checker, "--stdout", "--format", "json", "--exit-zero-always"];
        foreach (var argument in options.Concat(site.Pages.Select(page => new Uri(site.Http, page).AbsoluteUri)))
        {
            start.ArgumentList.Add(argument);
        }

        using var checker = Process.Start(start)!;
        using var said = JsonDocument.Parse(await checker.StandardOutput.ReadToEndAsync());
        await checker.WaitForExitAsync();

        Assert.Equal(0, checker.ExitCode);
        var faults = said.RootElement.GetProperty("messages").EnumerateArray().Select(Words).ToList();
        Faults.None(faults);
    }

    [Fact]
    public async Task Checker_PageWithAFault_SaysSo()
    {
        Assert.True(File.Exists(Checker), $"{Checker} is missing; tests/run.sh installs it.");
        var path = Path.Combine(Directory.CreateTempSubdirectory("journal-fault-").FullName, "fault.html");
        await File.WriteAllTextAsync(path, "<!DOCTYPE html><title>Fault</title><p id=a><p id=a>");
        var start = new ProcessStartInfo("java", ["-jar", Checker, "--stdout", "--format", "json", "--exit-zero-always", path]) { RedirectStandardOutput = true };

        using var checker = Process.Start(start)!;
        using var said = JsonDocument.Parse(await checker.StandardOutput.ReadToEndAsync());
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);

        Assert.NotEqual(0, said.RootElement.GetProperty("messages").GetArrayLength());
    }

    private static string Words(JsonElement message) =>
        $"{Text("url", message)}:{(message.TryGetProperty("lastLine", out var line) ? line.GetInt32() : 0)} {Text("message", message)} {Text("extract", message)}".Replace("\n", " ", StringComparison.Ordinal);

    private static string Text(string name, JsonElement message) =>
        message.TryGetProperty(name, out var text) ? text.GetString() ?? "" : "";
}
