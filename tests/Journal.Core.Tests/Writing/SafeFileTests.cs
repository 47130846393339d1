using System.Runtime.Versioning;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Tests.Writing;

public sealed class SafeFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("journal-files-").FullName;

    [Fact]
    public void Replace_BehindLinks_IsTheFileThatTheyLeadTo()
    {
        var shared = PathOf("shared/tools.yaml");
        Directory.CreateDirectory(PathOf("shared"));
        Directory.CreateDirectory(PathOf("journal"));
        File.WriteAllText(shared, "old");
        File.CreateSymbolicLink(PathOf("journal/tools.yaml"), "../shared/link.yaml");
        File.CreateSymbolicLink(PathOf("shared/link.yaml"), "tools.yaml");

        SafeFile.Replace(PathOf("journal/tools.yaml"), "new");

        Assert.Equal("new", File.ReadAllText(shared));
        Assert.Equal("../shared/link.yaml", new FileInfo(PathOf("journal/tools.yaml")).LinkTarget);
        Assert.Equal(["link.yaml", "tools.yaml"], Directory.EnumerateFiles(PathOf("shared")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Replace_WriteProtected_IsRefusedAndTouchesNothing()
    {
        var path = PathOf("2025-10-03.md");
        File.WriteAllText(path, "old");
        new FileInfo(path).IsReadOnly = true;

        var refused = Assert.Throws<UnauthorizedAccessException>(() => SafeFile.Replace(path, "new"));

        Assert.Equal($"{path} is write-protected.", refused.Message);
        Assert.Equal("old", File.ReadAllText(path));
        new FileInfo(path).IsReadOnly = false;
    }

    [Theory]
    [UnsupportedOSPlatform("windows")]
    [InlineData(UnixFileMode.UserRead | UnixFileMode.UserWrite)]
    [InlineData(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite)]
    public void Replace_Contents_LeavesWhoMayReadThem(UnixFileMode mode)
    {
        var path = PathOf("tools.yaml");
        File.WriteAllText(path, "old");
        File.SetUnixFileMode(path, mode);

        SafeFile.Replace(path, "new");

        Assert.Equal(("new", mode), (File.ReadAllText(path), File.GetUnixFileMode(path)));
    }

    [Fact]
    public void TryReplace_SavedMeanwhile_TouchesNothing()
    {
        var path = PathOf("2025-10-03.md");
        File.WriteAllText(path, "what an editor saved");

        Assert.False(SafeFile.TryReplace(path, "what was read"u8, "what was read, and more"u8));
        Assert.Equal("what an editor saved", File.ReadAllText(path));
        Assert.Equal([path], Directory.EnumerateFiles(folder));

        Assert.True(SafeFile.TryReplace(path, "what an editor saved"u8, "what an editor saved, and more"u8));
        Assert.Equal("what an editor saved, and more", File.ReadAllText(path));
    }

    [Fact]
    public void Edit_SavedWhileItAdds_AddsToWhatWasSaved()
    {
        var path = PathOf("2025-10-03.md");
        File.WriteAllText(path, "old");
        var saves = 0;

        var edited = MakersFile.Edit(path, text =>
        {
            if (saves++ < 3)
            {
                File.WriteAllText(path, $"{text}, saved");
            }

            return Added.As($"{text}, added");
        });

        Assert.Equal("old, saved, saved, saved, added", File.ReadAllText(path));
        Assert.Equal(File.ReadAllText(path), edited!.Value.Text);
    }

    [Fact]
    public void Edit_SavedAgainAndAgain_GivesUpAndLeavesWhatWasSaved()
    {
        var path = PathOf("2025-10-03.md");
        File.WriteAllText(path, "old");

        Assert.Throws<IOException>(() => MakersFile.Edit(path, text =>
        {
            File.WriteAllText(path, $"{text}!");
            return Added.As($"{text}, added");
        }));

        Assert.StartsWith("old!!", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.DoesNotContain("added", File.ReadAllText(path), StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string PathOf(string name) => Path.Combine(folder, name);
}
