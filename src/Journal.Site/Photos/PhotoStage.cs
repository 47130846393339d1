using System.Collections.Concurrent;
using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Site.Output;

namespace Journal.Site.Photos;

/// <summary>How far the pictures are.</summary>
/// <param name="Done">How many are done.</param>
/// <param name="Of">How many there are.</param>
/// <param name="Made">How many of those done had to be made; the others were in the cache.</param>
public readonly record struct PictureProgress(int Done, int Of, int Made);

/// <summary>
/// Brings the journal's pictures to the site. One that cannot be read is a problem of its own; all else is published.
/// </summary>
internal sealed class PhotoStage(string journal, SiteFolder site, PictureCache cache, PictureSettings settings, IProgress<PictureProgress>? progress) : IDisposable
{
    private const int AtOnce = 2;
    private const long LargestFile = 200 * 1024 * 1024;

    /// <summary>Pictures with more pixels than this are decoded alone, to bound the memory.</summary>
    private const long LargePicture = 30_000_000;

    private readonly ConcurrentDictionary<string, PublishedPhoto> published = new(StringComparer.Ordinal);
    private readonly ConcurrentBag<Problem> problems = [];
    private readonly SemaphoreSlim decoders = new(AtOnce, AtOnce);
    private readonly Lock large = new();
    private int done;
    private int made;

    /// <summary>Publishes pictures and says where each stands, and which could not be read.</summary>
    /// <param name="photos">Paths from the journal's folder.</param>
    /// <param name="cancellation">Stops the work between pictures.</param>
    public (IReadOnlyDictionary<string, PublishedPhoto> Photos, IReadOnlyList<Problem> Problems) Publish(IEnumerable<string> photos, CancellationToken cancellation)
    {
        var files = photos.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        var seen = SeenFiles.Of(cache, journal);
        var byContent = new ConcurrentDictionary<string, Lazy<PublishedPhoto>>(StringComparer.Ordinal);
        Parallel.ForEach(files, new ParallelOptions { MaxDegreeOfParallelism = AtOnce, CancellationToken = cancellation }, file =>
        {
            try
            {
                published[file] = Publish(file, seen, byContent);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or PictureRefusedException)
            {
                problems.Add(ProblemTable.PictureBroken.At(new Place(file, 1, 1), file, e.Message));
            }

            progress?.Report(new PictureProgress(Interlocked.Increment(ref done), files.Count, made));
        });
        seen.Keep();
        return (published, [.. problems.OrderBy(problem => problem.Place)]);
    }

    /// <inheritdoc/>
    public void Dispose() => decoders.Dispose();

    private PublishedPhoto Publish(string file, SeenFiles seen, ConcurrentDictionary<string, Lazy<PublishedPhoto>> byContent)
    {
        var path = Path.Combine(journal, file.Replace('/', Path.DirectorySeparatorChar));
        if (new FileInfo(path).Length > LargestFile)
        {
            throw new PictureRefusedException("the file is larger than 200 MiB.");
        }

        var (content, bytes) = seen.ContentOf(file, path);
        return byContent.GetOrAdd(content, _ => new Lazy<PublishedPhoto>(() => Publish(path, content, bytes))).Value;
    }

    private PublishedPhoto Publish(string path, string content, byte[]? bytes)
    {
        var picture = cache.Find(content, settings) ?? Make(content, bytes ?? File.ReadAllBytes(path));
        var photo = new PublishedPhoto(content[..24], picture.Width, picture.Height, picture.Ground, picture.Widths);
        foreach (var file in picture.Files)
        {
            site.Take(photo.Address(file.Width, file.Extension), cache.PathOf(content, settings, file), file.Hash);
        }

        return photo;
    }

    private MadePicture Make(string content, byte[] bytes)
    {
        var size = PictureReader.Measure(bytes);
        Interlocked.Increment(ref made);
        if ((long)size.Width * size.Height <= LargePicture)
        {
            return Hold(1, () => cache.Make(content, bytes, settings));
        }

        lock (large)
        {
            return Hold(AtOnce, () => cache.Make(content, bytes, settings));
        }
    }

    private MadePicture Hold(int places, Func<MadePicture> make)
    {
        for (var i = 0; i < places; i++)
        {
            decoders.Wait();
        }

        try
        {
            return make();
        }
        finally
        {
            decoders.Release(places);
        }
    }
}
