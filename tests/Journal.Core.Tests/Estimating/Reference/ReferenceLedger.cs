namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>A finished part on which time was spent: what is learned from.</summary>
/// <param name="Build">Its build.</param>
/// <param name="Part">The part.</param>
/// <param name="Day">The day it was finished.</param>
/// <param name="Pieces">q.</param>
/// <param name="Operations">Those with at least a minute.</param>
/// <param name="HoursBy">The hours of each.</param>
/// <param name="Hours">All its hours.</param>
/// <param name="Guess">The first guess for all pieces, in hours.</param>
/// <param name="Foreseen">The operations foreseen, else those it had.</param>
internal sealed record PastPart(
    string Build, string Part, DateOnly Day, int Pieces, string[] Operations, double[] HoursBy, double Hours, double? Guess, string[] Foreseen)
{
    /// <summary>Its hours with one operation.</summary>
    public double HoursOf(string operation) => Operations.Contains(operation) ? HoursBy[Array.IndexOf(Operations, operation)] : 0;
}

/// <summary>A build's minutes as known on a day, added up job by job (docs/figures.md, Minutes and how they are shared).</summary>
internal sealed class ReferenceLedger
{
    private readonly KitBuild build;
    private readonly KitEntry[] entries;
    private readonly Dictionary<string, Dictionary<string, int>> spent = [];
    private readonly Dictionary<string, string> lastOperation = [];
    private readonly Dictionary<string, DateOnly> lastDay = [];

    public ReferenceLedger(KitBuild build, DateOnly today)
    {
        this.build = build;
        entries = [.. build.Entries.Where(entry => entry.Day <= today)];
        IsFinished = build.IsFinished && entries.Length == build.Entries.Length;
        foreach (var entry in entries)
        {
            foreach (var job in entry.Jobs)
            {
                Add(entry.Day, job);
            }
        }
    }

    /// <summary>Whether the build said that it is finished; with entries after today it was not.</summary>
    public bool IsFinished { get; }

    /// <summary>Minutes on the whole by operation.</summary>
    public Dictionary<string, int> Whole { get; } = [];

    public DateOnly? FirstDay => entries.Length == 0 ? null : entries[0].Day;

    public int MinutesOnParts => spent.Values.Sum(by => by.Values.Sum());

    public int MinutesOnWhole => Whole.Values.Sum();

    public int MinutesOf(string part) => spent.TryGetValue(part, out var by) ? by.Values.Sum() : 0;

    public string[] OperationsOf(string part) => spent.TryGetValue(part, out var by) ? [.. by.Where(one => one.Value > 0).Select(one => one.Key)] : [];

    public string LastOperationOf(string part) => lastOperation[part];

    /// <summary>Whether every part of the list is finished or, without a list, the build says so.</summary>
    public bool IsWholeListFinished => build.Parts.Length == 0 ? IsFinished : build.Parts.All(part => IsPartFinished(part));

    public bool IsPartFinished(KitPart part) => IsFinished || DaySaidFinished(part) is not null;

    /// <summary>The finished parts of the parts list on which time was spent.</summary>
    public List<PastPart> Past()
    {
        var past = new List<PastPart>();
        foreach (var part in build.Parts)
        {
            if (IsPartFinished(part) && MinutesOf(part.Id) > 0)
            {
                var operations = OperationsOf(part.Id);
                past.Add(new PastPart(
                    build.Id, part.Id, DaySaidFinished(part) ?? lastDay[part.Id], part.Pieces, operations,
                    [.. operations.Select(operation => spent[part.Id][operation] / 60.0)],
                    MinutesOf(part.Id) / 60.0,
                    part.Guess is { } guess ? guess.Hours * (guess.IsForOnePiece ? part.Pieces : 1) : null,
                    part.Operations.Length > 0 ? part.Operations : operations));
            }
        }

        return past;
    }

    /// <summary>The past parts of all builds in the order of finishing, as known on a day.</summary>
    public static PastPart[] PastOf(KitBuild[] builds, DateOnly today) =>
    [
        .. builds.OrderBy(build => build.Id, StringComparer.Ordinal)
            .SelectMany(build => new ReferenceLedger(build, today).Past())
            .OrderBy(part => part.Day),
    ];

    private DateOnly? DaySaidFinished(KitPart part)
    {
        var left = part.Pieces;
        foreach (var entry in entries)
        {
            foreach (var (id, pieces) in entry.Finished)
            {
                if (id == part.Id)
                {
                    left -= pieces ?? left;
                    if (left <= 0)
                    {
                        return entry.Day;
                    }
                }
            }
        }

        return null;
    }

    private void Add(DateOnly day, KitJob job)
    {
        if (job.Parts.Length == 0)
        {
            AddByOperation(Whole, job.Minutes, job.Operations);
            return;
        }

        var shares = Share(job.Minutes, [.. job.Parts.Select(part => part.Weight)]);
        for (var i = 0; i < shares.Length; i++)
        {
            var part = job.Parts[i].Part;
            if (!spent.TryGetValue(part, out var by))
            {
                spent[part] = by = [];
            }

            AddByOperation(by, shares[i], job.Operations);
            lastOperation[part] = job.Operations[^1];
            lastDay[part] = day;
        }
    }

    private static void AddByOperation(Dictionary<string, int> by, int minutes, string[] operations)
    {
        var shares = Share(minutes, [.. operations.Select(_ => 1)]);
        for (var i = 0; i < shares.Length; i++)
        {
            by[operations[i]] = by.GetValueOrDefault(operations[i]) + shares[i];
        }
    }

    /// <summary>Whole minutes of each proportion, then one each to the largest remainders, ties to the first named.</summary>
    private static int[] Share(int minutes, int[] weights)
    {
        var all = weights.Sum();
        var shares = weights.Select(weight => minutes * weight / all).ToArray();
        var remainders = weights.Select(weight => minutes * weight % all).ToArray();
        for (var left = minutes - shares.Sum(); left > 0; left--)
        {
            var largest = Array.IndexOf(remainders, remainders.Max());
            shares[largest]++;
            remainders[largest] = -1;
        }

        return shares;
    }
}
