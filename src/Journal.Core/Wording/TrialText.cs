using Journal.Core.Model;

namespace Journal.Core.Wording;

/// <summary>A trial in words.</summary>
public static class TrialText
{
    /// <summary>What it ran on: “on air”, “by hand”, “under power”.</summary>
    public static string On(Trial trial) => trial.On switch
    {
        "hand" => "by hand",
        "power" => "under power",
        var what => $"on {what}",
    };
}
