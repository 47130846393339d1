using Journal.Core.Model;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Core.Writing.Names;

/// <summary>Finds every name in the links of an entry’s text: <c>[the quill](part:quill)</c>.</summary>
internal static class NamesInText
{
    private static readonly Dictionary<string, NameKind> Schemes = new(StringComparer.Ordinal)
    {
        ["part:"] = NameKind.Part,
        ["tool:"] = NameKind.Tool,
        ["lesson:"] = NameKind.Lesson,
        ["entry:"] = NameKind.Build,
    };

    /// <summary>The names, in the order of the text.</summary>
    /// <param name="body">The text.</param>
    /// <param name="build">The build of the entry.</param>
    /// <param name="front">How much of the file stands before the text.</param>
    public static IEnumerable<NameUse> Of(Body body, string build, int front) =>
        body.Links.Count == 0 ? [] : Addresses(body.Document).DistinctBy(address => address.Start).SelectMany(address => Names(body.Text, address.Start, address.Length, build, front));

    private static IEnumerable<(int Start, int Length)> Addresses(MarkdownDocument document)
    {
        foreach (var node in document.Descendants())
        {
            switch (node)
            {
                case LinkInline { IsImage: false, Reference: LinkReferenceDefinition definition }:
                    yield return (definition.UrlSpan.Start, definition.UrlSpan.Length);
                    break;
                case LinkInline { IsImage: false } link when !link.IsAutoLink:
                    yield return (link.UrlSpan.Start, link.UrlSpan.Length);
                    break;
                case AutolinkInline link:
                    yield return (link.Span.Start + 1, link.Span.Length - 2);
                    break;
            }
        }
    }

    private static IEnumerable<NameUse> Names(string text, int start, int length, string build, int front)
    {
        if (start < 0 || length <= 0 || start + length > text.Length)
        {
            yield break;
        }

        var address = text.AsSpan(start, length).Trim("<>").ToString();
        start += text.AsSpan(start, length).StartsWith("<") ? 1 : 0;
        if (Schemes.Keys.FirstOrDefault(scheme => address.StartsWith(scheme, StringComparison.Ordinal)) is not { } scheme)
        {
            yield break;
        }

        var (kind, name, at) = (Schemes[scheme], address[scheme.Length..], front + start + scheme.Length);
        var slash = kind is NameKind.Part or NameKind.Build ? name.IndexOf('/', StringComparison.Ordinal) : -1;
        if (slash > 0)
        {
            yield return new NameUse(NameKind.Build, null, name[..slash], at, slash);
        }

        if (kind != NameKind.Build)
        {
            var of = slash > 0 ? name[..slash] : build;
            yield return new NameUse(kind, kind == NameKind.Part ? of : null, name[(slash + 1)..], at + slash + 1, name.Length - slash - 1);
        }
    }
}
