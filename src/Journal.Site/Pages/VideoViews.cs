using System.Globalization;
using System.Text;
using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A chapter of a video, with a link into it.</summary>
/// <param name="At">Where it begins, such as <c>3:20</c> or <c>1:02:05</c>.</param>
/// <param name="Title">Its title; empty where the maker gives none.</param>
/// <param name="Address">The video's address with the time in seconds after <c>#t=</c>.</param>
public sealed record ChapterView(string At, string Title, string Address);

/// <summary>A card for a video: nothing is loaded from its host before the reader clicks.</summary>
/// <param name="Title">The video's title.</param>
/// <param name="Address">Where it can be seen.</param>
/// <param name="Host">The name of the machine that serves it, so that the reader knows before clicking.</param>
/// <param name="Covers">The parts and days that it shows.</param>
/// <param name="Chapters">Its chapters in order.</param>
/// <param name="ChapterList">The same as plain text, from the root of the site; null without chapters.</param>
public sealed record VideoView(string Title, string Address, string Host, string Covers, IReadOnlyList<ChapterView> Chapters, string? ChapterList)
{
    /// <summary>All videos of a build, in the order of build.yaml.</summary>
    internal static IReadOnlyList<VideoView> Of(SiteFigures figures, Build build) => Cards(figures, build, _ => true);

    /// <summary>The videos of a build that say that they show a part.</summary>
    internal static IReadOnlyList<VideoView> Of(SiteFigures figures, Build build, Part part) => Cards(figures, build, video => video.CoversParts.Contains(part.Id));

    /// <summary>The videos that show an evening: by its date where a video names days, else by the parts it worked on.</summary>
    internal static IReadOnlyList<VideoView> Of(SiteFigures figures, Build build, Entry entry) => Cards(figures, build, video => video.CoversDays.Count > 0
        ? video.CoversDays.Any(days => entry.Date >= days.First && entry.Date <= days.Last)
        : entry.Jobs.SelectMany(job => job.Parts).Any(share => video.CoversParts.Contains(share.Part)));

    /// <summary>The chapter lists of a build as text, to paste beside the video.</summary>
    internal static IEnumerable<(string Address, string Text)> ChapterLists(Build build) => build.Videos
        .Select((video, i) => (Addresses.Chapters(build.Id, i + 1), Video: video))
        .Where(one => one.Video.Chapters.Count > 0)
        .Select(one => (one.Item1, ChapterText(one.Video)));

    private static IReadOnlyList<VideoView> Cards(SiteFigures figures, Build build, Func<Video, bool> covers) =>
        [.. build.Videos.Select((video, i) => (Video: video, Number: i + 1)).Where(one => covers(one.Video)).Select(one => Card(figures, build, one.Video, one.Number))];

    private static VideoView Card(SiteFigures figures, Build build, Video video, int number)
    {
        var covers = video.CoversParts.Select(part => figures.Part(new PartRef(build.Id, part)).Title)
            .Concat(video.CoversDays.Select(days => $"{Show.Date(days.First)} to {Show.Date(days.Last)}"));
        return new VideoView(
            video.Title,
            video.Url.AbsoluteUri,
            video.Url.Host,
            string.Join(" · ", covers),
            [.. video.Chapters.Select(chapter => new ChapterView(AtWords(chapter.AtSecond), chapter.Title, AtTime(video.Url, chapter.AtSecond)))],
            video.Chapters.Count > 0 ? Addresses.Chapters(build.Id, number) : null);
    }

    // Common practice (from memory): hosts make chapters of such a list only where its first line stands at 0:00.
    private static string ChapterText(Video video)
    {
        var text = new StringBuilder();
        if (video.Chapters[0].AtSecond > 0)
        {
            text.Append("0:00 ").Append(video.Title).Append('\n');
        }

        foreach (var chapter in video.Chapters)
        {
            text.Append(AtWords(chapter.AtSecond)).Append(' ').Append(chapter.Title).Append('\n');
        }

        return text.ToString();
    }

    private static string AtWords(int seconds) => seconds >= 3600
        ? string.Create(CultureInfo.InvariantCulture, $"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}")
        : string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");

    // Media Fragments URI 1.0 (W3C 2012), 4.2.1: #t= in seconds of normal play time.
    private static string AtTime(Uri url, int seconds) => string.Create(CultureInfo.InvariantCulture, $"{url.GetLeftPart(UriPartial.Query)}#t={seconds}");
}
