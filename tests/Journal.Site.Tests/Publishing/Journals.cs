using Journal.Cli.Tests;
using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Site.Publishing;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Journal.Site.Tests.Publishing;

/// <summary>What tests do with a journal on disk.</summary>
internal static class Journals
{
    /// <summary>An evening after the last entry of the demo.</summary>
    public static readonly DateOnly Today = new(2026, 12, 1);

    /// <summary>A copy of the demonstration journal.</summary>
    public static JournalOnDisk Demo()
    {
        var (journal, demo) = (JournalOnDisk.Bare(), Path.Combine(Repository.Root, "journal"));
        foreach (var path in Directory.EnumerateFiles(demo, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(journal.Folder, Path.GetRelativePath(demo, path));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(path, copy);
        }

        return journal;
    }

    /// <summary>The demonstration with a picture of a few pixels in place of each of its own, which take long to make.</summary>
    public static JournalOnDisk DemoWithPlainPictures()
    {
        var (journal, demo) = (JournalOnDisk.Bare(), Path.Combine(Repository.Root, "journal"));
        foreach (var path in Directory.EnumerateFiles(demo, "*", SearchOption.AllDirectories))
        {
            var file = Path.GetRelativePath(demo, path);
            if (Path.GetExtension(file) is ".md" or ".yaml")
            {
                journal.With(file, File.ReadAllText(path));
            }
            else if (Path.GetExtension(file) is ".jpg" or ".png" or ".webp" or ".gif")
            {
                journal.WithPicture(file, (byte)file.Length);
            }
        }

        return journal;
    }

    public static JournalReading Read(this JournalOnDisk journal, DateOnly? today = null) => JournalReader.Read(journal.Folder, today ?? Today);

    public static MakerJournal Model(this JournalOnDisk journal, DateOnly? today = null)
    {
        var reading = journal.Read(today);
        AssertNoErrors(reading.Problems);
        return reading.Journal!;
    }

    private static void AssertNoErrors(IReadOnlyList<Problem> problems) =>
        Assert.Empty(problems.Where(problem => problem.Severity == Severity.Error).Select(problem => $"{problem.Place}: {problem.Message}"));

    /// <summary>Publishes into a folder of the journal.</summary>
    public static Published PublishTo(this JournalOnDisk journal, string to, DateOnly? today = null, string? template = null)
    {
        var outcome = SitePublisher.Publish(new PublishOrder(journal.Folder, Path.Combine(journal.Folder, to), today ?? Today, template));
        AssertNoErrors(outcome.Problems);
        return outcome.Published!;
    }

    /// <summary>Publishes into the folder <c>site</c> of the journal and shows what came of it.</summary>
    public static SiteOnDisk Publish(this JournalOnDisk journal, DateOnly? today = null, string? template = null)
    {
        journal.PublishTo("site", today, template);
        return journal.Site();
    }

    /// <summary>What lies in the folder <c>site</c> of the journal.</summary>
    public static SiteOnDisk Site(this JournalOnDisk journal) => new(Path.Combine(journal.Folder, "site"));

    public static string PathOf(this JournalOnDisk journal, string file) => Path.Combine(journal.Folder, file);

    /// <summary>The journal with a small picture, of a grey of its own.</summary>
    public static JournalOnDisk WithPicture(this JournalOnDisk journal, string file, byte grey = 120)
    {
        using var picture = new Image<L8>(64, 48, new L8(grey));
        Directory.CreateDirectory(Path.GetDirectoryName(journal.PathOf(file))!);
        picture.Save(journal.PathOf(file));
        return journal;
    }

    /// <summary>The journal with an entry of one job.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="file">Its file.</param>
    /// <param name="keys">More keys, a line each.</param>
    /// <param name="text">Its text.</param>
    public static JournalOnDisk WithEntry(this JournalOnDisk journal, string file, string keys = "", string text = "A plain evening.") =>
        journal.With(file, $"---\n{(keys.Contains("hours:", StringComparison.Ordinal) || keys.Contains("jobs:", StringComparison.Ordinal) ? "" : "part: whole\noperation: turning\nhours: 10m\n")}{keys.TrimEnd('\n')}\n---\n{text}\n");

    /// <summary>What the program answers on that evening.</summary>
    public static Answer AskToday(this JournalOnDisk journal, params string[] words) =>
        Answer.To(journal.Folder, terminal => terminal with { Today = Today }, words);
}
