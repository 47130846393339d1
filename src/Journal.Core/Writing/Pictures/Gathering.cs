using Journal.Core.Model;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Pictures;

/// <summary>Brings pictures to the evenings when they were taken.</summary>
public static class Gathering
{
    /// <summary>
    /// Says what becomes of each picture and, unless it is only a trial, does it: copies it (never moves it) and adds
    /// it to its entry's <c>photos</c>. Pictures come first and the entry after, so a crash in between loses nothing
    /// and the next gathering goes on from there.
    /// </summary>
    /// <param name="folder">The journal's folder, which no other command writes to meanwhile.</param>
    /// <param name="journal">What stands in it.</param>
    /// <param name="pictures">The pictures with their times.</param>
    /// <param name="isTrial">Whether nothing shall be written.</param>
    public static IReadOnlyList<Gathered> Run(string folder, MakerJournal journal, IEnumerable<TakenPicture> pictures, bool isTrial)
    {
        var shelf = new PictureShelf(folder, journal);
        var seen = new HashSet<string>();
        var fates = new List<Gathered>();
        foreach (var evening in pictures.OrderBy(picture => picture.Taken).ThenBy(picture => picture.Path, StringComparer.Ordinal).GroupBy(picture => picture.Evening))
        {
            var fresh = new List<TakenPicture>();
            foreach (var picture in evening)
            {
                if (WhyNotReadable(picture, shelf) is { } why)
                {
                    fates.Add(new Gathered(picture, Fate.Refused, null, null, why));
                }
                else if (!seen.Add(shelf.Digest(picture.Path)) || shelf.Shows(picture.Path))
                {
                    fates.Add(new Gathered(picture, Fate.AlreadyThere, null, null, ""));
                }
                else
                {
                    fresh.Add(picture);
                }
            }

            fates.AddRange(EntryOf(journal, evening.Key) is { } entry
                ? Into(folder, entry, journal.Builds.Single(build => build.Id == entry.Build), fresh, shelf, isTrial)
                : fresh.Select(picture => new Gathered(picture, Fate.NoEntry, null, null, "")));
        }

        return [.. fates.OrderBy(fate => fate.Picture.Taken).ThenBy(fate => fate.Picture.Path, StringComparer.Ordinal)];
    }

    private static string? WhyNotReadable(TakenPicture picture, PictureShelf shelf)
    {
        try
        {
            shelf.Digest(picture.Path);
            return picture.Fault;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"it cannot be read ({e.Message.TrimEnd('.')}).";
        }
    }

    // Of several entries that evening the one with the most hours, then the first.
    private static Entry? EntryOf(MakerJournal journal, DateOnly evening) =>
        journal.Entries.Where(entry => entry.Date == evening).OrderByDescending(entry => entry.Time).FirstOrDefault();

    private static IEnumerable<Gathered> Into(string folder, Entry entry, Build build, List<TakenPicture> pictures, PictureShelf shelf, bool isTrial)
    {
        if (pictures.Count == 0)
        {
            return [];
        }

        var names = pictures.Select(picture => shelf.NameFor(picture, build)).ToList();
        var path = Path.Combine(folder, entry.File.Replace('/', Path.DirectorySeparatorChar));
        Added WithPictures(string text) => new EntryText(text).Items("photos", [.. names.Zip(pictures, (name, picture) => new NewPhoto(name, picture.Caption).ToYaml())]);

        // Copying takes minutes from a phone: the entry is read only afterwards, and what its maker saved meanwhile stays.
        var added = WithPictures(MakersFile.Read(path)?.Text ?? "");
        if (added.Text is not null && !isTrial)
        {
            foreach (var (picture, name) in pictures.Zip(names))
            {
                shelf.Copy(picture, build, name);
            }

            added = MakersFile.Edit(path, WithPictures) ?? Added.Refused("It cannot be read any more.");
        }

        if (added.Text is null)
        {
            return pictures.Select(picture => new Gathered(picture, Fate.Refused, entry.File, null, added.WhyNot));
        }

        return pictures.Zip(names).Select(pair => new Gathered(pair.First, Fate.Added, entry.File, pair.Second, ""));
    }
}
