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
internal sealed record Findable(FindKind Kind, string Title, string Address, string About, string Text);
