using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Pictures;

namespace Journal.Site.Photos;

/// <summary>The pictures of one evening that no entry shows yet: those in the build's own folder, and those of another.</summary>
public sealed class EveningPictures
{
    private readonly PictureShelf shelf;
    private readonly List<TakenPicture> pictures;

    /// <summary>Looks for them; nothing is copied yet.</summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="journal">The journal.</param>
    /// <param name="build">The build that the evening was for.</param>
    /// <param name="evening">The evening.</param>
    /// <param name="others">Another folder to look into; null for none.</param>
    public EveningPictures(string folder, MakerJournal journal, Build build, DateOnly evening, string? others = null)
    {
        (Build, Evening) = (build, evening);
        shelf = new PictureShelf(folder, journal);
        var clock = BenchClock.Of(journal);
        var there = others is null ? [] : Directory.EnumerateFiles(others).Where(path => PictureShelf.IsPicture(path) && BehindLinks.HasContents(path));
        pictures =
        [
            .. shelf.Unlisted(build).Concat(there.Where(path => !shelf.Shows(path)))
                .Select(path => PictureTimes.Of(path, clock))
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
