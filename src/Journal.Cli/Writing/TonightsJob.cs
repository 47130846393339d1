using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;
using Journal.Site.Photos;

namespace Journal.Cli.Writing;

/// <summary>An evening's jobs: as options, or asked for, with what is known offered and what the remarks say before it.</summary>
internal sealed class TonightsJob(OpenJournal open, Terminal terminal)
{
    private const int MostParts = 12;
    private const int MostOperations = 8;
    private const string Whole = "whole";

    private readonly Questions questions = new(terminal);

    /// <summary>The parts of a build to choose from, those that are to go first.</summary>
    public static Choices PartsOf(Build build, MakerJournal journal) => new(
        "parts",
        build.Parts.Count == 0 ? [] : [.. StateOf(build, journal).ToGo.Select(part => part.Part.Value).Take(MostParts), Whole],
        [.. build.Parts.Select(part => part.Id.Value)],
        word => word == Whole || build.HasPart(new(word)) ? word : null);

    /// <summary>Jobs of their own, with their hours: those that the remarks tell of, or one.</summary>
    public IReadOnlyList<ToldJob> Of(EntryRequest request, Build build, EveningPictures pictures, Heard heard)
    {
        IReadOnlyList<ProposedJob> said = terminal.CanAsk ? ToldTimes.Settle(heard.Proposal).Jobs : [];
        if (said.Count < 2 || request is not { Part: null, Operations.Count: 0, Hours: null })
        {
            return [Of(request, build, pictures, heard, said is [var only] ? only : null)];
        }

        var jobs = new List<ToldJob>();
        foreach (var (i, job) in said.Index())
        {
            if (questions.YesOrNo(string.Create(CultureInfo.InvariantCulture, $"Job {i + 1} of {said.Count}: {ProposalItem.TitleOf(job)} ({heard.Because(job.Words)}). Write it?"), offered: true))
            {
                jobs.Add(Of(request, build, pictures, heard, job));
            }
        }

        return jobs.Count > 0 ? jobs : [Of(request, build, pictures, heard, null)];
    }

    /// <summary>The job of a running stint; nothing of it is asked again, but what the remarks say of it.</summary>
    public ToldJob OfStint(EntryRequest request, Stint stint, Build build, Heard heard)
    {
        var operations = open.Operations(request.Operations.Count > 0 ? request.Operations : stint.Operation is { } one ? [one] : []);
        var job = new NewJob(OpenJournal.Part(build, request.Part ?? stint.Part), operations, "");
        Remind(build, job, heard);
        return new ToldJob(terminal.CanAsk && heard.Proposal.Jobs is [var said] ? Detailed(job, said, heard) : job, WordsOf(heard));
    }

    /// <summary>The last job of an entry that is there already; null entry where it cannot be read.</summary>
    public ToldJob OfEntry(Entry? entry, Build build, Heard heard)
    {
        var job = entry?.Jobs[^1] is { } last
            ? new NewJob(last.IsGeneral ? [Whole] : [.. last.Parts.Select(share => share.Part.Value)], [.. last.Operations.Select(operation => operation.Value)], "")
            : new NewJob([], [], "");
        Remind(build, job, heard);
        return new ToldJob(job, WordsOf(heard));
    }

    private static IReadOnlyList<Span> WordsOf(Heard heard) => [.. heard.Proposal.Jobs.SelectMany(job => job.Words)];

    private static BuildState StateOf(Build build, MakerJournal journal) => State.Of(journal).Builds.Single(state => state.Build == build.Id);

    private ToldJob Of(EntryRequest request, Build build, EveningPictures pictures, Heard heard, ProposedJob? said)
    {
        var parts = OpenJournal.Part(build, request.Part) is { } named ? [named] : PartsOf(build, heard, said);
        var usual = Offered.Operation(build, parts);
        var operations = open.Operations(request.Operations);
        operations = operations.Count > 0 ? operations : terminal.CanAsk ? AskOperations(usual, heard, said) : usual is null ? [] : [usual];
        var job = new NewJob(parts, operations, "");
        if (said is null || said == heard.Proposal.Jobs[0])
        {
            Remind(build, job, heard);
        }

        var timed = job with { Hours = HoursOf(request.Hours, pictures, heard, said) };
        return new ToldJob(said is null ? timed : Detailed(timed, said, heard), said?.Words ?? []);
    }

    private IReadOnlyList<string> PartsOf(Build build, Heard heard, ProposedJob? said)
    {
        var usual = Offered.Part(open.Journal, build);
        if (!terminal.CanAsk || build.Parts.Count == 0)
        {
            return usual is null ? [] : [usual];
        }

        var (question, offered) = said is { Parts.Count: > 0 } ? ($"Part ({heard.Because(said.Words)})", string.Join(", ", said.Parts)) : ("Part", usual);
        while (true)
        {
            var parts = questions.ChooseSome(question, offered, PartsOf(build, open.Journal));
            if (parts.Count == 1 || !parts.Contains(Whole))
            {
                return parts;
            }

            terminal.Complain("`whole` is the build as a whole: say it alone, or name the parts.");
        }
    }

    private IReadOnlyList<string> AskOperations(string? usual, Heard heard, ProposedJob? said)
    {
        var words = open.Journal.Vocabulary.Operations;
        var lately = open.Journal.Entries.Reverse().SelectMany(entry => entry.Jobs).SelectMany(job => job.Operations).Select(operation => operation.Value).Distinct().Take(MostOperations);
        var choices = new Choices("operations", [.. lately], words.Spellings, word => words.TryFind(word.ToLowerInvariant().Replace(' ', '-'), out var id) ? id.Value : null);
        return said is { Operations.Count: > 0 }
            ? questions.ChooseSome($"Operation ({heard.Because(said.Words)})", string.Join(", ", said.Operations), choices)
            : questions.ChooseSome("Operation (several with commas between)", usual, choices);
    }

    private string HoursOf(string? said, EveningPictures pictures, Heard heard, ProposedJob? told)
    {
        if (said is not null)
        {
            return HoursText.Read(said) is { } hours && HoursText.IsOfOneDay(hours) ? hours : throw new UsageException(HoursText.WhyNot(said));
        }

        var span = pictures.Span is { Count: > 0 } time ? time.ToString() : null;
        var (question, offered) = told?.Time is { } heardTime ? ($"Hours ({heard.Because(told.Words)})", heardTime.ToString())
            : span is null ? ("Hours", null)
            : ("Hours, from first to last picture", span);
        if (terminal.CanAsk)
        {
            return questions.Ask(question, offered, line => HoursText.Read(line) is { } hours && HoursText.IsOfOneDay(hours) ? (hours, null) : ("", HoursText.WhyNot(line)));
        }

        return span ?? throw new UsageException("How long did it take? Use `--hours 1h30`, or time it with `journal stint begin` and `journal stint end`.");
    }

    // Asked only where the remarks say it: most evenings have no need of these.
    private NewJob Detailed(NewJob job, ProposedJob said, Heard heard)
    {
        var because = heard.Because(said.Words);
        return job with
        {
            SetUp = said.SetUp is { Count: > 0 } setUp ? questions.Maybe($"Of that, setting up ({because}; `none`: not so)", line => ReadSetUp(line, job), setUp.ToString()) : null,
            Held = said.Held is { } held ? questions.Known("Held", held, because) : null,
            Datum = said.Datum is { } datum ? questions.Known("Datum", datum, because) : null,
            Mends = said.Mends is { } mends ? questions.Known("Mends", mends.Value, because) : null,
        };
    }

    private static (string? Time, string? Wrong) ReadSetUp(string line, NewJob job) =>
        line is "half" or "most" ? (line, null)
            : !HoursText.IsDuration(line) ? (null, $"`{line}` is not a time. Write `20m` or `1h30`.")
            : job.Hours.Length > 0 && HoursText.TimeOf(line) > HoursText.TimeOf(job.Hours) ? (null, $"The whole job took {job.Hours}.")
            : (line, null);

    private void Remind(Build build, NewJob job, Heard heard)
    {
        if (terminal.CanAsk)
        {
            Reminders.Print(open.Journal, build, job, heard.Remarks, new Printout(terminal with { Out = terminal.Error }));
        }
    }
}
