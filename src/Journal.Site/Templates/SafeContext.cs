using System.Collections;
using System.Globalization;
using Journal.Site.Html;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Journal.Site.Templates;

/// <summary>
/// The sandbox that templates run in: it escapes all but <see cref="SafeHtml"/>, reads page models without reflection and
/// never writes to them, has limits that throw, and no function that reads the clock, gives random numbers or evaluates text.
/// </summary>
internal sealed class SafeContext : TemplateContext
{
    private const int MostTurns = 1_000_000;
    private const int LargestPage = 32 * 1024 * 1024;
    private const int DeepestInclude = 24;

    /// <summary>How many bytes filling one page may allocate, freed or not: many times what any of our pages needs in the largest journals.</summary>
    private const long MostMemory = 384L * 1024 * 1024;

    private static readonly string[] NotForTemplates = ["date", "timespan", "object", "regex", "include_join"];
    private static readonly string[] NotForSums = ["random", "uuid"];

    private readonly ViewAccessors views;

    public SafeContext(ITemplateLoader loader, ViewAccessors views)
        : base(OwnFunctions())
    {
        this.views = views;
        TemplateLoader = loader;
        StrictVariables = true;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedIndexerAccess = true; // A piece may be given fewer arguments than it knows.
        AutoIndent = false;
        LoopLimit = MostTurns;
        LimitToString = LargestPage;
        OutputLimit = LargestPage;
        OnOutputLimit = ScriptLimitBehavior.Throw;
        OnStringLimit = ScriptLimitBehavior.Throw;
        RecursiveLimit = DeepestInclude;
        NewLine = "\n";
        PushOutput(Page);
        PushCulture(CultureInfo.InvariantCulture);
    }

    /// <summary>What is written.</summary>
    public PageText Page { get; } = new();

    /// <summary>The arguments of the piece that is being written; null outside of pieces.</summary>
    public ScriptArray? OfPiece { get; set; }

    /// <summary>How many bytes the thread had allocated when it began to fill the page.</summary>
    public long TakenBefore { private get; set; }

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        switch (textAsObject)
        {
            case null:
                return this;
            case SafeHtml html:
                return Write(html.Markup ?? "");
            case string text:
                return Write(SafeHtml.Escape(text));
            case IFormattable number and not IScriptObject: // An object may hold itself: only the library's own way out of it is bounded.
                return Write(SafeHtml.Escape(number.ToString(null, CultureInfo.InvariantCulture)));
            default:
                return Write(SafeHtml.Escape(ObjectToString(textAsObject) ?? ""));
        }
    }

    // A list that is worked out only when it is read holds the list it comes from, and that the next: reading hundreds of
    // thousands of them, one in the other, would overflow the stack and end the program.
    public override object? Evaluate(ScriptNode? scriptNode, bool aliasReturnedFunction)
    {
        var value = base.Evaluate(scriptNode, aliasReturnedFunction);
        if (value is null or string or bool or int or SafeHtml)
        {
            return value; // Nearly all values; testing them for interfaces takes long.
        }

        var isWorkedOutLater = value is ScriptRange or (IEnumerable and not (ICollection or IScriptObject));
        return isWorkedOutLater && !IsNumbers(scriptNode) ? InFull((IEnumerable)value, scriptNode!) : value;
    }

    protected override bool OnStepLoop(ScriptLoopStatementBase loop) =>
        GC.GetAllocatedBytesForCurrentThread() - TakenBefore > MostMemory
            ? throw new ScriptRuntimeException(loop.Span, "This page needs too much memory. Look for a loop that makes long texts or lists.")
            : base.OnStepLoop(loop);

    protected override IObjectAccessor? GetMemberAccessorImpl(object target) => target switch
    {
        IScriptObject or IDictionary or string => base.GetMemberAccessorImpl(target),
        ICollection => SizeAccessor.Only,
        _ => views.Of(target.GetType()),
    };

    // One number to another.
    private static bool IsNumbers(ScriptNode? node) => node is ScriptBinaryExpression { Operator: ScriptBinaryOperator.RangeInclude or ScriptBinaryOperator.RangeExclude };

    private static ScriptArray InFull(IEnumerable lazy, ScriptNode node)
    {
        var all = new ScriptArray();
        foreach (var one in lazy)
        {
            all.Add(one);
            if (all.Count > MostTurns)
            {
                throw new ScriptRuntimeException(node.Span, "This list is too long. Look for a loop that joins lists.");
            }
        }

        return all;
    }

    private static ScriptObject OwnFunctions()
    {
        var functions = GetDefaultBuiltinObject();
        foreach (var name in NotForTemplates)
        {
            functions.Remove(name);
        }

        foreach (var name in NotForSums)
        {
            ((ScriptObject)functions["math"]!).Remove(name);
        }

        functions.SetValue("include", new IncludePiece(), readOnly: true);
        return functions;
    }
}
