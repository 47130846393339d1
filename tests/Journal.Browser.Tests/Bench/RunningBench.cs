using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Journal.Core.Checking;
using Journal.Core.Writing.Bench;

namespace Journal.Browser.Tests.Bench;

/// <summary>The built program as a maker runs it, with a copy of the demonstration's texts, on a port that stays when it is started anew.</summary>
internal sealed class RunningBench : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("journal-bench-").FullName;
    private readonly int port = FreePort();
    private readonly List<string> said = [];
    private Process? program;

    public RunningBench()
    {
        CopyTexts(Path.Combine(DemoSite.Root, "journal"));
        Start();
    }

    /// <summary>The journal's folder.</summary>
    public string Journal => Path.Combine(place, "journal");

    /// <summary>The address for a browser on this machine.</summary>
    public Uri Desk { get; private set; } = null!;

    /// <summary>The address for phones.</summary>
    public Uri Phones => new(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}/"));

    /// <summary>What is on the slate.</summary>
    public Slate Slate => SlateFile.Peek(Journal);

    /// <summary>The six digits that the terminal showed last.</summary>
    public string Code
    {
        get
        {
            lock (said)
            {
                return said.Last(line => line.StartsWith("To pair a phone: ", StringComparison.Ordinal))[17..24].Replace(" ", "", StringComparison.Ordinal);
            }
        }
    }

    /// <summary>The problems of the journal, without those about pictures that have no words yet.</summary>
    public IReadOnlyList<string> Problems => [.. JournalReader.Read(Journal, DateOnly.MaxValue).Problems.Where(problem => problem.Kind.Code != "picture-without-words").Select(problem => $"{problem.Place}: {problem.Message}")];

    /// <summary>Writes a file into the journal, as an editor would.</summary>
    public void Write(string file, string text) => Write(file, System.Text.Encoding.UTF8.GetBytes(text));

    /// <summary>The same with bytes.</summary>
    public void Write(string file, byte[] bytes)
    {
        var path = Path.Combine(Journal, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
    }

    /// <summary>Starts it.</summary>
    public void Start()
    {
        program = Process.Start(With("bench", "--phone", "127.0.0.1", "--port", port.ToString(CultureInfo.InvariantCulture), "--in", Journal))!;
        Desk = new Uri(program.StandardOutput.ReadLine() ?? throw new InvalidOperationException(program.StandardError.ReadToEnd()));
        program.ErrorDataReceived += (_, line) =>
        {
            lock (said)
            {
                said.Add(line.Data ?? "");
            }
        };
        program.BeginErrorReadLine();
        SpinWait.SpinUntil(() => { lock (said) { return said.Exists(line => line.StartsWith("To pair", StringComparison.Ordinal)); } }, TimeSpan.FromSeconds(20));
    }

    /// <summary>Kills it, as a power cut would.</summary>
    public void Kill()
    {
        program?.Kill(entireProcessTree: true);
        program?.WaitForExit();
        program?.Dispose();
        program = null;
    }

    /// <summary>What another command answers.</summary>
    public (int Status, string Out, string Error) Ask(params string[] words)
    {
        using var asked = Process.Start(With([.. words, "--in", Journal]))!;
        asked.StandardInput.Close();
        var error = asked.StandardError.ReadToEndAsync();
        var answer = asked.StandardOutput.ReadToEnd();
        asked.WaitForExit();
        return (asked.ExitCode, answer, error.Result);
    }

    public void Dispose()
    {
        Kill();
        Directory.Delete(place, recursive: true);
    }

    private static ProcessStartInfo With(params string[] words) => new("dotnet", [Path.Combine(AppContext.BaseDirectory, "journal.dll"), .. words])
    {
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    };

    private void CopyTexts(string from)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".md" or ".yaml" && !file.Contains("scenes", StringComparison.Ordinal)))
        {
            var to = Path.Combine(Journal, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
