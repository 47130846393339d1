using System.Diagnostics;
using Journal.Site.Templates;

namespace Journal.Site.Tests.Templates;

/// <summary>A maker's own look: a copy of ours, changed; and what no template can do.</summary>
public sealed class TemplateTests
{
    [Fact]
    public void Publish_OwnStyleAndPiece_ChangeTheLookAndLeaveTheRest()
    {
        using var journal = Small()
            .WithTemplate("style.css", "body { color: black }\n")
            .WithTemplate("pieces/facts.html", "<p class=\"mine\">{{ $1.size }} figures</p>\n")
            .WithTemplate("badge.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>\n");
        journal.Publish();

        Assert.Equal("body { color: black }\n", journal.Text("style.css"));
        Assert.Contains("<p class=\"mine\">5 figures</p>", journal.Text("index.html"), StringComparison.Ordinal);
        Assert.Contains("<h2 id=\"builds\">Builds</h2>", journal.Text("index.html"), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(journal.Site, "badge.svg")));
        Assert.False(Directory.Exists(Path.Combine(journal.Site, "pieces")));
    }

    [Theory]
    [InlineData("pages/front.html", "<p>\n{{ page.frame.titel }}\n", "pages/front.html:2:15:")]
    [InlineData("pages/front.html", "<p>\n\n  {{ if page.frame.title }}\n", "pages/front.html:")]
    [InlineData("pieces/facts.html", "<dl>\n{{ for fact in $1 }}{{ fact.nothing }}{{ end }}</dl>\n", "pieces/facts.html:2:29:")]
    [InlineData("pieces/facts.html", "<dl>\n\n{{ for }}</dl>\n", "pieces/facts.html:3:")]
    [InlineData("pages/front.html", "{{ include 'no-such-piece' }}\n", "pages/front.html:1:4: There is no piece pieces/no-such-piece.html.")]
    public void Publish_FaultInATemplate_NamesFileLineAndColumn(string file, string text, string place)
    {
        using var journal = Small().WithTemplate(file, text);

        var fault = Assert.Throws<TemplateException>(() => journal.Publish());

        Assert.StartsWith(place, fault.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(journal.Site));
    }

    [Fact]
    public void Publish_TemplateThatNamesFrameAndRootInEitherWay_FindsThem()
    {
        using var journal = Small()
            .WithTemplate("pages/entry.html", "{{~ root = page.frame.root ~}}\n{{ root }}|{{ page.frame.root }}|{{ frame.title == page.frame.title }}")
            .WithTemplate("pages/build.html", "{{ root }}|{{ frame.root }}");
        journal.Publish();

        Assert.Equal("../../|../../|true", journal.Text("drill/entry/2025-01-01-one.html"));
        Assert.Equal("../|../", journal.Text("drill/index.html"));
    }

    [Fact]
    public void Publish_FaultInATemplate_LeavesTheOldSiteAsItWas()
    {
        using var journal = Small();
        journal.Publish();
        var before = journal.Text("index.html");
        journal.WithTemplate("pages/front.html", "{{ nonsense }}");

        Assert.Throws<TemplateException>(() => journal.Publish());

        Assert.Equal(before, journal.Text("index.html"));
    }

    [Fact]
    public void Publish_NoFolderOfThatName_SaysWhatToDo()
    {
        var fault = Assert.Throws<TemplateException>(() => TemplateFiles.From(Path.Combine(Path.GetTempPath(), "no-such-look")));

        Assert.Contains("Copy site-template there", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{{ include '../../../../etc/passwd' }}")]
    [InlineData("{{ include '/etc/passwd' }}")]
    [InlineData("{{ include '../pages/../style.css' }}")]
    [InlineData("{{ include '..\\..\\..\\etc\\passwd' }}")]
    [InlineData("{{ include 'file:///etc/passwd' }}")]
    [InlineData("{{ include '~/.ssh/id_ed25519' }}")]
    [InlineData("{{ include null }}")]
    [InlineData("{{ include page }}")]
    [InlineData("{{ include_join ['top', '../../etc/passwd'] '' '' '' }}")]
    [InlineData("{{ import '/etc/passwd' }}")]
    [InlineData("{{ import page }}{{ get_type }}")]
    [InlineData("{{ page.get_type }}")]
    [InlineData("{{ page.frame.get_type }}")]
    [InlineData("{{ page.frame.equality_contract.assembly }}")]
    [InlineData("{{ page.frame.title.get_hash_code }}")]
    [InlineData("{{ page.facts.get_type }}")]
    [InlineData("{{ page['get_type'] }}")]
    [InlineData("{{ object.eval_template '{{ page }}' }}")]
    [InlineData("{{ object.keys page }}")]
    [InlineData("{{ date.parse '2025-01-01' }}")]
    [InlineData("{{ timespan.from_days 1 }}")]
    [InlineData("{{ regex.match 'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!' '^(a+)+$' }}")]
    [InlineData("{{ '/etc/passwd' | file.read }}")]
    [InlineData("{{ object.eval 'page' }}")]
    [InlineData("{{ date.now }}")]
    public void Publish_TemplateThatReachesOut_IsRefused(string text)
    {
        using var journal = Small().WithTemplate("pages/front.html", text);

        Assert.Throws<TemplateException>(() => journal.Publish());
    }

    [Theory]
    [InlineData("{{ while true }}{{ end }}")]
    [InlineData("{{ for i in 1..2000000000 }}{{ end }}")]
    [InlineData("{{ for i in 1..100000 }}{{ for j in 1..100000 }}{{ end }}{{ end }}")]
    [InlineData("{{ func again }}{{ again }}{{ end }}{{ again }}")]
    [InlineData("{{ for i in 1..900000 }}{{ '0123456789012345678901234567890123456789012345678901234567890123456789' }}{{ end }}")]
    [InlineData("{{ x = 'ab' }}{{ for i in 1..40 }}{{ x = x + x }}{{ end }}{{ x }}")]
    [InlineData("{{ 'a' | string.pad_left 2000000000 }}")]
    [InlineData("{{ 'a' * 2000000000 }}")]
    [InlineData("{{ 'a' | string.pad_right 2000000000 }}")]
    [InlineData("{{ x = 'ab' }}{{ for i in 1..40 }}{{ x = x | string.append x }}{{ end }}{{ x }}")]
    [InlineData("{{ x = 'aa' }}{{ for i in 1..40 }}{{ x = x | string.replace 'a' 'aa' }}{{ end }}{{ x }}")]
    [InlineData("{{ x = [1] }}{{ for i in 1..40 }}{{ x = x | array.add_range x }}{{ end }}{{ x }}")]
    [InlineData("{{ x = (1..2000000000) }}{{ for i in x }}{{ end }}")]
    [InlineData("{{ (1..2000000000) | array.size }}")]
    [InlineData("{{ x = 3 }}{{ for i in 1..40 }}{{ x = x * x }}{{ end }}{{ x }}")]
    [InlineData("{{ capture x }}{{ for i in 1..900000 }}0123456789012345678901234567890123456789012345678901234567890123456789{{ end }}{{ end }}{{ x }}")]
    [InlineData("{{ tablerow i in 1..2000000000 }}{{ end }}")]
    [InlineData("{{ func a }}{{ b }}{{ end }}{{ func b }}{{ a }}{{ end }}{{ a }}")]
    public void Publish_TemplateThatNeverEnds_IsStoppedInSeconds(string text)
    {
        using var journal = Small().WithTemplate("pages/front.html", text);
        var clock = Stopwatch.StartNew();

        Assert.Throws<TemplateException>(() => journal.Publish());

        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 30);
    }

    [Fact]
    public void Publish_PieceThatIncludesItself_IsStopped()
    {
        using var journal = Small().WithTemplate("pieces/facts.html", "{{ include 'facts' $1 }}");

        Assert.Throws<TemplateException>(() => journal.Publish());
    }

    [Theory]
    [InlineData("{{ page.frame.title = 'Mine' }}")]
    [InlineData("{{ page.kind = 'Mine' }}")]
    [InlineData("{{ page.facts[0] = 'Mine' }}")]
    [InlineData("{{ page = 'Mine' }}")]
    [InlineData("{{ page.facts.size = 0 }}")]
    public void Publish_TemplateThatWritesToAModel_IsRefused(string text)
    {
        using var journal = Small().WithTemplate("pages/front.html", text);

        Assert.Throws<TemplateException>(() => journal.Publish());
    }

    [Fact]
    public void Publish_TextWithMarkup_IsEscaped()
    {
        using var journal = Small().With("drill/build.yaml", "title: \"Drill <b>&amp; co</b>\"\nparts: [{id: head}]\n");
        journal.Publish();

        Assert.Contains("Drill &lt;b&gt;&amp;amp; co&lt;/b&gt;", journal.Text("index.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("<b>&amp; co", journal.Text("index.html"), StringComparison.Ordinal);
    }

    private static PublishedJournal Small() => new PublishedJournal()
        .With("drill/build.yaml", "title: Drill\nparts: [{id: head}]\n")
        .With("drill/2025-01-01-one.md", "---\ntitle: One evening\npart: head\noperation: boring\nhours: 1\n---\nDone.\n");
}
