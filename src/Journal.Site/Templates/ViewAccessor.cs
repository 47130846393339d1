using System.Collections.Concurrent;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Journal.Site.Templates;

/// <summary>A property of a page model that templates may read.</summary>
/// <param name="Name">Its name in C#.</param>
/// <param name="Read">Reads it from a model.</param>
public readonly record struct ViewMember(string Name, Func<object, object?> Read);

/// <summary>The properties of a model; null for what is none. Written down for each project while compiling (<c>Journal.Site.Generator</c>).</summary>
public delegate ViewMember[]? ViewTable(Type type);

/// <summary>
/// Lets templates read the properties of page models, by names such as <c>time_taken</c> for <c>TimeTaken</c>, and
/// nothing else.
/// </summary>
internal sealed class ViewAccessor : ReadingAccessor
{
    private readonly Dictionary<string, Func<object, object?>> getters;

    private ViewAccessor(ViewMember[] members) => getters = members.ToDictionary(
        member => StandardMemberRenamer.Rename(member.Name), member => member.Read, StringComparer.Ordinal);

    protected override IReadOnlyCollection<string> Names => getters.Keys;

    /// <summary>The accessor of a model; one without members for what is none.</summary>
    public static ViewAccessor Of(Type type, IReadOnlyList<ViewTable> tables) => new(tables.Select(table => table(type)).FirstOrDefault(members => members is not null) ?? []);

    public override bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => getters.ContainsKey(member);

    public override bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        value = Read(target, member);
        return getters.ContainsKey(member);
    }

    /// <summary>A member of a model; null where it has none of that name.</summary>
    public object? Read(object target, string member) => getters.TryGetValue(member, out var getter) ? getter(target) : null;
}

/// <summary>The accessors of all models that the templates of one look may read.</summary>
/// <param name="tables">Where the models' properties are written down.</param>
internal sealed class ViewAccessors(IReadOnlyList<ViewTable> tables)
{
    private readonly ConcurrentDictionary<Type, ViewAccessor> known = new();

    /// <summary>The accessor of a model; one without members for what is none.</summary>
    public ViewAccessor Of(Type type) => known.GetOrAdd(type, one => ViewAccessor.Of(one, tables));

    /// <summary>A member of a model; null where it has none of that name.</summary>
    public object? Read(object target, string member) => Of(target.GetType()).Read(target, member);
}
