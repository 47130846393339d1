using Journal.Cli.Wording;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Writing;

/// <summary>Remarks on the slate that no entry has yet, and how to give them one.</summary>
internal static class WaitingRemarks
{
    /// <summary>A sentence for each evening that some wait for.</summary>
    /// <param name="slate">The slate.</param>
    /// <param name="isAtHand">Whether the evening is one that <c>journal write</c> would write up unasked.</param>
    public static IEnumerable<string> Told(Slate slate, Func<DateOnly, bool> isAtHand) =>
        from waiting in slate.Jots.CountBy(jot => jot.Evening).OrderBy(one => one.Key)
        let evening = Written.Date(waiting.Key)
        let how = isAtHand(waiting.Key) ? "`journal write`" : $"`journal write --date {evening}`, with its `--hours`"
        select $"{Casing.Capital(Count.Of(waiting.Value, "remark"))} of {evening} {(waiting.Value == 1 ? "waits" : "wait")} for an entry: {how}.";
}
