using Journal.Core.Parsing.Problems;
using Journal.Site.Output;
using Journal.Site.Templates;

namespace Journal.Site.Preview;

/// <summary>The site on this machine while its maker writes, made anew as files are saved.</summary>
public sealed class SitePreview : IDisposable
{
    private readonly string folder;
    private readonly DateOnly today;
    private readonly string? template;
    private readonly string shelf;
    private readonly RebuildSignal board = new();
    private readonly PreviewServer server;
    private readonly SaveWatch watch;

    /// <summary>Makes the site and listens; <see cref="Run"/> answers.</summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="today">The day that <c>publish: after</c> is held against.</param>
    /// <param name="template">A maker's own copy of the templates; null for ours.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    /// <exception cref="System.Net.Sockets.SocketException">The port is taken, or kept by the system.</exception>
    /// <exception cref="IOException">There is no place for the site.</exception>
    public SitePreview(string folder, DateOnly today, string? template, int port)
    {
        (this.folder, this.today, this.template) = (folder, today, template);
        shelf = NewShelf();
        try
        {
            server = new PreviewServer(Site, board, port);
            watch = new SaveWatch(folder);
        }
        catch
        {
            server?.Dispose();
            Directory.Delete(shelf, recursive: true);
            throw;
        }
    }

    /// <summary>Where to look.</summary>
    public Uri Address => new($"http://127.0.0.1:{server.Port}/");

    private string Site => Path.Combine(shelf, "site");

    /// <summary>Makes the site anew after each burst of saves, until told to stop.</summary>
    /// <param name="told">Hears of each rebuild: how many there were, and the problems of the last.</param>
    /// <param name="cancellation">Ends it at once.</param>
    /// <exception cref="OperationCanceledException">This is how it ends.</exception>
    public async Task Run(Action<int, IReadOnlyList<Problem>> told, CancellationToken cancellation)
    {
        Rebuild(told, cancellation);
        var answering = server.Run(cancellation);
        try
        {
            while (true)
            {
                await watch.Next(cancellation);
                Rebuild(told, cancellation);
            }
        }
        catch (OperationCanceledException)
        {
            await answering;
            throw;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watch.Dispose();
        server.Dispose();
        try
        {
            Directory.Delete(shelf, recursive: true);
        }
        catch (IOException)
        {
            // It lies among the system's temporary files; the system clears it away.
        }
    }

    private static string NewShelf()
    {
        try
        {
            return Directory.CreateTempSubdirectory("journal-preview-").FullName;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new IOException($"There is no folder {Path.GetTempPath()}, which the preview needs. Create it, or set another in {(OperatingSystem.IsWindows() ? "TEMP" : "TMPDIR")}.", e);
        }
    }

    // Warnings stop nothing, so they do not stand over the page.
    private void Rebuild(Action<int, IReadOnlyList<Problem>> told, CancellationToken cancellation)
    {
        var problems = Problems(cancellation, out var fault);
        List<string> shown = [.. problems.Where(problem => problem.Severity != Severity.Warning).Select(problem => $"{problem.Place}\n  {problem.Message} {problem.Remedy}")];
        board.Post(fault is null ? shown : [.. shown, fault]);
        told(board.Version, problems);
    }

    private IReadOnlyList<Problem> Problems(CancellationToken cancellation, out string? fault)
    {
        fault = null;
        IReadOnlyList<Problem> problems = [];
        try
        {
            var outcome = SitePublisher.Publish(new SiteOrder(folder, Site, today, template) { Read = found => problems = found }, cancellation);
            return [.. problems, .. outcome.Published?.Problems ?? []];
        }
        catch (Exception e) when (e is TemplateException or PublishingException or IOException or UnauthorizedAccessException)
        {
            fault = e.Message;
            return problems;
        }
    }
}
