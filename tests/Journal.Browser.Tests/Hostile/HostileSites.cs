namespace Journal.Browser.Tests.Hostile;

/// <summary>Every hostile text in journals small enough for their feeds to hold all entries, published once and served.</summary>
public sealed class HostileSites : IDisposable
{
    internal const string AsPublished = "published";
    internal const string WithoutPolicy = "open";

    private readonly string place = Directory.CreateTempSubdirectory("journal-hostile-").FullName;
    private readonly LoopbackServer published;
    private readonly LoopbackServer open;

    public HostileSites()
    {
        Journals = [.. Vectors.Groups().Chunk(HostileJournal.MostGroups).Select((groups, i) => new HostileJournal(place, $"j{i}", groups))];
        published = new LoopbackServer(Path.Combine(place, AsPublished), "/");
        open = new LoopbackServer(Path.Combine(place, WithoutPolicy), "/");
    }

    internal IReadOnlyList<HostileJournal> Journals { get; }

    /// <summary>The sites as published.</summary>
    public Uri Published => published.Address;

    /// <summary>The same without a content policy.</summary>
    public Uri Open => open.Address;

    public void Dispose()
    {
        published.Dispose();
        open.Dispose();
        Directory.Delete(place, recursive: true);
    }
}
