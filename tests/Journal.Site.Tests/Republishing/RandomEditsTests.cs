using System.Globalization;
using System.Text.RegularExpressions;
using Journal.Cli.Tests;
using Journal.Site.Preview;
using Journal.Site.Publishing;
using Journal.Site.Tests.Preview;
using Journal.Site.Tests.Publishing;
using Journal.Tests.Shared;

namespace Journal.Site.Tests.Republishing;

/// <summary>
/// Publishing again and again while a maker changes things at random: each time the site is, byte for byte, what a publish
/// into an empty folder gives, and what the preview shows, which reads only what was saved; and files that are as they were
/// keep their time stamps. Four makers at once; JOURNAL_EDITS
/// asks for more edits of each.
/// </summary>
public sealed partial class RandomEditsTests
{
    private const int Edits = 4;
    private static readonly int Seed = int.TryParse(Environment.GetEnvironmentVariable("JOURNAL_FUZZ_SEED"), CultureInfo.InvariantCulture, out var seed) ? seed : 20261125;

    [Fact]
    public Task Publish_AfterRandomEdits_IsWhatACleanPublishGives() => Task.WhenAll(Enumerable.Range(Seed, 4).Select(seed => Task.Run(() => Publish(seed))));

    private static void Publish(int seed)
    {
        var edits = int.TryParse(Environment.GetEnvironmentVariable("JOURNAL_EDITS"), CultureInfo.InvariantCulture, out var asked) ? asked : Edits;
        using var journal = Journals.DemoWithPlainPictures();
        using var elsewhere = JournalOnDisk.Bare();
        var maker = new RandomMaker(journal, elsewhere.PathOf("look"), seed);
        var (site, cache) = (elsewhere.PathOf("site"), elsewhere.PathOf("cache"));
        maker.SettleTimes();
        SiteOutcome Publish(string to) => SitePublisher.Publish(new PublishOrder(journal.Folder, to, maker.Today, maker.Template) { Cache = cache });
        Publish(site);
        var before = Stamped(site);
        var (done, shown) = (new List<string>(), new PreviewedJournal(journal.Folder, maker.Today, maker.Template));
        var (shownOn, shownIn) = (maker.Today, maker.Template);
        while (done.Count < edits)
        {
            var edit = maker.Edit(onlyWords: done.Count % 2 == 0);
            maker.SettleTimes();
            var outcome = Publish(site);
            if (outcome.Published is null)
            {
                Assert.Equal(before, Stamped(site));
                maker.TakeBack();
                continue;
            }

            done.Add(edit);
            var (now, clean) = (Stamped(site), elsewhere.PathOf($"clean-{done.Count}"));
            var fresh = Publish(clean);
            Assert.True(fresh.WasRead);
            AssertSame(clean, site, $"{string.Join("; ", done.TakeLast(3))} of maker {seed}");
            Assert.Equal(fresh.Problems, outcome.Problems);
            shown = (shownOn, shownIn) == (maker.Today, maker.Template) ? shown : new PreviewedJournal(journal.Folder, maker.Today, maker.Template);
            (shownOn, shownIn) = (maker.Today, maker.Template);
            Assert.Equal(fresh.Problems, shown.Read([]));
            PreviewedJournalTests.AssertShows(clean, shown.Site!, string.Join("; ", done.TakeLast(3)));
            Assert.Equal(fresh.Published! with { Changed = 0, FrontPage = "" }, outcome.Published with { Changed = 0, FrontPage = "", Problems = fresh.Published!.Problems });
            Assert.All(now.Where(file => before.TryGetValue(file.Key, out var old) && old.Text == file.Value.Text), file => Assert.Equal(before[file.Key].Time, file.Value.Time));
            Assert.False(Publish(site).WasRead, $"Read again after: {string.Join("; ", done.TakeLast(3))}; problems: {string.Join("; ", fresh.Problems.Concat(fresh.Published.Problems).Select(problem => problem.Kind.Code))}; today {maker.Today}, look {maker.Template}");
            Assert.Equal(now, Stamped(site));
            before = now;
            Directory.Delete(clean, recursive: true);
        }

        Tries.Add("edits", edits);
    }

    private static void AssertSame(string clean, string site, string after)
    {
        var (wanted, found) = (Files(clean), Files(site));
        Assert.True(wanted.Keys.SequenceEqual(found.Keys), $"{string.Join(", ", wanted.Keys.Except(found.Keys))} and {string.Join(", ", found.Keys.Except(wanted.Keys))} differ after: {after}");
        foreach (var (address, bytes) in wanted)
        {
            Assert.True(bytes.AsSpan().SequenceEqual(found[address]), $"{address} differs after: {after}");
        }
    }

    private static SortedDictionary<string, byte[]> Files(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(path => Path.GetRelativePath(folder, path), File.ReadAllBytes), StringComparer.Ordinal);

    private static Dictionary<string, (string Text, DateTime Time)> Stamped(string folder) => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToDictionary(path => Path.GetRelativePath(folder, path), path => (File.ReadAllText(path), File.GetLastWriteTimeUtc(path)));

    /// <summary>Changes a journal at random, as makers do.</summary>
    private sealed partial class RandomMaker(JournalOnDisk journal, string look, int seed)
    {
        private static readonly string[] Sentences =
        [
            "The second cut came out clean.", "I left it *proud* by a hair.", "Café, Øresund & <b>bold</b> words.", "| Pass | Size |\n| --- | ---: |\n| 1 | 12.02 |\n\nDone.",
            "- one\n- two\n", "> Said the drawing.\n", "## A heading\n\nUnder it.", "`G1 X2`", "Steam and gas were off.", "See [the maker](https://example.org/a_b?c=1&d=2).", "1/2 in. or 12.7 mm", "Ümlaut’s “quotes” – and ½.",
        ];

#pragma warning disable CA5394 // Repeatable on purpose.
        private readonly Random random = new(seed);
        private readonly Dictionary<string, string?> before = new(StringComparer.Ordinal);
        private DateTime clock = new(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);
        private bool hasLook;
        private int added;

        public DateOnly Today { get; private set; } = Journals.Today;

        public string? Template => hasLook ? look : null;

        public string Edit(bool onlyWords)
        {
            before.Clear();
            hasLook &= random.Next(2) == 0;
            var edits = onlyWords
                ? [AddSentence, AddSentence, CutSentence, OtherWords, SwapWords]
                : (Func<string>[])[OtherHours, OtherTitle, Hide, AddEntry, DeleteEntry, RenameEntry, OtherPart, OtherTool, OtherLesson, OtherJournal, OtherLook, NoWords, TwoAtOnce, NextDay];
            return edits[random.Next(edits.Length)]();
        }

        public void TakeBack()
        {
            foreach (var (path, text) in before)
            {
                if (text is null)
                {
                    File.Delete(path);
                }
                else
                {
                    File.WriteAllText(path, text);
                }
            }

            SettleTimes();
        }

        // Files that were written just now are not trusted, and a test will not wait for them to grow older.
        public void SettleTimes()
        {
            clock = clock.AddMinutes(1);
            foreach (var path in Directory.EnumerateFiles(journal.Folder, "*", SearchOption.AllDirectories).Where(path => File.GetLastWriteTimeUtc(path) > clock))
            {
                File.SetLastWriteTimeUtc(path, clock);
            }
        }

        private string AddSentence() => InText(AnyEntry(), text => text.TrimEnd() + "\n\n" + Sentences[random.Next(Sentences.Length)] + "\n");

        private string CutSentence() => InText(AnyEntry(), text => text.LastIndexOf(". ", StringComparison.Ordinal) is > 0 and var at ? text[..(at + 1)] + "\n" : text + "More.\n");

        private string OtherWords() => InText(AnyEntry(), text => Word().Replace(text, match => random.Next(6) == 0 ? Sentences[random.Next(2)].Split(' ')[random.Next(4)] : match.Value));

        private string SwapWords() => InText(AnyEntry(), text => string.Join("\n\n", text.Split("\n\n").OrderBy(_ => random.Next())) + "\n");

        private string NoWords() => InText(AnyEntry(), _ => "");

        private string OtherHours() => InKeys(AnyEntry(), keys => Hours().Replace(keys, $"$1 {random.Next(20, 200)}m", 1));

        private string OtherTitle() => InKeys(AnyEntry(), keys => keys.Contains("title:", StringComparison.Ordinal) ? TitleLine().Replace(keys, $"title: Another title {random.Next(99)}", 1) : keys + $"title: A title {random.Next(99)}\n");

        private string Hide() => InKeys(AnyEntry(), keys => keys.Contains("publish:", StringComparison.Ordinal) ? PublishLine().Replace(keys, "", 1) : keys + (random.Next(2) == 0 ? "publish: never\n" : "publish: after 2026-12-02\n"));

        private string OtherLesson() => InKeys(AnyEntry(), keys => LessonText().Replace(keys, match => match.Value.TrimEnd() + " again", 1));

        private string OtherPart() => Change(Any("build.yaml"), text => TitleKey().Replace(text, match => match.Value + " B", 1 + random.Next(3)));

        private string OtherTool() => Change(journal.PathOf("tools.yaml"), text => TitleKey().Replace(text, match => match.Value + " mark II", 1));

        private string OtherJournal() => Change(journal.PathOf("journal.yaml"), text => TitleKey().Replace(text, match => match.Value + " too", 1));

        private string AddEntry()
        {
            var like = AnyEntry();
            var date = Today.AddDays(-random.Next(300)).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            var part = PartId().Match(File.ReadAllText(Path.Combine(BuildOf(like), "build.yaml"))).Groups[1].Value;
            return Change(Path.Combine(BuildOf(like), $"{date}-added-{added++}.md"), _ => $"---\npart: {part}\noperation: filing\nhours: {random.Next(10, 90)}m\n---\n{Sentences[random.Next(Sentences.Length)]}\n");
        }

        private string DeleteEntry() => Change(AnyEntry(), _ => null);

        private string RenameEntry()
        {
            var entry = AnyEntry();
            var text = File.ReadAllText(entry);
            Change(entry, _ => null);
            return Change(Path.Combine(Path.GetDirectoryName(entry)!, $"{Path.GetFileNameWithoutExtension(entry)}-renamed.md"), _ => text);
        }

        private string OtherLook()
        {
            hasLook = true;
            Directory.CreateDirectory(Path.Combine(look, "pieces"));
            File.WriteAllText(Path.Combine(look, "extra.txt"), $"{random.Next()}");
            return "another look";
        }

        private string TwoAtOnce() => AddSentence() + " and " + AddSentence();

        private string NextDay()
        {
            Today = Today.AddDays(1);
            return "the next day";
        }

        private string InText(string entry, Func<string, string> edit) => Change(entry, text =>
        {
            var end = text!.IndexOf("\n---", 3, StringComparison.Ordinal) + 5;
            return text[..end] + edit(text[end..]);
        });

        private string InKeys(string entry, Func<string, string> edit) => Change(entry, text =>
        {
            var end = text!.IndexOf("\n---", 3, StringComparison.Ordinal) + 1;
            return edit(text[..end]) + text[end..];
        });

        private string Change(string path, Func<string, string?> edit)
        {
            before.TryAdd(path, File.Exists(path) ? File.ReadAllText(path) : null);
            if (edit(File.Exists(path) ? File.ReadAllText(path) : "") is { } text)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllText(path, text);
            }
            else
            {
                File.Delete(path);
            }

            return Path.GetRelativePath(journal.Folder, path);
        }

        private string AnyEntry()
        {
            string[] entries = [.. Directory.EnumerateFiles(journal.Folder, "*.md", SearchOption.AllDirectories).Where(path => File.ReadAllText(path).StartsWith("---", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
            return entries[random.Next(entries.Length)];
        }

        private string Any(string name)
        {
            string[] files = [.. Directory.EnumerateFiles(journal.Folder, name, SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
            return files[random.Next(files.Length)];
        }

        private static string BuildOf(string entry)
        {
            var folder = Path.GetDirectoryName(entry)!;
            while (!File.Exists(Path.Combine(folder, "build.yaml")))
            {
                folder = Path.GetDirectoryName(folder)!;
            }

            return folder;
        }
#pragma warning restore CA5394

        [GeneratedRegex(@"[a-z]{4,}")]
        private static partial Regex Word();

        [GeneratedRegex(@"(hours:) *[^,}\n]+")]
        private static partial Regex Hours();

        [GeneratedRegex(@"^title:.*$", RegexOptions.Multiline)]
        private static partial Regex TitleLine();

        [GeneratedRegex(@"^publish:.*\n", RegexOptions.Multiline)]
        private static partial Regex PublishLine();

        [GeneratedRegex(@"title: *[A-Za-z][A-Za-z ]*[a-z]")]
        private static partial Regex TitleKey();

        [GeneratedRegex(@"text: *[A-Z][A-Za-z ,]*[a-z]")]
        private static partial Regex LessonText();

        [GeneratedRegex(@"id: *([a-z0-9-]+)")]
        private static partial Regex PartId();
    }
}
