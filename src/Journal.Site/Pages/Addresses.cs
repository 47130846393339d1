using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>The permanent addresses of the site's pages and files, from its root. That there is an address does not say that there is a page.</summary>
internal static class Addresses
{
    /// <summary>The front page.</summary>
    public const string Front = "index.html";

    /// <summary>When each part was made.</summary>
    public const string Timeline = "timeline.html";

    /// <summary>The first page of the lessons book, by operation.</summary>
    public const string Lessons = "lessons.html";

    /// <summary>The tooling bill, where every tool has its line.</summary>
    public const string Tooling = "tooling.html";

    /// <summary>The search.</summary>
    public const string Find = "find.html";

    /// <summary>The page that a server shows where there is none.</summary>
    public const string NotFound = "404.html";

    /// <summary>The Atom feed.</summary>
    public const string AtomFeed = "feed.xml";

    /// <summary>The JSON Feed.</summary>
    public const string JsonFeed = "feed.json";

    /// <summary>The page of a build.</summary>
    public static string Of(Id<Build> build) => $"{build}/index.html";

    /// <summary>The short story of a build; there is one only where <see cref="StoryPage.HasStory"/> says so.</summary>
    public static string Story(Id<Build> build) => $"{build}/story.html";

    /// <summary>The same as plain text, to read from.</summary>
    public static string StoryText(Id<Build> build) => $"{build}/story.txt";

    /// <summary>The chapters of a video as plain text; <paramref name="video"/> is its number in the build, from 1.</summary>
    public static string Chapters(Id<Build> build, int video) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{build}/video-{video}-chapters.txt");

    /// <summary>The gallery of a build; there is one only where <see cref="PhotosPage.HasPhotos"/> says so.</summary>
    public static string Photos(Id<Build> build) => $"{build}/photos.html";

    /// <summary>A part sheet.</summary>
    public static string Of(PartRef part) => $"{part.Build}/part/{part.Part}.html";

    /// <summary>The page of an entry; a hidden entry has none.</summary>
    public static string Of(EntryRef entry) => $"{entry.Build}/entry/{entry.Entry}.html";

    /// <summary>The page of an operation; there is one only for <see cref="SiteFigures.ShownOperations"/>.</summary>
    public static string Of(Id<Operation> operation) => $"operation/{operation}.html";

    /// <summary>The page of a lesson; a lesson of a hidden entry has none.</summary>
    public static string Of(Id<Lesson> lesson) => $"lesson/{lesson}.html";

    /// <summary>A tool's line on the tooling page.</summary>
    public static string Of(Id<Tool> tool) => $"tooling.html#{tool}";

    /// <summary>An estimate sheet.</summary>
    public static string Of(Id<Plan> plan) => $"plan/{plan}.html";

    /// <summary>A page of the lessons book; by operation it is <c>lessons.html</c>.</summary>
    public static string Of(LessonOrder order) => order == LessonOrder.Operation ? Lessons : $"lessons/by-{order.ToWord()}.html";

    /// <summary>The way from a page up to the root: as many <c>../</c> as the address has folders.</summary>
    public static string RootOf(string address) => string.Concat(Enumerable.Repeat("../", address.Count(letter => letter == '/')));
}
