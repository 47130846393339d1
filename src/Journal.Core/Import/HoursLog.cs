using System.Globalization;
using System.Text;
using Journal.Core.Model;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Problems;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;

namespace Journal.Core.Import;

/// <summary>Hours from a table: one row for one stretch of work.</summary>
public sealed class HoursLog
{
    private const int MostRowsOfAnEntry = 200;
    private const int LongestNotes = 60_000;
    private const int Day = 24 * 60;
    private static readonly string[] Telling = ["part", "operation", "note"];
    private readonly Dictionary<string, string> parts = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<DateOnly, int> minutes = [];
    private readonly Build build;
    private readonly Vocabulary words;
    private readonly DateForms dates;
    private readonly DateOnly today;
    private readonly TakenMarks marks;
    private readonly NoteWords? notes;
    private readonly string file;
    private int width;
    private char separator;
    private IReadOnlyDictionary<string, int> places = new Dictionary<string, int>();

    private HoursLog(string file, Build build, Vocabulary words, DateForms dates, DateOnly today, TakenMarks marks, NoteWords? notes)
    {
        (this.file, this.build, this.words, this.dates, this.today, this.marks, this.notes) = (file, build, words, dates, today, marks, notes);
        foreach (var part in build.Parts)
        {
            parts.TryAdd(part.Title, part.Id.Value);
        }

        foreach (var part in build.Parts)
        {
            parts[part.Id.Value] = part.Id.Value;
        }
    }

    private sealed record Row(int Line, DateOnly Date, string Part, string Operation, Minutes Time, string Note, string Mark)
    {
        /// <summary>What its note says beside the job; null where it was not read.</summary>
        public Amendment? Facts { get; init; }

        /// <summary>How many keys were read from its note.</summary>
        public int Sure { get; init; }
    }

    /// <summary>Reads a table into entries of a build.</summary>
    /// <param name="path">The file.</param>
    /// <param name="buildFolder">The build's folder on the disk.</param>
    /// <param name="build">The build.</param>
    /// <param name="words">The words that the journal knows.</param>
    /// <param name="columns">Which column holds what.</param>
    /// <param name="dates">How dates are written.</param>
    /// <param name="separator">What parts the fields; null to see it from the first line.</param>
    /// <param name="today">The day after which nothing can have been done.</param>
    /// <param name="notes">Reads what was done from the notes of rows that do not say it; null to leave it blank.</param>
    /// <exception cref="ImportException">Nothing can be taken in.</exception>
    public static ImportedLog Read(string path, string buildFolder, Build build, Vocabulary words, Columns columns, DateForms dates, char? separator, DateOnly today, NoteWords? notes)
    {
        var text = OlderText.Of(OlderText.BytesOf(path)) ?? throw new ImportException($"{Path.GetFileName(path)} is not UTF-8 text. Save it with the encoding UTF-8, then try again.");
        var parts = separator ?? CsvReader.SeparatorOf(text);
        var records = CsvReader.Read(text, parts).Where(record => !record.IsBlank).ToList();
        if (records.Count == 0)
        {
            throw new ImportException($"{Path.GetFileName(path)} is empty.");
        }

        var (places, hasHeadings) = columns.In(records[0]);
        var log = new HoursLog(Path.GetFileName(path), build, words, dates, today, TakenMarks.In(buildFolder), notes) { places = places, width = records[0].Fields.Count, separator = parts };
        hasHeadings |= log.LooksLikeHeadings(records[0]);
        var rest = hasHeadings ? records.Skip(1).ToList() : records;
        log.RefuseOpenDates(rest);
        if (columns == Columns.Usual && log.FreeText(rest) is { } note)
        {
            log.places = new Dictionary<string, int>(log.places) { ["note"] = note };
        }

        return log.Read(rest, EntryNames.In(buildFolder));
    }

    private ImportedLog Read(List<CsvRecord> records, EntryNames names)
    {
        var (rows, faults, already) = (new List<Row>(), new List<ImportFault>(), 0);
        foreach (var record in records)
        {
            var (row, fault) = Read(record);
            if (fault is not null)
            {
                faults.Add(new ImportFault(file, record.Line, fault));
            }
            else if (marks.Has(row!.Mark))
            {
                already++;
            }
            else if (Adds(row.Date, row.Time) is { } tooMuch)
            {
                faults.Add(new ImportFault(file, record.Line, tooMuch));
            }
            else
            {
                rows.Add(row);
            }
        }

        var entries = rows.GroupBy(row => row.Date).OrderBy(day => day.Key).SelectMany(Portions).Select(portion => Entry(portion, names)).ToList();
        return new ImportedLog(entries, [.. rows.Select(Shown)], faults, already);
    }

    private (Row? Row, string? Fault) Read(CsvRecord record)
    {
        // What lies beyond the first line's columns belongs to one of them, and would be lost.
        if (record.Fields.Skip(width).Any(field => !string.IsNullOrWhiteSpace(field)))
        {
            return (null, string.Create(CultureInfo.InvariantCulture, $"it has {record.Fields.Count} columns where the first line has {width}; put fields that contain {Sign} in double quotes"));
        }

        if (dates.Read(Field(record, "date")).Date is not { } date)
        {
            return (null, Field(record, "date").Length == 0 ? "there is no date" : $"“{Field(record, "date")}” is not a date like {dates.Written}");
        }

        if (date > today)
        {
            return (null, $"{Dates.Write(date)} is in the future; today is {Dates.Write(today)}");
        }

        var (time, fault) = WrittenHours.Read(Field(record, "hours"));
        if (fault is not null && !(Field(record, "hours").Length == 0 && SaysWhatWasDone(record)))
        {
            return (null, fault);
        }

        var (part, operation) = (PartOf(Field(record, "part")), OperationOf(Field(record, "operation")));
        if (part is null)
        {
            return (null, $"the build has no part “{Field(record, "part")}”; {Suggestion.For(Slug.Of(Field(record, "part")), [.. build.Parts.Select(one => one.Id.Value)], "parts")} Add it to build.yaml, then take the file in again");
        }

        var told = "";
        if (operation is null && IsTold(Field(record, "operation")))
        {
            (operation, told) = ("", Field(record, "operation"));
        }

        if (operation is null)
        {
            return (null, $"there is no operation “{Field(record, "operation")}”; {Suggestion.For(Slug.Of(Field(record, "operation")), [.. words.Operations.Spellings], "operations")} New words go under `operations` in journal.yaml");
        }

        var note = string.Join("\n\n", new[] { told, Field(record, "note") }.Where(text => text.Length > 0)).ReplaceLineEndings("\n").Trim();
        if (note.Length > LongestNotes)
        {
            return (null, "its note is longer than an entry can be");
        }

        var mark = marks.OfRow(string.Join('\n', Dates.Write(date), part, operation, time.Count.ToString(CultureInfo.InvariantCulture), note));
        return (Told(new Row(record.Line, date, part, operation, time, note, mark), isPartSaid: Field(record, "part").Length > 0), null);
    }

    // A row that says what was done needs no reading, and a table of years may have many.
    private Row Told(Row row, bool isPartSaid)
    {
        if (notes is null || row.Operation.Length > 0 || row.Note.Length == 0)
        {
            return row;
        }

        var said = new ProposedJob { Parts = isPartSaid && row.Part != "whole" ? [new(row.Part)] : [], Time = row.Time == Minutes.Zero ? null : row.Time };
        var told = notes.Read(row.Note, row.Date, said);
        if (told.Jobs is not [var job])
        {
            return row;
        }

        var isPartRead = !isPartSaid && job.Parts.Count > 0;
        var isTimeRead = row.Time == Minutes.Zero && job.Hours.Length > 0;
        return row with
        {
            Part = isPartRead ? Joined(job.Parts) : row.Part,
            Operation = Joined(job.Operations),
            Time = isTimeRead ? HoursText.TimeOf(job.Hours) : row.Time,
            Facts = told.Facts,
            Sure = told.Facts.Count + (isPartRead ? 1 : 0) + (job.Operations.Count > 0 ? 1 : 0) + (isTimeRead ? 1 : 0),
        };
    }

    // As a list within braces.
    private static string Joined(IReadOnlyList<string> ids) => ids.Count > 1 ? $"[{string.Join(", ", ids)}]" : ids.Count == 1 ? ids[0] : "";

    // Nobody works more than a day on a day; an entry that says so would be an error.
    private string? Adds(DateOnly date, Minutes time)
    {
        var sum = minutes.GetValueOrDefault(date) + time.Count;
        if (sum > Day)
        {
            return $"with this, {Dates.Write(date)} would have {new Minutes(sum)} of work, more than 24 hours";
        }

        minutes[date] = sum;
        return null;
    }

    private string Sign => separator == '\t' ? "a tab" : $"`{separator}`";

    private string? PartOf(string text) => text.Length == 0 || text.Equals("whole", StringComparison.OrdinalIgnoreCase) ? "whole"
        : parts.GetValueOrDefault(text) ?? parts.GetValueOrDefault(Slug.Of(text));

    private string? OperationOf(string text) => text.Length == 0 ? ""
        : words.Operations.TryFind(text, out var word) || words.Operations.TryFind(Slug.Of(text), out word) ? word.Value
        : null;

    private string Field(CsvRecord record, string what) => places.TryGetValue(what, out var place) && place < record.Fields.Count ? record.Fields[place].Trim() : "";

    private bool LooksLikeHeadings(CsvRecord first) => !Field(first, "date").Any(char.IsAsciiDigit) && !Field(first, "hours").Any(char.IsAsciiDigit);

    private void RefuseOpenDates(List<CsvRecord> records)
    {
        foreach (var record in records)
        {
            if (dates.Read(Field(record, "date")).Open is { } open)
            {
                throw new ImportException($"Line {record.Line.ToString(CultureInfo.InvariantCulture)}: {open.Question}.") { Open = open };
            }
        }
    }

    // A row without hours still tells of an evening if it says more than the day.
    private bool SaysWhatWasDone(CsvRecord record) => Telling.Any(what => Field(record, what).Length > 0);

    // Words that tell what was done, and not a slip in the name of an operation.
    private bool IsTold(string text) => text.Contains(' ', StringComparison.Ordinal) && Suggestion.Nearest(Slug.Of(text), words.Operations.Spellings) is null;

    // The column that nothing else is read from and that holds most words; null where none holds several words to a field.
    private int? FreeText(List<CsvRecord> records)
    {
        var taken = places.Values.ToHashSet();
        var columns = from place in places.ContainsKey("note") ? [] : Enumerable.Range(0, width)
                      where !taken.Contains(place)
                      let fields = records.Where(record => place < record.Fields.Count).Select(record => record.Fields[place].Trim()).Where(field => field.Length > 0).ToList()
                      where 2 * fields.Count(field => field.Contains(' ', StringComparison.Ordinal)) > fields.Count
                      orderby fields.Sum(field => (long)field.Length) descending
                      select (int?)place;
        return columns.FirstOrDefault();
    }

    private static IEnumerable<List<Row>> Portions(IGrouping<DateOnly, Row> day)
    {
        var (portion, length) = (new List<Row>(), 0);
        foreach (var row in day)
        {
            if (portion.Count == MostRowsOfAnEntry || length + row.Note.Length > LongestNotes)
            {
                yield return portion;
                (portion, length) = ([], 0);
            }

            portion.Add(row);
            length += row.Note.Length + 2;
        }

        yield return portion;
    }

    private static NewEntryFile Entry(List<Row> rows, EntryNames names)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"---\ntitle: Hours taken in\ndate: {Dates.Write(rows[0].Date)}\njobs:\n");
        foreach (var row in rows)
        {
            var operation = row.Operation.Length == 0 ? "" : $", operation: {row.Operation}";
            var hours = row.Time == Minutes.Zero ? "" : $", hours: {row.Time}";
            text.Append(CultureInfo.InvariantCulture, $"  - {{part: {row.Part}{operation}{hours}}} {TakenMarks.Comment(row.Mark)}\n");
        }

        var facts = rows.Index().Where(row => row.Item.Facts is not null).Select(row => row.Item.Facts!.OfJob(row.Index + 1)).Aggregate(new Amendment(), (all, one) => all.With(one));
        text.Append(NewEntry.Beside(new WriteUp { Facts = facts })).Append("---\n").AppendJoin("\n\n", rows.Select(row => row.Note).Where(note => note.Length > 0).Distinct(StringComparer.Ordinal));
        if (text[^1] != '\n')
        {
            text.Append('\n');
        }

        return new NewEntryFile(names.New($"{Dates.Write(rows[0].Date)}-hours"), Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static ImportedRow Shown(Row row)
    {
        var line = row.Note.Split('\n')[0];
        return new ImportedRow(row.Line.ToString(CultureInfo.InvariantCulture), row.Date, row.Part.Trim('[', ']'), row.Operation.Trim('[', ']'), row.Time, line.Length > 60 ? line[..60] + "…" : line) { Missing = row.Time == Minutes.Zero ? "hours" : "", Sure = row.Sure };
    }
}
