namespace Journal.Core.Estimating.Method;

/// <summary>
/// What is known of the build's luck Z: nothing before it is begun, more with each part finished since.
/// </summary>
/// <param name="Middle">Its mean; 0 at the start.</param>
/// <param name="Scale">Its standard deviation; 1 at the start.</param>
internal readonly record struct SharedLuck(double Middle, double Scale)
{
    /// <summary>A build not yet begun.</summary>
    public static SharedLuck Unknown => new(0, 1);

    /// <summary>
    /// What finished parts of the build show (docs/estimating.md, Luck so far): ln h − middle = shared scale · Z +
    /// scatter · ε, Z standard normal before. The normal posterior has precision 1 + Σ σ²/s² and mean Σ σ d/s² over that;
    /// of the variance gained, three tenths are given back. Freaks are capped as in Residuals.
    /// </summary>
    public static SharedLuck After(IEnumerable<(Outlook Outlook, double LogHours, double Limit)> finished)
    {
        var (precision, sum) = (1.0, 0.0);
        foreach (var (outlook, logHours, limit) in finished)
        {
            var own = outlook.Scatter * outlook.Scatter;
            var off = Math.Clamp(logHours - outlook.Middle, -limit, limit);
            precision += outlook.SharedScale * outlook.SharedScale / own;
            sum += outlook.SharedScale * off / own;
        }

        var variance = 1 / precision;
        return new(sum / precision, Math.Sqrt(variance + (MethodConstants.LuckGivenBack * (1 - variance))));
    }
}
