using Markdig.Syntax;

namespace Journal.Core.Model;

/// <summary>The text of an entry.</summary>
/// <param name="Text">The Markdown as the maker wrote it.</param>
/// <param name="FirstLine">The line of the file that the text begins on, from 1.</param>
/// <param name="Document">The text parsed.</param>
/// <param name="Links">The links with our own schemes, in reading order.</param>
/// <param name="HoldsHtml">Whether raw HTML stands in it.</param>
public sealed record Body(string Text, int FirstLine, MarkdownDocument Document, IReadOnlyList<BodyLink> Links, bool HoldsHtml)
{
    /// <summary>No text.</summary>
    public static Body Empty { get; } = new("", 1, [], [], HoldsHtml: false);
}

/// <summary>What a link with one of our own schemes points to.</summary>
public enum LinkKind
{
    /// <summary>A part: <c>part:quill</c>, <c>part:build/quill</c>.</summary>
    Part,

    /// <summary>A tool: <c>tool:quill-block</c>.</summary>
    Tool,

    /// <summary>A lesson: <c>lesson:indicate-both-ends</c>.</summary>
    Lesson,

    /// <summary>An entry: <c>entry:2025-09-27</c>, <c>entry:build/id</c>.</summary>
    Entry,
}

/// <summary>A link in a text, with its target resolved.</summary>
/// <param name="Kind">What it points to.</param>
/// <param name="Build">The build of a part or entry; null for tools and lessons.</param>
/// <param name="Id">The id of the target.</param>
public readonly record struct LinkTarget(LinkKind Kind, Id<Build>? Build, string Id);

/// <summary>A link in a text.</summary>
/// <param name="Written">The address as written, such as <c>entry:2025-09-27</c>.</param>
/// <param name="Target">What it means; null where nothing has that name.</param>
/// <param name="Place">Where it stands.</param>
public sealed record BodyLink(string Written, LinkTarget? Target, Place Place);
