using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Core.Reading.Shapes;

namespace Journal.Core.Reading.Files;

/// <summary>Finds the files of an entry's pictures: beside the entry, else in its build's folder; never outside the journal.</summary>
internal sealed class PhotoFiles(JournalFolder folder, FileScope scope)
{
    private static readonly string[] Read = [".jpg", ".jpeg", ".png", ".webp", ".gif", ".bmp", ".tif", ".tiff"];

    /// <summary>The pictures listed, then those that stand in the text alone, each once, with paths from the journal's folder.</summary>
    public IReadOnlyList<Photo> Find(IReadOnlyList<(Photo Photo, Place Place)> listed, IReadOnlyList<(Photo Photo, Place Place)> inText)
    {
        var found = new List<Photo>();
        foreach (var (photo, place) in listed.Concat(inText))
        {
            if (Locate(photo.File, place) is not { } file)
            {
                continue;
            }

            var earlier = found.FindIndex(one => one.File == file);
            if (earlier < 0)
            {
                found.Add(photo with { File = file });
                if (photo.Caption is null && photo.Alt is null)
                {
                    scope.Log.Add(ProblemTable.PictureWithoutWords, place, photo.File);
                }
            }
        }

        return found;
    }

    private string? Locate(string written, Place place)
    {
        var bases = Ancestors(scope.File);
        foreach (var start in bases)
        {
            var full = Path.GetFullPath(Path.Combine(folder.PathOf(start), written));
            if (!full.StartsWith(folder.Root + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            {
                scope.Log.Add(ProblemTable.PictureOutside, place, written);
                return null;
            }

            if (File.Exists(full))
            {
                return Accept(full, written, place);
            }
        }

        scope.Log.Add(ProblemTable.PictureMissing, place, written, "Copy it there, or take the line out.");
        return null;
    }

    private string? Accept(string full, string written, Place place)
    {
        if (!Read.Contains(Path.GetExtension(full).ToLowerInvariant()))
        {
            scope.Log.Add(ProblemTable.PictureFormat, place, written);
            return null;
        }

        if (new FileInfo(full).ResolveLinkTarget(returnFinalTarget: true) is { } target && !target.FullName.StartsWith(folder.Root + Path.DirectorySeparatorChar, StringComparison.Ordinal))
        {
            scope.Log.Add(ProblemTable.PictureOutside, place, written);
            return null;
        }

        return Path.GetRelativePath(folder.Root, full).Replace(Path.DirectorySeparatorChar, '/');
    }

    // The entry's own folder first, then those above it down to the first below the journal.
    private static IEnumerable<string> Ancestors(string file)
    {
        for (var slash = file.LastIndexOf('/'); slash > 0; slash = file.LastIndexOf('/', slash - 1))
        {
            yield return file[..slash];
        }
    }
}
