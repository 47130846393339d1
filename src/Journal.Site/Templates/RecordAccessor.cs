using System.Collections.Concurrent;
using System.Linq.Expressions;
using System.Reflection;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Journal.Site.Templates;

/// <summary>
/// Lets templates read the properties of page models, by names such as <c>time_taken</c> for <c>TimeTaken</c>, and
/// nothing else of them. Getters are compiled once for each type, which costs a third of the library's reflection.
/// </summary>
internal sealed class RecordAccessor : IObjectAccessor
{
    private static readonly ConcurrentDictionary<Type, RecordAccessor> Known = new();
    private readonly Dictionary<string, Func<object, object?>> getters;

    private RecordAccessor(Type type) => getters = type
        .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(property => property.GetIndexParameters().Length == 0 && property.Name != "EqualityContract")
        .ToDictionary(property => StandardMemberRenamer.Rename(property), property => Compile(type, property), StringComparer.Ordinal);

    public static RecordAccessor Of(Type type) => Known.GetOrAdd(type, static one => new RecordAccessor(one));

    public int GetMemberCount(TemplateContext context, SourceSpan span, object target) => getters.Count;

    public IEnumerable<string> GetMembers(TemplateContext context, SourceSpan span, object target) => getters.Keys;

    public bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => getters.ContainsKey(member);

    public bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        value = getters.TryGetValue(member, out var getter) ? getter(target) : null;
        return getter is not null;
    }

    public bool TrySetValue(TemplateContext context, SourceSpan span, object target, string member, object? value) => false;

    public bool TryGetItem(TemplateContext context, SourceSpan span, object target, object index, out object? value)
    {
        value = null;
        return false;
    }

    public bool TrySetItem(TemplateContext context, SourceSpan span, object target, object index, object? value) => false;

    public bool HasIndexer => false;

    public Type IndexType => typeof(string);

    private static Func<object, object?> Compile(Type type, PropertyInfo property)
    {
        var target = Expression.Parameter(typeof(object));
        var value = Expression.Property(Expression.Convert(target, type), property);
        return Expression.Lambda<Func<object, object?>>(Expression.Convert(value, typeof(object)), target).Compile();
    }
}
