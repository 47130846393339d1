using System.IO.Enumeration;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Core.Parsing.Values;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Core.Import;

/// <summary>
/// A folder of notes: each becomes an entry whose text is the note, byte for byte, behind front matter with what can be
/// known, and what its words say for sure. What is missing is left blank, and <c>journal check</c> finds it there.
/// </summary>
public sealed partial class NoteFolder
{
    private const int LongestBody = 65_536;
    private const int FirstLines = 5;
    private readonly DateForms dates;
    private readonly DateOnly today;
    private readonly TakenMarks marks;
    private readonly EntryNames names;
    private readonly NoteWords? words;
    private AmbiguousDate? open;

    private NoteFolder(string buildFolder, DateForms dates, DateOnly today, NoteWords? words) =>
        (this.dates, this.today, this.words, marks, names) = (dates, today, words, TakenMarks.In(buildFolder), EntryNames.In(buildFolder));

    /// <summary>Reads notes into entries of a build.</summary>
    /// <param name="folder">The folder with the notes.</param>
    /// <param name="buildFolder">The build's folder on the disk.</param>
    /// <param name="dates">How dates are written in names, headings and first lines.</param>
    /// <param name="today">The day after which no note can have been written.</param>
    /// <param name="words">Reads what the notes say in plain words; null to leave all of it blank.</param>
    public static ImportedLog Read(string folder, string buildFolder, DateForms dates, DateOnly today, NoteWords? words)
    {
        var notes = new NoteFolder(buildFolder, dates, today, words);
        var (entries, rows, faults, already) = (new List<NewEntryFile>(), new List<ImportedRow>(), new List<ImportFault>(), 0);
        var files = Files(folder).ToLookup(IsNote);
        foreach (var path in files[true])
        {
            var name = NameIn(folder, path);
            var bytes = OlderText.BytesOf(path);
            var (entry, row, fault) = notes.Read(path, name, bytes);
            if (fault is not null)
            {
                faults.Add(fault);
            }
            else if (entry is null)
            {
                already++;
            }
            else
            {
                entries.Add(entry);
                rows.Add(row!);
            }
        }

        return new ImportedLog(entries, rows, faults, already) { IsOfNotes = true, Open = notes.open, PassedOver = [.. files[false].Select(path => NameIn(folder, path))] };
    }

    // A link may lead anywhere, and round in a circle.
    private static IEnumerable<string> Files(string folder) => new FileSystemEnumerable<string>(
        folder,
        (ref found) => found.ToFullPath(),
        new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.Hidden, IgnoreInaccessible = true })
    {
        ShouldIncludePredicate = (ref found) => !found.IsDirectory || IsLink(found.Attributes),
        ShouldRecursePredicate = (ref found) => !IsLink(found.Attributes),
    }.Order(StringComparer.Ordinal);

    private static bool IsNote(string path) => Path.GetExtension(path).ToLowerInvariant() is ".md" or ".markdown" or ".txt" or ".text" && !IsLink(File.GetAttributes(path));

    private static bool IsLink(FileAttributes attributes) => (attributes & FileAttributes.ReparsePoint) != 0;

    private static string NameIn(string folder, string path) => Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/');

    // Neither an entry nor a fault where it was taken in before.
    private (NewEntryFile? Entry, ImportedRow? Row, ImportFault? Fault) Read(string path, string name, byte[] bytes)
    {
        var body = OlderText.WithoutMark(bytes);
        if (OlderText.Of(bytes) is not { } text || bytes.AsSpan().StartsWith(Encoding.Unicode.Preamble) || bytes.AsSpan().StartsWith(Encoding.BigEndianUnicode.Preamble))
        {
            return (null, null, new ImportFault(name, 1, "it is not UTF-8 text; save it with the encoding UTF-8"));
        }

        if (string.IsNullOrWhiteSpace(text) || text.Length > LongestBody)
        {
            return (null, null, new ImportFault(name, 1, string.IsNullOrWhiteSpace(text) ? "it is empty" : "it is longer than an entry can be; split it in two"));
        }

        var heading = Heading(text);
        var (date, isOfFile, fault) = DateOf(path, heading, text);
        if (fault is not null)
        {
            return (null, null, new ImportFault(name, 1, fault));
        }

        // YAML has many ways to write a key; the word alone is enough to leave it to the maker.
        if (FrontMatter().Match(text) is { Success: true } own && own.Value.Contains("publish", StringComparison.OrdinalIgnoreCase))
        {
            return (null, null, new ImportFault(name, 1, "it has `publish` in its own front matter, which would have no effect here; move the file itself to the build's folder"));
        }

        // The same words may be written on two days. A file's time is no day that the maker wrote.
        var mark = isOfFile ? TakenMarks.Of(bytes) : TakenMarks.Of([.. Encoding.UTF8.GetBytes($"{Dates.Write(date)}\n"), .. bytes]);
        if (marks.Has(mark))
        {
            return (null, null, null);
        }

        var title = Title(path, heading);
        var told = words?.Read(text, date) ?? new ToldEvening([], new Amendment(), []);
        var front = $"---\n{(title.Length == 0 ? "" : $"title: \"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(title)}\"\n")}date: {Dates.Write(date)}\n{NewEntry.WithGaps(told.Jobs)}{NewEntry.Beside(new WriteUp { Facts = told.Facts })}{TakenMarks.Comment(mark)}\n---\n";
        var slug = Slug.Of(title);
        var file = names.New(title.Length == 0 || slug == Slug.Of("") ? $"{Dates.Write(date)}-note" : $"{Dates.Write(date)}-{slug}");
        return (new NewEntryFile(file, (byte[])[.. Encoding.UTF8.GetBytes(front), .. body]), Row(name, date, title, told) with { IsDateOfFile = isOfFile }, null);
    }

    private static ImportedRow Row(string name, DateOnly date, string title, ToldEvening told)
    {
        bool Lacks(Func<NewJob, bool> says) => told.Jobs.Count == 0 || !told.Jobs.All(says);
        var missing = new[]
        {
            Lacks(job => job.Parts.Count > 0) ? "part" : null,
            Lacks(job => job.Operations.Count > 0) ? "operation" : null,
            Lacks(job => job.Hours.Length > 0) ? "hours" : null,
        };
        var (parts, operations) = (told.Jobs.SelectMany(job => job.Parts).Distinct(), told.Jobs.SelectMany(job => job.Operations).Distinct());
        return new ImportedRow(name, date, string.Join(", ", parts), string.Join(", ", operations), told.Jobs.Select(job => HoursText.TimeOf(job.Hours)).Sum(), title)
        {
            Missing = string.Join(", ", missing.OfType<string>()),
            Sure = told.Keys,
        };
    }

    // The name tells best, then the heading, then a line at the beginning that is a date and no more. The file's own time is no day
    // that the maker wrote: it changes with every copy.
    private (DateOnly Date, bool IsOfFile, string? Fault) DateOf(string path, string heading, string text)
    {
        AmbiguousDate? ambiguous = null;
        foreach (var reading in new[] { Path.GetFileNameWithoutExtension(path), heading }.Select(dates.FindIn).Concat(DateLines(text).Select(dates.Read)))
        {
            if (reading.Date is { } date && date <= today)
            {
                return (date, false, null);
            }

            ambiguous ??= reading.Open;
        }

        if (ambiguous is not null)
        {
            open ??= ambiguous;
            return (default, false, ambiguous.Question);
        }

        if (!dates.TakesFileDates)
        {
            return (default, false, "there is no date in its name or its first lines; write one there, or take the file's own date with `--dates file`");
        }

        var written = DateOnly.FromDateTime(File.GetLastWriteTime(path));
        return (written > today ? today : written, true, null);
    }

    // “Date: 5 Nov 2023”, “Sunday, 5.11.2023”.
    private static IEnumerable<string> DateLines(string text) => text.Split('\n')
        .Select(line => line.Trim())
        .Where(line => line.Length > 0)
        .Take(FirstLines)
        .Select(line => BeforeDate().Replace(line.Trim('#', '*', '_', ' ', '"', '.', ':', ','), ""));

    private static string Title(string path, string heading)
    {
        var title = Bare(heading);
        return title.Length > 0 ? title : Bare(Path.GetFileNameWithoutExtension(path).Replace('_', ' ').Replace('-', ' '));
    }

    // Without marks of Markdown, and without a date at either end.
    private static string Bare(string text) => DateAtEnd().Replace(DateAtStart().Replace(text.Trim().TrimStart('#').Trim(), ""), "").Trim(' ', ':', '-', '–', ',', '.');

    private static bool IsDate(string line) => DateForms.Untold.Read(BeforeDate().Replace(line.Trim('#', '*', '_', ' ', '.', ':', ','), "")) is { Date: not null } or { Open: not null };

    // The first line with words on it, a date alone being none: a heading of Markdown, or what a plain note begins with if it is short.
    private static string Heading(string text)
    {
        var lines = text.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0).Take(FirstLines).ToList();
        var first = lines.Find(line => !IsDate(line)) ?? "";
        return first.StartsWith('#') || first.Length <= 80 ? first : "";
    }

    // What is not closed goes on to the end: rather one note too many for the maker's own hands than one published.
    [GeneratedRegex(@"\A\s*---[ \t]*[\r\n].*?(?:[\r\n](?:---|\.\.\.)[ \t]*(?:[\r\n]|\z)|\z)", RegexOptions.CultureInvariant | RegexOptions.Singleline)]
    private static partial Regex FrontMatter();

    [GeneratedRegex(@"^(?:\p{L}+\s*[:,]\s*|\p{L}+day\s+)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex BeforeDate();

    [GeneratedRegex(@"^[0-9]{1,4}[ ./-]?[0-9]{1,2}[ ./-]?[0-9]{1,4}[ :,.–-]*", RegexOptions.CultureInvariant)]
    private static partial Regex DateAtStart();

    [GeneratedRegex(@"[ :,.–-]*[0-9]{1,4}[ ./-][0-9]{1,2}[ ./-][0-9]{1,4}$", RegexOptions.CultureInvariant)]
    private static partial Regex DateAtEnd();
}
