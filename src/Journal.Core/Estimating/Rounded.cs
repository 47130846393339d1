namespace Journal.Core.Estimating;

/// <summary>How finely estimates are told.</summary>
internal static class Rounded
{
    /// <summary>Hours to a thousandth: fine enough for small parts, and the same text on every machine.</summary>
    public static double Hours(double hours) => Math.Round(hours, 3, MidpointRounding.AwayFromZero);

    /// <summary>Shares to a thousandth.</summary>
    public static double Share(double share) => Math.Round(share, 3, MidpointRounding.AwayFromZero);
}
