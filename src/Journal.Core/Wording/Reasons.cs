using Journal.Core.Figures;

namespace Journal.Core.Wording;

/// <summary>Why a lesson is worth reading before a job, in words.</summary>
public static class Reasons
{
    /// <summary>What it shares with the job, then what it has cost: “boring”, “on the head casting”, “1h50 lost”.</summary>
    public static IReadOnlyList<string> Of(LessonToRead read, TitleBook titles, string currency)
    {
        var reasons = new List<string>();
        reasons.AddRange(read.Operations.Select(id => Casing.Lower(titles.Of(id))));
        reasons.AddRange(read.Parts.Select(part => $"on {Casing.Lower(titles.Of(part))}"));
        reasons.AddRange(read.Materials.Select(id => $"in {Casing.Lower(titles.Of(id))}"));
        reasons.AddRange(read.Tools.Select(id => $"with {Casing.Lower(titles.Of(id))}"));
        reasons.AddRange(read.Named.Select(LessonRecord.Mentions));
        reasons.AddRange(LessonRecord.Of(read.Lesson, currency, time => time.ToString()));
        return reasons;
    }
}
