using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using Journal.Core.Checking;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Contents;
using Journal.Site.Output;
using Journal.Site.Pages;
using Journal.Site.Photos;
using Journal.Site.Templates;

namespace Journal.Site.Publishing;

/// <summary>
/// Reads a journal and publishes it as a site of static files: all of it, unless the record of the publish before says
/// that nothing has changed since.
/// </summary>
public static class SitePublisher
{
    /// <summary>Makes the whole site beside the old one and swaps it in; on any failure the old site stands as it was.</summary>
    /// <exception cref="PublishingException">The folder is not ours to write, or another publish is at work.</exception>
    /// <exception cref="TemplateException">A template is missing or at fault.</exception>
    /// <exception cref="IOException">The disk is full, or a file cannot be written.</exception>
    public static SiteOutcome Publish(PublishOrder order, CancellationToken cancellation = default)
    {
        var survey = Survey.Of(order);
        var record = new RecordFile(order.Kept.Folder, Destination.RealPath(order.To));
        var last = record.Read();
        var before = last is not null && survey.IsAsIn(last) ? last : null;
        cancellation.ThrowIfCancellationRequested();

        // Before there is anything to write beside the site: a journal with errors leaves no trace.
        var reading = before is null ? Read(order) : null;
        if (reading is { HasErrors: true })
        {
            return new SiteOutcome(reading.Problems, null) { WasRead = true };
        }

        using var site = SiteFolder.Begin(Destination.Check(order.To, order.Folder));
        if (before is not null && before.IsOf(site))
        {
            order.Read?.Invoke(before.Problems);
            return new SiteOutcome(before.Problems, before.Published with { FrontPage = FrontPageOf(order) });
        }

        reading ??= Read(order);
        if (reading.HasErrors)
        {
            return new SiteOutcome(reading.Problems, null) { WasRead = true };
        }

        cancellation.ThrowIfCancellationRequested();
        var published = Write(order, reading.Journal!, site, record, cancellation);
        record.Write(survey, reading, published, site);
        return new SiteOutcome(reading.Problems, published) { WasRead = true };
    }

    private static JournalReading Read(PublishOrder order)
    {
        var reading = JournalReader.Read(order.Folder, order.Today);
        order.Read?.Invoke(reading.Problems);
        return reading;
    }

    private static Published Write(PublishOrder order, MakerJournal journal, SiteFolder site, RecordFile record, CancellationToken cancellation)
    {
        var look = TemplateFiles.Of(order.Template);
        var stage = new PhotoStage(order.Folder, site, order.Kept, SeenFiles.Of(order.Kept, order.Folder), PictureSettings.Usual);
        var shown = ShownPhotos(journal, order.Today);
        stage.BringAll(shown, order.Progress, cancellation);
        var contents = new SiteContents(new SiteFigures(journal, order.Today, stage.Of), look, new TemplateEngine(look));
        WriteAll(contents, site, cancellation);

        cancellation.ThrowIfCancellationRequested();
        record.Forget();
        site.Finish();
        return new Published(
            journal.Builds.Count, contents.Entries, contents.Pages.Count, shown.Select(stage.Of).OfType<PublishedPhoto>().Distinct().Count(), site.Count, site.Changed, FrontPageOf(order), stage.Problems);
    }

    private static List<string> ShownPhotos(MakerJournal journal, DateOnly today)
    {
        var visibility = new Visibility(journal, today);
        return [.. journal.Entries.Where(visibility.Shows).SelectMany(entry => entry.Photos).Where(visibility.Shows).Select(photo => photo.File)];
    }

    private static void WriteAll(SiteContents contents, SiteFolder site, CancellationToken cancellation)
    {
        var failures = new ConcurrentQueue<ExceptionDispatchInfo>();
        Parallel.ForEach(contents.Files.ToList(), new ParallelOptions { CancellationToken = cancellation }, (file, loop) =>
        {
            try
            {
                file.Make(bytes => site.Write(file.Address, bytes));
            }
            catch (Exception e) when (e is TemplateException or PublishingException or IOException or UnauthorizedAccessException)
            {
                // Told as what it is, not as a bundle of what went wrong on several threads.
                failures.Enqueue(ExceptionDispatchInfo.Capture(e));
                loop.Stop();
            }
        });
        if (failures.TryDequeue(out var failure))
        {
            failure.Throw();
        }
    }

    private static string FrontPageOf(PublishOrder order) => Path.Combine(Path.GetFullPath(order.To), Addresses.Front);
}
