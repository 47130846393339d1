using Journal.Bench.Common;
using Journal.Bench.Slates;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Pictures;
using Journal.Site.Photos;

namespace Journal.Bench.Tonight;

/// <summary>A picture is kept in its build's folder, under a name of ours.</summary>
/// <param name="Id">The id of the deed.</param>
/// <param name="At">When it was sent off; the time of a picture that does not say its own.</param>
/// <param name="Bytes">The picture, looked at already.</param>
/// <param name="Ending">The ending of its name.</param>
internal sealed record PictureTaken(string Id, DateTimeOffset At, byte[] Bytes, string Ending) : Deed(Id, At)
{
    /// <summary>What it shows; null where that is said later.</summary>
    public string? Caption { get; init; }

    /// <inheritdoc/>
    public override string Do(Hands hands)
    {
        var build = new BenchNow(hands.Journal, hands.Slate, hands.Now).Build ?? throw new RefusedException("There is no build to put the picture in. Add one with `journal add build`.");
        var file = Put(hands, build);
        var said = PictureJot.Of(file, Caption);
        return new Jotted(Id, At, said.Text) { Kind = said.Kind, Keys = PictureJot.Filled(said), Build = build.Id.Value }.Do(hands);
    }

    // Killed in between, the picture is there and the slate knows nothing of it; sent again, it is found by its contents.
    private string Put(Hands hands, Build build)
    {
        var incoming = Path.Combine(hands.Folder, SlateFile.Folder, $"incoming{Ending}");
        File.WriteAllBytes(incoming, Bytes);
        File.SetLastWriteTimeUtc(incoming, At.UtcDateTime);
        try
        {
            var shelf = new PictureShelf(hands.Folder, hands.Journal);
            var taken = PictureTimes.Of(incoming, hands.Clock);
            var name = shelf.NameFor(taken, build);
            shelf.Copy(taken, build, name);
            return name;
        }
        finally
        {
            File.Delete(incoming);
        }
    }
}

/// <summary>A picture as a remark.</summary>
internal static class PictureJot
{
    /// <summary>A picture and what it shows.</summary>
    public static Said Of(string file, string? caption) =>
        new(JotKind.Photo, caption is null ? $"Picture {Path.GetFileName(file)}" : $"Picture: {caption}", ("file", file), ("caption", caption));

    /// <summary>What was said, as a remark keeps it.</summary>
    public static Dictionary<string, string> Filled(Said said) => said.Keys.Where(pair => pair.Value is not null).ToDictionary(pair => pair.Key, pair => pair.Value!, StringComparer.Ordinal);

    /// <summary>Puts the file of a picture that was taken back out of the way; one that an entry shows stays.</summary>
    public static void PutAside(Jot jot, Hands hands)
    {
        if (jot is not { Kind: JotKind.Photo, Build: { } id } || jot["file"] is not { } file || hands.Journal.Builds.FirstOrDefault(build => build.Id.Value == id) is not { } build)
        {
            return;
        }

        var path = Path.Combine(hands.Folder, build.Folder.Replace('/', Path.DirectorySeparatorChar), file.Replace('/', Path.DirectorySeparatorChar));
        if (!File.Exists(path) || hands.Journal.Entries.SelectMany(entry => entry.Photos).Any(photo => photo.File == $"{build.Folder}/{file}"))
        {
            return;
        }

        var aside = Path.Combine(hands.Folder, SlateFile.Folder, "taken-back");
        SafeFile.MakeFolder(Path.GetFullPath(aside));
        File.Move(path, Path.Combine(aside, Path.GetFileName(path)), overwrite: true);
    }
}
