using Journal.Site.Photos;

namespace Journal.Site.Tests.Output;

public sealed class HeldFolderTests : IDisposable
{
    private readonly string cache = Directory.CreateTempSubdirectory("journal-held-").FullName;

    [Fact]
    public void Disposed_IsGoneWithAllThatIsInIt()
    {
        using (var held = HeldFolder.Make(cache))
        {
            Directory.CreateDirectory(Path.Combine(held.Folder, "inner"));
            File.WriteAllText(Path.Combine(held.Folder, "inner", "file"), "text");
        }

        Assert.Empty(There());
    }

    [Fact]
    public void AnothersThatIsHeld_Stays_AndOneThatNobodyHolds_Goes()
    {
        using var other = HeldFolder.Make(cache);
        var left = Left("left");
        File.WriteAllText(Path.Combine(left, ".held"), "");

        using var mine = HeldFolder.Make(cache);

        Assert.Equal(new[] { other.Folder, mine.Folder }.Order(StringComparer.Ordinal), There());
    }

    // Its maker may be about to hold it.
    [Fact]
    public void OneWithoutALock_StaysWhileItIsYoung()
    {
        var (young, old) = (Left("young"), Left("old"));
        Directory.SetLastWriteTimeUtc(old, DateTime.UtcNow.AddHours(-2));

        using var mine = HeldFolder.Make(cache);

        Assert.Contains(young, There());
        Assert.DoesNotContain(old, There());
    }

    [Fact]
    public void LinkAmongThem_IsNotFollowed()
    {
        var precious = Directory.CreateDirectory(Path.Combine(cache, "precious")).FullName;
        File.WriteAllText(Path.Combine(precious, ".held"), "");
        Directory.CreateDirectory(Path.Combine(cache, "at-work"));
        Directory.CreateSymbolicLink(Path.Combine(cache, "at-work", "link"), precious);

        using var mine = HeldFolder.Make(cache);

        Assert.True(File.Exists(Path.Combine(precious, ".held")));
    }

    public void Dispose() => Directory.Delete(cache, recursive: true);

    private string Left(string name) => Directory.CreateDirectory(Path.Combine(cache, "at-work", name)).FullName;

    private IEnumerable<string> There() => Directory.EnumerateDirectories(Path.Combine(cache, "at-work")).Order(StringComparer.Ordinal);
}
