using System.Collections.Concurrent;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Journal.Site.Templates;

/// <summary>
/// Lets templates read the properties of page models, by names such as <c>time_taken</c> for <c>TimeTaken</c>, and
/// nothing else. Which models and properties there are is written down while compiling (<c>Journal.Site.Generator</c>).
/// </summary>
internal sealed partial class ViewAccessor : ReadingAccessor
{
    private static readonly ConcurrentDictionary<Type, ViewAccessor> Known = new();
    private readonly Dictionary<string, Func<object, object?>> getters;

    private ViewAccessor((string Name, Func<object, object?> Read)[] members) => getters = members.ToDictionary(
        member => StandardMemberRenamer.Rename(member.Name), member => member.Read, StringComparer.Ordinal);

    protected override IReadOnlyCollection<string> Names => getters.Keys;

    /// <summary>The accessor of a model; one without members for what is none.</summary>
    public static ViewAccessor Of(Type type) => Known.GetOrAdd(type, static one => new ViewAccessor(MembersOf(one) ?? []));

    /// <summary>A member of a model; null where it has none of that name.</summary>
    public static object? Read(object target, string member) => Of(target.GetType()).getters.TryGetValue(member, out var getter) ? getter(target) : null;

    public override bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => getters.ContainsKey(member);

    public override bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        value = getters.TryGetValue(member, out var getter) ? getter(target) : null;
        return getter is not null;
    }

    private static partial (string Name, Func<object, object?> Read)[]? MembersOf(Type type);
}
