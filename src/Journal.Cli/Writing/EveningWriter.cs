using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing.Told;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Told;
using Journal.Site.Photos;

namespace Journal.Cli.Writing;

/// <summary>
/// Writes an evening up: what must be said is asked first, with what is known offered; then the entry is written in
/// one go, and only then does the editor open.
/// </summary>
internal sealed class EveningWriter(OpenJournal open, Terminal terminal)
{
    private readonly Questions questions = new(terminal);
    private readonly TonightsJob jobs = new(open, terminal);
    private readonly TonightsWords wordsToAsk = new(open, terminal);
    private readonly TitleBook titles = new(open.Journal);

    /// <summary>Writes the entry and prints its path.</summary>
    public int Write(EntryRequest request)
    {
        var told = Told(request);
        var slate = Peek();
        var evening = request.Evening ?? (request.Hours is null && slate.Stint is null && slate.Unwritten is { } left ? left.Evening : Evening(slate));
        RefuseToCome(evening);
        slate = slate with { Stint = StintOf(slate, evening) };
        var fromStint = request.Hours is null && (slate.Stint is not null || slate.Unwritten?.Evening == evening);
        if (fromStint)
        {
            RefuseAnotherJob(request, slate);
        }

        var build = open.BuildFor(request.Build ?? (fromStint ? slate.Stint?.Build ?? BuildOf(slate.Unwritten, evening) : null), terminal);
        var pictures = new EveningPictures(open.Folder, open.Journal, build, evening, Folder(request.Photos));
        var file = told is not null ? told.WriteUp(build, pictures, fromStint ? slate : new Slate())
            : fromStint ? WriteUpStint(request, slate, build, pictures)
            : WriteUp(request, slate, build, pictures);
        var status = Finish(file);
        TellOfRemarks(evening);
        return status;
    }

    private ToldWriter? Told(EntryRequest request)
    {
        if (request.Account is null)
        {
            return request.IsSure ? throw new UsageException("`--yes` goes with `--from`, which names the account to be written.") : null;
        }

        return request.WantsCaptions
            ? throw new UsageException("`--captions` and `--from` go one after the other: write the evening first, then `journal write --captions --entry <words>`.")
            : new ToldWriter(open, request, AccountText.Read(request.Account, terminal), terminal);
    }

    private string? WriteUp(EntryRequest request, Slate slate, Build build, EveningPictures pictures)
    {
        var evening = pictures.Evening;
        var (heard, ofTonight) = (Heard.Of(EntryWords.Remarks(slate, build, evening), open.Journal, build, evening), new EntriesOf(build, evening));
        if (request is { Hours: null, Part: null, Operations.Count: 0 } && ofTonight.Last is { } last && terminal.CanAsk && AddsTo(build, last))
        {
            return AddTo(last, request, jobs.OfEntry(last, build, heard), build, pictures, heard);
        }

        var told = jobs.Of(request, build, pictures, heard);
        if (ofTonight.WithJob(told[0].Job) is { } same)
        {
            if (told.Count == 1 && terminal.CanAsk && AddsTo(build, same))
            {
                return AddTo(same, request, told[0], build, pictures, heard);
            }

            terminal.Complain($"There is an entry of {Wording.Written.Date(evening)} with the same part, operation and hours: {same.File}. This is another one; if it tells of the same work, delete one of them.");
        }

        var writing = wordsToAsk.Of(request, told, into: null, pictures, heard);
        using var taken = SlateFile.Take(open.Folder, terminal.Complain);
        pictures.CopyIn();
        return new EntryWords(open, build, taken, terminal).Write(writing.Evening, writing.Words, evening);
    }

    private bool AddsTo(Build build, Entry entry) => questions.YesOrNo(
        $"There is an entry of {(entry.Date == open.Clock.Evening(terminal.Now) ? "tonight" : Wording.Written.Date(entry.Date))}: {entry.Title} ({string.Join("; ", entry.Jobs.Select(job => $"{JobTitle.Of(titles, build.Id, job)}, {job.Time}"))}). Add to it? (`no`: another job, in an entry of its own)",
        offered: true);

    private string AddTo(Entry entry, EntryRequest request, ToldJob job, Build build, EveningPictures pictures, Heard heard)
    {
        var words = wordsToAsk.Of(request, [job], entry.File, pictures, heard).Words;
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        pictures.CopyIn();
        return new EntryWords(open, build, slate, terminal).Add(new StintEntry(entry.File, pictures.Evening), words, pictures.Evening);
    }

    // A stint of another evening is none of this one's business.
    private Stint? StintOf(Slate slate, DateOnly evening) => slate.Stint is { } stint && open.Clock.Evening(stint.Began) == evening ? stint : null;

    private void RefuseToCome(DateOnly evening)
    {
        if (evening > open.Clock.Evening(terminal.Now))
        {
            throw new UsageException($"{Wording.Written.Date(evening)} is in the future; this is the evening of {Wording.Written.Date(open.Clock.Evening(terminal.Now))}.");
        }
    }

    // What was said of another job would be lost in the entry of the stint.
    private void RefuseAnotherJob(EntryRequest request, Slate slate)
    {
        var build = slate.Stint?.Build ?? BuildOf(slate.Unwritten, slate.Unwritten!.Evening);
        if (request.Build is { } other && other != build)
        {
            throw new UsageException($"The stint was on `{build}`. Write it up first, with `journal write` without `--build`; or use `--hours` for another entry.");
        }

        if (slate.Stint is null && (request.Part ?? (request.Operations is [var first, ..] ? first : null)) is { } word)
        {
            throw new UsageException($"The stint’s job is in {slate.Unwritten!.File} already, and `{word}` would not change it. Change it there; or use `--hours` for another entry.");
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

    private DateOnly Evening(Slate slate) => open.Clock.Evening(slate.Stint?.Began ?? terminal.Now);

    private string? Folder(string? named) =>
        named is null ? null
            : Directory.Exists(Path.GetFullPath(named, terminal.Folder)) ? Path.GetFullPath(named, terminal.Folder)
            : throw new UsageException($"There is no folder {named}.");

    // The job of a running stint, or of the entry that one made; nothing of it is asked again.
    private string? WriteUpStint(EntryRequest request, Slate seen, Build build, EveningPictures pictures)
    {
        var evening = pictures.Evening;
        var heard = Heard.Of(EntryWords.Remarks(seen, build, evening), open.Journal, build, evening);
        var into = build.Entries.FirstOrDefault(entry => entry.File == seen.Unwritten?.File);
        var job = seen.Stint is { } stint ? jobs.OfStint(request, stint, build, heard) : jobs.OfEntry(into, build, heard);
        var (told, words) = wordsToAsk.Of(request, [job], seen.Stint is null ? seen.Unwritten?.File : null, pictures, heard);
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        var entryWords = new EntryWords(open, build, slate, terminal);
        entryWords.AddLines(told);
        words = words with { Tools = [.. words.Tools, .. told.NewTools.Select(tool => tool.Id)] };
        var ended = StintOf(slate.Slate, evening) is null ? null : new StintEnding(open, slate, terminal).End(new SaidEnd(), request.Part, request.Operations, told.Jobs[0] with { Tools = [] });
        if (slate.Slate.Unwritten is null && ended is null)
        {
            terminal.Complain(words.IsEmpty ? "There is nothing to write up." : "There is nothing left to write up, and your words were not written. Give them again with `--hours`.");
            return null;
        }

        pictures.CopyIn();
        return entryWords.Add(slate.Slate.Unwritten ?? new StintEntry(ended!, evening), words, evening);
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
