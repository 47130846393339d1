namespace Journal.Cli.Tests;

public class MapTests
{
    public static TheoryData<string> Folders => [.. Directory.EnumerateDirectories(Path.Combine(Demo.Root, "src"))
        .SelectMany(project => Directory.EnumerateDirectories(project).Where(folder => Path.GetFileName(folder) is not ("bin" or "obj")).DefaultIfEmpty(project))
        .Select(folder => Path.GetRelativePath(Demo.Root, folder).Replace('\\', '/'))];

    [Theory]
    [MemberData(nameof(Folders))]
    public void Guide_NamesEachFolder(string folder) =>
        Assert.Contains($"| `{folder}` |", File.ReadAllText(Path.Combine(Demo.Root, "DEVELOPERS.md")), StringComparison.Ordinal);
}
