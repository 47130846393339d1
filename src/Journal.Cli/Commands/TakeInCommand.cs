using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;
using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Checking;
using Journal.Core.Import;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Commands;

/// <summary><c>journal take-in</c>: an older log into the journal.</summary>
internal static class TakeInCommand
{
    private const int MostShown = 20;
    private const int MostNamed = 6;

    private sealed record ImportRequest(string From, string? Journal, string? Build, Columns? Columns, DateForms Dates, char? Separator, bool DryRun, bool LeavesBlank, DateOnly? Today);

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var from = new Argument<string>("file or folder") { Description = "A table of hours (CSV), or a folder of notes (Markdown or plain text)." };
        var (folder, today) = (InOption.Create(), TodayOption.Create(hidden: true));
        var build = new Option<string?>("--build") { Description = "The build that it belongs to. Default: the only one.", HelpName = "build" };
        var columns = new Option<Columns?>("--columns") { Description = "Which column holds what, by letter or heading: date, part, operation, hours, note.", HelpName = "date=A,hours=D,…", CustomParser = ReadColumns };
        var dates = new Option<DateForms?>("--dates")
        {
            Description = "How dates are written; several formats with commas between. `file` takes the file's own date where a note gives none. Default: dates that can be read in one way only.",
            HelpName = "dd.mm.yyyy,…",
            CustomParser = ReadDates,
            Arity = ArgumentArity.OneOrMore,
        };
        var separator = new Option<char?>("--separator") { Description = "Column separator. Default: detected from the first line.", HelpName = ",|;|tab", CustomParser = ReadSeparator };
        var dryRun = new Option<bool>("--dry-run") { Description = "Only show what would be taken in." };
        var blank = new Option<bool>("--blank") { Description = "Leave blank what only the words of a note say. Default: what is sure is read from them." };
        separator.CompletionSources.Add(_ => [new CompletionItem(","), new CompletionItem(";"), new CompletionItem("tab")]);
        var command = new ExampledCommand("take-in", "Take an older log into the journal: hours from a table, or a folder of notes.", "journal take-in hours.csv --build drill --columns date=A,hours=D --dry-run")
        {
            from, build, columns, dates, separator, blank, dryRun, folder, today,
        };
        command.SetAction(asked => Run(
            new ImportRequest(asked.GetRequiredValue(from), asked.GetValue(folder), asked.GetValue(build), asked.GetValue(columns), asked.GetValue(dates) ?? DateForms.Untold, asked.GetValue(separator), asked.GetValue(dryRun), asked.GetValue(blank), asked.GetValue(today)),
            terminal));
        return command;
    }

    private static int Run(ImportRequest request, Terminal terminal)
    {
        if (JournalPlace.Find(request.Journal, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(request.Journal, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        terminal.IfStopped(() => "Nothing was taken in.");
        var today = request.Today ?? terminal.TodayAt(folder);
        var reading = JournalReader.Read(folder, today);
        if (reading.Journal is not { } journal)
        {
            terminal.Complain("The journal cannot be read: see `journal check`. Nothing was taken in.");
            return ExitStatus.Flawed;
        }

        if (BuildOf(request.Build, journal, terminal) is not { } build)
        {
            return ExitStatus.WrongUse;
        }

        var buildFolder = Path.Combine(folder, build.Folder.Replace('/', Path.DirectorySeparatorChar));
        try
        {
            request = terminal.CanAsk ? Settled(request, journal, build, buildFolder, today, terminal) : request;
            // Two at once would take each other's half-done folder away.
            using var slate = request.DryRun ? null : SlateFile.Take(folder, terminal.Complain);
            return Read(request, journal, build, buildFolder, today, terminal) is { } log ? Take(request, log, build, buildFolder, terminal) : ExitStatus.WrongUse;
        }
        catch (ImportException e)
        {
            terminal.Complain($"{e.Message} Nothing was taken in.");
            return ExitStatus.WrongUse;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            terminal.Complain($"Could not finish: {DiskTrouble.InWords(e)} Nothing was taken in.");
            return ExitStatus.NotFinished;
        }
    }

    // Asks how dates are written that can be read in several ways, until all can be read.
    private static ImportRequest Settled(ImportRequest request, MakerJournal journal, Build build, string buildFolder, DateOnly today, Terminal terminal)
    {
        while (Open() is { } open)
        {
            List<string> forms = [.. open.CouldBe.Select(form => form.Written)];
            var form = new Questions(terminal).Choose($"Which number of “{open.Text}” is the day?", null, new Options.Choices("forms", forms, forms, word => forms.Contains(word) ? word : null));
            request = request with { Dates = request.Dates.With(open.CouldBe[forms.IndexOf(form!)]) };
        }

        return request;

        AmbiguousDate? Open()
        {
            try
            {
                return Exists(request, terminal) ? Read(request, journal, build, buildFolder, today, terminal)?.Open : null;
            }
            catch (ImportException e)
            {
                return e.Open;
            }
        }
    }

    private static bool Exists(ImportRequest request, Terminal terminal) => Path.Exists(Path.GetFullPath(request.From, terminal.Folder));

    private static Build? BuildOf(string? named, MakerJournal journal, Terminal terminal)
    {
        var builds = journal.Builds.Select(build => build.Id.Value).ToList();
        if (named is null && builds.Count == 1)
        {
            return journal.Builds[0];
        }

        if (named is not null && journal.Builds.FirstOrDefault(build => build.Id.Value == named) is { } found)
        {
            return found;
        }

        terminal.Complain(named is null ? $"Which build does it belong to? Name it with `--build`: {string.Join(", ", builds)}." : $"There is no build `{named}`. {Suggestion.For(named, builds, "builds")}");
        return null;
    }

    private static ImportedLog? Read(ImportRequest request, MakerJournal journal, Build build, string buildFolder, DateOnly today, Terminal terminal)
    {
        var from = Path.GetFullPath(request.From, terminal.Folder);
        var words = request.LeavesBlank ? null : new NoteWords(journal, build);
        if (Directory.Exists(from))
        {
            return NoteFolder.Read(from, buildFolder, request.Dates, today, words);
        }

        if (File.Exists(from))
        {
            return HoursLog.Read(from, buildFolder, build, journal.Vocabulary, request.Columns ?? Columns.Usual, request.Dates, request.Separator, today, words);
        }

        terminal.Complain($"There is no file or folder {from}.");
        return null;
    }

    private static int Take(ImportRequest request, ImportedLog log, Build build, string buildFolder, Terminal terminal)
    {
        var print = new Printout(terminal);
        Show(log, print);
        var isStored = !request.DryRun && log.Entries.Count > 0;
        if (isStored)
        {
            terminal.IfStopped(() => $"Either all of it was taken in, to a new folder in {build.Folder}, or nothing was.");
        }

        var stored = isStored ? EntryStore.Store(log, buildFolder) : null;
        print.Gap();
        print.Say(Summary(request, log, build));
        if (stored is not null)
        {
            print.Say($"They are in {build.Folder}/{stored}; delete that folder if it is not what you want.");
        }

        if (SureOf(log) is { } sure)
        {
            print.Say(sure);
        }

        if (log.Rows.Where(row => StandsAlready(row, build)).Select(row => row.From).ToList() is { Count: > 0 } twice)
        {
            print.Say($"The journal already has work of the same length on the same day, so these may now be in it twice: {Few(twice)}.");
        }

        if (log.Rows.Any(row => row.Missing.Length > 0) && !request.DryRun)
        {
            print.Say("What is missing was left blank; `journal check` shows where.");
        }

        if (log.PassedOver.Count > 0)
        {
            print.Say($"Skipped (only files ending in .md, .markdown, .txt or .text are read, and links are not followed): {Few(log.PassedOver)}.");
        }

        foreach (var fault in log.Faults)
        {
            terminal.Complain(string.Create(CultureInfo.InvariantCulture, $"{fault.File}, line {fault.Line}: {fault.Reason}."));
        }

        return log.Faults.Count > 0 ? ExitStatus.Flawed : ExitStatus.Well;
    }

    private static void Show(ImportedLog log, Printout print)
    {
        if (log.Rows.Count == 0)
        {
            return;
        }

        var rows = log.Rows.Take(MostShown);
        if (log.IsOfNotes)
        {
            print.Table(
                [Column.Words("Note"), Column.Words("Date"), Column.Words("Part"), Column.Words("Operation"), Column.Figures("Hours"), Column.Figures("Sure of"), Column.Words("Missing")],
                rows.Select(row => new[] { row.From, Written.Date(row.Date), row.Part, row.Operation, Hours(row), row.Sure.ToString(CultureInfo.InvariantCulture), row.Missing }));
        }
        else
        {
            print.Table(
                [Column.Figures("Line"), Column.Words("Date"), Column.Words("Part"), Column.Words("Operation"), Column.Figures("Hours"), Column.Words("Note")],
                rows.Select(row => new[] { row.From, Written.Date(row.Date), row.Part, row.Operation, Hours(row), row.Note }));
        }

        if (log.Rows.Count > MostShown)
        {
            print.Say($"… and {Count.Of(log.Rows.Count - MostShown, "more", "more")}");
        }

        if (log.Rows.Where(row => row.IsDateOfFile).Select(row => row.From).ToList() is { Count: > 0 } undated)
        {
            print.Gap();
            print.Say($"Dated by the files' own times, as the notes give no date: {string.Join(", ", undated)}.");
        }
    }

    private static string Hours(ImportedRow row) => row.Time == Minutes.Zero ? "" : Written.Time(row.Time);

    // How much was read from the words, so that the maker knows where to look.
    private static string? SureOf(ImportedLog log)
    {
        var (keys, read) = (log.Rows.Sum(row => row.Sure), log.Rows.Count(row => row.Sure > 0));
        return keys == 0 ? null
            : $"Read from their words: {Count.Of(keys, "key")} of {Count.Of(read, log.IsOfNotes ? "note" : "row")}{(read < log.Rows.Count ? $"; of {Count.Of(log.Rows.Count - read, "more", "more")} nothing is sure" : "")}. Look them through; `--blank` leaves them out.";
    }

    // What came from a log before is known by its line.
    private static bool StandsAlready(ImportedRow row, Build build) => build.Entries
        .Where(entry => entry.Date == row.Date && !entry.File.StartsWith($"{build.Folder}/{EntryStore.Name}", StringComparison.Ordinal))
        .SelectMany(entry => entry.Jobs)
        .Any(job => job.Time == row.Time && (row.Part.Length == 0 || job.Parts.Count == 0 || job.Parts.Any(share => share.Part.Value == row.Part)));

    private static string Few(IReadOnlyList<string> names) =>
        string.Join(", ", names.Take(MostNamed)) + (names.Count > MostNamed ? $" and {Count.Of(names.Count - MostNamed, "more", "more")}" : "");

    private static string Summary(ImportRequest request, ImportedLog log, Build build)
    {
        var time = log.Time == Minutes.Zero ? "" : $", {log.Time}";
        var already = log.Already == 0 ? "" : $" {Casing.Capital(Count.Of(log.Already, "was", "were"))} already in the journal.";
        var faults = log.Faults.Count == 0 ? "" : $" {Casing.Capital(Count.Of(log.Faults.Count, "could", "could"))} not be read.";
        var taken = log.Entries.Count == 0 ? "Nothing to take in."
            : $"{(request.DryRun ? "Would take in" : "Took in")} {Count.Of(log.Rows.Count, log.IsOfNotes ? "note" : "row")}{time}, as {Count.Of(log.Entries.Count, "entry", "entries")} of `{build.Id}`.";
        return taken + already + faults;
    }

    private static Columns? ReadColumns(ArgumentResult result)
    {
        try
        {
            return Columns.Of(result.Tokens[0].Value);
        }
        catch (ImportException e)
        {
            result.AddError(e.Message);
            return null;
        }
    }

    private static DateForms? ReadDates(ArgumentResult result)
    {
        var texts = result.Tokens.Select(token => token.Value).ToList();
        var forms = DateForms.Of(texts);
        if (forms is null)
        {
            result.AddError($"`{string.Join(' ', texts)}` is not a date format. Use d, m and y for day, month and year, such as `dd.mm.yyyy`, and commas between several formats.");
        }

        return forms;
    }

    private static char? ReadSeparator(ArgumentResult result)
    {
        var word = result.Tokens[0].Value;
        if (word is "tab" or { Length: 1 })
        {
            return word == "tab" ? '\t' : word[0];
        }

        result.AddError($"`{word}` cannot be a column separator. Use one character, such as `;`, or `tab`.");
        return null;
    }
}
