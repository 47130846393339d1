using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
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
internal sealed class PhotoStage(string journal, SiteFolder site, UserCache cache, PictureSettings settings, IProgress<PictureProgress>? progress) : IDisposable
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
        var failures = new ConcurrentQueue<ExceptionDispatchInfo>();
        Parallel.ForEach(files, new ParallelOptions { MaxDegreeOfParallelism = AtOnce, CancellationToken = cancellation }, (file, loop) =>
        {
            try
            {
                published[file] = Publish(file, seen, byContent, cancellation);
            }
            catch (PictureRefusedException e)
            {
                problems.Add(ProblemTable.PictureBroken.At(new Place(file, 1, 1), file, e.Message));
            }
            catch (Exception e) when (e is PublishingException or IOException or UnauthorizedAccessException)
            {
                // The site cannot be written: no fault of the picture's.
                failures.Enqueue(ExceptionDispatchInfo.Capture(e));
                loop.Stop();
            }

            progress?.Report(new PictureProgress(Interlocked.Increment(ref done), files.Count, made));
        });
        if (failures.TryDequeue(out var failure))
        {
            failure.Throw();
        }

        seen.Keep();
        return (published, [.. problems.OrderBy(problem => problem.Place)]);
    }

    /// <inheritdoc/>
    public void Dispose() => decoders.Dispose();

    private PublishedPhoto Publish(string file, SeenFiles seen, ConcurrentDictionary<string, Lazy<PublishedPhoto>> byContent, CancellationToken cancellation)
    {
        var path = Path.Combine(journal, file.Replace('/', Path.DirectorySeparatorChar));
        var (content, bytes) = Read(() => new FileInfo(path).Length > LargestFile
            ? throw new PictureRefusedException("the file is larger than 200 MiB.")
            : seen.ContentOf(file, path));
        return byContent.GetOrAdd(content, _ => new Lazy<PublishedPhoto>(() => Publish(path, content, bytes, cancellation))).Value;
    }

    private PublishedPhoto Publish(string path, string content, byte[]? bytes, CancellationToken cancellation)
    {
        if (cache.Find(content, settings) is { } kept && IsWhole(content, kept))
        {
            var photo = PhotoOf(content, kept);
            foreach (var file in kept.Files)
            {
                site.Take(photo.Address(file.Width, file.Extension), cache.PathOf(content, settings, file), file.Hash);
            }

            return photo;
        }

        var files = new List<(MadeFile File, byte[] Contents)>();
        var picture = Make(bytes ?? Read(() => File.ReadAllBytes(path)), files, cancellation);
        cache.Keep(content, settings, picture, files);
        var made = PhotoOf(content, picture);
        files.ForEach(file => site.Write(made.Address(file.File.Width, file.File.Extension), file.Contents));
        return made;
    }

    // What the old site has, by hash and length, is not taken from the cache: it need not be read there.
    private bool IsWhole(string content, MadePicture kept)
    {
        var photo = PhotoOf(content, kept);
        return kept.Files.All(file =>
            (new FileInfo(cache.PathOf(content, settings, file)) is { Exists: true } there && there.Length == file.Length && site.Has(photo.Address(file.Width, file.Extension), file.Hash, file.Length))
            || cache.IsWhole(content, settings, file));
    }

    private static PublishedPhoto PhotoOf(string content, MadePicture picture) => new(content[..24], picture.Width, picture.Height, picture.Ground, picture.Widths);

    // What keeps a picture from being read is a problem of that picture, and told beside its name.
    private static T Read<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new PictureRefusedException(e.Message, e);
        }
    }

    private MadePicture Make(byte[] bytes, List<(MadeFile File, byte[] Contents)> files, CancellationToken cancellation)
    {
        var size = PictureReader.Measure(bytes);
        Interlocked.Increment(ref made);
        if ((long)size.Width * size.Height <= LargePicture)
        {
            return Hold(1, Make);
        }

        lock (large)
        {
            return Hold(AtOnce, Make);
        }

        MadePicture Make() => PictureMaker.Make(bytes, settings, (file, contents) => files.Add((file, contents)), cancellation);
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
