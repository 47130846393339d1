using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts.Jobs;

/// <summary>What a time in a clause is the time of.</summary>
internal enum TimeRole
{
    /// <summary>Nothing of tonight's bench work, or not sure.</summary>
    None,

    /// <summary>A job.</summary>
    Job,

    /// <summary>Setting up.</summary>
    SetUp,

    /// <summary>The evening as a whole.</summary>
    Total,

    /// <summary>Lost to a mistake.</summary>
    Lost,

    /// <summary>A trial run.</summary>
    Trial,
}

/// <summary>Tells what a time is the time of, by the words around it.</summary>
internal static class TimeRoles
{
    private static readonly HashSet<string> SetUpOperations = ["setting-up", "indicating", "tramming"];

    public static bool IsSetUp(OperationHit operation) => SetUpOperations.Contains(operation.Operation.Value);

    public static TimeRole Of(Account account, Clause clause, Quantity time)
    {
        if (time.IsVague || time.Minutes <= 0 || !clause.IsTonight || IsDenied(clause, time) || IsEach(account, time))
        {
            return TimeRole.None;
        }

        if (IsFilm(account, clause) && !clause.Has(Cue.Lost))
        {
            return TimeRole.None;
        }

        var operationNear = clause.Operations.Any(operation => !IsSetUp(operation) && clause.IsReal(operation.First));
        if (IsLost(clause, time))
        {
            return TimeRole.Lost;
        }

        if (IsTrial(clause))
        {
            return TimeRole.Trial;
        }

        if (clause.Has(Cue.Waiting) && !operationNear)
        {
            return TimeRole.None;
        }

        if (IsTotal(account, clause, time, operationNear))
        {
            return TimeRole.Total;
        }

        return IsSetUpTime(account, clause, time) ? TimeRole.SetUp : TimeRole.Job;
    }

    private static bool IsFilm(Account account, Clause clause) =>
        clause.Has(Cue.Film) || (clause.Operations.Count == 0 && account.Neighbours(clause).Any(other => other.Has(Cue.Film) && other.Operations.Count == 0 && other.Quantities.Count == 0));

    private static bool IsDenied(Clause clause, Quantity time) =>
        clause.Hits.Exists(hit => hit.First < time.First && hit.Cue is Cue.Negation or Cue.Unreal && hit.First < time.First && !clause.Hits.Exists(done => done.Cue == Cue.Done && done.First > hit.First && done.First < time.First && hit.Cue == Cue.Unreal));

    private static bool IsEach(Account account, Quantity time) => account.HasCueAt(time.Next, Cue.Each) || account.Word(time.Next) == "ago" || account.Word(time.Next) is "late" or "early" or "old" or "long" or "tops" or "maybe" or "left" or "off" or "away" || (account.Word(time.Next) is "of" && account.HasCueAt(time.Next + 1, Cue.Film)) || (account.Word(time.Next) is "if" or "for" && account.Word(time.Next + 1) is "i" or "you" or "others" or "some");

    private static bool IsLost(Clause clause, Quantity time) =>
        clause.Hits.Exists(hit => hit.Cue == Cue.Lost && Math.Abs(hit.First - time.First) <= 8);

    public static bool IsTrial(Clause clause) => clause.Has(Cue.Trial) && clause.Has(Cue.TrialOn);

    private static bool IsTotal(Account account, Clause clause, Quantity time, bool operationNear)
    {
        // "an hour and a quarter all in, forty minutes of that clocking it": the second is a share.
        if (account.HasCueAt(time.Next, Cue.ShareOf))
        {
            return false;
        }

        var near = clause.Hits.Exists(hit => hit.Cue == Cue.Total && (hit.First >= time.Next && hit.First <= time.Next + (account.HasCueAt(hit.First, Cue.Tonight) ? 0 : 2) || hit.Next <= time.First && hit.Next >= time.First - (account.HasCueAt(hit.First, Cue.Tonight) ? 1 : 3)));
        // "three quarters of an hour for the recess altogether" is the recess's.
        if (clause.HasAny(Cue.Feature, Cue.FeatureMeasured) && account.Word(time.Next) is "for" or "on")
        {
            return false;
        }

        if (near && !operationNear)
        {
            return true;
        }

        return clause.Hits.Exists(hit => hit.Cue == Cue.Total && account.Word(hit.First) is "all" or "altogether" or "total" or "totals" or "start" && account.Word(hit.Next - 1) != "evening" && (hit.First >= time.Next && hit.First <= time.Next + 1 || hit.Next <= time.First && hit.Next >= time.First - 2));
    }

    private static bool IsSetUpTime(Account account, Clause clause, Quantity time)
    {
        var setUp = int.MaxValue;
        foreach (var hit in clause.Hits)
        {
            if (hit.Cue == Cue.Setup && IsNearest(clause, time, hit.First, hit.Next))
            {
                setUp = Math.Min(setUp, Distance(time, hit.First, hit.Next));
            }
        }

        var work = int.MaxValue;
        foreach (var operation in clause.Operations)
        {
            var distance = Distance(time, operation.First, operation.Next);
            if (IsSetUp(operation))
            {
                setUp = IsNearest(clause, time, operation.First, operation.Next) ? Math.Min(setUp, distance) : setUp;
            }
            else if (!account.HasCueAt(operation.First, Cue.Setup))
            {
                work = Math.Min(work, distance);
            }
        }

        return setUp < int.MaxValue && setUp < work;
    }

    // Of several times in a clause the nearest one is meant.
    private static bool IsNearest(Clause clause, Quantity time, int first, int next) =>
        !clause.Quantities.Exists(other => other.Kind == UnitKind.Time && other != time && !other.IsStretch && Distance(other, first, next) < Distance(time, first, next));

    // What stands behind a time is nearer to it than what stands before: "an hour setting up", "half an hour boring".
    private static int Distance(Quantity time, int first, int next) => first >= time.Next ? first - time.Next : time.First - next + 6;
}
