using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Writing;

/// <summary>An evening's job: as options, or asked for, with what is known offered.</summary>
internal sealed class TonightsJob(OpenJournal open, Terminal terminal)
{
    private const int MostParts = 12;
    private const int MostOperations = 8;

    private readonly Questions questions = new(terminal);

    /// <summary>A job of its own, with its hours.</summary>
    public NewJob Of(EntryRequest request, Build build, EveningPictures pictures, IReadOnlyList<string> remarks)
    {
        var state = State.Of(open.Journal).Builds.Single(state => state.Build == build.Id);
        var usualPart = build.Parts.Count == 0 ? null : Usual.Part(build, state)?.Value ?? "whole";
        var part = OpenJournal.Part(build, request.Part) ?? (terminal.CanAsk ? AskPart(build, state, usualPart) : null) ?? usualPart;
        var usualOperation = Usual.Operation(build, part is null or "whole" ? null : new Id<Part>(part))?.Value;
        var operations = open.Operations(request.Operations);
        operations = operations.Count > 0 ? operations : terminal.CanAsk ? AskOperations(usualOperation) : usualOperation is null ? [] : [usualOperation];
        var job = new NewJob(part, operations, "");
        Remind(build, job, remarks);
        return job with { Hours = HoursOf(request.Hours, pictures) };
    }

    /// <summary>The job of a running stint; nothing of it is asked again.</summary>
    public NewJob OfStint(EntryRequest request, Stint stint, Build build, IReadOnlyList<string> remarks)
    {
        var operations = open.Operations(request.Operations.Count > 0 ? request.Operations : stint.Operation is { } one ? [one] : []);
        var job = new NewJob(OpenJournal.Part(build, request.Part ?? stint.Part), operations, "");
        Remind(build, job, remarks);
        return job;
    }

    /// <summary>The last job of an entry that is there already; null entry where it cannot be read.</summary>
    public NewJob OfEntry(Entry? entry, Build build, IReadOnlyList<string> remarks)
    {
        var job = entry?.Jobs[^1] is { } last
            ? new NewJob(last.IsGeneral ? "whole" : last.Parts[0].Part.Value, [.. last.Operations.Select(operation => operation.Value)], "")
            : new NewJob(null, [], "");
        Remind(build, job, remarks);
        return job;
    }

    private string? AskPart(Build build, BuildState state, string? usual) => questions.Choose("Part", usual, new Choices(
        "parts",
        build.Parts.Count == 0 ? [] : [.. state.ToGo.Select(part => part.Part.Value).Take(MostParts), "whole"],
        [.. build.Parts.Select(part => part.Id.Value)],
        word => word == "whole" || build.HasPart(new(word)) ? word : null));

    private IReadOnlyList<string> AskOperations(string? usual)
    {
        var words = open.Journal.Vocabulary.Operations;
        var lately = open.Journal.Entries.Reverse().SelectMany(entry => entry.Jobs).SelectMany(job => job.Operations).Select(operation => operation.Value).Distinct().Take(MostOperations);
        return questions.ChooseSome("Operation (several with commas between)", usual, new Choices(
            "operations", [.. lately], words.Spellings, word => words.TryFind(word.ToLowerInvariant().Replace(' ', '-'), out var id) ? id.Value : null));
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

        return offered ?? throw new UsageException("How long did it take? Use `--hours 1h30`, or time it with `journal stint begin` and `journal stint end`.");
    }

    private void Remind(Build build, NewJob job, IReadOnlyList<string> remarks)
    {
        if (terminal.CanAsk)
        {
            Reminders.Print(open.Journal, build, job, remarks, new Printout(terminal with { Out = terminal.Error }));
        }
    }
}
