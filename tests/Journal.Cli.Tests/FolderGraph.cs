using Mono.Cecil;

namespace Journal.Cli.Tests;

/// <summary>One folder of a project that names a type of another.</summary>
internal sealed record FolderArrow(string From, string To, string Type, string Named);

/// <summary>Which folders of a compiled project name types of which others: in what they derive from, hold, take, give and call.</summary>
internal static class FolderGraph
{
    /// <summary>All arrows between folders of one assembly, found in the assembly itself.</summary>
    /// <param name="path">The assembly.</param>
    /// <param name="root">The namespace whose next step is the folder.</param>
    public static IReadOnlyList<FolderArrow> Of(string path, string root)
    {
        using var assembly = AssemblyDefinition.ReadAssembly(path);
        return
        [
            .. from type in assembly.MainModule.GetTypes()
               let at = FolderOf(type, root)
               where at is not null
               from named in Named(type).SelectMany(Parts).Where(one => one.Scope == type.Scope)
               let to = FolderOf(named, root)
               where to is not null && to != at
               select new FolderArrow(at, to, type.FullName, named.FullName),
        ];
    }

    /// <summary>The folders that hold types.</summary>
    public static IReadOnlyList<string> In(string path, string root)
    {
        using var assembly = AssemblyDefinition.ReadAssembly(path);
        return [.. assembly.MainModule.GetTypes().Select(type => FolderOf(type, root)).OfType<string>().Distinct().Order(StringComparer.Ordinal)];
    }

    // "" for the project's own folder; null for what the compiler makes outside all namespaces.
    private static string? FolderOf(TypeReference type, string root)
    {
        var outermost = type;
        while (outermost.DeclaringType is { } outer)
        {
            outermost = outer;
        }

        var space = outermost.Namespace;
        return space == root ? "" : space.StartsWith($"{root}.", StringComparison.Ordinal) ? space[(root.Length + 1)..].Split('.')[0] : null;
    }

    private static IEnumerable<TypeReference> Named(TypeDefinition type) =>
        [
            .. type.BaseType is { } parent ? [parent] : Array.Empty<TypeReference>(),
            .. type.Interfaces.Select(one => one.InterfaceType),
            .. type.CustomAttributes.Select(one => one.AttributeType),
            .. type.GenericParameters.SelectMany(one => one.Constraints).Select(one => one.ConstraintType),
            .. type.Fields.Select(one => one.FieldType),
            .. type.Methods.SelectMany(Named),
        ];

    private static IEnumerable<TypeReference> Named(MethodDefinition method) =>
        [
            method.ReturnType,
            .. method.Parameters.Select(one => one.ParameterType),
            .. method.GenericParameters.SelectMany(one => one.Constraints).Select(one => one.ConstraintType),
            .. method.HasBody ? method.Body.Variables.Select(one => one.VariableType) : [],
            .. method.HasBody ? method.Body.Instructions.SelectMany(one => Named(one.Operand)) : [],
        ];

    private static IEnumerable<TypeReference> Named(object? operand) => operand switch
    {
        TypeReference type => [type],
        GenericInstanceMethod made => [made.DeclaringType, .. made.GenericArguments],
        MemberReference member => member.DeclaringType is { } owner ? [owner] : [],
        _ => [],
    };

    // A list of arrays of X names X.
    private static IEnumerable<TypeReference> Parts(TypeReference type) => type switch
    {
        GenericInstanceType made => [made.ElementType, .. made.GenericArguments.SelectMany(Parts)],
        TypeSpecification of => Parts(of.ElementType),
        GenericParameter => [],
        _ => [type],
    };
}
