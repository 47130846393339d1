using Journal.Core.Model;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Core.Figures;

/// <summary>
/// The part of an entry that tells how a lesson came about: the paragraphs nearest to the words of the mistake and of the lesson, by
/// the measure of <see cref="TermSpace"/> over all paragraphs of the entries that taught something.
/// </summary>
public sealed class LessonStories
{
    /// <summary>Below this a paragraph shares a common word or two with the lesson, and tells of something else.</summary>
    private const double Least = 0.12;

    /// <summary>How near a second paragraph must come to the first to be told too.</summary>
    private const double NearlyAsNear = 0.7;

    private const int Most = 2;

    private readonly ILookup<EntryRef, (ParagraphBlock Block, TermVector Vector)> paragraphs;
    private readonly TermSpace space;

    private LessonStories(IEnumerable<Entry> entries)
    {
        List<(EntryRef Entry, ParagraphBlock Block, Dictionary<string, int> Stems)> told =
            [.. entries.SelectMany(entry => Paragraphs(entry.Body.Document), (entry, block) => (entry.Ref, block, TextWords.Stems(Words(block))))];
        space = new TermSpace(told.Select(paragraph => paragraph.Stems));
        paragraphs = told.ToLookup(paragraph => paragraph.Entry, paragraph => (paragraph.Block, space.Weigh(paragraph.Stems)));
    }

    /// <summary>The stories that these entries tell.</summary>
    public static LessonStories Of(IEnumerable<Entry> entries) => new(entries.Where(entry => entry.Lessons.Count > 0));

    /// <summary>At most two paragraphs of the entry that learned it, in reading order; none where none is near.</summary>
    public IReadOnlyList<ParagraphBlock> Of(LessonFigure lesson)
    {
        var about = space.Weigh(TextWords.Stems(LessonTerms.Words(lesson)));
        var near = paragraphs[lesson.Entry].Index()
            .Select(one => (one.Index, one.Item.Block, Nearness: one.Item.Vector.Cosine(about)))
            .OrderByDescending(one => one.Nearness)
            .ThenBy(one => one.Index)
            .Take(Most)
            .ToList();
        return [.. near.Where(one => one.Nearness >= Math.Max(Least, NearlyAsNear * near[0].Nearness)).OrderBy(one => one.Index).Select(one => one.Block)];
    }

    private static IEnumerable<ParagraphBlock> Paragraphs(MarkdownDocument document) => document.Descendants<ParagraphBlock>().Where(block => block.Parent is not TableCell);

    private static string Words(ParagraphBlock block) => string.Join(' ', (block.Inline?.Descendants() ?? []).Select(inline => inline switch
    {
        LiteralInline literal => literal.Content.ToString(),
        CodeInline code => code.Content,
        _ => "",
    }));
}
