using System.Globalization;
using System.Text.Json;

namespace Journal.Cli.Tests;

public class EstimateTests
{
    [Fact]
    public void Table_Plan_BeginsWithTheSentenceAndSaysThatHistoryIsThin()
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.Ask("estimate", "bench-shaper");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Matches(@"^Even odds \(50 %\): \d+ h, done by \d+ \w+( \d{4})?\. Eight in ten \(80 %\): \d+ h, by", answer.Lines[0]);
        var text = OneLine(answer.Out);
        Assert.Contains("Only 1 part finished so far: too few to show habits, so the range is wider.", text, StringComparison.Ordinal);
        Assert.Contains("There is too little finished work to test this on.", text, StringComparison.Ordinal);
        Assert.Contains("your guess 8h assembly + 5h painting", text, StringComparison.Ordinal);
        Assert.Contains("of the uncertainty comes from:", text, StringComparison.Ordinal);
        Assert.Contains("Nothing loose near anything that turns.", text, StringComparison.Ordinal);
        Assert.All(answer.Lines, line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Table_ToolsBorrowedOrNotInTheCrib_AreNamedWithTheWorkThatTookThem()
    {
        using var journal = JournalOnDisk.Small()
            .With("tools.yaml", "- {id: lathe, title: Small lathe, got: had}\n- {id: boring-head, got: bought}\n- {id: table, title: Rotary table, got: borrowed}\n")
            .With("drill/2025-10-01-lap.md", "---\npart: head\noperation: lapping\nhours: 1h\ntools: [table, lathe, lap-arbor]\n---\n");

        var text = journal.Ask("estimate", "bench-shaper").Out;

        Assert.Contains("– Rotary table: borrowed; lapping, 1 job\n", text, StringComparison.Ordinal);
        Assert.Contains("– Lap arbor: not in the crib; lapping, 1 job\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("– Small lathe", text, StringComparison.Ordinal);
    }

    // Other programs rely on this shape.
    [Fact]
    public void Json_Plan_HasTheShape()
    {
        using var journal = JournalOnDisk.Small();

        var json = journal.Ask("estimate", "bench-shaper", "--format", "json").Json;

        Assert.Equal("bench-shaper", json.GetProperty("plan").GetString());
        var hours = new[] { "p10", "p25", "p50", "p75", "p80", "p90" }.Select(name => json.GetProperty("hours").GetProperty(name).GetDouble()).ToList();
        Assert.Equal(hours.Order(), hours);
        var quantiles = json.GetProperty("quantiles").EnumerateArray().ToList();
        Assert.Equal(Enumerable.Range(1, 19).Select(step => step / 20.0), quantiles.Select(one => one.GetProperty("p").GetDouble()));
        Assert.Equal(hours[2], quantiles[9].GetProperty("hours").GetDouble());
        var finish = new[] { "p50", "p80", "p90" }.Select(name => DateOnly.Parse(json.GetProperty("finish").GetProperty(name).GetString()!, CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(finish.Order(), finish);
        Assert.Equal(["ram", "screw", "slide"], json.GetProperty("parts").EnumerateArray().Select(part => part.GetProperty("part").GetString()!));
        Assert.All(
            json.GetProperty("parts").EnumerateArray().Append(json.GetProperty("whole")),
            part => Assert.True(part.GetProperty("p10").GetDouble() < part.GetProperty("p50").GetDouble() && part.GetProperty("p50").GetDouble() < part.GetProperty("p90").GetDouble()));
        Assert.EndsWith("like drill/quill", json.GetProperty("parts")[0].GetProperty("basis").GetString(), StringComparison.Ordinal);
        Assert.Equal((1, 94), (Int(json.GetProperty("history"), "parts"), Int(json.GetProperty("history"), "minutes")));
        Assert.Equal((0, JsonValueKind.Null), (Int(json.GetProperty("backtest"), "kits"), json.GetProperty("backtest").GetProperty("covered80").ValueKind));
        Assert.Equal(1, Int(json, "seed"));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("minutesSoFar").ValueKind);
    }

    [Fact]
    public void Guess_UnderOperations_IsForOnePieceAndUnderGuessForAll()
    {
        using var journal = JournalOnDisk.Small().With("plans/two.yaml", """
            title: Two
            parts:
              - {id: each, quantity: 4, operations: {turning: 1h}}
              - {id: all, quantity: 4, guess: {turning: 1h}}
            """);

        var parts = journal.Ask("estimate", "two", "--format", "json").Json.GetProperty("parts");

        Assert.Equal((4, 1), (parts[0].GetProperty("guess").GetDouble(), parts[1].GetProperty("guess").GetDouble()));
        Assert.Equal(4, parts[0].GetProperty("p50").GetDouble() / parts[1].GetProperty("p50").GetDouble(), 0.9);
        Assert.StartsWith("your guess 1h for each of 4", parts[0].GetProperty("basis").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("your guess 1h,", parts[1].GetProperty("basis").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Csv_Plan_HasARowForEachPartAndTheWhole()
    {
        using var journal = JournalOnDisk.Small();

        var lines = journal.Ask("estimate", "bench-shaper", "--format", "csv").Out.Split("\r\n");

        Assert.Equal("part,p10,p50,p90,basis", lines[0]);
        Assert.Equal(["ram", "screw", "slide", "whole"], lines[1..^1].Select(line => line.Split(',')[0]));
    }

    [Fact]
    public void Build_UnderWay_TellsWhatIsSpentAndWhatIsLeft()
    {
        using var journal = JournalOnDisk.Small().With("drill/build.yaml", """
            title: Bench drill
            parts:
              - {id: head, title: Head casting, guess: 9h, reguess: 14h}
              - {id: quill, title: Quill, guess: 1h}
              - {id: gib-screw, title: Gib screw, quantity: 4, guess: 2h}
            """);

        var (table, json) = (journal.Ask("estimate", "drill"), journal.Ask("estimate", "drill", "--format", "json").Json);

        Assert.Matches(@"^Even odds \(50 %\): \d.* h more, done by", table.Lines[0]);
        Assert.Contains("10h spent so far;", OneLine(table.Out), StringComparison.Ordinal);
        Assert.Contains("Still to do", table.Out, StringComparison.Ordinal);
        Assert.Equal(600, Int(json, "minutesSoFar"));
        Assert.Equal(json.GetProperty("hours").GetProperty("p80").GetDouble() - 10, json.GetProperty("left").GetProperty("p80").GetDouble(), 1e-3);
        var head = json.GetProperty("parts")[0];
        Assert.StartsWith("your second guess 14h (at first 9h)", head.GetProperty("basis").GetString(), StringComparison.Ordinal);
        Assert.Equal((9, 14), (head.GetProperty("guess").GetDouble(), head.GetProperty("reguess").GetDouble()));
        Assert.Equal("finished in 1h34", json.GetProperty("parts")[1].GetProperty("basis").GetString());
        Assert.True(head.GetProperty("p10").GetDouble() > 7.8, "more than was spent on it");
    }

    [Fact]
    public void WhatIf_EachOption_ChangesWhatItShould()
    {
        using var journal = JournalOnDisk.Small();
        JsonElement Ask(params string[] more) => journal.Ask(["estimate", "bench-shaper", "--format", "json", .. more]).Json;
        DateOnly Half(JsonElement json) => DateOnly.Parse(json.GetProperty("finish").GetProperty("p50").GetString()!, CultureInfo.InvariantCulture);
        double P50(JsonElement json) => json.GetProperty("hours").GetProperty("p50").GetDouble();
        var plain = Ask();

        Assert.True(Half(Ask("--hours-a-week", "10")) < Half(plain));
        Assert.True(Half(Ask("--start", "2026-06-01")) > Half(plain));
        Assert.Equal(P50(plain), P50(Ask("--start", "2026-06-01")));
        var without = Ask("--without", "ram", "--without", "slide");
        Assert.Equal("screw", Assert.Single(without.GetProperty("parts").EnumerateArray()).GetProperty("part").GetString());
        Assert.True(P50(without) < P50(plain) / 1.5);
        Assert.NotEqual(P50(plain), P50(Ask("--seed", "2")));
        Assert.Equal(plain.GetRawText(), Ask("--seed", "1").GetRawText());
        Assert.True(Half(Ask("--today", "2026-03-01")) > Half(plain), "the start has passed by then");
        Assert.Contains("The start of 2025-11-01 is past", Ask("--today", "2026-03-01").GetProperty("remarks").GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIf_PartAndPace_AreToldAsDifferencesFromTheSameDraws()
    {
        using var journal = JournalOnDisk.Small();

        var table = OneLine(journal.Ask("estimate", "bench-shaper", "--without", "ram", "--hours-a-week", "10").Out);
        var plain = journal.Ask("estimate", "bench-shaper", "--format", "json").Json;
        var (without, both) = (
            journal.Ask("estimate", "bench-shaper", "--format", "json", "--without", "ram").Json,
            journal.Ask("estimate", "bench-shaper", "--format", "json", "--without", "ram", "--hours-a-week", "10").Json);

        Assert.Matches(@"Without ram: [\d.]+ h less at even odds, [\d.]+ h less at eight in ten; done \d+ days sooner at even odds, \d+ days sooner at eight in ten\. With 10 h a week: the same hours; done \d+ days sooner .* All together: [\d.]+ h less at even odds", table);
        var difference = Assert.Single(without.GetProperty("differences").EnumerateArray());
        Assert.Equal("Without ram", difference.GetProperty("change").GetString());
        Assert.Equal(P80(without) - P80(plain), difference.GetProperty("hours").GetProperty("p80").GetDouble(), 2e-3);
        Assert.True(Int(difference.GetProperty("days"), "p80") < 0);
        Assert.Equal(3, both.GetProperty("differences").GetArrayLength());
        Assert.Equal(0, plain.GetProperty("differences").GetArrayLength());
        static double P80(JsonElement json) => json.GetProperty("hours").GetProperty("p80").GetDouble();
    }

    [Fact]
    public void WhatIf_MadeTwice_AddsThePartOnceMore()
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.Ask("estimate", "bench-shaper", "--twice", "slide");

        Assert.Contains("With slide made twice: ", OneLine(answer.Out), StringComparison.Ordinal);
        Assert.Contains(", made again", OneLine(answer.Out), StringComparison.Ordinal);
    }

    [Fact]
    public void Guesses_OverTime_AreListedWithTheHabitAndWhatCannotBeTold()
    {
        using var journal = JournalOnDisk.Small().With("drill/build.yaml", "title: Bench drill\nparts:\n  - {id: head, title: Head casting}\n  - {id: quill, title: Quill, guess: 1h}\n  - {id: gib-screw, quantity: 4}\n");

        var answer = journal.Ask("estimate", "bench-shaper");
        var guesses = journal.Ask("estimate", "bench-shaper", "--format", "json").Json.GetProperty("guesses");

        // An hour guessed, 94 minutes taken: 1.57 times, two thirds of a doubling above as guessed.
        Assert.Contains("Quill 2025-09-07 1 h 1.6 h 1.57 ······|o·····", OneLine(answer.Out), StringComparison.Ordinal);
        Assert.Contains("cannot be told from fewer than about a hundred parts", OneLine(answer.Out), StringComparison.Ordinal);
        Assert.Equal(1.567, guesses.GetProperty("parts")[0].GetProperty("ratio").GetDouble());
        Assert.Equal("drill/quill", guesses.GetProperty("parts")[0].GetProperty("part").GetString());
        Assert.True(guesses.GetProperty("habitLow").GetDouble() < guesses.GetProperty("habit").GetDouble());
    }

    [Fact]
    public void Like_APartOfCloseTitle_IsOfferedByEstimateAndCheckAndAssumedByNeither()
    {
        using var journal = JournalOnDisk.Small().With("plans/slotter.yaml", "title: Slotter\nparts:\n  - {id: q, title: Long quill, operations: turning}\n");

        var (estimate, check) = (journal.Ask("estimate", "slotter"), journal.Ask("check"));
        var offer = Assert.Single(journal.Ask("check", "--format", "json").Json.GetProperty("offers").EnumerateArray());

        Assert.Contains("Long quill is much like `drill/quill`: say `like: drill/quill`?", OneLine(estimate.Out), StringComparison.Ordinal);
        Assert.DoesNotContain("; like drill/quill", OneLine(estimate.Out), StringComparison.Ordinal);
        Assert.Equal((0, "plans/slotter.yaml: Long quill is much like `drill/quill`: say `like: drill/quill`?"), (check.Status, OneLine(check.Out[check.Out.IndexOf("plans/", StringComparison.Ordinal)..])));
        Assert.Equal(("plans/slotter.yaml", "q", "drill/quill"), (offer.GetProperty("file").GetString(), offer.GetProperty("part").GetString(), offer.GetProperty("like").GetString()));
    }

    [Theory]
    [InlineData("bench-shaper --twice rim", "bench-shaper has no part rim to make twice. Its parts: ram, screw, slide.")]
    [InlineData("bench-shapr", "There is no plan or build `bench-shapr`. Did you mean `bench-shaper`?")]
    [InlineData("bench-shaper --without rim", "bench-shaper has no part rim to leave out. Its parts: ram, screw, slide.")]
    [InlineData("bench-shaper --hours-a-week 0", "`0` is not a possible number of hours a week. Give those of a usual week: `--hours-a-week 5.5`. See `journal estimate --help`.")]
    [InlineData("bench-shaper --start tomorrow", "`tomorrow` is not a date. Write year, month and day: `--start 2026-11-07`. See `journal estimate --help`.")]
    [InlineData("bench-shaper --seed x", "`x` is not a valid seed. Use a whole number: `--seed 7`. See `journal estimate --help`.")]
    public void WrongUse_EachKind_Is2WithOneLine(string words, string line)
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.Ask(["estimate", .. words.Split(' ')]);

        Assert.Equal((2, "", line + "\n"), (answer.Status, answer.Out, answer.Error));
    }

    [Fact]
    public void WrongUse_NoName_SaysWhatIsWanted()
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal("`journal estimate` needs <plan or build>. See `journal estimate --help`.\n", journal.Ask("estimate").Error);
    }

    [Theory]
    [InlineData("parts: [{id: ram, guess: 0}]", "`guess` is 0; the minimum is one minute.")]
    [InlineData("parts: [{id: ram, guess: {low: 9h, likely: 6h, high: 16h}}]", "The guess goes from 9h to 6h to 16h.")]
    [InlineData("parts: [{id: ram, like: drill/hed}]", "There is no part `drill/hed`.")]
    [InlineData("parts: [{id: ram, quantity: 0}]", "“0” is not a valid number for `quantity`.")]
    [InlineData("parts: [{id: ram", "This is not YAML")]
    [InlineData("start: 2025-12-01", "`parts` is missing.")]
    [InlineData("parts: [ram, ram]", "The part `ram` is defined twice")]
    [InlineData("parts: []", "Slotter has no parts to estimate.")]
    public void FaultyPlan_EachKind_Is1WithoutAnEstimate(string yaml, string message)
    {
        using var journal = JournalOnDisk.Small().With("plans/slotter.yaml", $"title: Slotter\n{yaml}\n");

        var answer = journal.Ask("estimate", "slotter");

        Assert.Equal((1, ""), (answer.Status, answer.Out));
        Assert.Contains(message, OneLine(answer.Error), StringComparison.Ordinal);
    }

    [Fact]
    public void NeitherGuessNorHistory_Is1AndSaysWhatToWriteDown()
    {
        using var journal = JournalOnDisk.Empty().With("plans/slotter.yaml", "title: Slotter\nparts: [ram, slide]\n");

        var answer = journal.Ask("estimate", "slotter");

        Assert.Equal((1, ""), (answer.Status, answer.Out));
        Assert.Contains("there is no guess for ram, slide. Write a guess for each part", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void GuessesAlone_NoHistory_GiveHoursWithoutDates()
    {
        using var journal = JournalOnDisk.Empty().With("plans/slotter.yaml", "title: Slotter\nparts: [{id: ram, guess: 6h}]\n");

        var answer = journal.Ask("estimate", "slotter");

        Assert.Equal(0, answer.Status);
        Assert.Matches(@"^Even odds \(50 %\): [\d.]+ h\. Eight in ten \(80 %\): [\d.]+ h\.$", answer.Lines[0]);
        Assert.Contains("this is based on guesses alone, and the range is wide.", OneLine(answer.Out), StringComparison.Ordinal);
        Assert.DoesNotContain("Done by", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void ThousandParts_AreAClearAnswer()
    {
        var parts = string.Concat(Enumerable.Range(1, 1000).Select(i => $"  - {{id: part-{i}, operations: [turning]}}\n"));
        using var journal = JournalOnDisk.Small().With("plans/liner.yaml", $"title: Liner\nparts:\n{parts}");

        var answer = journal.Ask("estimate", "liner", "--format", "json");

        Assert.Equal((0, 1000), (answer.Status, answer.Json.GetProperty("parts").GetArrayLength()));
    }

    [Fact]
    public void FlawElsewhere_StillEstimates_AndPointsToCheck()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-slip.md", "---\npart: head\noperation: borring\nhours: 1h\n---\n");

        var answer = journal.Ask("estimate", "bench-shaper");

        Assert.Equal(1, answer.Status);
        Assert.StartsWith("Even odds", answer.Out, StringComparison.Ordinal);
        Assert.Equal("1 error in the journal; what it touches is missing here. See `journal check`.\n", answer.Error);
    }

    [Fact]
    public void FinishedBuild_Is2()
    {
        using var journal = JournalOnDisk.Small().With("drill/build.yaml", "title: Bench drill\nstatus: finished\nparts: [head, quill, gib-screw]\n");

        var answer = journal.Ask("estimate", "drill");

        Assert.Equal((2, "Bench drill is finished; it took 10h. Estimate a plan or a build under way.\n"), (answer.Status, answer.Error));
    }

    private static int Int(JsonElement element, string name) => element.GetProperty(name).GetInt32();

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
