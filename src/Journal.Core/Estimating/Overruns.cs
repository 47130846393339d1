using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>How far past guesses ran over.</summary>
internal static class Overruns
{
    /// <summary>Over all finished parts that had a guess; null without any.</summary>
    public static Overrun? Of(History history)
    {
        List<HistoryPart> guessed = [.. history.Parts.Where(part => part.GuessHours is not null)];
        if (guessed.Count == 0)
        {
            return null;
        }

        var (guesses, taken) = (guessed.Sum(part => part.GuessHours!.Value), guessed.Sum(part => part.Minutes));
        var extra = guessed.Sum(part => part.FixturesAndPuttingRight);
        double? share = taken.InHours > guesses ? Math.Min(1, extra.InHours / (taken.InHours - guesses)) : null;
        return new Overrun(
            guessed.Count,
            Rounded.Hours(guesses),
            Rounded.Hours(taken.InHours),
            Rounded.Share(taken.InHours / guesses),
            Rounded.Hours(extra.InHours),
            share is { } part ? Rounded.Share(part) : null);
    }
}
