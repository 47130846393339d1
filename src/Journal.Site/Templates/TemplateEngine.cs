using System.Collections.Concurrent;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Journal.Site.Templates;

/// <summary>Fills templates with page models. Templates are parsed once; any number of threads may fill them.</summary>
public sealed class TemplateEngine
{
    private readonly TemplateFiles files;
    private readonly ViewAccessors views;
    private readonly ConcurrentDictionary<string, Template> parsed = new(StringComparer.Ordinal);
    // Not a ConcurrentBag: it keeps its items by thread, and these items lead back to it, so neither would ever be freed.
    private readonly ConcurrentStack<SafeContext> idle = [];

    /// <summary>Fills the templates of the site.</summary>
    public TemplateEngine(TemplateFiles files)
        : this(files, [])
    {
    }

    /// <summary>Fills templates that know the site's models and others.</summary>
    /// <param name="files">The templates.</param>
    /// <param name="tables">Which properties of the other models they may read.</param>
    public TemplateEngine(TemplateFiles files, params IReadOnlyList<ViewTable> tables) => (this.files, views) = (files, new ViewAccessors([SiteViews.MembersOf, .. tables]));

    /// <summary>How long filling one page may take, in wall time: thousands of times what any of ours takes. Steps are counted too, but one may cost much.</summary>
    internal TimeSpan Longest { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>The page that a template makes of a model.</summary>
    /// <param name="template">The template's name, such as <c>entry</c>.</param>
    /// <param name="page">The page model, which the template knows as <c>page</c>; its frame also as <c>frame</c>, and the way up from it to the site's root as <c>root</c>.</param>
    /// <exception cref="TemplateException">The template is missing or at fault.</exception>
    public string Fill(string template, object page)
    {
        var text = "";
        Fill(template, page, letters => text = letters.ToString());
        return text;
    }

    /// <summary>Hands on the page that a template makes of a model.</summary>
    /// <param name="template">The template's name, such as <c>entry</c>.</param>
    /// <param name="page">The page model.</param>
    /// <param name="take">Is given the page, which is good until it returns.</param>
    /// <exception cref="TemplateException">The template is missing or at fault.</exception>
    public void Fill(string template, object page, Action<ReadOnlySpan<char>> take)
    {
        var path = $"pages/{template}.html";
        var body = Parse(path);
        if (!idle.TryPop(out var context))
        {
            context = new SafeContext(new Loader(this), views);
        }

        context.PushGlobal(Globals(page));
        using var clock = new CancellationTokenSource(Longest);
        context.CancellationToken = clock.Token;
        context.TakenBefore = GC.GetAllocatedBytesForCurrentThread();
        context.Page.Clear();
        try
        {
            body.Render(context);
        }
        catch (ScriptAbortException e)
        {
            throw Fault(e.Span, "This page takes too long. Look for a loop that does a lot of work at each turn.");
        }
        catch (ScriptRuntimeException e) when (e.GetBaseException() is TemplateException fault)
        {
            throw new TemplateException(fault.Message, e);
        }
        catch (ScriptParserRuntimeException e) when (e.ParserMessages.Count > 0)
        {
            throw Fault(e.ParserMessages[0].Span, e.ParserMessages[0].Message);
        }
        catch (ScriptRuntimeException e)
        {
            throw Fault(e.Span, e.OriginalMessage);
        }

        take(context.Page.Letters);
        context.PopGlobal();
        idle.Push(context);
    }

    // What every page has can be named without going through the page: `frame.title`, `root`.
    private ScriptObject Globals(object page)
    {
        var globals = new ScriptObject();
        globals.SetValue("page", page, readOnly: true);
        if (views.Read(page, "frame") is { } frame)
        {
            globals.SetValue("frame", frame, readOnly: true);
            globals.SetValue("root", views.Read(frame, "root"), readOnly: false); // Older copies of templates set it themselves.
        }

        return globals;
    }

    private Template Parse(string path) => parsed.GetOrAdd(path, name =>
    {
        var text = files.Text(name) ?? throw new TemplateException($"There is no template {name}. Copy it from site-template.");
        var template = Template.Parse(text, name);
        return template.HasErrors ? throw Fault(template.Messages[0].Span, template.Messages[0].Message) : template;
    });

    private static TemplateException Fault(SourceSpan span, string message) =>
        new(span.FileName ?? "template", span.Start.Line + 1, span.Start.Column + 1, message);

    private sealed class Loader(TemplateEngine engine) : ITemplateLoader
    {
        public string GetPath(TemplateContext context, SourceSpan callerSpan, string templateName) => $"pieces/{templateName}.html";

        public string Load(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
            engine.files.Text(templatePath) ?? throw Fault(callerSpan, $"There is no piece {templatePath}.");

        public ValueTask<string?> LoadAsync(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
            ValueTask.FromResult<string?>(Load(context, callerSpan, templatePath));
    }
}
