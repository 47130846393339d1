using System.Collections;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Journal.Site.Templates;

/// <summary>Lets templates ask a list for its <c>size</c>, and nothing else.</summary>
internal sealed class SizeAccessor : IObjectAccessor
{
    private const string Size = "size";

    public static SizeAccessor Only { get; } = new();

    public bool HasIndexer => false;

    public Type IndexType => typeof(int);

    public int GetMemberCount(TemplateContext context, SourceSpan span, object target) => 1;

    public IEnumerable<string> GetMembers(TemplateContext context, SourceSpan span, object target) => [Size];

    public bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => member == Size;

    public bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        value = member == Size ? ((ICollection)target).Count : null;
        return value is not null;
    }

    public bool TrySetValue(TemplateContext context, SourceSpan span, object target, string member, object? value) => false;

    public bool TryGetItem(TemplateContext context, SourceSpan span, object target, object index, out object? value)
    {
        value = null;
        return false;
    }

    public bool TrySetItem(TemplateContext context, SourceSpan span, object target, object index, object? value) => false;
}
