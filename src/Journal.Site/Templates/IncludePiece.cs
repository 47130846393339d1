using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Journal.Site.Templates;

/// <summary>
/// The <c>include</c> of templates: a piece writes where it is included, with the words after its name as <c>$1</c> and so
/// on. The library's own include makes a text first and then writes it, so a page of many pieces is written twice.
/// </summary>
internal sealed class IncludePiece : IScriptCustomFunction
{
    public int RequiredParameterCount => 1;

    public int ParameterCount => 1;

    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.Direct;

    public Type ReturnType => typeof(object);

    public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(object), "value");

    public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement)
    {
        if (arguments.Count == 0 || context.ObjectToString(arguments[0]) is not { Length: > 0 } name)
        {
            throw new ScriptRuntimeException(callerContext?.Span ?? default, "`include` needs the name of a piece, such as `include 'link'`.");
        }

        var caller = callerContext ?? throw new ArgumentNullException(nameof(callerContext));
        var piece = context.GetOrCreateTemplate(context.TemplateLoader!.GetPath(context, caller.Span, name)!, caller);
        context.EnterRecursive(caller);
        var (safe, before) = ((SafeContext)context, ((SafeContext)context).OfPiece);
        try
        {
            Give(safe, arguments);
            context.Evaluate(piece.Page!);
        }
        finally
        {
            Give(safe, before);
            context.ExitRecursive(caller);
        }

        return null;
    }

    private static void Give(SafeContext context, ScriptArray? arguments)
    {
        context.OfPiece = arguments;
        if (arguments is null)
        {
            context.DeleteValue(ScriptVariable.Arguments);
        }
        else
        {
            context.SetValue(ScriptVariable.Arguments, arguments, asReadOnly: true, force: true);
        }
    }

    public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));
}
