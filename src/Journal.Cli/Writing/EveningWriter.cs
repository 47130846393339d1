using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing;

/// <summary>
/// Writes an evening up: what must be said is asked first, with what is known offered; then the entry is written in
/// one go, and only then does the editor open.
/// </summary>
internal sealed class EveningWriter(OpenJournal open, Terminal terminal)
{
    private const int MostListed = 12;

    private readonly Questions questions = new(terminal);

    /// <summary>Writes the entry and prints its path.</summary>
    public int Write(EntryRequest request)
    {
        var slate = Peek();
        var evening = request.Evening ?? (request.Hours is null && slate.Stint is null && slate.Unwritten is { } left ? left.Evening : Evening(slate));
        RefuseToCome(evening);
        slate = slate with { Stint = StintOf(slate, evening) };
        var fromStint = request.Hours is null && (slate.Stint is not null || slate.Unwritten?.Evening == evening);
        if (fromStint)
        {
            RefuseAnotherJob(request, slate);
        }

        var build = open.Build(request.Build ?? (fromStint ? slate.Stint?.Build ?? BuildOf(slate.Unwritten, evening) : null));
        var pictures = new EveningPictures(open, build, evening, Folder(request.Photos));
        var remarks = Remarks(slate, evening);
        var job = fromStint ? StintJob(request, slate, build, remarks) : Job(request, build, pictures, remarks);
        var words = Words(request, job, pictures);
        var status = Finish(fromStint ? WriteUpStint(request, build, words, evening, pictures) : WriteNew(job, build, words, evening, pictures));
        TellOfRemarks(evening);
        return status;
    }

    // A stint of another evening is none of this one's business.
    private Stint? StintOf(Slate slate, DateOnly evening) => slate.Stint is { } stint && open.Clock.Evening(stint.Began) == evening ? stint : null;

    private void RefuseToCome(DateOnly evening)
    {
        if (evening > open.Clock.Evening(terminal.Now))
        {
            throw new UsageException($"{Wording.Written.Date(evening)} is still to come; this is the evening of {Wording.Written.Date(open.Clock.Evening(terminal.Now))}.");
        }
    }

    // What was said of another job would be lost in the entry of the stint.
    private void RefuseAnotherJob(EntryRequest request, Slate slate)
    {
        var build = slate.Stint?.Build ?? BuildOf(slate.Unwritten, slate.Unwritten!.Evening);
        if (request.Build is { } other && other != build)
        {
            throw new UsageException($"The stint was on `{build}`. Write it up first, with `journal write` and no `--build`; or say `--hours` for another entry.");
        }

        if (slate.Stint is null && (request.Part ?? request.Operation) is { } word)
        {
            throw new UsageException($"The stint’s job is in {slate.Unwritten!.File} already, and `{word}` would not change it. Change it there; or say `--hours` for another entry.");
        }
    }

    private void TellOfRemarks(DateOnly evening)
    {
        var slate = SlateFile.Peek(open.Folder);
        foreach (var told in WaitingRemarks.Told(slate with { Jots = [.. slate.Jots.Where(jot => jot.Evening != evening)] }, _ => false))
        {
            terminal.Complain(told);
        }
    }

    // An entry that a stint made and that is gone since has nothing to be added to.
    private Slate Peek()
    {
        var slate = SlateFile.Peek(open.Folder);
        return slate.Unwritten is { } entry && !File.Exists(PathOf(entry.File)) ? slate with { Unwritten = null } : slate;
    }

    // The entry gets those that are there when it is written: more may have been made while the questions were answered.
    private static List<string> Remarks(Slate slate, DateOnly evening) => [.. slate.Jots.Where(jot => jot.Evening == evening).Select(jot => jot.Text)];

    private DateOnly Evening(Slate slate) => open.Clock.Evening(slate.Stint?.Began ?? terminal.Now);

    private string? Folder(string? named) =>
        named is null ? null
            : Directory.Exists(Path.GetFullPath(named, terminal.Folder)) ? Path.GetFullPath(named, terminal.Folder)
            : throw new UsageException($"There is no folder {named}.");

    // The job of a running stint, or of the entry that one made; nothing of it is asked again.
    private NewJob StintJob(EntryRequest request, Slate slate, Build build, List<string> remarks)
    {
        var last = slate.Stint is { } stint ? new NewJob(stint.Part, stint.Operation, "")
            : build.Entries.FirstOrDefault(entry => entry.File == slate.Unwritten?.File)?.Jobs[^1] is { } job
                ? new NewJob(job.Parts.Count > 0 ? job.Parts[0].Part.Value : "whole", job.Operations[0].Value, "")
            : new NewJob(null, null, "");
        var meant = new NewJob(OpenJournal.Part(build, request.Part ?? last.Part), open.Operation(request.Operation ?? last.Operation), "");
        Remind(build, meant, remarks);
        return meant;
    }

    private NewJob Job(EntryRequest request, Build build, EveningPictures pictures, List<string> remarks)
    {
        var state = State.Of(open.Journal).Builds.Single(state => state.Build == build.Id);
        var part = OpenJournal.Part(build, request.Part);
        var operation = open.Operation(request.Operation);
        var (usualPart, usualOperation) = (build.Parts.Count == 0 ? null : Usual.Part(build, state)?.Value ?? "whole", Usual.Operation(build)?.Value);
        if (terminal.CanAsk)
        {
            part ??= AskPart(build, state, usualPart);
            operation ??= AskOperation(usualOperation);
        }

        var job = new NewJob(part ?? usualPart, operation ?? usualOperation, "");
        Remind(build, job, remarks);
        return job with { Hours = HoursOf(request.Hours, pictures) };
    }

    private string? AskPart(Build build, BuildState state, string? usual)
    {
        List<string> listed = [.. state.ToGo.Select(part => part.Part.Value).Take(MostListed), "whole"];
        return questions.Choose("Part", usual, build.Parts.Count == 0 ? [] : listed, "parts", word => word == "whole" || build.HasPart(new(word)) ? word : null, [.. build.Parts.Select(part => part.Id.Value)]);
    }

    private string? AskOperation(string? usual)
    {
        List<string> listed =
        [
            .. open.Journal.Entries.Reverse().SelectMany(entry => entry.Jobs).SelectMany(job => job.Operations).Select(operation => operation.Value).Distinct().Take(8),
        ];
        var words = open.Journal.Vocabulary.Operations;
        return questions.Choose("Operation", usual, listed, "operations", word => words.TryFind(word, out var id) ? id.Value : null, words.Spellings);
    }

    private string HoursOf(string? said, EveningPictures pictures)
    {
        if (said is not null)
        {
            return HoursText.Read(said) is { } hours && HoursText.IsOfOneDay(hours) ? hours : throw new UsageException(HoursText.WhyNot(said));
        }

        var offered = pictures.Span is { Count: > 0 } span ? span.ToString() : null;
        if (terminal.CanAsk)
        {
            return questions.Ask(offered is null ? "Hours" : "Hours, from first to last picture", offered, line => HoursText.Read(line) is { } hours && HoursText.IsOfOneDay(hours) ? (hours, null) : ("", HoursText.WhyNot(line)));
        }

        return offered ?? throw new UsageException("How long was it? Say `--hours 1h30`, or measure with `journal stint begin` and `journal stint end`.");
    }

    private WriteUp Words(EntryRequest request, NewJob job, EveningPictures pictures)
    {
        var asksAll = terminal.CanAsk && !request.WantsCaptions;
        return new WriteUp
        {
            Tools = [.. (request.Tools ?? (asksAll ? AskTools(job) : [])).Select(KnownTool)],
            Title = request.Title ?? (asksAll ? questions.Line("Title (Enter: none)") : null),
            Mistakes = request.Mistakes ?? (asksAll && questions.Line("What went wrong? (Enter: nothing)") is { } mistake ? [mistake] : []),
            Next = request.Next ?? (asksAll ? questions.Line("Next time? (Enter: nothing)") : null),
            Photos = [.. pictures.Names.Select(name => new NewPhoto(name, request.WantsCaptions ? Caption(name) : null))],
        };
    }

    // In a script a line of standard input for each picture.
    private string? Caption(string name)
    {
        if (terminal.CanAsk)
        {
            return questions.Line($"{name} shows");
        }

        var line = terminal.In.ReadLine()?.Trim() ?? "";
        return ForeignBytes.In(line) is { } wrong ? throw new UsageException(wrong) : line.Length == 0 ? null : line;
    }

    private string[] AskTools(NewJob job)
    {
        var usual = job.Operation is null ? [] : Usual.Tools(open.Journal, new(job.Operation));
        while (questions.Line("Tools (`none` for none)", usual.Count == 0 ? null : string.Join(", ", usual)) is { } line && line != "none")
        {
            var words = line.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (words.FirstOrDefault(word => !Id<Tool>.HasRightForm(word)) is not { } unfit)
            {
                return words;
            }

            terminal.Complain(NoTool(unfit));
        }

        return [];
    }

    private static string NoTool(string word) => $"`{word}` is not the id of a tool. Write lower-case words joined by hyphens, such as boring-head.";

    private string KnownTool(string word)
    {
        if (!Id<Tool>.HasRightForm(word))
        {
            throw new UsageException(NoTool(word));
        }

        if (open.Journal.Tools.All(tool => tool.Id.Value != word))
        {
            terminal.Complain($"The crib has no `{word}`. {Suggestion.For(word, [.. open.Journal.Tools.Select(tool => tool.Id.Value)], "tools")} It counts as an unlisted tool.");
        }

        return word;
    }

    private void Remind(Build build, NewJob job, List<string> remarks)
    {
        if (terminal.CanAsk)
        {
            Reminders.Print(open.Journal, build, job.Part, job.Operation, remarks, new Printout(terminal with { Out = terminal.Error }));
        }
    }

    private string? WriteUpStint(EntryRequest request, Build build, WriteUp words, DateOnly evening, EveningPictures pictures)
    {
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        var ended = StintOf(slate.Slate, evening) is null ? null : new StintEnding(open, slate, terminal).End(new SaidEnd(), request.Part, request.Operation);
        if (slate.Slate.Unwritten is null && ended is null)
        {
            terminal.Complain(words.IsEmpty ? "There is nothing to write up." : "There is nothing to write up any more, and what you said was not written. Say it again with `--hours`.");
            return null;
        }

        // An entry that has words already gets these below them.
        var entry = slate.Slate.Unwritten ?? new StintEntry(ended!, evening);
        pictures.CopyIn();
        var written = new EveningEntry(open.Folder, build, slate).WriteUp(entry, words with { Remarks = Remarks(slate.Slate, evening) }, evening);
        foreach (var (key, value) in written.LeftOut)
        {
            terminal.Complain($"{entry.File} has `{key}` already, and keeps it. Not written: {value}");
        }

        return written.File ?? throw new UsageException(written.WhyNot);
    }

    private string WriteNew(NewJob job, Build build, WriteUp words, DateOnly evening, EveningPictures pictures)
    {
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        pictures.CopyIn();
        return new EveningEntry(open.Folder, build, slate).Write(evening, job, words with { Remarks = Remarks(slate.Slate, evening) }, evening);
    }

    private int Finish(string? file)
    {
        if (file is null)
        {
            return ExitStatus.Well;
        }

        var path = PathOf(file);
        if (terminal is { CanAsk: true, Edit: { } edit })
        {
            edit(path);
        }

        terminal.Out.WriteLine(path);
        return ExitStatus.Well;
    }

    private string PathOf(string file) => Path.Combine(open.Folder, file.Replace('/', Path.DirectorySeparatorChar));

    private string? BuildOf(StintEntry? entry, DateOnly evening) =>
        entry?.Evening == evening ? open.Journal.Builds.FirstOrDefault(build => entry.File.StartsWith($"{build.Folder}/", StringComparison.Ordinal))?.Id.Value : null;
}
