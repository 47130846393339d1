using Journal.Core.Model;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Pictures;
using Journal.Site.Photos;

namespace Journal.Cli.Writing;

/// <summary>The pictures of one evening that no entry shows yet: those in the build's own folder, and those of another.</summary>
internal sealed class EveningPictures
{
    private readonly PictureShelf shelf;
    private readonly List<TakenPicture> pictures;

    /// <summary>Looks for them; nothing is copied yet.</summary>
    /// <param name="open">The journal.</param>
    /// <param name="build">The build that the evening was for.</param>
    /// <param name="evening">The evening.</param>
    /// <param name="folder">Another folder to look into; null for none.</param>
    public EveningPictures(OpenJournal open, Build build, DateOnly evening, string? folder)
    {
        (Build, Evening) = (build, evening);
        shelf = new PictureShelf(open.Folder, open.Journal);
        var others = folder is null ? [] : Directory.EnumerateFiles(folder).Where(path => PictureShelf.IsPicture(path) && BehindLinks.HasContents(path));
        pictures =
        [
            .. shelf.Unlisted(build).Concat(others.Where(path => !shelf.Shows(path)))
                .Select(path => PictureTimes.Of(path, open.Clock))
                .Where(picture => picture.Evening == evening)
                .DistinctBy(picture => shelf.Digest(picture.Path))
                .OrderBy(picture => picture.Taken)
                .ThenBy(picture => picture.Path, StringComparer.Ordinal),
        ];
        Names = [.. pictures.Select(picture => shelf.NameFor(picture, build))];
    }

    /// <summary>The build that the evening was for.</summary>
    public Build Build { get; }

    /// <summary>The evening.</summary>
    public DateOnly Evening { get; }

    /// <summary>Their names in the build's folder, in the order they were taken.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>The time from the first to the last; null with fewer than two.</summary>
    public Minutes? Span => pictures.Count < 2 ? null : new Minutes((int)(pictures[^1].Taken - pictures[0].Taken).TotalMinutes);

    /// <summary>Copies those that are not in the build's folder yet.</summary>
    public void CopyIn()
    {
        foreach (var (picture, name) in pictures.Zip(Names))
        {
            shelf.Copy(picture, Build, name);
        }
    }
}
