namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>
/// Two hundred invented makers, each from a seed: none to sixty past parts, with and without guesses, by the piece and in
/// three points, parts like others, pieces, work on the whole, builds at every stage, paces and days away.
/// </summary>
internal static class ReferenceKits
{
    private static readonly (string Operation, double Hours)[] Operations =
    [
        ("turning", 2), ("boring", 3), ("drilling", 0.7), ("marking-out", 0.5), ("fixture-making", 2.5), ("measuring", 0.4), ("fitting", 1.5),
    ];

    private static readonly string[] OnWhole = ["fitting", "painting", "drawing", "cleaning"];
    private static readonly int[] Histories = [0, 0, 1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60];
    private static readonly double[] GuessChances = [0, 0.35, 0.75, 1];

    /// <summary>All of them.</summary>
    public static IEnumerable<Kit> All => Enumerable.Range(1, 200).Select(Of);

    private static Kit Of(int number)
    {
        var chance = new ReferenceChance(number);
        var maker = new Maker(
            GuessChances[number % 4],
            Overrun: Math.Exp(0.25 * chance.Normal() + 0.2),
            Scatter: chance.OneOf(0.2, 0.45, 0.8),
            PiecesChance: number % 10 == 3 ? 0.9 : 0.25,
            FreakChance: number % 10 == 7 ? 0.15 : 0.01,
            IsSteep: number % 50 == 33);
        var today = new DateOnly(2026, 3, 2).AddDays(chance.Below(120));
        var isLongAgo = number % 25 is 6 or 8;
        var builds = new List<KitBuild>();
        var left = number % 20 == 19 ? 0 : maker.IsSteep ? 60 : chance.OneOf(Histories);
        for (var b = 1; left > 0; b++)
        {
            var count = Math.Min(left, chance.Between(1, 14));
            left -= count;
            var day = today.AddDays(isLongAgo ? -1000 : -chance.OneOf(chance.Between(30, 200), chance.Between(100, 700)));
            builds.Add(Build($"build-{b}", chance, maker, builds, count, chance.Below(3), 0, day, isOver: chance.Happens(0.7)));
        }

        var kind = number % 20 == 19 || isLongAgo ? 4 : chance.Below(5);
        var open = number % 25 == 5 ? 0 : chance.Between(1, 9);
        var begun = kind < 2 ? 0 : chance.Between(0, Math.Min(open, 3));
        var finished = kind < 2 || number % 20 == 19 ? open == 0 ? 1 : 0 : chance.OneOf(open == 0 ? 3 : 0, 1, 2, 4, 8, 12);
        var subject = Build("now", chance, maker, builds, finished, open, begun, today.AddDays(-DaysAgo(number, chance)), isOver: false) with
        {
            Whole = Some(chance, open == 0 ? 0 : 0.45, () => OnWhole.Take(chance.Between(1, 3)).Select(operation => (operation, Minutes(chance, 3))).ToArray()) ?? [],
            HoursAWeek = chance.Happens(number % 25 == 8 ? 1 : 0.3) ? chance.Between(4, 40) / 4.0 : null,
            Away = Some(chance, 0.4, () => Away(chance, today)) ?? [],
            Start = kind == 0 && chance.Happens(0.6) ? today.AddDays(chance.Between(-20, 60)) : null,
        };
        if (kind == 0)
        {
            subject = subject with { Entries = [], Parts = [.. subject.Parts.Select(part => part.Like?.Build == "now" ? part with { Like = null } : part)] };
        }

        subject = subject with { Entries = chance.Happens(0.1) ? subject.Entries : [.. subject.Entries.Where(entry => entry.Day <= today)] };
        return new Kit($"kit {number}", today, [.. kind == 0 ? builds : builds.Append(subject)], subject)
        {
            Seed = number,
            Start = chance.Happens(0.2) ? today.AddDays(chance.Between(-5, 40)) : null,
            HoursAWeek = chance.Happens(0.1) ? chance.Between(2, 15) : null,
            Without = open > 1 && chance.Happens(0.15) ? [subject.Parts[^1].Id] : [],
        };
    }

    /// <summary>When the build was begun: mostly some weeks or months ago, in some kits this week or three weeks ago.</summary>
    private static int DaysAgo(int number, ReferenceChance chance) => (number % 25) switch
    {
        6 => 0,
        8 => 20,
        _ => chance.Between(5, 120),
    };

    /// <summary>A build with parts finished, parts only begun and parts not touched, from a day on.</summary>
    private static KitBuild Build(string id, ReferenceChance chance, Maker maker, List<KitBuild> before, int finished, int open, int begun, DateOnly day, bool isOver)
    {
        if (isOver)
        {
            (finished, open) = (finished + open, 0);
        }

        var parts = new List<KitPart>();
        var evenings = new List<(KitJob[] Jobs, (string, int?)[] Finished)>();
        for (var p = 0; p < finished + open; p++)
        {
            var part = Part($"part-{p + 1}", chance, maker, p >= finished && p > 0 && chance.Happens(0.3) ? [new KitBuild(id) { Parts = [.. parts] }] : before);
            parts.Add(part.Listed);
            if (p < finished + begun)
            {
                evenings.AddRange(Evenings(part, chance, isFinished: p < finished, isSaid: !isOver || chance.Happens(0.6)));
            }
        }

        // Two parts at a time: swap evenings that lie near each other, but not those of one part.
        for (var e = 1; e < evenings.Count; e++)
        {
            if (chance.Happens(0.3) && evenings[e].Jobs[0].Parts[0].Part != evenings[e - 1].Jobs[0].Parts[0].Part)
            {
                (evenings[e - 1], evenings[e]) = (evenings[e], evenings[e - 1]);
            }
        }

        var entries = new List<KitEntry>();
        foreach (var (jobs, said) in evenings)
        {
            day = day.AddDays(chance.OneOf(0, 1, 1, 2, 3, 7));
            entries.Add(new KitEntry(day, $"{day:yyyy-MM-dd}-{entries.Count + 1000}", WithMore(jobs, parts, chance), said));
        }

        return new KitBuild(id) { Parts = [.. parts], Entries = [.. entries], IsFinished = isOver };
    }

    /// <summary>Sometimes work on the whole that evening, sometimes on a part that is not on the list.</summary>
    private static KitJob[] WithMore(KitJob[] jobs, List<KitPart> parts, ReferenceChance chance)
    {
        if (chance.Happens(0.12))
        {
            return [.. jobs, new KitJob(Minutes(chance, 1), [chance.OneOf(OnWhole)], [])];
        }

        return chance.Happens(0.03) ? [.. jobs, new KitJob(Minutes(chance, 0.5), ["cleaning"], [($"unlisted-{parts.Count}", 1)])] : jobs;
    }

    private static MadePart Part(string id, ReferenceChance chance, Maker maker, List<KitBuild> before)
    {
        var operations = Operations.OrderBy(_ => chance.Uniform()).Take(chance.Between(1, 3)).ToArray();
        var foreseen = operations.Select(one => one.Operation).ToArray();
        var pieces = maker.IsSteep ? chance.Happens(0.2) ? 30 : 1 : chance.Happens(maker.PiecesChance) ? chance.Between(2, 8) : 1;
        var thought = operations.Sum(one => one.Hours) * Math.Exp(0.3 * chance.Normal());
        var each = pieces * Math.Exp(maker.Scatter * chance.Normal()) * maker.Overrun * Math.Pow(pieces, maker.IsSteep ? -1.5 : -0.4);
        each *= chance.Happens(maker.FreakChance) ? chance.OneOf(0.05, 20) : 1;
        var listed = new KitPart(id) { Pieces = pieces, Like = LikeOf(chance, before) };
        if (chance.Happens(maker.GuessChance))
        {
            listed = listed with { Guess = GuessOf(chance, foreseen, thought, pieces), SecondGuess = chance.Happens(0.15) ? new KitGuess([(int)(70 * thought * pieces)], []) : null };
        }

        var isForeseen = listed.Guess is { Operations.Length: > 0 } || chance.Happens(0.6);
        listed = listed with { Operations = isForeseen ? foreseen : [] };
        var worked = chance.Happens(0.2) ? [.. operations.Skip(1), Operations[chance.Below(Operations.Length)]] : operations;
        return new MadePart(listed, [.. worked.DistinctBy(one => one.Operation).Select(one => (one.Operation, Math.Max(2, (int)(60 * one.Hours * thought / 4 * each))))]);
    }

    private static KitGuess GuessOf(ReferenceChance chance, string[] operations, double hours, int pieces)
    {
        var likely = Math.Max(5, (int)(60 * hours * pieces));
        return chance.Below(4) switch
        {
            0 => new KitGuess([likely * 2 / 3, likely, likely * 2 + chance.Below(50)], []),
            1 => new KitGuess([.. operations.Select((_, i) => Math.Max(3, likely * (i + 1) / 4))], operations),
            2 => new KitGuess([.. operations.Select((_, i) => Math.Max(3, likely * (i + 1) / 4 / pieces))], operations, IsForOnePiece: true),
            _ => new KitGuess([likely], []),
        };
    }

    private static (string, string)? LikeOf(ReferenceChance chance, List<KitBuild> before)
    {
        if (before.Count == 0 || !chance.Happens(0.2))
        {
            return null;
        }

        var build = chance.OneOf(before.ToArray());
        return (build.Id, chance.OneOf(build.Parts).Id);
    }

    /// <summary>A part's evenings; the last operations are left out, and some of the rest, while it is only begun.</summary>
    private static List<(KitJob[], (string, int?)[])> Evenings(MadePart part, ReferenceChance chance, bool isFinished, bool isSaid)
    {
        var id = part.Listed.Id;
        var evenings = new List<(KitJob[], (string, int?)[])>();
        var worked = isFinished ? part.Worked : part.Worked[..chance.Between(1, part.Worked.Length)];
        if (!isFinished && chance.Happens(0.3))
        {
            return [([new KitJob(chance.Between(1, 3), [worked[0].Operation], [(id, 1)])], [])];
        }

        if (worked.Length > 1 && chance.Happens(0.2))
        {
            evenings.Add(([new KitJob(worked[0].Minutes + worked[1].Minutes, [worked[0].Operation, worked[1].Operation], [(id, 1)])], []));
            worked = worked[2..];
        }

        foreach (var (operation, minutes) in worked)
        {
            var jobs = chance.Happens(0.5) ? new[] { minutes } : [minutes / 2, minutes - minutes / 2];
            evenings.AddRange(jobs.Select(time => (new[] { new KitJob(time, [operation], Shared(id, chance)) }, Array.Empty<(string, int?)>())));
        }

        if (part.Listed.Pieces > 1 && chance.Happens(0.5))
        {
            evenings[0] = (evenings[0].Item1, [(id, 1)]);
            var isOneEvening = evenings.Count == 1;
            if (isFinished && isSaid)
            {
                evenings[^1] = (evenings[^1].Item1, isOneEvening ? [(id, 1), (id, part.Listed.Pieces - 1)] : [(id, part.Listed.Pieces - 1)]);
            }
        }
        else if (isFinished && isSaid)
        {
            evenings[^1] = (evenings[^1].Item1, [(id, null)]);
        }

        return evenings;
    }

    /// <summary>The part alone, or with a share for the first part of the list or for an unlisted one.</summary>
    private static (string, int)[] Shared(string id, ReferenceChance chance) => chance.Below(12) switch
    {
        0 when id != "part-1" => [(id, 2), ("part-1", 1)],
        1 => [(id, 3), ("odds-and-ends", 1)],
        _ => [(id, 1)],
    };

    private static (DateOnly, DateOnly)[] Away(ReferenceChance chance, DateOnly today)
    {
        var first = today.AddDays(chance.Between(3, 60));
        var second = first.AddDays(chance.Between(30, 90));
        return [(first, first.AddDays(chance.Between(0, 25))), (second, second.AddDays(chance.Between(0, 9)))];
    }

    private static int Minutes(ReferenceChance chance, double hours) => Math.Max(5, (int)(60 * hours * Math.Exp(0.6 * chance.Normal())));

    private static T? Some<T>(ReferenceChance chance, double share, Func<T> made)
        where T : class => chance.Happens(share) ? made() : null;

    /// <summary>How a maker guesses and works.</summary>
    private sealed record Maker(double GuessChance, double Overrun, double Scatter, double PiecesChance, double FreakChance, bool IsSteep);

    /// <summary>A part as listed, and what it takes in minutes by operation.</summary>
    private sealed record MadePart(KitPart Listed, (string Operation, int Minutes)[] Worked);
}
