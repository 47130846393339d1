using Journal.Cli.Commands.Adding;
using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;
using Journal.Site.Photos;

namespace Journal.Cli.Writing.Told;

/// <summary>Writes an evening up from an account in plain words: the account becomes the text, and what it says stands above it as keys.</summary>
internal sealed class ToldWriter
{
    private const string NothingWritten = "Nothing was written.";

    private readonly OpenJournal open;
    private readonly EntryRequest request;
    private readonly string account;
    private readonly Terminal terminal;

    /// <summary>Takes an account that an entry can hold.</summary>
    /// <exception cref="UsageException">There is nothing in it, or too much, or nobody can be asked.</exception>
    public ToldWriter(OpenJournal open, EntryRequest request, string account, Terminal terminal)
    {
        (this.open, this.request, this.account, this.terminal) = (open, request, account, terminal);
        Additions.Refuse(string.IsNullOrWhiteSpace(account), $"The account is empty. {NothingWritten}");
        var whyNot = AccountBody.WhyNot(account);
        Additions.Refuse(whyNot is not null, $"The account cannot be an entry’s text. {whyNot} {NothingWritten}");
        Additions.Refuse(!request.IsSure && !terminal.CanAsk, $"Nobody can be asked here. Say `--yes` to write what is sure, or look at it first with `journal propose`. {NothingWritten}");
    }

    /// <summary>Reads the keys, has them confirmed, and writes.</summary>
    /// <param name="build">The build.</param>
    /// <param name="pictures">The evening's pictures.</param>
    /// <param name="slate">The stint of the evening that is running, or the entry that one made; empty where there is none.</param>
    /// <returns>The entry's file; null where the maker wanted none.</returns>
    public string? WriteUp(Build build, EveningPictures pictures, Slate slate)
    {
        var read = AccountReader.Read(account, open.Journal, build, pictures.Evening);
        var said = ToldOverrides.Apply(slate.Stint is { } stint ? WithStint(read, stint) : read, request, open, build, new TonightsWords(open, terminal).Tool);
        if ((request.IsSure ? said : new ToldQuestions(open, build, account, terminal).Confirmed(said, pictures.Evening)) is { } confirmed)
        {
            return slate is { Stint: null, Unwritten: { } entry } ? Add(entry, confirmed, build, pictures) : Write(confirmed, build, pictures, slate.Stint);
        }

        terminal.Complain(NothingWritten);
        return null;
    }

    private string Write(Proposal confirmed, Build build, EveningPictures pictures, Stint? stint)
    {
        var (sure, listed) = request.IsSure ? Listed(confirmed) : (confirmed, []);
        var told = ToldEvening.Of(sure, pictures.Evening, new ToldLimits(open.Journal, build));
        if (told.Jobs.Count == 0)
        {
            TellLeftOut(told.LeftOut);
            throw new UsageException($"No job with its time can be read from the account. Say what it does not: `--part`, `--operation`, `--hours`. {NothingWritten}");
        }

        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        Additions.Refuse(stint is not null && slate.Slate.Stint?.Began != stint.Began, $"The stint was ended meanwhile. {NothingWritten} Try again.");
        if (new EntriesOf(build, pictures.Evening).WithJob(told.Jobs[0]) is { } same)
        {
            terminal.Complain($"There is an entry of {Wording.Written.Date(pictures.Evening)} with the same part, operation and hours: {same.File}. This is another one; if it tells of the same work, delete one of them.");
        }

        pictures.CopyIn();
        var file = new EntryWords(open, build, slate, terminal).Write(told, WordsOf(told, pictures), pictures.Evening, takesStint: stint is not null);
        TellLeftOut([.. told.LeftOut, .. listed]);
        return file;
    }

    // The entry has its hours by the clock; the account becomes its text, and adds what the clock does not know.
    private string Add(StintEntry entry, Proposal confirmed, Build build, EveningPictures pictures)
    {
        var (sure, listed) = request.IsSure ? Listed(confirmed) : (confirmed, []);
        var there = build.Entries.FirstOrDefault(one => one.File == entry.File);
        IReadOnlyList<ToldJob> jobs = [.. (there?.Jobs ?? []).Select(job => new ToldJob(new NewJob([.. job.Parts.Select(share => share.Part.Value)], [], job.Time.ToString()), []))];
        var told = ToldEvening.Of(sure with { Made = [], Mends = [] }, jobs, pictures.Evening, new ToldLimits(open.Journal, build));
        var job = jobs.Count == 1 && sure.Jobs is [var only] ? only : new ProposedJob();
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        pictures.CopyIn();
        var words = new EntryWords(open, build, slate, terminal);
        words.AddLines(told);
        var file = words.Add(entry, WordsOf(told, pictures) with { Held = job.Held, Datum = job.Datum, Tools = [.. job.Tools.Select(tool => tool.Value), .. told.NewTools.Select(tool => tool.Id)] }, pictures.Evening);
        TellLeftOut(
        [
            .. told.LeftOut,
            .. listed,
            .. sure.Jobs.Where(one => one.Time is not null).Select(one => new LeftOut(ProposedTitle(one), "the entry has its hours by the clock", First(one.Words))),
            .. sure.Made.Select(thing => new LeftOut($"made {thing.Title}", "its job stands in the entry already", thing.Words)),
            .. sure.Mends.Select(mended => new LeftOut($"mends {mended.Id}", "its job stands in the entry already", mended.Words)),
        ]);
        return file;
    }

    private WriteUp WordsOf(ToldEvening told, EveningPictures pictures) => new()
    {
        Title = request.Title,
        Facts = told.Facts,
        Account = account,
        Photos = [.. pictures.Names.Select(name => new NewPhoto(name, null))],
    };

    // The clock knows how long it was, and what it was begun for, where the words do not say so.
    private Proposal WithStint(Proposal read, Stint stint)
    {
        Additions.Refuse(stint.IsForgotten(open.Clock, terminal.Now), $"A stint of {Wording.Written.Date(open.Clock.Evening(stint.Began))} was not ended. End it first, with `journal stint end --at 22:40`; then write. {NothingWritten}");
        var time = stint.TimeUntil(terminal.Now);
        var begun = new ProposedJob
        {
            Parts = stint.Part is { } part and not "whole" ? [new(part)] : [],
            Operations = stint.Operation is { } operation ? [new(operation)] : [],
        };
        IReadOnlyList<ProposedJob> jobs = read.Jobs switch
        {
            [] => [begun],
            [var one] => [one with { Parts = one.Parts.Count > 0 ? one.Parts : begun.Parts, Operations = one.Operations.Count > 0 ? one.Operations : begun.Operations }],
            var several => several,
        };
        if (jobs.All(job => job.Time is not null) || read.Total is not null || time == Minutes.Zero)
        {
            terminal.Complain($"By the clock it was {time} at the bench; the account tells the time itself, and that is written.");
            return read with { Jobs = jobs };
        }

        return read with { Jobs = jobs, Total = time };
    }

    // What makes a new line in other files is written on a yes alone.
    private static (Proposal Sure, IReadOnlyList<LeftOut> Listed) Listed(Proposal proposal) => (
        proposal with { Made = [], NewTools = [], NewParts = [] },
        [
            .. proposal.Made.Select(thing => new LeftOut($"made {thing.Title}", $"it needs your yes; say it without `--yes`, or add it: `journal add tool {ToolNames.NewId(thing.Title)} --got made`", thing.Words)),
            .. proposal.NewTools.Select(tool => new LeftOut($"new tool {tool.Text}", $"the crib has none of that name; add it: `journal add tool {ToolNames.NewId(tool.Text)}`", tool.Words)),
            .. proposal.NewParts.Select(part => new LeftOut($"new part {part.Text}", $"the build has none of that name; add it: `journal add part {ToolNames.NewId(part.Text)}`", part.Words)),
        ]);

    private void TellLeftOut(IReadOnlyList<LeftOut> leftOut)
    {
        foreach (var one in leftOut)
        {
            terminal.Complain($"Left out: {one.What}: {one.Why}.{(one.Words is { } words && words.End > words.Start ? $" “{Quote.Of(account, words)}”" : "")}");
        }
    }

    private static string ProposedTitle(ProposedJob job) => ProposalItem.TitleOf(job);

    private static Span? First(IReadOnlyList<Span> words) => words is [var first, ..] ? first : null;
}
