namespace Journal.Site.Search;

/// <summary>What a search can find, in the order in which equals are shown.</summary>
internal enum FindKind
{
    /// <summary>A build.</summary>
    Build,

    /// <summary>The estimate sheet of a plan.</summary>
    Plan,

    /// <summary>A part sheet.</summary>
    Part,

    /// <summary>A tool of the bill.</summary>
    Tool,

    /// <summary>An operation's page.</summary>
    Operation,

    /// <summary>A lesson.</summary>
    Lesson,

    /// <summary>An entry.</summary>
    Entry,
}

/// <summary>Something that a search can find.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Title">Its title; words found here count most.</param>
/// <param name="Address">Its page, from the root of the site.</param>
/// <param name="About">Where it belongs, in a few words.</param>
/// <param name="Text">All else that is written of it, on one line; the words in context come from here.</param>
/// <param name="OwnWords">How many letters at the beginning of it are the words of an entry's text.</param>
internal sealed record Findable(FindKind Kind, string Title, string Address, string About, string Text, int OwnWords = 0)
{
    /// <summary>A text that begins with the words of an entry's text.</summary>
    /// <param name="words">The words, on one line.</param>
    /// <param name="rest">What follows.</param>
    public static (string Text, int OwnWords) TextOf(string words, string rest)
    {
        var stop = words.Length == 0 || char.IsPunctuation(words[^1]) ? "" : ".";
        var text = string.Concat(words, stop, words.Length > 0 && rest.Length > 0 ? " " : "", rest);
        return (text, text.Length - rest.Length);
    }
}

/// <summary>Something that a search can find, as the index tells of it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Title">Its title.</param>
/// <param name="Address">Its page.</param>
/// <param name="About">Where it belongs.</param>
/// <param name="Length">Letters of its text.</param>
/// <param name="OwnWords">How many of them, from the first, are the words of an entry's text.</param>
internal sealed record FindRow(FindKind Kind, string Title, string Address, string About, int Length, int OwnWords);
