using Journal.Core.Statistics;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>
/// What the work on a build as a whole (assembly, painting, fixtures nobody foresaw) takes for an hour on its parts,
/// from finished builds.
/// </summary>
/// <param name="Share">Hours on the whole for an hour on parts, all finished builds together; more than zero.</param>
/// <param name="Spread">How far single builds lie from it, on the scale of logarithms.</param>
/// <param name="Builds">From how many finished builds.</param>
internal sealed record WholeShare(double Share, double Spread, int Builds)
{
    // Before builds show their own: a half to twice is about two in three. Our own choice; worth two builds.
    private const double AssumedSpread = 0.6;
    private const int AssumedBuilds = 2;

    /// <summary>The share of a history without the build that is asked about; null where no finished build shows one.</summary>
    public static WholeShare? Of(History history, Id<Build>? asked)
    {
        List<HistoryBuild> builds = [.. history.Builds.Where(build => build.IsFinished && build.Build != asked && build.OnParts > Minutes.Zero)];
        var (onWhole, onParts) = (builds.Sum(build => build.OnWhole.InHours), builds.Sum(build => build.OnParts.InHours));
        if (onWhole <= 0)
        {
            return null;
        }

        var share = onWhole / onParts;
        double[] off =
        [
            .. builds.Where(build => build.OnWhole > Minutes.Zero)
                .Select(build => SameEverywhere.Ln(build.OnWhole.InHours / build.OnParts.InHours / share)),
        ];
        var squares = (AssumedBuilds * AssumedSpread * AssumedSpread) + off.Sum(d => d * d);
        return new WholeShare(share, Math.Sqrt(squares / (AssumedBuilds + off.Length)), builds.Count);
    }
}
