using MathNet.Numerics.Distributions;

namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>
/// Hours of a part (or of a guess on the whole): spent + share · exp(middle + shared · Z + scatter · ε).
/// </summary>
internal sealed record ReferenceItem(string Name, bool HasGuess, double Spent, double Share, double Middle, double Shared, double Scatter)
{
    /// <summary>A quantile with Z of a mean and a variance (docs/estimating.md, Draws and Begun parts).</summary>
    public double At(double p, double meanZ, double varianceZ) =>
        Spent + Share * Math.Exp(Middle + Shared * meanZ + Math.Sqrt(Shared * Shared * varianceZ + Scatter * Scatter) * Normal.InvCDF(0, 1, p));

    public double Draw(double z, double own) => Spent + Share * Math.Exp(Middle + Shared * z + Scatter * own);
}

/// <summary>Hours in each of many draws: of all, of the work on the whole, and of each part to come.</summary>
internal sealed record ReferenceDraws(double[] Totals, double[] Whole, double[][] Parts)
{
    /// <summary>The covariance of a part's hours with the total over the variance of the total; of the whole if the part is none.</summary>
    public double ShareInVariance(int part)
    {
        var hours = part < 0 ? Whole : Parts[part];
        var (mean, meanTotal) = (hours.Average(), Totals.Average());
        double together = 0, alone = 0;
        for (var d = 0; d < Totals.Length; d++)
        {
            together += (hours[d] - mean) * (Totals[d] - meanTotal);
            alone += (Totals[d] - meanTotal) * (Totals[d] - meanTotal);
        }

        return together / alone;
    }
}

/// <summary>The whole estimate of a kit by docs/estimating.md: which parts are to come, the build's luck so far, and draws of plain independent normal numbers.</summary>
internal sealed class ReferenceEstimate
{
    private readonly ReferenceChance chance;
    private readonly ReferenceLedger spent;
    private readonly PastPart[] past;

    public ReferenceEstimate(Kit kit)
    {
        chance = new ReferenceChance(kit.Seed);
        var subject = kit.Subject;
        spent = new ReferenceLedger(subject, kit.Today);
        past = ReferenceLedger.PastOf(kit.Builds, kit.Today);
        Past = past;
        var open = subject.Parts.Where(part => !spent.IsPartFinished(part) && !kit.Without.Contains(part.Id)).ToArray();
        IsPossible = past.Length > 0 || open.All(part => (part.SecondGuess ?? part.Guess) is not null);
        Finished = [.. subject.Parts.Where(part => spent.IsPartFinished(part) && !kit.Without.Contains(part.Id)).Select(part => (part.Id, spent.MinutesOf(part.Id) / 60.0))];
        SpentHours = (spent.MinutesOnParts + spent.MinutesOnWhole) / 60.0;
        if (!IsPossible)
        {
            Method = new ReferenceMethod([]);
            return;
        }

        Method = LearnAndJudgeLuck(subject);
        Open = [.. open.Select(ItemOf)];
        WholeGuesses = [.. subject.Whole.Select(guess => WholeItemOf(guess.Operation, guess.Minutes / 60.0))];
        WholeShare = ReferenceWholeShare.Of(kit.Builds.Where(build => build != kit.Subject), kit.Today);
    }

    /// <summary>Whether there is an estimate: with no past part at all every part needs a guess.</summary>
    public bool IsPossible { get; }

    public PastPart[] Past { get; }

    /// <summary>The finished parts of the subject, with the hours they took.</summary>
    public (string Part, double Hours)[] Finished { get; }

    public ReferenceMethod Method { get; }

    public double SpentHours { get; }

    /// <summary>m_Z.</summary>
    public double MeanZ { get; private set; }

    /// <summary>v.</summary>
    public double VarianceZ { get; private set; } = 1;

    public ReferenceItem[] Open { get; } = [];

    public ReferenceItem[] WholeGuesses { get; } = [];

    /// <summary>S and the spread, where a share in finished builds is to be had.</summary>
    public (double Share, double Spread)? WholeShare { get; }

    /// <summary>Many possible builds.</summary>
    public ReferenceDraws Draw(int draws)
    {
        var (totals, whole, parts) = (new double[draws], new double[draws], Open.Select(_ => new double[draws]).ToArray());
        var onWhole = spent.MinutesOnWhole / 60.0;
        var elsewhere = spent.MinutesOnParts / 60.0 - Open.Sum(item => item.Spent);
        for (var d = 0; d < draws; d++)
        {
            var z = MeanZ + Math.Sqrt(VarianceZ) * chance.Normal();
            var onParts = elsewhere;
            for (var i = 0; i < Open.Length; i++)
            {
                parts[i][d] = Open[i].Draw(z, chance.Normal());
                onParts += parts[i][d];
            }

            whole[d] = WholeHours(z, onParts, onWhole);
            totals[d] = onParts + whole[d];
        }

        return new ReferenceDraws(totals, whole, parts);
    }

    private double WholeHours(double z, double parts, double onWhole)
    {
        if (WholeGuesses.Length > 0)
        {
            var sum = onWhole - WholeGuesses.Sum(item => item.Spent);
            foreach (var item in WholeGuesses)
            {
                sum += item.Draw(z, chance.Normal());
            }

            return sum;
        }

        if (WholeShare is not { } known)
        {
            return onWhole;
        }

        var middle = Math.Log(known.Share * parts);
        if (onWhole == 0)
        {
            return Math.Exp(middle + known.Spread * chance.Normal());
        }

        // From the part of the normal distribution that makes the hours more than what was spent.
        var above = Normal.CDF(0, 1, -(Math.Log(onWhole) - middle) / known.Spread);
        return Math.Exp(middle - known.Spread * Normal.InvCDF(0, 1, chance.Uniform() * above));
    }

    /// <summary>Luck so far.</summary>
    private ReferenceMethod LearnAndJudgeLuck(KitBuild subject)
    {
        var own = past.Where(part => part.Build == subject.Id).ToArray();
        var others = past.Where(part => part.Build != subject.Id).ToArray();
        if (own.Length == 0)
        {
            return new ReferenceMethod(past);
        }

        if (others.Length < 5)
        {
            return new ReferenceMethod(past, isLuckInHabit: true);
        }

        var method = new ReferenceMethod(others);
        double precision = 1, pull = 0;
        foreach (var part in own)
        {
            var column = method.ColumnOf(part.Guess is not null);
            var d = Math.Log(part.Hours) - method.Middle(new PartToForecast(part.Foreseen, part.Pieces, part.Guess));
            d = Math.Clamp(d, -column.Constants.Cap, column.Constants.Cap);
            precision += column.Shared * column.Shared / column.ScatterSquared;
            pull += column.Shared * d / column.ScatterSquared;
        }

        MeanZ = pull / precision;
        VarianceZ = 1 / precision;
        VarianceZ += 0.3 * (1 - VarianceZ);
        return method;
    }

    private ReferenceItem ItemOf(KitPart part)
    {
        var like = part.Like is { } named ? past.FirstOrDefault(one => one.Build == named.Build && one.Part == named.Part) : null;
        var planned = part.Operations.Length > 0 ? part.Operations : like?.Operations ?? [];
        var guess = part.SecondGuess ?? part.Guess;
        var asked = new PartToForecast(planned, part.Pieces, guess?.Hours, guess?.IsForOnePiece ?? false, like);
        var middle = Method.Middle(asked);
        var hours = spent.MinutesOf(part.Id) / 60.0;
        if (hours == 0)
        {
            return Item(part.Id, guess is not null, 0, 1, middle, 1);
        }

        double left;
        if (planned.Length > 0)
        {
            var worked = spent.OperationsOf(part.Id);
            left = planned.Except(worked).Sum(Method.TimeOf) + 0.5 * Method.TimeOf(spent.LastOperationOf(part.Id));
            left = Math.Min(0.98, left / planned.Union(worked).Sum(Method.TimeOf));
        }
        else
        {
            left = Math.Clamp(1 - hours / (Method.GuessOf(asked) ?? Math.Exp(middle)), 0.1, 0.98);
        }

        return Item(part.Id, guess is not null, hours, left, middle, 1.8);
    }

    private ReferenceItem WholeItemOf(string operation, double guess)
    {
        var middle = Method.Middle(new PartToForecast([operation], 1, guess));
        var hours = spent.Whole.GetValueOrDefault(operation) / 60.0;
        return hours == 0
            ? Item(operation, hasGuess: true, 0, 1, middle, 1)
            : Item(operation, hasGuess: true, hours, Math.Clamp(1 - hours / guess, 0.1, 0.98), middle, 1.8);
    }

    private ReferenceItem Item(string name, bool hasGuess, double hours, double share, double middle, double widening)
    {
        var column = Method.ColumnOf(hasGuess);
        return new ReferenceItem(name, hasGuess, hours, share, middle, column.Shared, widening * column.Scatter);
    }
}

/// <summary>Work on the whole as a share of the work on parts, over finished builds (docs/estimating.md, Work on the whole).</summary>
internal static class ReferenceWholeShare
{
    public static (double Share, double Spread)? Of(IEnumerable<KitBuild> builds, DateOnly today)
    {
        var finished = builds.Select(build => new ReferenceLedger(build, today))
            .Where(build => build.IsWholeListFinished && build.MinutesOnParts > 0).ToArray();
        double onParts = finished.Sum(build => build.MinutesOnParts), onWhole = finished.Sum(build => build.MinutesOnWhole);
        if (onWhole == 0)
        {
            return null;
        }

        var share = onWhole / onParts;
        var (squares, count) = (0.0, 0);
        foreach (var build in finished.Where(build => build.MinutesOnWhole > 0))
        {
            var d = Math.Log((double)build.MinutesOnWhole / build.MinutesOnParts / share);
            squares += d * d;
            count++;
        }

        return (share, Math.Sqrt((2 * 0.6 * 0.6 + squares) / (2 + count)));
    }
}
