using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Journal.Site.Publishing;

namespace Journal.Site.Tests.Pages;

/// <summary>A small site, published once for all tests.</summary>
public sealed class PublishedReadings : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("journal-").FullName;

    public PublishedReadings()
    {
        Write("journal.yaml", "title: The Lean-to\nmaker: Wren\n");
        Write("tools.yaml", "- {id: caliper, title: Dial caliper, kind: measuring}\n");
        Write("drill/build.yaml", """
            title: Bench drill
            parts:
              - {id: head, title: Head casting, material: cast-iron}
              - {id: quill, title: Quill, material: mild-steel}
            mates: {hole: head.bore, shaft: quill.diameter}
            """);
        Write("drill/2025-10-01-bore.md", """
            ---
            title: The bore
            part: head
            operation: boring
            hours: 2h
            readings:
              - {feature: bore, required: 12 H7, actual: 12.021, with: caliper}
              - {feature: thread, required: M6, actual: go}
              - {feature: runout, required: max 0.02, actual: 0.01}
            settings:
              - {diameter: 30, rpm: 480, feed: 0.1 mm/turn, depth: 0.5, cutter: boring bar, verdict: chattered}
              - {diameter: 30, rpm: 200, feed: hand, cutter: boring bar, verdict: worked}
            mistakes: {what: Bored three hundredths too far., outcome: used-as-is}
            ---
            """);
        Write("drill/2025-10-02-quill.md", "---\npart: quill\noperation: turning\nhours: 1h\nreadings: {feature: diameter, required: 12 h6, actual: 11.995}\n---\n");
        Write("drill/2025-10-03-slot.md", """
            ---
            part: head
            operation: milling
            hours: 1h
            readings:
              - {feature: length, required: 1.5 ±0.005 in, actual: 1.502}
              - {feature: slot, required: 10 ±0.05, actual: 10.2}
            departure: The slot is left wide until the key is made.
            ---
            """);
        Write("drill/2025-10-04-hidden.md", """
            ---
            title: A secret evening
            part: head
            operation: boring
            hours: 1h
            readings: {feature: secret, required: 77 ±0.1, actual: 77.7}
            settings: {diameter: 77.7, rpm: 300, cutter: secret cutter, verdict: chattered}
            mistakes: {what: A secret mistake., outcome: scrap}
            publish: never
            ---
            """);
        Write("drill/2025-10-05-slot-again.md", "---\npart: head\noperation: milling\nhours: 1h\nreadings: {feature: slot, actual: 10.02}\n---\n");

        var outcome = SitePublisher.Publish(new PublishOrder(root, Folder, new DateOnly(2025, 12, 31)));
        Assert.Empty(outcome.Problems.Select(problem => $"{problem.Place} {problem.Message}"));
    }

    public string Folder => Path.Combine(root, "site");

    public IDocument Page(string address) => new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(Folder, address)));

    public void Dispose() => Directory.Delete(root, recursive: true);

    private void Write(string file, string text)
    {
        var path = Path.Combine(root, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}
