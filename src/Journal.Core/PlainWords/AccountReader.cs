using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Facts;
using Journal.Core.PlainWords.Facts.Jobs;

namespace Journal.Core.PlainWords;

/// <summary>
/// Reads an account of an evening in plain words and proposes keys: text, tokens, quantities, clauses, facts. It works by rule, the same
/// for the same words, in time that grows with the length of the account; what it is not sure of it leaves out. It writes nothing.
/// </summary>
public static class AccountReader
{
    /// <summary>Longer than anyone talks of an evening (some two hours of speech), in UTF-16 units: what stands behind is not read, and a question says so.</summary>
    public const int LongestAccount = 100_000;

    /// <summary>Proposes the keys of an entry.</summary>
    /// <param name="text">The account, as typed, dictated or spoken.</param>
    /// <param name="journal">The journal, whose parts, tools, lessons, mistakes and snags it may speak of.</param>
    /// <param name="build">The build that the evening was for.</param>
    /// <param name="date">The evening; only what was known before it is known here.</param>
    public static Proposal Read(string text, MakerJournal journal, Build build, DateOnly date)
    {
        var account = Account.Of(text.Length > LongestAccount ? text[..LongestAccount] : text, journal, build);
        var lessons = KnownTexts.Lessons(journal, date);
        var topic = new Topic(account);
        var jobs = new JobReader(account, topic);
        var holding = new HoldingReader(account, jobs.Jobs);
        var readings = new ReadingReader(account, topic, jobs.Jobs);
        var trials = new TrialReader(account);
        var settings = new SettingReader(account, trials);
        var mistakes = new MistakeReader(account, lessons);
        var learned = new LessonReader(account, lessons, mistakes);
        var purchases = new PurchaseReader(account);
        var finishes = new FinishReader(account, topic);
        var made = new MadeReader(account);
        var next = new NextReader(account);
        var openSnags = KnownTexts.OpenSnags(build, date);
        var state = new StateReader(account, openSnags, KnownTexts.Mistakes(build, date));
        var snags = new SnagReader(account, openSnags, mistakes, state);
        mistakes.ReadAll();
        trials.ReadAll();
        for (var index = 0; index < account.Clauses.Count; index++)
        {
            jobs.Read(index);
            readings.Read(index);
            settings.Read(index);
            learned.Read(index);
            purchases.Read(index);
            finishes.Read(index);
            made.Read(index);
            state.Read(index);
            snags.Read(index);
            next.Read(index);
            state.ReadMends(index);
        }

        jobs.Finish();
        for (var index = 0; index < account.Clauses.Count; index++)
        {
            holding.Read(index);
        }

        state.Settle(jobs.Jobs);
        return new Proposal
        {
            Jobs = [.. jobs.Jobs.All.Select(ToJob)],
            Total = jobs.Total is { } total ? new Minutes(total.Minutes) : null,
            TotalWords = jobs.Total is { } said ? [said.Words] : [],
            Mistakes = mistakes.Mistakes,
            Lessons = learned.Lessons,
            Heeded = learned.Heeded,
            Mends = state.Mends,
            Readings = readings.Readings,
            Settings = settings.Settings,
            Finished = finishes.Finished,
            Bought = purchases.Bought,
            Made = made.Made,
            Snags = snags.Snags,
            Cleared = state.Cleared,
            Trials = trials.Trials,
            Next = next.Next,
            NewParts = NewPartReader.Read(account),
            NewTools = ToolNames.New(account),
            Questions = [.. OpenQuestions.OfLength(text, LongestAccount), .. jobs.Unplaced.Select(time => OpenQuestions.OfTime(account, time))],
        };
    }

    private static ProposedJob ToJob(JobDraft draft) => new()
    {
        Parts = [.. draft.Parts.Select(id => new Id<Part>(id))],
        Operations = draft.Operations,
        Time = draft.Minutes is { } minutes ? new Minutes(minutes) : null,
        SetUp = draft.SetUp is { } setUp && (draft.Minutes is null || setUp <= draft.Minutes) ? new Minutes(setUp) : null,
        Held = draft.Held,
        Datum = draft.Datum,
        Tools = [.. draft.Tools.Select(id => new Id<Tool>(id))],
        Mends = draft.Mends,
        Words = draft.Words,
    };
}
