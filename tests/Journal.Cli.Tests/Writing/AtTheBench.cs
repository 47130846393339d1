using System.Globalization;
using Journal.Core.Checking;

namespace Journal.Cli.Tests.Writing;

/// <summary>A journal and a clock that a test turns.</summary>
internal sealed class AtTheBench : IDisposable
{
    private DateTimeOffset now = Answer.Evening;

    /// <summary>The small journal with its bench in a time zone.</summary>
    public AtTheBench(string zone = "Etc/UTC") => Disk = JournalOnDisk.Small().With("journal.yaml", $"title: The Lean-to\ntime-zone: {zone}\n");

    public JournalOnDisk Disk { get; }

    /// <summary>Sets the clock to an instant in Universal Time, such as <c>2025-10-03 19:10</c>.</summary>
    public AtTheBench At(string utc)
    {
        now = DateTimeOffset.Parse(utc + "Z", CultureInfo.InvariantCulture);
        return this;
    }

    /// <summary>Asks as a script.</summary>
    public Answer Ask(params string[] words) => Answer.To(Disk.Folder, terminal => terminal with { Now = now }, words);

    /// <summary>Asks on a terminal where someone gives answers, one to a line.</summary>
    public Answer AskAndAnswer(string[] answers, params string[] words) =>
        Answer.To(Disk.Folder, terminal => terminal with { Now = now, CanAsk = true, In = new StringReader(string.Concat(answers.Select(answer => answer + "\n"))) }, words);

    /// <summary>The text of a file of the journal.</summary>
    public string Text(string file) => File.ReadAllText(Path.Combine(Disk.Folder, file));

    /// <summary>The entries of the drill by name.</summary>
    public string[] Entries() => [.. Directory.GetFiles(Path.Combine(Disk.Folder, "drill"), "*.md").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    /// <summary>The problems of the journal, without those about pictures that have no words yet.</summary>
    public IEnumerable<string> Problems() =>
        JournalReader.Read(Disk.Folder, DateOnly.MaxValue).Problems.Where(problem => problem.Kind.Code != "picture-without-words").Select(problem => $"{problem.Place}: {problem.Message}");

    public void Dispose() => Disk.Dispose();
}
