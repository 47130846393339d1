using Journal.Core.Checking;
using Journal.Core.Parsing;
using Journal.Core.Parsing.Problems;
using Journal.Site.Photos;
using Journal.Site.Templates;

namespace Journal.Site.Preview;

/// <summary>A journal that is read again and again while its maker writes: each time only what was saved since.</summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="today">The day that <c>publish: after</c> is held against.</param>
/// <param name="template">A maker's own copy of the templates; null for ours.</param>
internal sealed class PreviewedJournal(string folder, DateOnly today, string? template)
{
    private readonly FilesRead files = new();
    private readonly UserCache cache = UserCache.OfUser();
    private readonly TemplateFiles own = TemplateFiles.Own();
    private TemplateEngine? engine;
    private SeenFiles? seen;

    /// <summary>The site as it was last read without errors; null before that.</summary>
    public ShownSite? Site { get; private set; }

    /// <summary>Reads what was saved. With errors in the journal the site stays as it was.</summary>
    /// <param name="touched">The files and folders that were touched; null for any.</param>
    /// <param name="typed">A file that is being typed and counts instead of the saved one; null for none.</param>
    /// <returns>What reading had to say.</returns>
    /// <exception cref="TemplateException">The folder of templates does not exist.</exception>
    public IReadOnlyList<Problem> Read(IReadOnlyCollection<string>? touched, TypedFile? typed = null)
    {
        files.Forget(touched);
        var reading = JournalReader.Read(folder, today, files, typed);
        if (!reading.HasErrors)
        {
            var look = template is null ? own : TemplateFiles.From(template);
            engine = template is null && engine is not null ? engine : new TemplateEngine(look);
            Site = new ShownSite(folder, reading.Journal!, today, look, engine, (cache, seen ??= SeenFiles.Of(cache, folder)));
        }

        return reading.Problems;
    }
}
