namespace Journal.Core.Figures;

/// <summary>
/// What a lesson is about, as terms: the stems of its words and of its mistake's, and what it was learned on, each operation,
/// material, tool and cause being a term of its own beside the words.
/// </summary>
internal static class LessonTerms
{
    /// <summary>
    /// The terms with how often each is there; 1 for an operation, material, tool or cause. These have a colon, as
    /// <c>tool:lathe</c>.
    /// </summary>
    public static Dictionary<string, int> Of(LessonFigure lesson)
    {
        var terms = TextTokens.Stems(Words(lesson));
        foreach (var feature in Features(lesson))
        {
            terms[feature] = 1;
        }

        return terms;
    }

    /// <summary>The lesson, what would have been better, and what went wrong, in the maker's words.</summary>
    public static string Words(LessonFigure lesson) => $"{lesson.Lesson.Text}\n{lesson.Lesson.Better}\n{lesson.Own?.Mistake.What}";

    // No word holds a colon, so a feature never meets a word.
    private static IEnumerable<string> Features(LessonFigure lesson) =>
    [
        .. lesson.On.Operations.Select(id => $"operation:{id}"),
        .. lesson.On.Materials.Select(material => $"material:{material.Family}"),
        .. lesson.On.Tools.Select(id => $"tool:{id}"),
        .. lesson.Cause is { } cause ? [$"cause:{cause}"] : Array.Empty<string>(),
    ];
}
