using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Journal.Bench.Common;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;
using Journal.Site.Photos;

namespace Journal.Bench.WriteUps;

/// <summary>An evening that is to be written up: its remarks, its pictures, and the entry that they go into.</summary>
internal sealed class EveningToWrite
{
    private EveningToWrite(string folder, MakerJournal journal, Build build, DateOnly evening, Slate slate)
    {
        (Folder, Journal, Build, Evening) = (folder, journal, build, evening);
        Jots = [.. slate.JotsOf(evening, build.Id.Value)];
        Heard = Heard.Of(ToldTonight.Of(Jots, []).Remarks, journal, build, evening);
        Pictures = new EveningPictures(folder, journal, build, evening);
    }

    /// <summary>The journal's folder.</summary>
    public string Folder { get; }

    /// <summary>The journal.</summary>
    public MakerJournal Journal { get; }

    /// <summary>The build.</summary>
    public Build Build { get; }

    /// <summary>The evening.</summary>
    public DateOnly Evening { get; }

    /// <summary>The entry that is there already and that this goes into, such as a stint's; null for a new one.</summary>
    public string? Into { get; private init; }

    /// <summary>The remarks that go into it, in the order they were made.</summary>
    public IReadOnlyList<Jot> Jots { get; }

    /// <summary>What they say as keys.</summary>
    public Heard Heard { get; }

    /// <summary>The pictures that no entry shows yet.</summary>
    public EveningPictures Pictures { get; }

    /// <summary>By which it is known whether more was noted since: of all remarks.</summary>
    public string Noted => DigestOf(Jots);

    /// <summary>The job that stands in the entry last; null for a new one, or where it cannot be read.</summary>
    public Job? Standing => Into is null ? null : Build.Entries.FirstOrDefault(entry => entry.File == Into)?.Jobs[^1];

    /// <summary>The evening.</summary>
    /// <param name="now">How things stand.</param>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="asked">The evening that was asked for; null for that of the last stint, else tonight.</param>
    /// <param name="isAnother">Whether it is another job, for an entry of its own.</param>
    /// <returns>Null in a journal without builds.</returns>
    public static EveningToWrite? Of(BenchNow now, string folder, DateOnly? asked, bool isAnother)
    {
        var unwritten = now.Slate.Unwritten;
        if (unwritten is not null && !File.Exists(Path.Combine(folder, unwritten.File)))
        {
            unwritten = null;
        }

        var evening = asked ?? (now.Slate.Stint is null ? unwritten?.Evening : null) ?? now.Evening;
        var stints = unwritten?.Evening == evening ? unwritten : null;
        var build = now.Journal.Builds.FirstOrDefault(one => stints?.File.StartsWith($"{one.Folder}/", StringComparison.Ordinal) == true) ?? now.Build;
        return build is null ? null : new EveningToWrite(folder, now.Journal, build, evening, now.Slate)
        {
            Into = isAnother ? null : stints?.File ?? build.Entries.LastOrDefault(one => one.Date == evening)?.File,
        };
    }

    /// <summary>The digest of remarks.</summary>
    public static string DigestOf(IEnumerable<Jot> jots) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', jots.Select(Line)))));

    private static string Line(Jot jot) => string.Create(CultureInfo.InvariantCulture, $"{jot.At.UtcTicks} {jot.Kind} {jot.Text} {string.Join(' ', jot.Keys.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => $"{pair.Key}={pair.Value}"))}");
}
