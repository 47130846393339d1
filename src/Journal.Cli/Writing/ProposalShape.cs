using System.Globalization;
using Journal.Core.Model;
using Journal.Core.PlainWords;

namespace Journal.Cli.Writing;

/// <summary>A proposal for programs; positions are UTF-16 offsets into the account, [start, end).</summary>
internal static class ProposalShape
{
    /// <summary>The shape that <c>journal propose --format json</c> writes.</summary>
    public static object Of(Proposal proposal) => new
    {
        Jobs = proposal.Jobs.Select(job => new
        {
            job.Parts,
            job.Operations,
            Minutes = job.Time,
            Setup = job.SetUp,
            job.Held,
            job.Datum,
            job.Tools,
            job.Mends,
            Words = Spans(job.Words),
        }),
        proposal.Total,
        Mistakes = proposal.Mistakes.Select(mistake => new
        {
            mistake.What,
            mistake.Cause,
            mistake.Lost,
            Outcome = mistake.Outcome?.ToWord(),
            mistake.Repeats,
            Words = Spans(mistake.Words),
        }),
        Lessons = Texts(proposal.Lessons),
        Heeded = proposal.Heeded.Select(lesson => lesson.Id),
        Mends = proposal.Mends.Select(mistake => mistake.Id),
        Readings = proposal.Readings.Select(reading => new
        {
            reading.Part,
            reading.Feature,
            Actual = Plain(reading.Actual),
            reading.Required,
            Words = Spans(reading.Words),
        }),
        Settings = proposal.Settings.Select(setting => new
        {
            setting.Rpm,
            Depth = setting.Depth is { } depth ? Plain(depth) : null,
            setting.Feed,
            setting.Verdict,
            Words = Spans(setting.Words),
        }),
        Finished = proposal.Finished.Select(part => part.Part),
        Pieces = proposal.Finished.Where(part => part.Pieces is not null).Select(part => new { part.Part, part.Pieces }),
        Bought = proposal.Bought.Select(item => new { item.What, item.Cost, Words = Spans(item.Words) }),
        Made = proposal.Made.Select(item => new { item.Title, item.Kind, Words = Spans(item.Words) }),
        Snags = Texts(proposal.Snags),
        Cleared = proposal.Cleared.Select(snag => snag.Id),
        Trials = proposal.Trials.Select(trial => new { trial.On, Minutes = trial.Time, Words = Spans(trial.Words) }),
        Next = proposal.Next?.Text,
        NewParts = proposal.NewParts.Select(part => part.Text),
        NewTools = proposal.NewTools.Select(tool => new { Title = tool.Text, Words = Spans(tool.Words) }),
        Questions = Texts([.. proposal.Questions.Select(question => new ProposedText(question.Text, question.Words))]),
    };

    private static IEnumerable<object> Texts(IReadOnlyList<ProposedText> texts) => texts.Select(text => new { text.Text, Words = Spans(text.Words) });

    private static int[][] Spans(params IEnumerable<Span> spans) => [.. spans.Select(span => new[] { span.Start, span.End })];

    private static string Plain(Length length) => string.Create(CultureInfo.InvariantCulture, $"{length.Value} {length.Unit.Symbol()}");
}
