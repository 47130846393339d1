using Journal.Core.Parsing.Problems;
using Journal.Site.Pages;
using Journal.Site.Serving;

namespace Journal.Site.Preview;

/// <summary>The site on this machine while its maker writes: each page made from what is saved when it is looked at.</summary>
public sealed class SitePreview : IAsyncDisposable
{
    private readonly PreviewedJournal journal;
    private readonly RebuildSignal board = new();
    private readonly SaveWatch watch;
    private readonly Lock guard = new();
    private IReadOnlyList<string> told = [];
    private int picturesTold;
    private PreviewServer server = null!;

#pragma warning disable CA2000 // Disposed with the preview.
    private SitePreview(string folder, DateOnly today, string? template) =>
        (journal, watch) = (new PreviewedJournal(folder, today, template), new SaveWatch(folder));
#pragma warning restore CA2000

    /// <summary>Where to look.</summary>
    public Uri Address => new($"http://127.0.0.1:{server.Port}/");

    /// <summary>Listens from now on; <see cref="Run"/> reads the journal.</summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="today">The day that <c>publish: after</c> is held against.</param>
    /// <param name="template">A maker's own copy of the templates; null for ours.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    /// <exception cref="PortException">The port is taken, or kept by the system.</exception>
    public static async Task<SitePreview> Start(string folder, DateOnly today, string? template, int port)
    {
        var preview = new SitePreview(folder, today, template);
        try
        {
            preview.server = await PreviewServer.Start(preview.Bytes, preview.board, port);
            return preview;
        }
        catch
        {
            preview.watch.Dispose();
            throw;
        }
    }

    /// <summary>Reads the journal again after each burst of saves, until told to stop.</summary>
    /// <param name="heard">Hears of each time: how many there were, and the problems of the last.</param>
    /// <param name="cancellation">Ends it at once.</param>
    /// <exception cref="OperationCanceledException">This is how it ends.</exception>
    public async Task Run(Action<int, IReadOnlyList<Problem>> heard, CancellationToken cancellation)
    {
        IReadOnlyCollection<string>? touched = null;
        for (var times = 1; ; times++)
        {
            var problems = Read(touched);
            if (times == 1)
            {
                MakeOnePage();
            }

            heard(times, problems);
            touched = await watch.Next(cancellation);
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        watch.Dispose();
        await server.DisposeAsync();
    }

    private IReadOnlyList<Problem> Read(IReadOnlyCollection<string>? touched)
    {
        IReadOnlyList<Problem> problems = [];
        string? fault = null;
        try
        {
            problems = journal.Read(touched);
        }
#pragma warning disable CA1031 // Whatever went wrong: the next save may mend it, and the preview goes on.
        catch (Exception e)
#pragma warning restore CA1031
        {
            fault = e.Message;
        }

        lock (guard)
        {
            // Warnings stop nothing, so they do not stand over the page.
            told = [.. problems.Where(problem => problem.Severity != Severity.Warning).Select(InWords), .. fault is null ? [] : new[] { fault }];
            picturesTold = 0;
            board.Post(told);
        }

        return problems;
    }

    // One without pictures, so that the first that a maker looks at is there as soon as all that follow.
    private void MakeOnePage()
    {
        try
        {
            Bytes(Addresses.NotFound);
        }
#pragma warning disable CA1031 // Whatever keeps it from being made is told where someone looks at it.
        catch (Exception)
#pragma warning restore CA1031
        {
            return;
        }
    }

    // A picture that cannot be read is known when a page first shows it; then all are told.
    private byte[]? Bytes(string address)
    {
        var site = journal.Site;
        var bytes = site?.Bytes(address);
        if (site?.PictureProblems is { Count: > 0 } pictures)
        {
            lock (guard)
            {
                if (pictures.Count > picturesTold && site == journal.Site)
                {
                    picturesTold = pictures.Count;
                    board.Post([.. told, .. pictures.Select(InWords)]);
                }
            }
        }

        return bytes;
    }

    private static string InWords(Problem problem) => $"{problem.Place}\n  {problem.Message} {problem.Remedy}";
}
