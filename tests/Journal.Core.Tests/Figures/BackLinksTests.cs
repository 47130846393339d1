using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class BackLinksTests
{
    [Fact]
    public void To_LinksInTheText_NamesEachEntryOnceInOrder()
    {
        var quill = new LinkTarget(LinkKind.Part, new Id<Build>("drill"), "quill");
        var block = new LinkTarget(LinkKind.Tool, null, "quill-block");
        var links = BackLinks.Of(Sample.Journal(
            Sample.Build("vice", Linking("2025-10-01", quill)),
            Sample.Build("drill", Linking("2025-10-03", quill, block, quill), Linking("2025-10-05", block, null))));

        Assert.Equal(
            [new BackLink(Sample.Ref("vice", "2025-10-01"), Sample.Day("2025-10-01"), LinkReason.Text), new BackLink(Sample.Ref("drill", "2025-10-03"), Sample.Day("2025-10-03"), LinkReason.Text)],
            links.To(new PartRef(new("drill"), new("quill"))));
        Assert.Equal(["2025-10-03", "2025-10-05"], Entries(links.To(new Id<Tool>("quill-block"))));
        Assert.Empty(links.To(new PartRef(new("vice"), new("quill"))));
    }

    [Fact]
    public void To_Lesson_NamesWhoHeededAndWhoRepeatedIt()
    {
        var lesson = new Id<Lesson>("indicate-both-ends");
        var links = BackLinks.Of(Sample.Journal(Sample.Build(
            "drill",
            Sample.Entry("2025-10-03") with { Heeded = [lesson] },
            Sample.Entry("2025-10-05") with { Mistakes = [new Mistake { What = "Again.", Repeats = lesson }, new Mistake { What = "And again.", Repeats = lesson }] })));

        Assert.Equal([("2025-10-03", LinkReason.Heeded), ("2025-10-05", LinkReason.Repeats)], links.To(lesson).Select(link => (link.Entry.Entry.Value, link.Reason)));
    }

    [Fact]
    public void To_Entry_NamesTheMendingAndTheFindingButNotItself()
    {
        var wrong = new Mistake { What = "Off the boss.", Id = new("bore-off") };
        var mends = Sample.Job(30) with { Mends = new("bore-off") };
        var links = BackLinks.Of(Sample.Journal(Sample.Build(
            "drill",
            Sample.Entry("2025-10-01", mends) with { Mistakes = [wrong] },
            Sample.Entry("2025-10-03", mends, mends),
            Sample.Entry("2025-10-05") with { Mistakes = [new Mistake { What = "Found it.", MadeOn = new("2025-10-01") }] })));

        Assert.Equal(
            [("2025-10-03", LinkReason.Mends), ("2025-10-05", LinkReason.MadeOn)],
            links.To(Sample.Ref("drill", "2025-10-01")).Select(link => (link.Entry.Entry.Value, link.Reason)));
    }

    private static Entry Linking(string date, params LinkTarget?[] targets) => Sample.Entry(date) with
    {
        Body = Body.Empty with { Links = [.. targets.Select(target => new BodyLink("as written", target, default))] },
    };

    private static IEnumerable<string> Entries(IEnumerable<BackLink> links) => links.Select(link => link.Entry.Entry.Value);
}
