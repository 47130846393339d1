using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

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
        var pictures = new EveningPictures(open, build, evening, Folder(request.Photos));
        var file = fromStint ? WriteUpStint(request, slate, build, evening, pictures) : WriteUp(request, slate, build, evening, pictures);
        var status = Finish(file);
        TellOfRemarks(evening);
        return status;
    }

    private string? WriteUp(EntryRequest request, Slate slate, Build build, DateOnly evening, EveningPictures pictures)
    {
        var (remarks, ofTonight) = (Remarks(slate, evening), new EntriesOf(build, evening));
        if (request is { Hours: null, Part: null, Operations.Count: 0 } && ofTonight.Last is { } last && terminal.CanAsk && AddsTo(build, last))
        {
            return AddTo(last, request, jobs.OfEntry(last, build, remarks), build, evening, pictures);
        }

        var job = jobs.Of(request, build, pictures, remarks);
        if (ofTonight.WithJob(job) is { } same)
        {
            if (terminal.CanAsk && AddsTo(build, same))
            {
                return AddTo(same, request, job, build, evening, pictures);
            }

            terminal.Complain($"There is an entry of {Wording.Written.Date(evening)} with the same part, operation and hours: {same.File}. This is another one; if it tells of the same work, delete one of them.");
        }

        var words = wordsToAsk.Of(request, job, into: null, pictures);
        using var taken = SlateFile.Take(open.Folder, terminal.Complain);
        pictures.CopyIn();
        return new EveningEntry(open.Folder, build, taken).Write(evening, job, words with { Remarks = Remarks(taken.Slate, evening) }, evening);
    }

    private bool AddsTo(Build build, Entry entry) => questions.YesOrNo(
        $"There is an entry of {(entry.Date == open.Clock.Evening(terminal.Now) ? "tonight" : Wording.Written.Date(entry.Date))}: {entry.Title} ({string.Join("; ", entry.Jobs.Select(job => $"{JobTitle.Of(titles, build.Id, job)}, {job.Time}"))}). Add to it? (`no`: another job, in an entry of its own)",
        offered: true);

    private string AddTo(Entry entry, EntryRequest request, NewJob job, Build build, DateOnly evening, EveningPictures pictures)
    {
        var words = wordsToAsk.Of(request, job, entry.File, pictures);
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        pictures.CopyIn();
        return Add(new StintEntry(entry.File, evening), words, build, slate, evening);
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

    // The entry gets those that are there when it is written: more may have been made while the questions were answered.
    private static List<string> Remarks(Slate slate, DateOnly evening) => [.. slate.Jots.Where(jot => jot.Evening == evening).Select(jot => jot.Text)];

    private DateOnly Evening(Slate slate) => open.Clock.Evening(slate.Stint?.Began ?? terminal.Now);

    private string? Folder(string? named) =>
        named is null ? null
            : Directory.Exists(Path.GetFullPath(named, terminal.Folder)) ? Path.GetFullPath(named, terminal.Folder)
            : throw new UsageException($"There is no folder {named}.");

    // The job of a running stint, or of the entry that one made; nothing of it is asked again.
    private string? WriteUpStint(EntryRequest request, Slate seen, Build build, DateOnly evening, EveningPictures pictures)
    {
        var (remarks, into) = (Remarks(seen, evening), build.Entries.FirstOrDefault(entry => entry.File == seen.Unwritten?.File));
        var job = seen.Stint is { } stint ? jobs.OfStint(request, stint, build, remarks) : jobs.OfEntry(into, build, remarks);
        var words = wordsToAsk.Of(request, job, seen.Unwritten?.File, pictures);
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        var ended = StintOf(slate.Slate, evening) is null ? null : new StintEnding(open, slate, terminal).End(new SaidEnd(), request.Part, request.Operations);
        if (slate.Slate.Unwritten is null && ended is null)
        {
            terminal.Complain(words.IsEmpty ? "There is nothing to write up." : "There is nothing left to write up, and your words were not written. Give them again with `--hours`.");
            return null;
        }

        pictures.CopyIn();
        return Add(slate.Slate.Unwritten ?? new StintEntry(ended!, evening), words, build, slate, evening);
    }

    // An entry that has words already gets these below them.
    private string Add(StintEntry entry, WriteUp words, Build build, SlateFile slate, DateOnly evening)
    {
        var written = new EveningEntry(open.Folder, build, slate).WriteUp(entry, words with { Remarks = Remarks(slate.Slate, evening) }, evening);
        foreach (var (key, value) in written.LeftOut)
        {
            terminal.Complain($"{entry.File} already has `{key}`, which is kept. Not written: {value}");
        }

        return written.File ?? throw new UsageException(written.WhyNot);
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
