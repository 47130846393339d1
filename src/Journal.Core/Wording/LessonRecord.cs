using System.Globalization;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Wording;

/// <summary>What a lesson has cost and how often it came up again, in words.</summary>
public static class LessonRecord
{
    /// <summary>“1h50 lost”, “12.00 EUR spent on it”, “forgotten twice”, “heeded once”; only what there is.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="currency">The journal's currency.</param>
    /// <param name="time">How a time is written: pages and terminals set it differently.</param>
    public static IEnumerable<string> Of(LessonFigure lesson, string currency, Func<Minutes, string> time)
    {
        foreach (var part in Cost(lesson.MinutesLost, lesson.Money, currency, time))
        {
            yield return part;
        }

        if (lesson.Repeated.Count > 0)
        {
            yield return $"forgotten {Count.Times(lesson.Repeated.Count)}";
        }

        if (lesson.Heeded.Count > 0)
        {
            yield return $"heeded {Count.Times(lesson.Heeded.Count)}";
        }
    }

    /// <summary>What a mistake, or a lesson's mistakes together, cost: “1h50 lost”, “12.00 EUR spent on it”; only what there is.</summary>
    public static IEnumerable<string> Cost(Minutes lost, decimal spent, string currency, Func<Minutes, string> time)
    {
        if (lost > Minutes.Zero)
        {
            yield return $"{time(lost)} lost";
        }

        if (spent > 0)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{spent:0.00} {currency} spent on it");
        }
    }

    /// <summary>Why a lesson from other work is worth reading here: “mentions boring”.</summary>
    /// <param name="id">What its text names: the id of an operation, a material or a tool.</param>
    public static string Mentions(string id) => $"mentions {Casing.Lower(Titles.FromId(id))}";
}
