using System.Collections.Concurrent;
using System.Security.Cryptography;
using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Site.Output;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Processing;

namespace Journal.Site.Photos;

/// <summary>
/// Makes the site's pictures: upright, no wider than a page needs, and stripped of place, device and owner. A picture
/// that cannot be read is a problem of its own; all else is published.
/// </summary>
internal sealed class PhotoStage(string journal, SiteFolder site)
{
    private const int Widest = 1600;
    private const long MostPixels = 100_000_000;
    private const int Quality = 82;

    private static readonly ParallelOptions TwoAtOnce = new() { MaxDegreeOfParallelism = 2 };

    private readonly ConcurrentDictionary<string, PublishedPhoto> published = new(StringComparer.Ordinal);
    private readonly ConcurrentBag<Problem> problems = [];

    /// <summary>Publishes pictures and says where each stands, and which could not be read.</summary>
    /// <param name="photos">Paths from the journal's folder.</param>
    /// <param name="cancellation">Stops the work between pictures.</param>
    public (IReadOnlyDictionary<string, PublishedPhoto> Photos, IReadOnlyList<Problem> Problems) Publish(IEnumerable<string> photos, CancellationToken cancellation)
    {
        var byContent = new ConcurrentDictionary<string, Lazy<PublishedPhoto?>>(StringComparer.Ordinal);
        var work = photos.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        Parallel.ForEach(work, new ParallelOptions { MaxDegreeOfParallelism = TwoAtOnce.MaxDegreeOfParallelism, CancellationToken = cancellation }, file =>
        {
            var path = Path.Combine(journal, file.Replace('/', Path.DirectorySeparatorChar));
            try
            {
                var bytes = File.ReadAllBytes(path);
                var name = Convert.ToHexStringLower(SHA256.HashData(bytes))[..24];
                var made = byContent.GetOrAdd(name, _ => new Lazy<PublishedPhoto?>(() => Make(bytes, name)));
                if (made.Value is { } photo)
                {
                    published[file] = photo;
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or ImageFormatException or ArgumentException or NotSupportedException
                or InvalidOperationException or OutOfMemoryException or IndexOutOfRangeException or OverflowException or NullReferenceException)
            {
                // The decoder throws many kinds of exception at crafted files; each means the same to the maker.
                problems.Add(ProblemTable.PictureBroken.At(new Place(file, 1, 1), file, FirstLine(e.Message)));
            }
        });
        return (published, [.. problems.OrderBy(problem => problem.Place)]);
    }

    private PublishedPhoto? Make(byte[] bytes, string name)
    {
        var address = $"photos/{name}.jpg";
        if (site.Existing(address) is { } existing && Image.Identify(existing) is { } known)
        {
            site.Keep(address);
            return new PublishedPhoto(address, known.Width, known.Height);
        }

        var header = Image.Identify(bytes) ?? throw new InvalidImageContentException("it is no picture.");
        if ((long)header.Width * header.Height > MostPixels)
        {
            throw new InvalidImageContentException("it has more than 100 megapixels.");
        }

        using var image = Image.Load(bytes);
        image.Mutate(picture => picture.AutoOrient());
        if (image.Width > Widest)
        {
            image.Mutate(picture => picture.Resize(Widest, 0));
        }

        image.Metadata.ExifProfile = null;
        image.Metadata.XmpProfile = null;
        image.Metadata.IptcProfile = null;
        using var jpeg = new MemoryStream();
        image.SaveAsJpeg(jpeg, new JpegEncoder { Quality = Quality });
        site.Write(address, jpeg.ToArray());
        return new PublishedPhoto(address, image.Width, image.Height);
    }

    private static string FirstLine(string message)
    {
        var line = message.Split('\n')[0].Trim();
        return line.Length == 0 ? "it is damaged." : char.ToLowerInvariant(line[0]) + line[1..];
    }
}
