using System.Globalization;
using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Site.Pages;
using Journal.Site.Publishing;

namespace Journal.Site.Tests;

/// <summary>A real journal folder for one test, and the site published from it; both are gone after it.</summary>
internal sealed class PublishedJournal : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("journal-site-").FullName;

    public PublishedJournal()
    {
        Directory.CreateDirectory(Folder);
        With("journal.yaml", "title: The Lean-to\nmaker: Wren\n");
    }

    /// <summary>The journal.</summary>
    public string Folder => Path.Combine(place, "journal");

    /// <summary>The site.</summary>
    public string Site => Path.Combine(place, "site");

    /// <summary>A folder for a maker's own look.</summary>
    public string Template => Path.Combine(place, "look");

    public PublishedJournal With(string file, string text)
    {
        Write(Path.Combine(Folder, file), text);
        return this;
    }

    public PublishedJournal WithTemplate(string file, string text)
    {
        Write(Path.Combine(Template, file), text);
        return this;
    }

    /// <summary>The journal with its figures and without its pictures.</summary>
    public SiteFigures SiteFigures(string today = "2026-11-25") => new(Read(Day(today)), Day(today), _ => null);

    /// <summary>Publishes as of a day; the journal must have no errors.</summary>
    public Published Publish(string today = "2026-11-25")
    {
        var day = Day(today);
        return SitePublisher.Publish(new PublishOrder(Folder, Site, day, Directory.Exists(Template) ? Template : null) { Cache = Path.Combine(place, "cache") }).Published!;
    }

    /// <summary>A file of the site as text.</summary>
    public string Text(string address) => File.ReadAllText(Path.Combine(Site, address));

    /// <summary>Every text file of the site.</summary>
    public IEnumerable<(string Address, string Text)> Texts() => Directory.EnumerateFiles(Site, "*", SearchOption.AllDirectories)
        .Where(path => Path.GetExtension(path) is ".html" or ".js" or ".xml" or ".json" or ".txt")
        .Select(path => (Path.GetRelativePath(Site, path), File.ReadAllText(path)));

    public void Dispose() => Directory.Delete(place, recursive: true);

    private static DateOnly Day(string iso) => DateOnly.ParseExact(iso, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    private MakerJournal Read(DateOnly day)
    {
        var read = JournalReader.Read(Folder, day);
        Assert.DoesNotContain(read.Problems, problem => problem.Severity == Severity.Error);
        return read.Journal!;
    }

    private static void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}
