using System.Globalization;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;

namespace Journal.Core.Writing.Told;

/// <summary>Turns what a proposal says beside its jobs into the keys of an entry.</summary>
internal sealed class ToldFacts(ToldLimits limits, DateOnly date, List<ToldJob> jobs, List<LeftOut> leftOut)
{
    public Amendment Read(Proposal proposal) => new()
    {
        Mistakes = [.. proposal.Mistakes.Select(Mistake)],
        Lessons = [.. proposal.Lessons.Select(lesson => lesson.Text).Distinct()],
        Heeded = [.. proposal.Heeded.Select(lesson => lesson.Id.Value).Distinct()],
        Readings = Judged("reading", proposal.Readings.Select(reading => (Reading(reading), reading.Words)), reading => $"{reading.Feature} {reading.Actual}", (entry, reading, place) => entry with { Readings = [Model(reading, place)] }),
        Settings = Judged("setting", proposal.Settings.Select(setting => (Setting(setting), setting.Words)), setting => string.Join(", ", setting.Keys.Select(pair => $"{pair.Key} {pair.Value}")), (entry, setting, place) => entry with { Settings = [Model(setting, place)] }),
        Finished = [.. proposal.Finished.DistinctBy(part => part.Part).Where(CanBeFinished).Select(part => new Finished(part.Part, part.Pieces))],
        Snags = [.. proposal.Snags.Select(snag => snag.Text).Distinct()],
        Cleared = [.. proposal.Cleared.DistinctBy(snag => snag.Id).Where(CanBeCleared).Select(snag => snag.Id)],
        Trials = [.. proposal.Trials.Select(trial => new NewTrial(trial.On, trial.Time is { Count: > 0 } time ? time : null))],
        Bought = [.. proposal.Bought.Where(HasCost).Select(item => new NewPurchase(item.What, item.Cost!.Value))],
        Next = proposal.Next?.Text,
    };

    private NewMistake Mistake(ProposedMistake said) => new(said.What)
    {
        Cause = said.Cause?.Value,
        Lost = said.Lost is { Count: > 0 } lost ? lost.ToString() : null,
        Outcome = said.Outcome,
        Repeats = said.Repeats?.Value,
        Job = ToldJob.NumberAt(jobs, said.Words),
    };

    private NewReading Reading(ProposedReading said)
    {
        var usual = jobs.Select(job => job.Job.Part).FirstOrDefault(part => part is not (null or "whole"));
        return new(said.Feature, said.Required, said.Actual.ToString(), null)
        {
            Part = said.Part is { } part && part.Value != usual ? part.Value : null,
            Job = said.Part is null ? ToldJob.NumberAt(jobs, said.Words) : 1,
        };
    }

    // A verdict that figures would not understand is a remark.
    private NewSetting Setting(ProposedSetting said)
    {
        var isClear = SettingVerdicts.Of(said.Verdict) != SettingVerdict.Unclear;
        (string Key, string? Value)[] keys =
        [
            ("rpm", said.Rpm?.ToString(CultureInfo.InvariantCulture)),
            ("feed", said.Feed),
            ("depth", said.Depth?.ToString()),
            ("verdict", isClear ? said.Verdict : null),
            ("note", isClear ? null : said.Verdict),
        ];
        return new([.. keys.Where(pair => pair.Value is not null).Select(pair => (pair.Key, pair.Value!))]) { Job = ToldJob.NumberAt(jobs, said.Words) };
    }

    private bool CanBeFinished(ProposedFinish said) =>
        IsWritten($"finished {said.Part}", limits.WhyNotFinished(new Finished(said.Part, said.Pieces), date, [.. jobs.Select(job => job.Job)]), said.Words);

    private bool CanBeCleared(Known<Snag> said) => IsWritten($"cleared {said.Id}", limits.WhyNotCleared(said.Id), said.Words);

    private bool HasCost(ProposedPurchase said) => IsWritten($"bought {said.What}", said.Cost is null ? "no cost was said" : null, said.Words);

    private bool IsWritten(string what, string? whyNot, Span words)
    {
        if (whyNot is not null)
        {
            leftOut.Add(new(what, whyNot, words));
        }

        return whyNot is null;
    }

    // The figures judge what they would have to understand; a slip shows only beside what is required elsewhere.
    private List<T> Judged<T>(string kind, IEnumerable<(T Value, Span Words)> said, Func<T, string> title, Func<Entry, T, Place, Entry> with) => said.Where(one =>
    {
        var place = new Place("", 0, 0);
        var entry = with(Sketch(), one.Value, place);
        var journal = limits.Journal with
        {
            Builds = [limits.Build with { Entries = [.. limits.Build.Entries.Where(other => other.Date <= date), entry, .. limits.Build.Entries.Where(other => other.Date > date)] }],
        };
        var fault = Readings.Of(journal).Findings.Concat(Settings.Of(journal).Findings).FirstOrDefault(finding => finding.Place == place)?.Fault;
        return IsWritten($"{kind} {title(one.Value)}", fault?.What.TrimEnd('.'), one.Words);
    }).Select(one => one.Value).ToList();

    private Entry Sketch() => new()
    {
        Id = new("told-tonight"),
        Build = limits.Build.Id,
        File = "",
        Title = "",
        Date = date,
        Body = Body.Empty,
        Jobs = jobs.Count == 0 ? [new Job { Number = 1, Operations = [new("other")], Time = Minutes.Zero }] : [.. jobs.Select((job, i) => new Job
        {
            Number = i + 1,
            Time = HoursText.TimeOf(job.Job.Hours),
            Parts = [.. job.Job.Parts.Where(part => part != "whole").Select(part => new PartShare(new(part), 1))],
            Operations = job.Job.Operations.Count == 0 ? [new("other")] : [.. job.Job.Operations.Select(operation => new Id<Operation>(operation))],
        })],
    };

    private MeasuredReading Model(NewReading reading, Place place) => new()
    {
        Feature = reading.Feature,
        Part = (reading.Part ?? jobs.ElementAtOrDefault(reading.Job - 1)?.Job.Part) is { } part and not "whole" ? new Id<Part>(part) : null,
        Required = reading.Required,
        Actual = reading.Actual,
        Place = place,
    };

    private static Setting Model(NewSetting setting, Place place)
    {
        string? Value(string key) => setting.Keys.Where(pair => pair.Key == key).Select(pair => pair.Value).FirstOrDefault();
        return new()
        {
            Job = setting.Job,
            Rpm = Value("rpm") is { } rpm ? decimal.Parse(rpm, CultureInfo.InvariantCulture) : null,
            Feed = Value("feed"),
            Depth = Value("depth"),
            Place = place,
        };
    }
}
