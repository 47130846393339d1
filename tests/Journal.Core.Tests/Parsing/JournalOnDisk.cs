using System.Globalization;
using System.Text;
using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Tests.Parsing;

/// <summary>A journal in a temporary folder of its own, removed when done with.</summary>
internal sealed class JournalOnDisk : IDisposable
{
    public const string Build = "title: Bench drill\nparts:\n  - {id: head}\n  - {id: quill}\n  - {id: gib-screw, quantity: 6}\n";

    public static readonly DateOnly Today = new(2026, 1, 31);

    private static readonly byte[] SmallestPicture = Convert.FromBase64String("R0lGODlhAQABAAAAACwAAAAAAQABAAACAkQBADs=");

    public JournalOnDisk()
    {
        Root = Directory.CreateTempSubdirectory("journal-").FullName;
        Write("journal.yaml", "title: The Lean-to\n");
    }

    public string Root { get; }

    /// <summary>A journal with the build <c>drill</c>, whose parts are head, quill and six gib-screws.</summary>
    public static JournalOnDisk WithDrill()
    {
        var journal = new JournalOnDisk();
        journal.Write("drill/build.yaml", Build);
        return journal;
    }

    /// <summary>What reading gives for one entry of the drill, of 2025-10-03, with these lines as front matter.</summary>
    public static (Entry? Entry, IReadOnlyList<Problem> Problems) ReadEntry(string frontMatter, string body = "")
    {
        using var journal = WithDrill();
        journal.Write("drill/2025-10-03.md", $"---\n{frontMatter.TrimEnd('\n')}\n---\n{body}");
        var reading = journal.Read();
        return (reading.Journal?.Builds.SingleOrDefault()?.Entries.SingleOrDefault(), reading.Problems);
    }

    public JournalOnDisk Write(string file, string text) => Write(file, Encoding.UTF8.GetBytes(text));

    public JournalOnDisk Write(string file, byte[] bytes)
    {
        var path = PathOf(file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
        return this;
    }

    /// <summary>An entry of the drill with a job that nothing is wrong with.</summary>
    public JournalOnDisk WriteEntry(string name, string more = "", string body = "") =>
        Write($"drill/{name}.md", $"---\npart: head\noperation: boring\nhours: 1h\n{(more.Length == 0 ? "" : more.TrimEnd('\n') + "\n")}---\n{body}");

    public JournalOnDisk WritePicture(string file) => Write(file, SmallestPicture);

    public string PathOf(string file) => Path.Combine(Root, file);

    public JournalReading Read() => JournalReader.Read(Root, Today);

    /// <summary>The problems, one to a line: <c>file:line:column code</c>.</summary>
    public string[] Problems() => Lines(Read().Problems);

    public static string[] Lines(IEnumerable<Problem> problems) =>
        [.. problems.Select(problem => string.Create(CultureInfo.InvariantCulture, $"{problem.Place} {problem.Kind.Code}"))];

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
