using Journal.Cli.Tests;
using Journal.Core.Model;

namespace Journal.Site.Tests.Publishing;

/// <summary>The demonstration journal, published once for all tests that read its pages: with its address and without.</summary>
public sealed class DemoSite : IDisposable
{
    private readonly JournalOnDisk journal = Journals.Demo();
    private readonly JournalOnDisk homeless = Journals.Demo();

    public DemoSite()
    {
        Site = journal.Publish();
        var head = Path.Combine(homeless.Folder, "journal.yaml");
        File.WriteAllLines(head, File.ReadAllLines(head).Where(line => !line.StartsWith("address:", StringComparison.Ordinal)));
        WithoutAddress = homeless.Publish();
        Model = journal.Model();
    }

    internal JournalOnDisk OnDisk => journal;

    internal MakerJournal Model { get; }

    internal SiteOnDisk Site { get; }

    internal SiteOnDisk WithoutAddress { get; }

    public void Dispose()
    {
        journal.Dispose();
        homeless.Dispose();
    }
}

/// <summary>Classes of this collection share one published demo.</summary>
[CollectionDefinition(Name)]
#pragma warning disable CA1711 // xunit calls it a collection; so do we.
public sealed class DemoCollection : ICollectionFixture<DemoSite>
#pragma warning restore CA1711
{
    public const string Name = "demo";
}
