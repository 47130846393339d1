using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Core.Figures;

/// <summary>
/// The part of an entry that tells how a lesson came about: the paragraphs nearest to the words of the mistake and of the lesson, by
/// the measure of <see cref="TermSpace"/> over the words of all lessons. What the texts of other entries say has no part in it.
/// </summary>
public sealed class LessonStory
{
    /// <summary>Below this a paragraph shares a common word or two with the lesson, and tells of something else.</summary>
    private const double Least = 0.12;

    /// <summary>How near a second paragraph must come to the first to be told too.</summary>
    private const double NearlyAsNear = 0.7;

    private const int Most = 2;

    // One text more than there are lessons: the words of the only lesson, which all lessons hold, would weigh nothing.
    private static readonly Dictionary<string, int> Nothing = [];

    private readonly TermSpace space;

    private LessonStory(TermSpace space) => this.space = space;

    /// <summary>Among these lessons.</summary>
    public static LessonStory Among(IEnumerable<LessonFigure> lessons) => new(new TermSpace([.. lessons.Select(lesson => TextTokens.Stems(WordsOf(lesson))), Nothing]));

    /// <summary>What a story is sought by: the words of a lesson and its mistake.</summary>
    public static string WordsOf(LessonFigure lesson) => LessonTerms.Words(lesson);

    /// <summary>At most two paragraphs of a text, in reading order; none where none is near.</summary>
    /// <param name="words">What to seek by (<see cref="WordsOf"/>).</param>
    /// <param name="text">The text of the entry that learned the lesson.</param>
    public IReadOnlyList<ParagraphBlock> In(string words, MarkdownDocument text)
    {
        var about = space.Weigh(TextTokens.Stems(words));
        var near = text.Descendants<ParagraphBlock>().Where(block => block.Parent is not TableCell).Index()
            .Select(one => (one.Index, Block: one.Item, Nearness: space.Weigh(TextTokens.Stems(Words(one.Item))).Cosine(about)))
            .OrderByDescending(one => one.Nearness)
            .ThenBy(one => one.Index)
            .Take(Most)
            .ToList();
        return [.. near.Where(one => one.Nearness >= Math.Max(Least, NearlyAsNear * near[0].Nearness)).OrderBy(one => one.Index).Select(one => one.Block)];
    }

    private static string Words(ParagraphBlock block) => string.Join(' ', (block.Inline?.Descendants() ?? []).Select(inline => inline switch
    {
        LiteralInline literal => literal.Content.ToString(),
        CodeInline code => code.Content,
        _ => "",
    }));
}
