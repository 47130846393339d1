using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads the jobs: what was done tonight, to which part, for how long.</summary>
internal sealed class JobReader(Account account, Topic topic)
{
    /// <summary>How many clauses back a time may still belong to a job: “… that was twenty minutes”.</summary>
    private const int NearEnough = 5;

    /// <summary>What is done in passing with every job: a job of its own only where its time was said.</summary>
    private static readonly HashSet<string> NeedsTime = ["measuring", "cleaning", "planning", "drawing", "maintenance", "filming", "adjusting", "fitting", "packing", "other", "searching", "indexing", "setting-up", "polishing", "printing"];

    private Dictionary<int, JobDraft>? byClause;
    private (MadeThing Made, int Clause, Clause Told)? madeBefore;
    private readonly List<JobDraft> jobs = [];
    private (int Minutes, int Clause, int Sentence, Span Words, bool IsHeading)? waiting;
    private (int Minutes, Span Words)? setUpOfAll;

    public IReadOnlyList<JobDraft> Jobs => jobs;

    public (int Minutes, Span Words)? Total { get; private set; }

    /// <summary>Times that belong to nothing that was said.</summary>
    public List<Quantity> Unplaced { get; } = [];

    /// <summary>The job that a clause tells of, or that was told of last.</summary>
    public JobDraft? JobAt(int clause) => Recent().LastOrDefault(job => job.Clause <= clause);

    /// <summary>
    /// The job that a clause belongs to: told in it, right before it or right behind it. Where the evening had one job only, that one.
    /// </summary>
    public JobDraft? NearestTo(int clause)
    {
        const int SoonAfter = 4;
        const int SoonBefore = 4;
        const int OnlyOne = 12;
        byClause ??= jobs.GroupBy(job => job.Clause).ToDictionary(group => group.Key, group => group.Last());
        for (var at = clause; at >= clause - SoonAfter; at--)
        {
            if (byClause.TryGetValue(at, out var before))
            {
                return before;
            }
        }

        for (var at = clause + 1; at <= clause + SoonBefore; at++)
        {
            if (byClause.TryGetValue(at, out var behind))
            {
                return behind;
            }
        }

        return jobs.Count == 1 && Math.Abs(jobs[0].Clause - clause) <= OnlyOne ? jobs[0] : null;
    }

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        var done = clause.Operations.Where(operation => IsDone(clause, operation)).ToList();
        var times = clause.Quantities.Where(quantity => quantity.Kind == UnitKind.Time).Select(time => (Time: time, Role: TimeRoles.Of(account, clause, time))).ToList();
        var work = done.Where(operation => !TimeRoles.IsSetUp(operation) && (!NeedsTime.Contains(operation.Operation.Value) || times.Exists(time => time.Role == TimeRole.Job))).ToList();
        var own = times.Where(time => time.Role == TimeRole.Job).Select(time => time.Time).ToList();
        own = own.Exists(time => !time.IsStretch) ? own.Where(time => !time.IsStretch).ToList() : own;
        if (work.Count == 0 && own.Count > 0 && CuttingOn(clause, index) is { } cutting)
        {
            var (parts, isNamed) = Listed(clause, [.. clause.Parts]) is { Count: > 0 } listed ? (listed, true) : ([.. topic.Parts], false);
            var draft = Recent().LastOrDefault(job => job.Operations.Contains(cutting) && job.Minutes is null) ?? Begun(parts, isNamed);
            draft.AddOperation(cutting);
            draft.AddWords(account.SpanOf(clause.First, clause.Next));
            (draft.Clause, draft.Sentence) = (index, clause.Sentence);
        }
        else if (work.Count == 0 && own.Count > 0 && MadeThings.In(account, clause) is { } made && !clause.Has(Cue.Lost))
        {
            AddMaking(clause, index, made);
        }

        else if (work.Count == 0 && MadeThings.In(account, clause) is { } noted && clause.IsTonight)
        {
            madeBefore = (noted, index, clause);
        }

        AddJobs(clause, index, work, own);
        CorrectPart(clause, index);
        topic.Hear(clause);
        if (jobs.Count > 0 && jobs[^1].Clause == index)
        {
            topic.Set(jobs[^1].Parts is { Count: > 0 } parts ? parts : topic.Parts);
        }

        foreach (var (time, role) in times)
        {
            Place(clause, index, time, role, work.Count > 0);
        }
    }

    /// <summary>At the end: setting up that was said of the whole evening stands on the job with the most minutes.</summary>
    public void Finish()
    {
        if (waiting is { } left)
        {
            PlaceLate(left);
        }

        SettleTotal();
        if (setUpOfAll is { } setUp && jobs.Where(job => job.SetUp is null).MaxBy(job => job.Minutes ?? -1) is { } longest)
        {
            longest.SetUp = setUp.Minutes;
            longest.AddWords(setUp.Words);
        }
    }

    // Where there was one job, the time of the evening is the job's; setting up told beside the cutting belongs to it too.
    private void SettleTotal()
    {
        if (Total is not { } total || jobs.Count != 1)
        {
            return;
        }

        var only = jobs[0];
        var sum = only.Minutes + (only.SetUp ?? setUpOfAll?.Minutes);
        if (only.Minutes is null || sum == total.Minutes || only.Minutes == total.Minutes)
        {
            only.Minutes = total.Minutes;
            only.AddWords(total.Words);
            Total = null;
        }
    }

    private void PlaceLate((int Minutes, int Clause, int Sentence, Span Words, bool IsHeading) late)
    {
        if (jobs.Count == 1 && jobs[0].Minutes is null && Math.Abs(jobs[0].Clause - late.Clause) <= NearEnough)
        {
            jobs[0].Minutes = late.Minutes;
            jobs[0].AddWords(late.Words);
        }
    }

    /// <summary>Whether a word for an operation tells of work done tonight.</summary>
    private bool IsDone(Clause clause, OperationHit operation)
    {
        if (!clause.IsReal(operation.First) || IsDeniedBehind(clause, operation) || clause.Has(Cue.Film) && operation.Form != VerbForm.Past)
        {
            return false;
        }

        var before = operation.First > clause.First ? account.Word(operation.First - 1) : "";
        var after = account.Word(operation.Next);
        if (after is "time" or "day" or "evening" or "night" || after is "is" or "isn't" && operation.Form is VerbForm.Going or VerbForm.Phrase && account.Word(operation.First - 1) != "the")
        {
            return false;
        }

        // "the rod bent in the vice" is a mishap.
        if (operation.Operation.Value == "bending" && operation.Form == VerbForm.Past && after is "in" or "on" or "under" or "slightly" or "at" or "when" or "a")
        {
            return false;
        }

        return operation.Form switch
        {
            VerbForm.Past => !IsAdjective(operation, before),
            VerbForm.Going => IsGoingOn(clause, operation, before, after),
            VerbForm.Phrase => !operation.IsNoun || IsGoingOn(clause, operation, before, after),
            VerbForm.Plain => IsPlainDone(clause, operation, before),
            _ => false,
        };
    }

    private bool IsDeniedBehind(Clause clause, OperationHit operation) => account.Word(operation.Next) is "nothing" or "none" || (account.Word(operation.First - 1) is "no" && operation.First > clause.First);

    // "the turned rim", "a drilled hole"; but "the flywheel turned", "got the rim turned".
    private bool IsAdjective(OperationHit operation, string before)
    {
        var isLed = before is "the" or "a" or "an" or "its" or "my" or "that" or "this" or "of" or "from" or "off" or "on" or "to" or "freshly" or "newly" or "nicely" or "each" or "with" or "in" or "already" or "against" or "by" or "for" or "per" or "datum" or "had";
        return isLed && operation.Next < account.Tokens.Count && !(before is "that" or "this" or "each" && account.Word(operation.Next) is "the" or "it");
    }

    // "spent an hour boring", "the boring took", "boring: 2 h"; not "for boring", "before drilling".
    private bool IsGoingOn(Clause clause, OperationHit operation, string before, string after)
    {
        if (before is "for" or "before" or "without" or "than" or "when" or "if" or "to" or "not" or "any" or "no" or "more" or "like" or "about" or "stop" or "a" or "when" or "while" && !clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time))
        {
            return false;
        }

        if (before is "for" or "before" or "without" or "than" or "any" or "no" or "not" or "or" or "ready")
        {
            return false;
        }

        var hasTime = clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time && TimeRoles.Of(account, clause, quantity) is TimeRole.Job or TimeRole.Total);
        var isLed = before is "am" or "i'm" or "we're" or "was" or "were" or "been" or "on" or "spent" or "started" or "finished" or "did" or "some" or "done" or "of" or "kept" or "more" or "by" or "carried" or "got" or "began" or "tonight" or "evening" or "today" or "just" or "now" or "then" or "first" or "with" or "the";
        hasTime |= waiting is { } before2 && before2.Sentence == clause.Sentence && after is not ("is" or "was");
        return hasTime || (isLed && (!before.Equals("the", StringComparison.Ordinal) || clause.Has(Cue.Finished) || clause.Has(Cue.Reads))) || (operation.First == clause.First && operation.First == SentenceStart(clause));
    }

    private int SentenceStart(Clause clause) => clause.Index > 0 && account.Clauses[clause.Index - 1].Sentence == clause.Sentence ? -1 : clause.First;

    // "took an hour to bore", "managed to bore", "had to bore it again"; "I turn the piston", told as it goes on; "bore flywheel 2h", typed.
    private bool IsPlainDone(Clause clause, OperationHit operation, string before)
    {
        var led = clause.Hits.Exists(hit => hit.Cue == Cue.Done && hit.Next == operation.First);
        var hasTime = clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time && TimeRoles.Of(account, clause, quantity) == TimeRole.Job);
        var isPresent = before is "i" or "we" or "did" || (operation.First == clause.First && hasTime);
        return led || isPresent || (before == "to" && hasTime && clause.Has(Cue.Took));
    }

    private void AddJobs(Clause clause, int index, List<OperationHit> work, List<Quantity> times)
    {
        JobDraft? draft = null;
        var timeAt = 0;
        foreach (var operation in work)
        {
            var parts = PartsOf(clause, operation, work, out var isNamed);
            var opensNew = draft is null
                || (isNamed && draft.HasNamedPart && !parts.SequenceEqual(draft.Parts))
                || (times.Count >= work.Count && times.Count > 1);
            if (opensNew)
            {
                draft = Known(operation, parts, isNamed, times) ?? Joined(clause, index, parts, isNamed, times.Count) ?? Begun(parts, isNamed);
                if (times.Count >= work.Count && times.Count > 1 && timeAt < times.Count)
                {
                    Give(draft, times[timeAt++]);
                }
            }

            draft!.AddOperation(operation.Operation);
            draft.AddWords(account.SpanOf(clause.First, clause.Next));
            (draft.Clause, draft.Sentence) = (index, clause.Sentence);
            if (!draft.HasNamedPart && isNamed)
            {
                draft.Parts.Clear();
                draft.Parts.AddRange(parts);
                draft.HasNamedPart = true;
            }
        }

        if (draft is not null && waiting is { } time && draft.Minutes is null && times.Count == 0 && (time.Sentence == clause.Sentence || time.IsHeading) && index - time.Clause <= 2)
        {
            draft.Minutes = time.Minutes;
            draft.AddWords(time.Words);
            waiting = null;
        }
    }

    // "I bored the … no, I tell a lie, it was the bottom cover".
    private void CorrectPart(Clause clause, int index)
    {
        var isSaid = account.Word(clause.First) is "it" or "that" && account.Word(clause.First + 1) is "was" && account.NameOf.ElementAtOrDefault(clause.First + 2) is not null | account.NameOf.ElementAtOrDefault(clause.First + 3) is not null;
        if (!isSaid || jobs.Count == 0 || index - jobs[^1].Clause > 4 || !account.Clauses.Skip(Math.Max(0, index - 3)).Take(3).Any(other => other.Has(Cue.Correction)))
        {
            return;
        }

        if (Listed(clause, [.. clause.Parts]) is { Count: > 0 } parts)
        {
            jobs[^1].Parts.Clear();
            jobs[^1].Parts.AddRange(parts);
        }
    }

    // "an hour and three quarters cutting": the machine that was spoken of says which way.
    private Id<Operation>? CuttingOn(Clause clause, int index)
    {
        const int FarthestMachine = 8;
        if (!Enumerable.Range(clause.First, clause.Next - clause.First).Any(at => account.Word(at) is "cutting" or "machining"))
        {
            return null;
        }

        for (var at = index; at >= Math.Max(0, index - FarthestMachine); at--)
        {
            foreach (var tool in account.Clauses[at].Tools)
            {
                var id = tool.Name.Ids[0];
                var operation = id is "mill" or "milling-machine" ? "milling" : id.EndsWith("lathe", StringComparison.Ordinal) ? "turning" : null;
                if (operation is not null)
                {
                    return new(operation);
                }
            }
        }

        return null;
    }

    // "made a split bush to hold it by, 25 min": what holds or guides the work is made in a job of its own.
    private void AddMaking(Clause clause, int index, MadeThing made)
    {
        var parts = Listed(clause, [.. clause.Parts]);
        var draft = Begun(parts.Count > 0 ? parts : topic.Parts, parts.Count > 0);
        draft.AddOperation(new(made.Kind == "tool" ? "tool-making" : "fixture-making"));
        draft.AddWords(account.SpanOf(clause.First, clause.Next));
        (draft.Clause, draft.Sentence) = (index, clause.Sentence);
    }

    private void Give(JobDraft draft, Quantity time)
    {
        draft.Minutes = time.Minutes;
        draft.AddWords(account.SpanOf(time.First, time.Next));
        given.Add(time);
    }

    private readonly HashSet<Quantity> given = [];

    // No evening has more jobs than this between two mentions of one.
    private IEnumerable<JobDraft> Recent() => jobs.Skip(jobs.Count - 24);

    private JobDraft Begun(IReadOnlyList<string> parts, bool isNamed)
    {
        var draft = new JobDraft { HasNamedPart = isNamed };
        draft.Parts.AddRange(parts);
        jobs.Add(draft);
        return draft;
    }

    // The same work spoken of again.
    private JobDraft? Known(OperationHit operation, IReadOnlyList<string> parts, bool isNamed, List<Quantity> times) =>
        Recent().LastOrDefault(job => job.Operations.Contains(operation.Operation) && (!isNamed || parts.SequenceEqual(job.Parts)) && (times.Count == 0 || job.Minutes is null) && (isNamed || parts.SequenceEqual(job.Parts)));

    // Work on the same part that goes on in one breath without a time of its own is one job.
    private JobDraft? Joined(Clause clause, int index, IReadOnlyList<string> parts, bool isNamed, int times) =>
        jobs.Count > 0 && jobs[^1] is { Minutes: null } last && last.Sentence == clause.Sentence && index - last.Clause <= 2 && times <= 1 && (!isNamed || parts.SequenceEqual(last.Parts))
            ? last
            : null;

    /// <summary>The parts that an operation was done to: its object, else what stands before it, else what was spoken of.</summary>
    private IReadOnlyList<string> PartsOf(Clause clause, OperationHit operation, List<OperationHit> work, out bool isNamed)
    {
        isNamed = true;
        var end = work.Where(other => other.First > operation.First).Select(other => other.First).DefaultIfEmpty(clause.Next).First();
        if (work.Exists(other => other.First > operation.First) && !clause.Parts.Any(part => part.First > operation.First && part.First < end))
        {
            end = clause.Next;
        }

        var objects = Listed(clause, clause.Parts.Where(part => part.First >= operation.First && part.First < end).ToList());
        if (objects.Count == 0)
        {
            objects = Listed(clause, clause.Parts.Where(part => part.Next <= operation.First).ToList());
        }

        if (objects.Count > 0)
        {
            return objects;
        }

        isNamed = false;
        return topic.Parts;
    }

    // The first part, and those that are listed with it: "the front and the rear standard".
    private List<string> Listed(Clause clause, List<NameMention> names)
    {
        var ids = new List<string>();
        var end = -1;
        foreach (var name in names)
        {
            if (ids.Count > 0 && !JoinsList(end, name.First))
            {
                break;
            }

            if (topic.IsAside(clause, name))
            {
                continue;
            }

            ids.AddRange(topic.Resolve(name).Where(id => !ids.Contains(id)));
            end = name.Next;
        }

        return ids;
    }

    private bool JoinsList(int from, int to)
    {
        for (var at = from; at < to; at++)
        {
            if (account.Word(at) is not ("and" or "," or "&" or "the" or "then" or "both" or "+" or "plus" or "a"))
            {
                return false;
            }
        }

        return to - from <= 4;
    }

    private void Place(Clause clause, int index, Quantity time, TimeRole role, bool hasWork)
    {
        if (given.Contains(time))
        {
            return;
        }

        var words = account.SpanOf(clause.First, clause.Next);
        switch (role)
        {
            case TimeRole.Total:
                Total ??= (time.Minutes, words);
                break;
            case TimeRole.SetUp:
                PlaceSetUp(index, time, words);
                break;
            case TimeRole.Job:
                PlaceJobTime(clause, index, time, words, hasWork);
                break;
            default:
                break;
        }
    }

    private void PlaceSetUp(int index, Quantity time, Span words)
    {
        var job = jobs.Count > 0 && index - jobs[^1].Clause <= NearEnough ? jobs[^1] : null;
        if (job is not null && (job.Minutes is null || job.Minutes >= time.Minutes) && job.SetUp is null)
        {
            job.SetUp = time.Minutes;
            job.AddWords(words);
        }
        else
        {
            setUpOfAll ??= (time.Minutes, words);
        }
    }

    private void PlaceJobTime(Clause clause, int index, Quantity time, Span words, bool hasWork)
    {
        if ((hasWork || jobs.Count > 0) && jobs.Count > 0 && jobs[^1].Clause == index)
        {
            if (time.IsStretch && clause.Quantities.Exists(other => other.Kind == UnitKind.Time && other != time && TimeRoles.Of(account, clause, other) == TimeRole.Job))
            {
                Total ??= (time.Minutes, words);
            }
            else
            {
                jobs[^1].Minutes ??= time.Minutes;
            }

            return;
        }

        if (time.IsStretch && (jobs.Count == 0 || jobs[^1].Minutes is not null || (index - jobs[^1].Clause > 1 && account.Word(clause.First) is not ("that" or "it" or "this"))))
        {
            Total ??= (time.Minutes, words);
            return;
        }

        if (madeBefore is { } thing && index - thing.Clause <= 2 && (jobs.Count == 0 || jobs[^1].Clause < thing.Clause))
        {
            AddMaking(thing.Told, thing.Clause, thing.Made);
            madeBefore = null;
        }

        if (jobs.Count > 0 && jobs[^1] is { Minutes: null } last && index - last.Clause <= NearEnough && !NamesAnotherPart(clause, last))
        {
            last.Minutes = time.Minutes;
            last.AddWords(words);
            last.Clause = index;
            return;
        }

        waiting = (time.Minutes, index, clause.Sentence, words, clause.Parts.Any());
        Unplaced.Add(time);
    }

    private bool NamesAnotherPart(Clause clause, JobDraft job) =>
        clause.Parts.Any(part => !topic.IsAside(clause, part) && topic.Resolve(part) is { Count: > 0 } ids && !ids.Any(job.Parts.Contains));
}
