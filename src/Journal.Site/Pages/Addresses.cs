using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>The permanent addresses of the site, from its root.</summary>
internal static class Addresses
{
    public const string Front = "index.html";
    public const string Timeline = "timeline.html";
    public const string Lessons = "lessons.html";
    public const string Tooling = "tooling.html";
    public const string Find = "find.html";
    public const string NotFound = "404.html";
    public const string AtomFeed = "feed.xml";
    public const string JsonFeed = "feed.json";

    public static string Of(Id<Build> build) => $"{build}/index.html";

    public static string Story(Id<Build> build) => $"{build}/story.html";

    public static string StoryText(Id<Build> build) => $"{build}/story.txt";

    public static string Chapters(Id<Build> build, int video) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{build}/video-{video}-chapters.txt");

    public static string Photos(Id<Build> build) => $"{build}/photos.html";

    public static string Of(PartRef part) => $"{part.Build}/part/{part.Part}.html";

    public static string Of(EntryRef entry) => $"{entry.Build}/entry/{entry.Entry}.html";

    public static string Of(Id<Operation> operation) => $"operation/{operation}.html";

    public static string Of(Id<Lesson> lesson) => $"lesson/{lesson}.html";

    public static string Of(Id<Tool> tool) => $"tooling.html#{tool}";

    public static string Of(Id<Plan> plan) => $"plan/{plan}.html";

    /// <summary>A page of the lessons book; by operation it is <c>lessons.html</c>.</summary>
    public static string Of(LessonOrder order) => order == LessonOrder.Operation ? Lessons : $"lessons/by-{order.ToWord()}.html";

    /// <summary>The way from a page up to the root: as many <c>../</c> as the address has folders.</summary>
    public static string RootOf(string address) => string.Concat(Enumerable.Repeat("../", address.Count(letter => letter == '/')));
}
