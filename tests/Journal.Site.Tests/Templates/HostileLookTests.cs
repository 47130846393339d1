using System.Diagnostics;
using System.Runtime.CompilerServices;
using Journal.Site.Templates;

namespace Journal.Site.Tests.Templates;

/// <summary>A look from someone else, put where a maker's own would be: its faults are told, and it can neither end nor hold up the program.</summary>
public sealed class HostileLookTests : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("journal-look-").FullName;

    private string Look => Path.Combine(place, "look");

    [Theory]
    [InlineData("{{ x = {}; x.a = x; x }}")]
    [InlineData("{{ x = {}; x.a = [x]; x }}")]
    [InlineData("{{ x = {}; y = {a: x}; x.a = y; y }}")]
    [InlineData("{{ x = [1]; x[0] = x; x }}")]
    [InlineData("{{ x = {}; x.a = x; x + '' }}")]
    [InlineData("{{ x = [1]; x[0] = x; x | array.join ',' }}")]
    [InlineData("{{ x = [1]; x[0] = x; y = [1]; y[0] = y; x == y }}")]
    public void Fill_ValueThatHoldsItself_IsRefusedAndEndsNothing(string text) => Assert.Throws<TemplateException>(() => Fill(text));

    [Theory]
    [InlineData("(", "1", ")")]
    [InlineData("[", "", "]")]
    [InlineData("{a:", "1", "}")]
    [InlineData("!", "true", "")]
    [InlineData("1+", "1", "")]
    [InlineData("$'{", "1", "}'")]
    [InlineData("if true;", "1", ";end;")]
    [InlineData("func f;", "1", ";end;")]
    public void Fill_TemplateNestedWithoutEnd_IsRefusedWithItsPlace(string open, string core, string close)
    {
        const int Deep = 50_000;
        var text = $"{{{{ x = 1\n{string.Concat(Enumerable.Repeat(open, Deep))}{core}{string.Concat(Enumerable.Repeat(close, Deep))} }}}}";

        var fault = Assert.Throws<TemplateException>(() => Fill(text));

        Assert.StartsWith("pages/front.html:2:", fault.Message, StringComparison.Ordinal);
    }

    // Few enough turns for the limit on loops, and work without end at each of them.
    [Fact]
    public void Fill_LoopOfCostlyTurns_IsStoppedByTheClock()
    {
        var clock = Stopwatch.StartNew();

        var fault = Assert.Throws<TemplateException>(() => Fill("{{ x = 'a' | string.pad_left 30000000; for i in 1..900000; y = x | string.contains 'b'; end }}", TimeSpan.FromSeconds(1)));

        Assert.StartsWith("pages/front.html:1:", fault.Message, StringComparison.Ordinal);
        Assert.Contains("takes too long", fault.Message, StringComparison.Ordinal);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0.9, 30);
    }

    [Theory]
    [InlineData("{{ for i in 1..900000; (1..900000) | array.size; end }}")]
    [InlineData("{{ for i in 1..900000; x = 'a' | string.pad_left 30000000; end }}")]
    [InlineData("{{ x = 'a' | string.pad_left 3000000; for i in 1..900000; y = x | string.upcase | html.escape; end }}")]
    [InlineData("{{ s = 'a' * 30000000; x = []; for i in 1..200; x[i] = s + i; end }}")]
    [InlineData("{{ x = 'a' | string.pad_right 33000000; y = []; for i in 1..100; y[i] = x | string.upcase; end }}")]
    [InlineData("{{ x = {}; for i in 1..900000; x[('a' * 2000) + i] = 'a' * 2000; end }}")]
    [InlineData("{{ x = []; while true; x = x | array.add ('a' * 1000000); end }}")]
    public void Fill_LoopThatGathers_IsStoppedBeforeTheMemoryIsFull(string text)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();

        var fault = Assert.Throws<TemplateException>(() => Fill(text));

        Assert.StartsWith("pages/front.html:1:", fault.Message, StringComparison.Ordinal);
        Assert.Contains("needs too much memory", fault.Message, StringComparison.Ordinal);
        Assert.InRange((GC.GetAllocatedBytesForCurrentThread() - before) / 1e6, 300, 900);
    }

    [Theory]
    [InlineData("x | array.limit 5")]
    [InlineData("x | array.concat [1]")]
    [InlineData("x + [1]")]
    [InlineData("x | array.compact")]
    [InlineData("x | array.filter @(do; ret true; end)")]
    [InlineData("x | array.each @(do; ret $0; end)")]
    [InlineData("x | array.offset 0")]
    [InlineData("x | array.reverse")]
    [InlineData("x | array.uniq")]
    [InlineData("x | array.map 'size'")]
    public void Fill_ListsInOneAnother_EndNothing(string turn)
    {
        try
        {
            Fill($"{{{{ x = [1]; for i in 1..100000; x = {turn}; end; y = x | array.size }}}}");
        }
        catch (TemplateException fault)
        {
            Assert.StartsWith("pages/front.html:1:", fault.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Fill_ListThatDoublesAtEachTurn_IsRefused() =>
        Assert.Throws<TemplateException>(() => Fill("{{ x = [1]; for i in 1..60; x = x | array.concat x; end }}"));

    [Theory]
    [InlineData("{{ math.random 1 1000000 }}")]
    [InlineData("{{ math.uuid }}")]
    [InlineData("{{ date.now }}")]
    public void Fill_WhatDiffersFromDayToDay_IsRefused(string text) => Assert.Throws<TemplateException>(() => Fill(text));

    [Fact]
    public void Fill_MemberOfWhatIsNoModel_IsRefused() => Assert.Throws<TemplateException>(() => Fill("{{ page.secret }}", page: new { Secret = "kept" }));

    // The preview fills pages all evening long, with a new engine after each save.
    [Fact]
    public void Fill_EngineThatNobodyHolds_IsLetGo()
    {
        Write("pages/front.html", "{{ 1 + 1 }}");
        var engine = FillOnceAndLetGo();
        for (var turn = 0; turn < 10 && engine.IsAlive; turn++)
        {
            GC.Collect();
            GC.WaitForPendingFinalizers();
        }

        Assert.False(engine.IsAlive);
    }

    [Fact]
    public void Fill_OtherSums_Work() => Assert.Equal("3 2.5", Fill("{{ math.ceil 2.5 }} {{ math.abs (-2.5) }}"));

    [Theory]
    [InlineData("Style.css", "style.css")]
    [InlineData("pages/Entry.html", "pages/entry.html")]
    [InlineData("Pieces/top.html", "pieces/top.html")]
    public void From_NameThatDiffersFromOneOfOursInCaseAlone_IsRefused(string name, string ours)
    {
        Write(name, "x");

        var fault = Assert.Throws<TemplateException>(() => TemplateFiles.From(Look));

        Assert.Equal($"{name} and {ours} differ only in upper and lower case, which many systems cannot tell apart. Rename the one in {Look}, or use our spelling.", fault.Message);
    }

    [Fact]
    public void From_OtherNames_AreTaken()
    {
        Write("extra/Drawing.svg", "x");
        Write("style.css", "x");

        Assert.Contains("extra/Drawing.svg", TemplateFiles.From(Look).Paths);
    }

    public void Dispose() => Directory.Delete(place, recursive: true);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private WeakReference FillOnceAndLetGo()
    {
        var engine = new TemplateEngine(TemplateFiles.From(Look));
        Assert.Equal("2", engine.Fill("front", new { }));
        return new WeakReference(engine);
    }

    private string Fill(string text, TimeSpan? longest = null, object? page = null)
    {
        Write("pages/front.html", text);
        var files = TemplateFiles.From(Look);
        var engine = longest is { } limit ? new TemplateEngine(files) { Longest = limit } : new TemplateEngine(files);
        return engine.Fill("front", page ?? new { });
    }

    private void Write(string name, string text)
    {
        var path = Path.Combine(Look, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}
