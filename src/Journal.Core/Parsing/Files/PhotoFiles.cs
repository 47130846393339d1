using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing.Files;

/// <summary>Finds the files of an entry's pictures: beside the entry, else in its build's folder; never outside the journal.</summary>
internal sealed class PhotoFiles(JournalFolder folder, FileScope scope)
{
    private const int MostLinks = 8;
    /// <summary>How the names of pictures that can be published end.</summary>
    public static readonly string[] Endings = [".jpg", ".jpeg", ".png", ".webp", ".gif", ".bmp", ".tif", ".tiff"];

    private readonly HashSet<string> missing = new(StringComparer.Ordinal);

    /// <summary>The pictures listed, then those that stand in the text alone, each once, with paths from the journal's folder; of those that cannot be had only what must stay hidden.</summary>
    public IReadOnlyList<Photo> Find(IReadOnlyList<(Photo Photo, Place Place)> listed, IReadOnlyList<(Photo Photo, Place Place)> inText)
    {
        var found = new List<(Photo Photo, Place Place, string Written)>();
        var (positions, unread) = (new Dictionary<string, int>(StringComparer.Ordinal), new List<Photo>());
        foreach (var (photo, place) in listed.Concat(inText))
        {
            if (Locate(photo.File, place) is not { } file)
            {
                // Its words in the text are not to be seen either.
                if (!photo.Publish.AllowsOn(scope.Today) && !photo.File.Contains('\0', StringComparison.Ordinal))
                {
                    unread.Add(photo with { File = Relative(Path.GetFullPath(Path.Combine(folder.PathOf(Ancestors(scope.File).First()), photo.File))) });
                }

                continue;
            }

            if (positions.TryAdd(file, found.Count))
            {
                found.Add((photo with { File = file }, place, photo.File));
            }
            else
            {
                var (first, firstPlace, written) = found[positions[file]];
                found[positions[file]] = (first with { Alt = first.Alt ?? photo.Alt }, firstPlace, written);
            }
        }

        foreach (var (_, place, written) in found.Where(one => one.Photo.Caption is null && one.Photo.Alt is null))
        {
            scope.Log.Add(ProblemTable.PictureWithoutWords, place, written);
        }

        return [.. found.Select(one => one.Photo), .. unread];
    }

    private string? Locate(string written, Place place)
    {
        // A picture that is listed and stands in the text as well is one picture.
        if (missing.Contains(written))
        {
            return null;
        }

        if (written.Contains('\0', StringComparison.Ordinal))
        {
            scope.Log.Add(ProblemTable.PictureMissing, place, written, "No file has that name.");
            return null;
        }

        foreach (var start in Ancestors(scope.File))
        {
            var full = Path.GetFullPath(Path.Combine(folder.PathOf(start), written));
            if (!IsBelow(full))
            {
                scope.Log.Add(ProblemTable.PictureOutside, place, written);
                return null;
            }

            scope.Looked.Add(DiskLook.At(full));
            if (scope.Looked[^1].Length >= 0)
            {
                return Accept(full, written, place);
            }
        }

        missing.Add(written);
        scope.Log.Add(ProblemTable.PictureMissing, place, written, "Copy it there, or remove the line.");
        return null;
    }

    private string? Accept(string full, string written, Place place)
    {
        if (!Endings.Contains(Path.GetExtension(full).ToLowerInvariant()))
        {
            scope.Log.Add(ProblemTable.PictureFormat, place, written);
            return null;
        }

        if (!StaysBelow(full, MostLinks))
        {
            scope.Log.Add(ProblemTable.PictureOutside, place, written);
            return null;
        }

        if (FaultOf(full) is { } fault)
        {
            scope.Log.Add(ProblemTable.PictureBroken, place, written, fault);
            return null;
        }

        return Relative(full);
    }

    private string Relative(string full) => Path.GetRelativePath(folder.Root, full).Replace(Path.DirectorySeparatorChar, '/');

    // Pipes and devices have no length; opening one could wait for ever.
    private static string? FaultOf(string full)
    {
        try
        {
            var file = new FileInfo(full);
            return ((FileInfo?)file.ResolveLinkTarget(returnFinalTarget: true) ?? file).Length == 0 ? "it is empty." : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return e.Message;
        }
    }

    private bool IsBelow(string full) => full.StartsWith(folder.Root + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    // Neither the file nor a folder on the way to it may be a link that leaves the journal.
    private bool StaysBelow(string full, int linksLeft)
    {
        if (!IsBelow(full) || linksLeft == 0)
        {
            return false;
        }

        for (var path = full; path.Length > folder.Root.Length; path = Path.GetDirectoryName(path)!)
        {
            if (new FileInfo(path) is { LinkTarget: { } target })
            {
                scope.IsBehindLinks = true;
                var end = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, target) + full[path.Length..]);
                return StaysBelow(end, linksLeft - 1);
            }
        }

        return true;
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
