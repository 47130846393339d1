using System.Diagnostics;
using System.Xml.Linq;
using Journal.Cli.Tests;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Feeds;

// RFC 4287, its schema in appendix B, held against by `jing` (Debian package jing; tests/run.sh installs it).
[Collection(DemoCollection.Name)]
public class AtomTests(DemoSite demo)
{
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    [Fact]
    public void Feed_OfTheDemo_IsValid()
    {
        Assert.Empty(Faults(demo.Site.PathOf("feed.xml")));
        Assert.Empty(Faults(demo.WithoutAddress.PathOf("feed.xml")));
    }

    [Fact]
    public void Feed_OfAJournalWithoutEntries_IsValid()
    {
        using var journal = JournalOnDisk.Empty();

        Assert.Empty(Faults(journal.Publish().PathOf("feed.xml")));
    }

    [Fact]
    public void Feed_WithFaults_IsNot()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var text = site.Text("feed.xml");

        foreach (var (from, to) in new[] { ("<updated>20", "<updated>yesterday 20"), ("<id>", "<ident>"), (" href=", " ref=") })
        {
            File.WriteAllText(site.PathOf("feed.xml"), text.Replace(from, to, StringComparison.Ordinal).Replace("</id>", to == "<ident>" ? "</ident>" : "</id>", StringComparison.Ordinal));
            Assert.NotEmpty(Faults(site.PathOf("feed.xml")));
        }
    }

    // The three rules of the schema that RELAX NG cannot say, and sections 4.1.1, 4.2.6 and 4.2.7 on ids and links.
    [Fact]
    public void Feed_AuthorsIdsAndLinks_KeepTheRulesBesideTheSchema()
    {
        foreach (var site in new[] { demo.Site, demo.WithoutAddress })
        {
            var feed = XDocument.Load(site.PathOf("feed.xml")).Root!;
            var entries = feed.Elements(Atom + "entry").ToList();

            Assert.NotNull(feed.Element(Atom + "author")?.Element(Atom + "name"));
            Assert.NotEmpty(entries);
            Assert.All(entries, entry => Assert.NotNull(entry.Element(Atom + "content")));
            var ids = feed.Descendants(Atom + "id").Select(id => id.Value).ToList();
            Assert.Equal(ids.Count, ids.Distinct().Count());
            Assert.All(ids, id => Assert.Matches("^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$", id));
            Assert.All(entries, entry => Assert.Single(entry.Elements(Atom + "link"), link => link.Attribute("rel")?.Value == "alternate"));
            Assert.Equal(entries.Max(entry => entry.Element(Atom + "updated")!.Value), feed.Element(Atom + "updated")!.Value);
        }
    }

    [Fact]
    public void Feed_Links_LeadToPagesOfTheSite()
    {
        foreach (var (site, home) in new[] { (demo.Site, "https://example.org/bench/"), (demo.WithoutAddress, "") })
        {
            var links = XDocument.Load(site.PathOf("feed.xml")).Descendants(Atom + "entry").Elements(Atom + "link").Select(link => link.Attribute("href")!.Value).ToList();

            Assert.All(links, link => Assert.StartsWith(home, link, StringComparison.Ordinal));
            Assert.All(links, link => Assert.True(site.Has(link[home.Length..]), link));
        }
    }

    [Fact]
    public void Feed_Ids_StayWhenTitleAndAddressChange()
    {
        static IEnumerable<string> Ids(SiteOnDisk site) => XDocument.Load(site.PathOf("feed.xml")).Descendants(Atom + "id").Select(id => id.Value);

        Assert.Equal(Ids(demo.Site), Ids(demo.WithoutAddress));
    }

    private static string Faults(string feed)
    {
        using var jing = Process.Start(new ProcessStartInfo("jing", ["-c", Repository.Data("atom.rnc"), feed]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var (faults, _) = (jing.StandardOutput.ReadToEnd(), jing.StandardError.ReadToEnd());
        jing.WaitForExit();
        Assert.Equal(jing.ExitCode == 0, faults.Length == 0);
        return faults;
    }
}
