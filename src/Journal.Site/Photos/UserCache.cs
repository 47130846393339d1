using System.Security.Cryptography;
using System.Text.Json;
using Journal.Core.Writing.Files;

namespace Journal.Site.Photos;

/// <summary>
/// Pictures made before, by what is in them and how they were made: an unchanged picture is never decoded again, even
/// when moved or renamed. It lies outside site and journal and may be deleted at any time.
/// </summary>
internal sealed class UserCache(string folder)
{
    private const string Account = "picture.json";

    /// <summary>The user's cache folder, or the one that the variable JOURNAL_CACHE names.</summary>
    public static UserCache OfUser()
    {
        var named = Environment.GetEnvironmentVariable("JOURNAL_CACHE");
        var home = Environment.GetEnvironmentVariable("XDG_CACHE_HOME") is { Length: > 0 } xdg ? xdg
            : OperatingSystem.IsWindows() ? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData)
            : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".cache");
        return new UserCache(string.IsNullOrEmpty(named) ? Path.Combine(home, "journal-pictures") : named);
    }

    /// <summary>The folder that the cache lies in.</summary>
    public string Folder { get; } = folder;

    /// <summary>A picture made before; null where there is none, or it is not whole.</summary>
    public MadePicture? Find(string content, PictureSettings settings)
    {
        var place = PlaceOf(content, settings);
        try
        {
            var account = Path.Combine(place, Account);
            var made = File.Exists(account) ? JsonSerializer.Deserialize(File.ReadAllBytes(account), PictureJson.Default.MadePicture) : null;
            return made is { Files.Count: > 0 } && made.Files.All(file => File.Exists(Path.Combine(place, file.Name))) ? made : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException)
        {
            return null;
        }
    }

    /// <summary>Where a file of a picture lies.</summary>
    public string PathOf(string content, PictureSettings settings, MadeFile file) => Path.Combine(PlaceOf(content, settings), file.Name);

    /// <summary>Whether a file of a picture is as it was made: a disk may damage it, or a power cut leave its name and not its bytes.</summary>
    public bool IsWhole(string content, PictureSettings settings, MadeFile file)
    {
        try
        {
            return Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(PathOf(content, settings, file)))) == file.Hash;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>
    /// Keeps a picture, whole or not at all; false where the cache cannot take it, and the next publish makes it again. What
    /// another program has kept meanwhile stays: it may be reading it.
    /// </summary>
    public bool Keep(string content, PictureSettings settings, MadePicture made, IEnumerable<(MadeFile File, byte[] Contents)> files)
    {
        var place = PlaceOf(content, settings);
        try
        {
            if (Find(content, settings) is { } other && other.Files.SequenceEqual(made.Files) && made.Files.All(file => IsWhole(content, settings, file)))
            {
                return true;
            }

            using var desk = HeldFolder.Make(Folder);
            var draft = Directory.CreateDirectory(Path.Combine(desk.Folder, content)).FullName;
            foreach (var (file, contents) in files)
            {
                DiskFile.CreateFlushed(Path.Combine(draft, file.Name), contents);
            }

            DiskFile.CreateFlushed(Path.Combine(draft, Account), JsonSerializer.SerializeToUtf8Bytes(made, PictureJson.Default.MadePicture));
            Directory.CreateDirectory(Path.GetDirectoryName(place)!);
            if (Directory.Exists(place))
            {
                Directory.Delete(place, recursive: true);
            }

            Directory.Move(draft, place);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false; // A cache that cannot be written costs time and nothing else.
        }
    }

    private string PlaceOf(string content, PictureSettings settings) => Path.Combine(Folder, settings.Key, content[..2], content);
}
