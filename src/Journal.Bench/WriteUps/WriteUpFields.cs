using System.Globalization;
using Journal.Bench.Requests;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Bench.WriteUps;

/// <summary>A job as it stands in the form.</summary>
/// <param name="IsIn">Whether it goes into the entry.</param>
/// <param name="Part">Ids of parts with commas between.</param>
/// <param name="Operation">Words for operations with commas between.</param>
/// <param name="Hours">How long it took.</param>
/// <param name="SetUp">Of that, setting up; empty where it is not said.</param>
/// <param name="Held">How the work was held; empty where it is not said.</param>
/// <param name="Datum">What everything was measured from; empty where it is not said.</param>
/// <param name="Mends">The id of a mistake that it puts right; empty for none.</param>
internal sealed record JobFields(bool IsIn, string Part, string Operation, string Hours, string SetUp, string Held, string Datum, string Mends)
{
    /// <summary>A job as it is offered.</summary>
    public static JobFields Of(NewJob job) => new(true, string.Join(", ", job.Parts), string.Join(", ", job.Operations), job.Hours, job.SetUp ?? "", job.Held ?? "", job.Datum ?? "", job.Mends ?? "");
}

/// <summary>What the form of a write-up says.</summary>
/// <param name="Title">The title; empty for one made of the file's name.</param>
/// <param name="Jobs">The jobs; none where they stand in the entry already.</param>
/// <param name="Tools">The tools with commas between.</param>
/// <param name="Next">What to do next.</param>
/// <param name="Kept">What else was understood and counts, as <see cref="NameOf"/> names it.</param>
internal sealed record WriteUpFields(string Title, IReadOnlyList<JobFields> Jobs, string Tools, string Next, IReadOnlySet<string> Kept)
{
    /// <summary>What is offered for an evening.</summary>
    public static WriteUpFields Offer(EveningToWrite evening)
    {
        var jobs = evening.Into is null ? Offered.Jobs(evening.Heard, evening.Journal, evening.Build, evening.Pictures.Span) : [];
        var job = jobs is [var only] ? only.Job : evening.Into is null ? null : StandingJob(evening);
        var tools = job is null || (evening.Into is { } into && EveningEntry.Says(evening.Folder, into, "tools")) ? [] : Offered.Tools(evening.Heard, evening.Journal, job);
        var next = evening.Into is { } file && EveningEntry.Says(evening.Folder, file, "next") ? "" : evening.Heard.Proposal.Next?.Text ?? "";
        return new WriteUpFields("", [.. jobs.Select(one => JobFields.Of(one.Job))], string.Join(", ", tools.Select(tool => tool.Value)), next, Items(evening).Select(NameOf).ToHashSet(StringComparer.Ordinal));
    }

    /// <summary>What was sent.</summary>
    public static WriteUpFields Read(Form form, EveningToWrite evening)
    {
        string Field(int job, string name) => form[string.Create(CultureInfo.InvariantCulture, $"job-{job}-{name}")] ?? "";
        var count = evening.Into is null ? Offered.Jobs(evening.Heard, evening.Journal, evening.Build, null).Count : 0;
        return new WriteUpFields(
            form["title"] ?? "",
            [.. Enumerable.Range(0, count).Select(i => new JobFields(Field(i, "in") == "yes", Field(i, "part"), Field(i, "operation"), Field(i, "hours"), Field(i, "setup"), Field(i, "held"), Field(i, "datum"), Field(i, "mends")))],
            form["tools"] ?? "",
            form["next"] ?? "",
            form.All("item").ToHashSet(StringComparer.Ordinal));
    }

    /// <summary>What the remarks say beside jobs, their total and the next step, which have fields of their own.</summary>
    public static IReadOnlyList<ProposalItem> Items(EveningToWrite evening)
    {
        var heard = evening.Heard.Proposal;
        return ProposalItem.Of(heard with { Jobs = [], Total = null, Next = null, Made = evening.Into is null ? heard.Made : [], Mends = evening.Into is null ? heard.Mends : [], NewTools = evening.Into is null ? heard.NewTools : [] });
    }

    /// <summary>The name of a thing in the form.</summary>
    public static string NameOf(ProposalItem item) => $"{item.Key}: {item.Value}";

    /// <summary>The last job of the entry that is there, as what is added to it needs it.</summary>
    public static NewJob StandingJob(EveningToWrite evening) => evening.Standing is { } last
        ? new NewJob(last.IsGeneral ? ["whole"] : [.. last.Parts.Select(share => share.Part.Value)], [.. last.Operations.Select(operation => operation.Value)], "")
        : new NewJob([], [], "");
}
