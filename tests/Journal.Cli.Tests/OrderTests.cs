using System.Text.Json;

namespace Journal.Cli.Tests;

public class OrderTests
{
    private const string Engine =
        """
        title: Engine
        parts:
          - {id: rod, title: Rod, material: silver-steel, stock: round 12 x 220, quantity: 5}
          - {id: pin, title: Pin, material: silver-steel, stock: round 12 x 40}
          - {id: lever, title: Lever, material: mild-steel EN3, stock: flat 25 x 10 x 450}
          - {id: long, title: Long bar, material: mild-steel EN3, stock: flat 25 x 10 x 1500}
          - {id: plate, title: Plate, material: brass, stock: sheet 1.6}
          - {id: screw, title: Screw, material: brass, stock: round 6, quantity: 9}
          - {id: bed, title: Bed, stock: casting, supplied: kit}
          - {id: knob, title: Knob}
          - {id: begun, title: Begun, material: brass, stock: round 6 x 100}
        """;

    // Five of 225 mm go four to a metre, and the pin of 45 behind the fourth: 4 x 225 + 45 = 945.
    [Fact]
    public void Order_Build_AddsLengthsUpIntoBars()
    {
        using var journal = WithEngine();

        var order = journal.Ask("order", "engine");

        Assert.Equal((0, ""), (order.Status, order.Error));
        Assert.Equal("Engine: 4 bars of 2 sections, and 2 other things.", order.Lines[0]);
        Assert.Matches(@"\nMild steel EN3 +flat 25 x 10 +2 +1960 mm +2 +Long bar, Lever\n", order.Out);
        Assert.Matches(@"\nSilver steel +round 12 +6 +1170 mm +2 +Rod, Pin\n", order.Out);
        Assert.Contains("\nIn bars of 1000 mm, with 5 mm a piece for sawing and facing.\n", order.Out, StringComparison.Ordinal);
        var running = order.Out.Replace("\n  ", " ", StringComparison.Ordinal);
        Assert.Contains("\n– Silver steel round 12, bar 1: Rod 220 mm, Rod 220 mm, Rod 220 mm, Rod 220 mm, Pin 40 mm; 55 mm left\n", running, StringComparison.Ordinal);
        Assert.Contains("Long bar 1500 mm; longer than a bar: ask for one of its own length\n", running, StringComparison.Ordinal);
        Assert.Contains("\nNot in bars\n– Brass, sheet 1.6: Plate\n– Brass, round 6, 9 pieces: Screw\n", order.Out, StringComparison.Ordinal);
        Assert.Contains("\nSupplied: Bed.\n", order.Out, StringComparison.Ordinal);
        Assert.Contains("\nNo stock said for: Knob.", order.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Order_Formats_HaveTheShape()
    {
        using var journal = WithEngine();

        var json = journal.Ask("order", "engine", "--bar", "500", "--allowance", "10", "--format", "json").Json;

        Assert.Equal(("engine", "mm", 500, 10), (Text(json, "for"), Text(json, "unit"), Number(json, "barLength"), Number(json, "allowance")));
        var steel = json.GetProperty("stock")[1];
        Assert.Equal(("silver-steel", "round", "12", 6, 1200), (Text(steel, "material"), Text(steel, "form"), Text(steel, "section"), Number(steel, "pieces"), Number(steel, "length")));
        Assert.Equal([40, 40, 220], steel.GetProperty("bars").EnumerateArray().Select(bar => Number(bar, "left")));
        Assert.Equal(["rod", "pin"], steel.GetProperty("bars")[2].GetProperty("cuts").EnumerateArray().Select(cut => Text(cut, "part")));
        Assert.Equal(["bed"], json.GetProperty("supplied").EnumerateArray().Select(part => part.GetString()!));
        Assert.Equal(
            [
                "for,material,grade,form,section,unit,pieces,length,bars,barLength,parts",
                "engine,mild-steel,EN3,flat,25 x 10,mm,2,1960,2,1000,long lever",
                "engine,silver-steel,,round,12,mm,6,1170,2,1000,rod pin",
                "engine,brass,,sheet,1.6,,1,,,,plate",
                "engine,brass,,round,6,,9,,,,screw",
            ],
            journal.Ask("order", "engine", "--format", "csv").Out.TrimEnd().Split("\r\n"));
    }

    [Fact]
    public void Order_Plan_IsAllOfItInInchesWhereTheJournalIs()
    {
        using var journal = JournalOnDisk.Small().With("journal.yaml", "title: x\nunits: inch\n")
            .With("plans/clock.yaml", "title: Clock\nparts: [{id: arbor, title: Arbor, material: silver-steel, stock: round 1/4 x 3, quantity: 12}]\n");

        var order = journal.Ask("order", "clock");

        Assert.Matches(@"\nSilver steel +round 1/4 +12 +38.4 in +2 +Arbor\n", order.Out);
        Assert.Contains("In bars of 36 in, with 0.2 in a piece for sawing and facing.", order.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Order_Page_IsWrittenAndWrittenAgain_ButNeverOverAnother()
    {
        using var journal = WithEngine();

        Assert.Equal(0, journal.Ask("order", "engine", "--page", "order.html").Status);
        var written = journal.Ask("order", "engine", "--page", "order.html");
        Assert.Equal((0, Path.Combine(journal.Folder, "order.html") + "\n"), (written.Status, written.Out));
        var page = File.ReadAllText(Path.Combine(journal.Folder, "order.html"));
        Assert.Contains("<td>Silver steel</td><td>round 12</td><td class=\"figure\">2</td><td class=\"figure\">1170 mm</td>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http", page, StringComparison.Ordinal);

        journal.With("mine.html", "Mine.");
        Assert.Equal(2, journal.Ask("order", "engine", "--page", "mine.html").Status);
        Assert.Equal("Mine.", File.ReadAllText(Path.Combine(journal.Folder, "mine.html")));
    }

    [Theory]
    [InlineData("There is no plan or build `engin`. Did you mean `engine`? See `journal order --help`.", "engin")]
    [InlineData("`long` is not a length. Write it such as `--bar 500` or `--bar \"12 in\"`. See `journal order --help`.", "engine", "--bar", "long")]
    [InlineData("The allowance is as long as a bar. See what you gave as `--bar` and `--allowance`. See `journal order --help`.", "engine", "--allowance", "2000")]
    public void Order_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var journal = WithEngine();

        Assert.Equal((2, error + "\n"), (journal.Ask(["order", .. words]).Status, journal.Ask(["order", .. words]).Error));
    }

    [Fact]
    public void Next_BorrowedTool_IsToldAWeekBeforeAndNeverPublished()
    {
        using var journal = JournalOnDisk.Small();
        Assert.Equal(0, journal.Ask("add", "tool", "height-gauge", "--title", "Height gauge", "--borrowed-from", "Alderfen", "--due", "2025-10-10").Status);
        Assert.Contains("- {id: height-gauge, title: Height gauge, got: borrowed, borrowed-from: Alderfen, due: 2025-10-10}", File.ReadAllText(Path.Combine(journal.Folder, "tools.yaml")), StringComparison.Ordinal);

        Assert.EndsWith("Give back Height gauge, from Alderfen: due 2025-10-10, in 7 days\n", journal.Ask("next").Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Give back", journal.Ask("next", "--today", "2025-10-02").Out, StringComparison.Ordinal);
        Assert.EndsWith("Give back Height gauge, from Alderfen: due 2025-10-10, 2 days ago\n", journal.Ask("next", "--today", "2025-10-12").Out, StringComparison.Ordinal);
        var due = journal.Ask("next", "--format", "json").Json.GetProperty("due")[0];
        Assert.Equal(("height-gauge", "Alderfen", "2025-10-10", 7), (Text(due, "tool"), Text(due, "borrowedFrom"), Text(due, "due"), Number(due, "days")));

        Assert.Equal(0, journal.Ask("publish", "--to", "site").Status);
        Assert.All(
            Directory.GetFiles(Path.Combine(journal.Folder, "site"), "*", SearchOption.AllDirectories).Where(file => file.EndsWith(".html", StringComparison.Ordinal) || file.EndsWith(".js", StringComparison.Ordinal) || file.EndsWith(".json", StringComparison.Ordinal)),
            file => Assert.False(File.ReadAllText(file).Contains("Alderfen", StringComparison.Ordinal) || File.ReadAllText(file).Contains("2025-10-10", StringComparison.Ordinal), file));
    }

    private static JournalOnDisk WithEngine() => JournalOnDisk.Small().With("engine/build.yaml", Engine).With("engine/2025-10-01-begun.md", "---\npart: begun\nhours: 1h\n---\n");

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private static int Number(JsonElement element, string name) => element.GetProperty(name).GetInt32();
}
