using Scriban;
using Scriban.Functions;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Journal.Site.Templates;

/// <summary>
/// The library's <c>include</c>, whose result is HTML already: what the piece wrote was escaped when it was written.
/// </summary>
internal sealed class IncludePiece : IScriptCustomFunction
{
    private readonly IncludeFunction inner = new();

    public int RequiredParameterCount => inner.RequiredParameterCount;

    public int ParameterCount => inner.ParameterCount;

    public ScriptVarParamKind VarParamKind => inner.VarParamKind;

    public Type ReturnType => typeof(object);

    public ScriptParameterInfo GetParameterInfo(int index) => inner.GetParameterInfo(index);

    public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        new Html(inner.Invoke(context, callerContext, arguments, blockStatement)?.ToString() ?? "");

    public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        ValueTask.FromResult<object?>(Invoke(context, callerContext, arguments, blockStatement));
}
