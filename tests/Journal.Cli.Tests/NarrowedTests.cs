using System.Text.Json;

namespace Journal.Cli.Tests;

// One build, one part, some weeks of it: every figure that can bear it.
public class NarrowedTests
{
    [Fact]
    public void Hours_OfAPart_AreItsShareOfEveryJob()
    {
        using var journal = JournalOnDisk.Small();

        // 165 and 240 minutes alone, and two thirds of 100.
        var drill = journal.Ask("hours", "--part", "head", "--format", "json").Json.GetProperty("builds")[0];

        Assert.Equal(472, drill.GetProperty("minutes").GetInt32());
        Assert.Equal(0, drill.GetProperty("general").GetInt32());
        Assert.Equal(472, drill.GetProperty("weeks").EnumerateArray().Sum(week => week.GetProperty("minutes").GetInt32()));
        Assert.Equal(472, drill.GetProperty("kinds").EnumerateArray().Sum(kind => kind.GetProperty("minutes").GetInt32()));
        Assert.Equal(["head"], drill.GetProperty("parts").EnumerateArray().Select(part => part.GetProperty("part").GetString()!));
        Assert.Equal(34, journal.Ask("hours", "--part", "whole", "--format", "json").Json.GetProperty("minutes").GetInt32());
    }

    [Theory]
    [InlineData(600)]
    [InlineData(435, "--since", "2025-09-07")]
    [InlineData(240, "--since", "2025-09-08")]
    [InlineData(195, "--since", "2025-09-07", "--until", "2025-09-07")]
    [InlineData(94, "--part", "quill", "--until", "2025-09-07")]
    [InlineData(0, "--build", "vice")]
    [InlineData(600, "--build", "drill")]
    public void Hours_OfSomeDays_AreThose(int minutes, params string[] words)
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal(minutes, journal.Ask(["hours", .. words, "--format", "json"]).Json.GetProperty("minutes").GetInt32());
        Assert.Equal(minutes, Evenings(journal, words).Sum(share => share.Minutes));
    }

    // Set-up of 70 minutes goes to setting up; the rest, and every other job, to its operation's own kind.
    [Fact]
    public void HoursByEvening_Csv_HasALineForEachShare()
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal(
            [
                "date,build,part,operation,minutes,kind",
                "2025-09-06,drill,head,boring,95,cutting",
                "2025-09-06,drill,head,boring,70,setting-up",
                "2025-09-07,drill,quill,turning,31,cutting",
                "2025-09-07,drill,quill,lapping,30,fitting",
                "2025-09-07,drill,head,fitting,67,fitting",
                "2025-09-07,drill,quill,fitting,33,fitting",
                "2025-09-07,drill,whole,planning,34,thinking",
                "2025-09-30,drill,head,boring,240,cutting",
            ],
            journal.Ask("hours", "--by-evening", "--format", "csv").Out.TrimEnd().Split("\r\n"));
        Assert.Matches(@"\nTotal +10h", journal.Ask("hours", "--by-evening").Out);
        Assert.Equal("2025-09-06-head", journal.Ask("hours", "--by-evening", "--format", "json").Json.GetProperty("evenings")[0].GetProperty("entry").GetString());
    }

    // Whatever is shared out over parts, operations and kinds adds up to what plain `hours` says of each.
    [Fact]
    public void HoursByEvening_OfTheDemonstration_AddsUpToTheHours()
    {
        var hours = Answer.To(Demo.Folder, "hours", "--format", "json").Json;
        var shares = Answer.To(Demo.Folder, "hours", "--by-evening", "--format", "json").Json.GetProperty("evenings").EnumerateArray().ToList();

        foreach (var (list, key) in new[] { ("operations", "operation"), ("kinds", "kind") })
        {
            var expected = hours.GetProperty(list).EnumerateArray().ToDictionary(one => one.GetProperty(key).GetString()!, one => one.GetProperty("minutes").GetInt32());
            var actual = shares.GroupBy(share => share.GetProperty(key).GetString()!).ToDictionary(one => one.Key, one => one.Sum(share => share.GetProperty("minutes").GetInt32()));
            Assert.Equal(expected.OrderBy(pair => pair.Key, StringComparer.Ordinal), actual.OrderBy(pair => pair.Key, StringComparer.Ordinal));
        }

        Assert.True(shares.Count > 100);
    }

    [Fact]
    public void Figures_EachThatCanBearIt_CanBeNarrowed()
    {
        using var journal = JournalOnDisk.Small();
        JsonElement Json(params string[] words) => journal.Ask([.. words, "--format", "json"]).Json;

        Assert.Equal("2025-09-30", Json("timeline", "--part", "head", "--since", "2025-09-08").GetProperty("builds")[0].GetProperty("first").GetString());
        Assert.Equal(472, Json("timeline", "--part", "head").GetProperty("builds")[0].GetProperty("parts")[0].GetProperty("minutes").GetInt32());
        Assert.Equal(61, Json("tooling", "--part", "quill").GetProperty("tools")[0].GetProperty("minutes").GetInt32());
        Assert.Equal(["lap-last"], Json("lessons", "--since", "2025-09-07").GetProperty("lessons").EnumerateArray().Select(one => one.GetProperty("id").GetString()!));
        Assert.Equal(0, Json("lessons", "--build", "vice").GetProperty("causes").GetArrayLength());
        Assert.Equal(4.5m, Json("costs", "--part", "head").GetProperty("total").GetDecimal());
        Assert.Equal(0m, Json("costs", "--since", "2025-09-07").GetProperty("total").GetDecimal());
        Assert.Equal(244.5m, Json("costs", "--until", "2025-09-06").GetProperty("total").GetDecimal());
        Assert.Equal("drill", Json("next", "--build", "drill").GetProperty("build").GetString());
    }

    // What is required of a feature may stand in a reading of long before.
    [Fact]
    public void Readings_SinceADay_KeepWhatWasRequiredBefore()
    {
        using var journal = JournalOnDisk.Small();
        journal.Ask("amend", "2025-09-06", "--reading", "bore 12 H7 = 11.9", "--setting", "480 rpm");
        journal.Ask("amend", "2025-09-30", "--reading", "bore 12.009");

        var reading = Assert.Single(journal.Ask("readings", "--since", "2025-09-10", "--format", "json").Json.GetProperty("readings").EnumerateArray());

        Assert.Equal(("12 H7", true), (reading.GetProperty("required").GetString(), reading.GetProperty("within").GetBoolean()));
        Assert.Equal(0, journal.Ask("settings", "--since", "2025-09-10", "--format", "json").Json.GetProperty("settings").GetArrayLength());
        Assert.Equal(1, journal.Ask("settings", "--build", "drill", "--format", "json").Json.GetProperty("settings").GetArrayLength());
    }

    [Theory]
    [InlineData("There is no build `dril`. Did you mean `drill`? See `journal hours --help`.", "hours", "--build", "dril")]
    [InlineData("There is no part `haed`. Did you mean `head`? See `journal timeline --help`.", "timeline", "--part", "haed")]
    [InlineData("`--until` comes before `--since`. See `journal costs --help`.", "costs", "--since", "2025-09-02", "--until", "2025-09-01")]
    [InlineData("`yesterday` is not a date. Write year, month and day: `--since 2025-10-03`. See `journal hours --help`.", "hours", "--since", "yesterday")]
    [InlineData("What to read before a job is looked for in all builds and years: leave out `--build`, `--since` and `--until`. See `journal lessons --help`.", "lessons", "--for", "boring", "--since", "2025-09-01")]
    public void Narrowed_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal((2, error + "\n"), (journal.Ask(words).Status, journal.Ask(words).Error));
    }

    private static IEnumerable<(string Date, int Minutes)> Evenings(JournalOnDisk journal, string[] words) =>
        journal.Ask(["hours", "--by-evening", .. words, "--format", "json"]).Json.GetProperty("evenings").EnumerateArray()
            .Select(share => (share.GetProperty("date").GetString()!, share.GetProperty("minutes").GetInt32()));
}
