using System.Text.Json;

namespace Journal.Cli.Tests;

// `journal readings` and `journal settings`; others rely on the shape of their JSON.
public class ReadingsTests
{
    [Fact]
    public void Readings_Json_HasTheShapeAndJudges()
    {
        using var journal = Measured();

        var readings = journal.Ask("readings", "--format", "json").Json.GetProperty("readings");

        var bore = readings[0];
        Assert.Equal(
            ("drill", "head", "2025-10-01-bore", "bore", "12 H7", "mm"),
            (Text(bore, "build"), Text(bore, "part"), Text(bore, "entry"), Text(bore, "feature"), Text(bore, "required"), Text(bore, "unit")));

        // ISO 286-2:2010, table 6: H7 over 10 up to 18 mm is +18 and 0 micrometres.
        Assert.Equal((12m, 12m, 12.018m, 12.021m, 0.021m), (Number(bore, "nominal"), Number(bore, "least"), Number(bore, "greatest"), Number(bore, "actual"), Number(bore, "deviation")));
        Assert.False(bore.GetProperty("within").GetBoolean());
        Assert.Equal(1.3333m, Number(bore, "share"));
        Assert.Equal(("caliper", "used-as-is"), (Text(bore, "with"), Text(bore, "outcome")));
        var thread = readings[1];
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null, "go", true), (thread.GetProperty("actual").ValueKind, thread.GetProperty("least").ValueKind, Text(thread, "gauge"), thread.GetProperty("within").GetBoolean()));
        Assert.Equal("inch", Text(readings[2], "unit"));
    }

    [Fact]
    public void Readings_Mates_AreAsRequiredAndAsBuilt()
    {
        using var journal = Measured();

        var mate = Assert.Single(journal.Ask("readings", "--format", "json").Json.GetProperty("mates").EnumerateArray());

        // ISO 286-2:2010: 12 H7 is 12.000 to 12.018, 12 h6 is 11.989 to 12.000.
        Assert.Equal(("head.bore", "quill.diameter", "clearance"), (Text(mate, "hole"), Text(mate, "shaft"), Text(mate, "fit")));
        Assert.Equal((0m, 0.029m, 0.026m), (Number(mate, "least"), Number(mate, "greatest"), Number(mate, "asBuilt")));
        Assert.True(mate.GetProperty("within").GetBoolean());
    }

    [Fact]
    public void Readings_Csv_HasARowForEachWithPlainNumbers()
    {
        using var journal = Measured();

        var lines = journal.Ask("readings", "--format", "csv").Out.Split("\r\n");

        Assert.Equal("build,part,entry,feature,required,unit,nominal,least,greatest,actual,deviation,within,share,with", lines[0]);
        Assert.Equal("drill,head,2025-10-01-bore,bore,12 H7,mm,12,12.000,12.018,12.021,0.021,false,1.3333,caliper", lines[1]);
        Assert.Equal("drill,head,2025-10-01-bore,thread,M6,mm,,,,,,true,,", lines[2]);
    }

    [Fact]
    public void Readings_Table_LeadsInPlainWordsAndSaysWhatBecameOfWhatIsOut()
    {
        using var journal = Measured();

        var answer = journal.Ask("readings");

        Assert.Equal("4 readings: 3 in limits, 1 out.", answer.Lines[0]);
        Assert.Contains("bore | 12 H7 | 12.021 mm | +0.021 mm | 133 % | no: used as it is", answer.Lines.Select(line => string.Join(" | ", line.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))));
        Assert.Contains("Worth a second look", answer.Lines);
        Assert.Contains("Dial caliper: read to 0.02 mm", answer.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("head", 3)]
    [InlineData("drill/quill", 1)]
    [InlineData("whole", 0)]
    public void Readings_OfAPart_AreOnlyItsOwn(string part, int count)
    {
        using var journal = Measured();

        Assert.Equal(count, journal.Ask("readings", "--part", part, "--format", "json").Json.GetProperty("readings").GetArrayLength());
    }

    [Fact]
    public void Settings_Json_HasTheShapeAndTheSpeeds()
    {
        using var journal = Measured();

        var settings = journal.Ask("settings", "--format", "json").Json.GetProperty("settings");

        var first = settings[0];
        Assert.Equal(
            ("drill", "head", "2025-10-01-bore", "boring", "grey-iron", "boring bar", "mm"),
            (Text(first, "build"), Text(first, "part"), Text(first, "entry"), Text(first, "operation"), Text(first, "material"), Text(first, "cutter"), Text(first, "unit")));

        // 3.14159 × 30 × 480 / 1000 = 45.239 m/min; over 0.3048, 148.42 ft/min.
        Assert.Equal((30m, 480m, 45.239m, 148.422m), (Number(first, "diameter"), Number(first, "rpm"), Number(first, "surfaceMetresPerMinute"), Number(first, "surfaceFeetPerMinute")));
        Assert.Equal(("0.1 mm/turn", 0.5m, "chattered badly", "chattered"), (Text(first, "feed"), Number(first, "depth"), Text(first, "verdict"), Text(first, "went")));
        Assert.Equal(48m, Number(first, "feedPerMinute"));
        Assert.Equal(2.262m, Number(first, "removalCubicCentimetresPerMinute"));
    }

    [Theory]
    [InlineData("boring", "cast-iron", 2)]
    [InlineData("boring", "grey-iron", 2)]
    [InlineData("boring", "brass", 0)]
    [InlineData("turning", "mild-steel", 1)]
    public void Settings_ForAnOperationInAMaterial_AreOnlyThoseByAnySpelling(string operation, string material, int count)
    {
        using var journal = Measured();

        var answer = journal.Ask("settings", "--for", operation, "--material", material, "--format", "json");

        Assert.Equal(0, answer.Status);
        Assert.Equal(count, answer.Json.GetProperty("settings").GetArrayLength());
    }

    [Fact]
    public void Settings_Table_SaysWhichSpeedsWorkedAndWhichDidNot()
    {
        using var journal = Measured();

        var answer = journal.Ask("settings", "--for", "boring");

        Assert.Equal("2 settings: 1 worked and 1 chattered.", answer.Lines[0]);
        Assert.Contains("Boring, grey iron, boring bar", answer.Lines);
        Assert.Contains("  Worked at 19 m/min (62 ft/min); chattered at 45 m/min (148 ft/min).", answer.Lines);
    }

    [Theory]
    [InlineData("readings --part haed", "There is no part `haed`. Did you mean `head`?")]
    [InlineData("settings --part drill/haed", "Did you mean `drill/head`?")]
    [InlineData("settings --for borring", "`--for` does not know `borring`. Did you mean `boring`?")]
    [InlineData("settings --material cast-irn", "Did you mean `cast-iron`?")]
    [InlineData("settings --for", "`--for` needs <operation>.")]
    public void Option_ThatMeansNothing_IsWrongUseWithTheNearestWord(string words, string said)
    {
        using var journal = Measured();

        var answer = journal.Ask(words.Split(' '));

        Assert.Equal(ExitStatus.WrongUse, answer.Status);
        Assert.Contains(said, answer.Error, StringComparison.Ordinal);
        Assert.Empty(answer.Out);
    }

    [Theory]
    [InlineData("readings")]
    [InlineData("settings")]
    public void NothingMeasured_IsOneKindSentence(string command)
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.Ask(command);

        Assert.Equal(0, answer.Status);
        Assert.InRange(answer.Lines.Count, 1, 2);
        Assert.EndsWith(".", answer.Out.TrimEnd(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("readings")]
    [InlineData("settings")]
    public void LongTexts_FitEightyColumnsWithoutTrailingSpaces(string command)
    {
        var words = string.Join(' ', Enumerable.Repeat("long words about it", 8));
        using var journal = Measured().With("drill/2025-10-02-long.md", $$"""
            ---
            part: head
            operation: milling
            hours: 1h
            readings: {feature: {{words}}, required: 12.0005 +0.0005/-0.0000 in, actual: 12.0016 in, with: caliper}
            settings: {diameter: 30, rpm: 480, feed: 0.1 mm/turn, cutter: {{words}}, verdict: {{words}} }
            ---
            """);

        var answer = journal.Ask(command);

        Assert.Equal(0, answer.Status);
        Assert.All(answer.Lines, line => Assert.True(line.Length <= 80 && !line.EndsWith(' '), line));
    }

    [Fact]
    public void Check_BadReading_IsAnErrorAndTheOthersStillHaveFigures()
    {
        using var journal = Measured().With("drill/2025-10-02-slip.md", "---\npart: head\noperation: boring\nhours: 1h\nreadings: {feature: step, required: 12 H99, actual: 12}\n---\n");

        var problem = Assert.Single(journal.Ask("check", "--format", "json").Json.GetProperty("problems").EnumerateArray());
        var readings = journal.Ask("readings", "--format", "json");

        Assert.Equal(("not-a-fit", 5, 41m), (Text(problem, "code"), problem.GetProperty("line").GetInt32(), Number(problem, "column")));
        Assert.Equal(1, readings.Status);
        Assert.Equal(5, readings.Json.GetProperty("readings").GetArrayLength());
    }

    /// <summary>The small journal with a bore that is out, a thread, a shaft of an inch drawing, and three settings.</summary>
    private static JournalOnDisk Measured() => JournalOnDisk.Small()
        .With("tools.yaml", """
            - {id: lathe, title: Small lathe, kind: machine, got: had}
            - {id: boring-head, title: Boring head, kind: tool-holding}
            - {id: caliper, title: Dial caliper, kind: measuring}
            """)
        .With("drill/build.yaml", """
            title: Bench drill
            parts:
              - {id: head, title: Head casting, material: cast-iron}
              - {id: quill, title: Quill, material: mild-steel}
              - {id: gib-screw, title: Gib screw, quantity: 4}
            mates: {hole: head.bore, shaft: quill.diameter}
            """)
        .With("drill/2025-10-01-bore.md", """
            ---
            jobs:
              - {part: head, operation: boring, hours: 1h}
              - {part: quill, operation: turning, hours: 1h}
            readings:
              - {feature: head.bore, required: 12 H7, actual: 12.021, with: caliper}
              - {feature: head.thread, required: M6, actual: go}
              - {feature: head.length, required: 1.5 ±0.005 in, actual: 1.502}
              - {feature: quill.diameter, required: 12 h6, actual: 11.995}
            settings:
              - {diameter: 30, rpm: 480, feed: 0.1 mm/turn, depth: 0.5, cutter: boring bar, verdict: chattered badly}
              - {diameter: 30, rpm: 200, feed: hand, cutter: Boring bar, verdict: worked}
              - {job: 2, diameter: 0.5 in, rpm: 600, feed: 0.002 in/rev, verdict: worked}
            mistakes: {what: Bored three hundredths too far., outcome: used-as-is}
            ---
            """);

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private static decimal Number(JsonElement element, string name) => element.GetProperty(name).GetDecimal();
}
