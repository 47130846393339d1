namespace Journal.Cli.Tests.Publishing;

/// <summary>The site of a larger journal as it is at first, published once for all tests that begin with one.</summary>
#pragma warning disable CA1001 // Disposed by DisposeAsync, as the test runner wants it.
public sealed class BaseSite : IAsyncLifetime
#pragma warning restore CA1001
{
    internal const int Entries = 30;
    private readonly LargerJournal journal = new(Entries);

    /// <inheritdoc/>
    public async Task InitializeAsync() => Assert.Equal(0, (await journal.Publish()).Status);

    /// <summary>Puts a copy of it where a site shall stand, with the times of its files.</summary>
    public void CopyTo(string site)
    {
        foreach (var file in Directory.EnumerateFiles(journal.Site, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(site, Path.GetRelativePath(journal.Site, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    /// <inheritdoc/>
    public Task DisposeAsync()
    {
        journal.Dispose();
        return Task.CompletedTask;
    }
}
