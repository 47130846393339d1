using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Journal.Site.Templates;

/// <summary>Lets templates read members by name, and neither change them nor reach into anything by an index.</summary>
internal abstract class ReadingAccessor : IObjectAccessor
{
    public bool HasIndexer => false;

    public Type IndexType => typeof(string);

    /// <summary>The names of the members.</summary>
    protected abstract IReadOnlyCollection<string> Names { get; }

    public int GetMemberCount(TemplateContext context, SourceSpan span, object target) => Names.Count;

    public IEnumerable<string> GetMembers(TemplateContext context, SourceSpan span, object target) => Names;

    public abstract bool HasMember(TemplateContext context, SourceSpan span, object target, string member);

    public abstract bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value);

    public bool TrySetValue(TemplateContext context, SourceSpan span, object target, string member, object? value) => false;

    public bool TryGetItem(TemplateContext context, SourceSpan span, object target, object index, out object? value)
    {
        value = null;
        return false;
    }

    public bool TrySetItem(TemplateContext context, SourceSpan span, object target, object index, object? value) => false;
}
