using Mono.Cecil;
using Mono.Cecil.Cil;

namespace Journal.Cli.Tests;

// What is compiled ahead of time keeps only what the compiler sees used. Code that finds types and members by their names
// says so by an attribute, and no method of ours may call it.
public class AheadOfTimeTests
{
    private static readonly string[] Ours = ["Journal.Core.dll", "Journal.Site.dll", "Journal.Bench.dll", "journal.dll"];

    private static readonly string[] Marks =
        ["System.Diagnostics.CodeAnalysis.RequiresUnreferencedCodeAttribute", "System.Diagnostics.CodeAnalysis.RequiresDynamicCodeAttribute"];

    public static TheoryData<string> Assemblies => [.. Ours];

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void Code_CallsNothingThatACompilerCannotFollow(string file)
    {
        var calls = CallsIn(Path.Combine(AppContext.BaseDirectory, file));

        Assert.Empty(calls.Where(call => IsMarked(call.Called)).Select(call => $"{call.From} calls {call.Called.FullName}"));
        Assert.InRange(calls.Count, 1000, int.MaxValue);
    }

    [Fact]
    public void Mark_OfAMethodThatReflects_IsSeen()
    {
        var calls = CallsIn(typeof(AheadOfTimeTests).Assembly.Location);

        Assert.Contains(calls, call => call.From.Contains(nameof(ThatReflects), StringComparison.Ordinal) && IsMarked(call.Called));
    }

#pragma warning disable CA1869 // Never called.
    internal static string ThatReflects(object thing) => System.Text.Json.JsonSerializer.Serialize(thing, thing.GetType(), new System.Text.Json.JsonSerializerOptions());
#pragma warning restore CA1869

    private static List<(string From, MethodDefinition Called)> CallsIn(string path)
    {
        using var resolver = new DefaultAssemblyResolver();
        resolver.AddSearchDirectory(Path.GetDirectoryName(path));
        resolver.AddSearchDirectory(Path.GetDirectoryName(typeof(object).Assembly.Location));
        using var assembly = AssemblyDefinition.ReadAssembly(path, new ReaderParameters { AssemblyResolver = resolver });
        return
        [
            .. from type in assembly.MainModule.GetTypes()
               from method in type.Methods
               where method.HasBody
               from instruction in method.Body.Instructions
               where instruction.OpCode.Code is Code.Call or Code.Callvirt or Code.Newobj or Code.Ldftn
               let called = (instruction.Operand as MethodReference)?.Resolve()
               where called is not null
               select (method.FullName, called),
        ];
    }

    private static bool IsMarked(MethodDefinition method) =>
        method.CustomAttributes.Concat(method.DeclaringType.CustomAttributes).Any(one => Marks.Contains(one.AttributeType.FullName, StringComparer.Ordinal));
}
