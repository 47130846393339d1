using Journal.Core.Model;
using Journal.Site.Templates;
using Journal.Site.Text;

namespace Journal.Site.Pages;

/// <summary>Words of an entry as a page shows them.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Html">What is shown; empty where nothing is, but could be after another change of words.</param>
/// <param name="About">Where only the paragraphs about a lesson are shown, its words; else null.</param>
/// <param name="Answers">Where links and pictures lead.</param>
internal sealed record ShownWords(EntryRef Entry, SafeHtml Html, string? About, TextAnswers Answers);

/// <summary>A page that shows words of entries, and all else of it follows from other things.</summary>
internal interface IShowsWords
{
    /// <summary>The words.</summary>
    IReadOnlyList<ShownWords> Words { get; }
}
