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
/// Brings the journal's pictures to the site, each once. One that cannot be read is a problem of its own; all else is
/// published.
/// </summary>
internal sealed class PhotoStage(string journal, IPictureShelf shelf, UserCache cache, SeenFiles seen, PictureSettings settings)
{
    private const int AtOnce = 2;
    private const long LargestFile = 200 * 1024 * 1024;

    // One bound for the program: what is looked at may have been replaced while it is being made.
    private static readonly SemaphoreSlim Decoders = new(AtOnce, AtOnce);
    private static readonly Lock Large = new();

    /// <summary>Pictures with more pixels than this are decoded alone, to bound the memory.</summary>
    private const long LargePicture = 30_000_000;

    private readonly ConcurrentDictionary<string, Lazy<PublishedPhoto?>> byFile = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<PublishedPhoto>> byContent = new(StringComparer.Ordinal);
    private readonly ConcurrentBag<Problem> problems = [];
    private int done;
    private int made;

    /// <summary>Pictures that could not be read.</summary>
    public IReadOnlyList<Problem> Problems => [.. problems.OrderBy(problem => problem.Place)];

    /// <summary>Brings pictures, two at a time.</summary>
    /// <param name="photos">Paths from the journal's folder.</param>
    /// <param name="progress">Is told how far they are.</param>
    /// <param name="cancellation">Stops the work between pictures.</param>
    public void BringAll(IEnumerable<string> photos, IProgress<PictureProgress>? progress, CancellationToken cancellation)
    {
        var files = photos.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        var failures = new ConcurrentQueue<ExceptionDispatchInfo>();
        Parallel.ForEach(files, new ParallelOptions { MaxDegreeOfParallelism = AtOnce, CancellationToken = cancellation }, (file, loop) =>
        {
            try
            {
                Bring(file, cancellation);
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
    }

    /// <summary>Where a picture stands, which is brought when it is first asked for; null where it cannot be read.</summary>
    /// <param name="file">Its path from the journal's folder.</param>
    public PublishedPhoto? Of(string file) => Bring(file, CancellationToken.None);

    private PublishedPhoto? Bring(string file, CancellationToken cancellation) =>
        byFile.GetOrAdd(file, _ => new Lazy<PublishedPhoto?>(() => Published(file, cancellation))).Value;

    private PublishedPhoto? Published(string file, CancellationToken cancellation)
    {
        var path = Path.Combine(journal, file.Replace('/', Path.DirectorySeparatorChar));
        try
        {
            var (content, bytes) = Read(() => new FileInfo(path).Length > LargestFile
                ? throw new PictureRefusedException("the file is larger than 200 MiB.")
                : seen.ContentOf(file, path));
            return byContent.GetOrAdd(content, _ => new Lazy<PublishedPhoto>(() => Publish(path, content, bytes, cancellation))).Value;
        }
        catch (PictureRefusedException e)
        {
            problems.Add(ProblemTable.PictureBroken.At(new Place(file, 1, 1), file, e.Message));
            return null;
        }
    }

    private PublishedPhoto Publish(string path, string content, byte[]? bytes, CancellationToken cancellation)
    {
        if (cache.Find(content, settings) is { } before && IsWhole(content, before))
        {
            var known = PhotoOf(content, before);
            foreach (var file in before.Files)
            {
                shelf.Take(known.Address(file.Width, file.Extension), cache.PathOf(content, settings, file), file.Hash);
            }

            return known;
        }

        var files = new List<(MadeFile File, byte[] Contents)>();
        var picture = Make(bytes ?? Read(() => File.ReadAllBytes(path)), files, cancellation);
        var isKept = cache.Keep(content, settings, picture, files);
        var photo = PhotoOf(content, picture);
        foreach (var (file, contents) in files)
        {
            var address = photo.Address(file.Width, file.Extension);
            if (isKept)
            {
                shelf.Take(address, cache.PathOf(content, settings, file), file.Hash);
            }
            else
            {
                shelf.Write(address, contents);
            }
        }

        return photo;
    }

    // What the old site has, by hash and length, is not taken from the cache: it need not be read there.
    private bool IsWhole(string content, MadePicture kept)
    {
        var photo = PhotoOf(content, kept);
        return kept.Files.All(file =>
            (new FileInfo(cache.PathOf(content, settings, file)) is { Exists: true } there && there.Length == file.Length && shelf.Has(photo.Address(file.Width, file.Extension), file.Hash, file.Length))
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

        lock (Large)
        {
            return Hold(AtOnce, Make);
        }

        MadePicture Make() => PictureMaker.Make(bytes, settings, (file, contents) => files.Add((file, contents)), cancellation);
    }

    private static MadePicture Hold(int places, Func<MadePicture> make)
    {
        for (var i = 0; i < places; i++)
        {
            Decoders.Wait();
        }

        try
        {
            return make();
        }
        finally
        {
            Decoders.Release(places);
        }
    }
}
