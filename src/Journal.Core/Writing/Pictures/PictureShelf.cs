using System.Globalization;
using System.Security.Cryptography;
using Journal.Core.Model;
using Journal.Core.Writing.Files;

namespace Journal.Core.Writing.Pictures;

/// <summary>The pictures that a journal holds, by content, so that each is there once.</summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="journal">What stands in it.</param>
public sealed class PictureShelf(string folder, MakerJournal journal)
{
    private readonly HashSet<string> listed = [.. journal.Entries.SelectMany(entry => entry.Photos).Select(photo => photo.File)];
    private readonly Dictionary<string, string> digests = [];
    private readonly HashSet<string> promised = [];
    private readonly Lazy<ILookup<long, string>> bySize = new(() => journal.Builds
        .SelectMany(build => Pictures(folder, build.Folder))
        .Concat(journal.Entries.SelectMany(entry => entry.Photos).Select(photo => photo.File))
        .Distinct()
        .Where(file => File.Exists(On(folder, file)))
        .ToLookup(file => new FileInfo(On(folder, file)).Length));

    /// <summary>The endings of pictures that can be shown.</summary>
    public static IReadOnlyList<string> Endings { get; } = [".jpg", ".jpeg", ".png", ".webp", ".gif", ".bmp", ".tif", ".tiff"];

    /// <summary>Whether a file's name ends like that of a picture that can be shown.</summary>
    public static bool IsPicture(string path) => Endings.Contains(Path.GetExtension(path).ToLowerInvariant());

    /// <summary>The pictures of a build's <c>photos</c> folder that no entry lists, on disk.</summary>
    public IReadOnlyList<string> Unlisted(Build build) =>
        [.. Pictures(folder, $"{build.Folder}/photos").Where(file => !listed.Contains(file)).Order(StringComparer.Ordinal).Select(file => On(folder, file))];

    /// <summary>Whether an entry shows a picture of this content.</summary>
    public bool Shows(string path) => Twins(path).Any(listed.Contains);

    /// <summary>
    /// The name that a picture gets in a build's folder: that of its twin where it lies there unlisted, else a new one
    /// after the time it was taken, such as <c>photos/2025-10-03-2114.jpg</c>.
    /// </summary>
    public string NameFor(TakenPicture picture, Build build)
    {
        var start = $"{build.Folder}/";
        var twin = Twins(picture.Path).FirstOrDefault(file => file.StartsWith(start, StringComparison.Ordinal) && !listed.Contains(file));
        var name = twin?[start.Length..] ?? NewName(picture, build);
        promised.Add(start + name);
        return name;
    }

    /// <summary>Copies a picture under its name, unless it is there already.</summary>
    public void Copy(TakenPicture picture, Build build, string name)
    {
        var target = On(folder, $"{build.Folder}/{name}");
        if (File.Exists(target))
        {
            return;
        }

        SafeFile.TryCreate(target, File.ReadAllBytes(picture.Path));
        File.SetLastWriteTimeUtc(target, File.GetLastWriteTimeUtc(picture.Path));
    }

    /// <summary>The digest of a picture's content.</summary>
    public string Digest(string path)
    {
        if (!digests.TryGetValue(path, out var digest))
        {
            using var stream = File.OpenRead(path);
            digests[path] = digest = Convert.ToHexStringLower(SHA256.HashData(stream));
        }

        return digest;
    }

    private IEnumerable<string> Twins(string path) =>
        bySize.Value[new FileInfo(path).Length].Where(file => Digest(On(folder, file)) == Digest(path));

    private string NewName(TakenPicture picture, Build build)
    {
        var ending = Path.GetExtension(picture.Path).ToLowerInvariant() is ".jpeg" ? ".jpg" : Path.GetExtension(picture.Path).ToLowerInvariant();
        var stem = picture.Taken.ToString("yyyy-MM-dd-HHmm", CultureInfo.InvariantCulture);
        return Enumerable.Range(1, int.MaxValue)
            .Select(n => n == 1 ? $"photos/{stem}{ending}" : string.Create(CultureInfo.InvariantCulture, $"photos/{stem}-{n}{ending}"))
            .First(name => !promised.Contains($"{build.Folder}/{name}") && !Path.Exists(On(folder, $"{build.Folder}/{name}")));
    }

    private static IEnumerable<string> Pictures(string folder, string inside)
    {
        var at = On(folder, inside);
        return Directory.Exists(at)
            ? BehindLinks.FilesBelow(at)
                .Where(path => IsPicture(path) && !Path.GetFileName(path).StartsWith('.'))
                .Select(path => Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/'))
            : [];
    }

    private static string On(string folder, string file) => Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar));
}
