using System.Collections;
using Scriban;
using Scriban.Parsing;

namespace Journal.Site.Templates;

/// <summary>Lets templates ask a list for its <c>size</c>, and nothing else.</summary>
internal sealed class SizeAccessor : ReadingAccessor
{
    private const string Size = "size";

    /// <summary>The only instance, for lists of every kind.</summary>
    public static SizeAccessor Only { get; } = new();

    protected override IReadOnlyCollection<string> Names => [Size];

    public override bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => member == Size;

    public override bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        value = member == Size ? ((ICollection)target).Count : null;
        return value is not null;
    }
}
