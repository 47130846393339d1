using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Wording;

/// <summary>Why a lesson is worth reading before a job, in words.</summary>
internal static class Reasons
{
    /// <summary>What it shares with the job, then what it has cost: “boring”, “on the head casting”, “cost 1h50”.</summary>
    public static IReadOnlyList<string> Of(LessonToRead read, TitleBook titles, string currency)
    {
        var reasons = new List<string>();
        reasons.AddRange(read.Operations.Select(id => TitleBook.Lower(titles.Of(id))));
        reasons.AddRange(read.Parts.Select(part => $"on {TitleBook.Lower(titles.Of(part))}"));
        reasons.AddRange(read.Materials.Select(id => $"in {TitleBook.Lower(titles.Of(id))}"));
        reasons.AddRange(read.Tools.Select(id => $"with {TitleBook.Lower(titles.Of(id))}"));
        reasons.AddRange(read.Named.Select(word => $"speaks of {TitleBook.Lower(Titles.FromId(word))}"));
        if (read.Lesson.MinutesLost > Minutes.Zero)
        {
            reasons.Add($"cost {read.Lesson.MinutesLost}");
        }

        if (read.Lesson.Money > 0)
        {
            reasons.Add($"{Written.Money(read.Lesson.Money)} {currency} spent on it");
        }

        if (read.Lesson.Repeated.Count > 0)
        {
            reasons.Add($"forgotten {Count.Times(read.Lesson.Repeated.Count)}");
        }

        if (read.Lesson.Heeded.Count > 0)
        {
            reasons.Add($"heeded {Count.Times(read.Lesson.Heeded.Count)}");
        }

        return reasons;
    }
}
