using Journal.Core.Parsing.Yaml;
using Journal.Core.Writing.Files;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing;

/// <summary>Another guess for a part of a plan.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="Guess">As the maker writes it, such as <c>14h</c> or <c>{low: 6h, likely: 9h, high: 16h}</c>; empty for none.</param>
public sealed record NewGuess(string Part, string Guess);

/// <summary>The guesses of a plan, as they are written; all else of the file stays to the byte.</summary>
public static class PlanGuesses
{
    private const string Key = "guess";

    /// <summary>How the guess of a part is written; empty where it has none, or the plan cannot be read.</summary>
    /// <param name="text">The text of the plan.</param>
    /// <param name="part">The part's id.</param>
    public static string Of(string text, string part) => ListEdit.OfParts(text)?.Written(part, Key) ?? "";

    /// <summary>The text of a plan with other guesses.</summary>
    /// <param name="text">The text of the plan.</param>
    /// <param name="guesses">The guesses that are other than before.</param>
    /// <returns>The text; null with the reason where one means nothing, or cannot be put in.</returns>
    public static (string? Text, string WhyNot) With(string text, IReadOnlyList<NewGuess> guesses)
    {
        ArgumentNullException.ThrowIfNull(guesses);
        foreach (var (part, guess) in guesses)
        {
            if (guess.Length > 0 && !IsOneValue(guess))
            {
                return (null, $"`{guess}` is no guess for `{part}`. Write `14h`, `{{low: 6h, likely: 9h, high: 16h}}` or hours by operation, such as `{{turning: 2h, boring: 3h}}`.");
            }

            var set = ListEdit.OfParts(text)?.Set(part, Key, guess.Length == 0 ? null : guess) ?? Added.Refused($"The plan has no part `{part}`.");
            if (set.Text is not { } changed)
            {
                return (null, $"`{part}`: {set.WhyNot}");
            }

            text = changed;
        }

        return (text, "");
    }

    /// <summary>
    /// Writes other guesses into a plan, in one step, or nothing. For those who hold the slate: no other command writes meanwhile. The
    /// file is read anew, so what was changed in it since it was read stays.
    /// </summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="file">The plan's file, relative to it.</param>
    /// <param name="guesses">The guesses that are other than before.</param>
    public static Entries.Written Write(string folder, string file, IReadOnlyList<NewGuess> guesses) =>
        MakersFile.Edit(Path.Combine(folder, file.Replace('/', Path.DirectorySeparatorChar)), text => With(text, guesses) is ({ } changed, _) ? Added.As(changed) : Added.Refused(With(text, guesses).WhyNot)) switch
        {
            null => new Entries.Written(null, $"{file} cannot be read."),
            { Text: null } refused => new Entries.Written(null, refused.WhyNot),
            _ => new Entries.Written(file, ""),
        };

    // Nothing that would be read as more than the value, such as a comma or a comment behind it.
    private static bool IsOneValue(string guess) =>
        !guess.Contains('\n', StringComparison.Ordinal) && !guess.Contains('#', StringComparison.Ordinal) && Addition.Read($"{{{Key}: {guess}}}") is MapNode { Pairs: [_] };
}
