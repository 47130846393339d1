using System.Text.Json;

namespace Journal.Cli.Tests;

// Other programs rely on these shapes: fields may be added, but none may be renamed or removed.
public class JsonShapeTests
{
    [Fact]
    public void Hours_SmallJournal_HasTheShapeAndAddsUp()
    {
        using var journal = JournalOnDisk.Small();

        var drill = journal.Ask("hours", "--format", "json").Json.GetProperty("builds")[0];

        Assert.Equal("drill", Text(drill, "build"));
        Assert.Equal(600, Number(drill, "minutes"));
        Assert.Equal(34, Number(drill, "general"));
        Assert.Equal(600, Sum(drill, "parts") + Number(drill, "general"));
        Assert.Equal(600, Sum(drill, "operations"));
        Assert.Equal(600, Sum(drill, "kinds"));
        Assert.Equal(600, Sum(drill, "weeks"));
        Assert.Equal(["2025-W36", "2025-W40"], drill.GetProperty("weeks").EnumerateArray().Select(week => Text(week, "week")));
        var quill = drill.GetProperty("parts")[1];
        Assert.Equal("quill", Text(quill, "part"));
        Assert.Equal([("fitting", 33), ("turning", 31), ("lapping", 30)], quill.GetProperty("operations").EnumerateArray().Select(one => (Text(one, "operation"), Number(one, "minutes"))));
        Assert.Contains(drill.GetProperty("kinds").EnumerateArray(), kind => Text(kind, "kind") == "setting-up" && Number(kind, "minutes") == 70);
    }

    [Fact]
    public void Hours_BuildNotBegun_IsThereWithZeros()
    {
        using var journal = JournalOnDisk.Small();

        var vice = journal.Ask("hours", "--format", "json").Json.GetProperty("builds")[1];

        Assert.Equal("vice", Text(vice, "build"));
        Assert.Equal(0, Number(vice, "minutes"));
        Assert.Equal("jaw", Text(vice.GetProperty("parts")[0], "part"));
    }

    [Fact]
    public void Lessons_SmallJournal_HasTheShape()
    {
        using var journal = JournalOnDisk.Small();

        var json = journal.Ask("lessons", "--format", "json").Json;

        var lesson = json.GetProperty("lessons")[0];
        Assert.Equal(
            ("indicate-both-ends", "drill", "2025-09-06-head", "boring", 75, 0, 1),
            (Text(lesson, "id"), Text(lesson, "build"), Text(lesson, "entry"), Text(lesson, "operation"), Number(lesson, "minutesLost"), Number(lesson, "repeated"), Number(lesson, "heeded")));
        Assert.Equal("Indicate a rough casting at both ends, and average.", Text(lesson, "text"));
        Assert.Equal("used-as-is", Text(lesson, "outcome"));
        Assert.Equal("do-again", Text(json.GetProperty("lessons")[1], "verdict"));
        var cause = json.GetProperty("causes")[0];
        Assert.Equal(("setting-up", 1, 75), (Text(cause, "cause"), Number(cause, "mistakes"), Number(cause, "minutesLost")));
        Assert.Equal((1.0, 1.0), (cause.GetProperty("share").GetDouble(), cause.GetProperty("cumulative").GetDouble()));
    }

    [Fact]
    public void Tooling_SmallJournal_HasTheShape()
    {
        using var journal = JournalOnDisk.Small();

        var json = journal.Ask("tooling", "--format", "json").Json;

        var (lathe, head) = (json.GetProperty("tools")[0], json.GetProperty("tools")[1]);
        Assert.Equal(JsonValueKind.Null, lathe.GetProperty("cost").ValueKind);
        Assert.Equal(("lathe", "Small lathe", "machine", "had", "2025-09-06"), (Text(lathe, "id"), Text(lathe, "title"), Text(lathe, "kind"), Text(lathe, "got"), Text(lathe, "firstUsed")));
        Assert.Equal((226, 2, 0), (Number(lathe, "minutes"), Number(lathe, "jobs"), Number(lathe, "minutesToMake")));
        Assert.Equal(["drill/head", "drill/quill"], lathe.GetProperty("parts").EnumerateArray().Select(part => part.GetString()!));
        Assert.Equal(["boring", "turning", "lapping"], lathe.GetProperty("operations").EnumerateArray().Select(one => one.GetString()!));
        Assert.Equal(85, Number(head, "cost"));
        Assert.Equal(85, Number(json.GetProperty("totals"), "cost"));
        Assert.Equal(0, Number(json.GetProperty("totals"), "minutesToMake"));
    }

    [Fact]
    public void Costs_SmallJournal_HasTheShape()
    {
        using var journal = JournalOnDisk.Small();

        var json = journal.Ask("costs", "--format", "json").Json;

        Assert.Equal("EUR", Text(json, "currency"));
        var drill = json.GetProperty("builds")[0];
        Assert.Equal(244.5m, drill.GetProperty("total").GetDecimal());
        Assert.Equal([("kit", 240m), ("stock", 4.5m)], drill.GetProperty("kinds").EnumerateArray().Select(kind => (Text(kind, "kind"), kind.GetProperty("cost").GetDecimal())));
        Assert.Equal(("head", 4.5m), (Text(drill.GetProperty("parts")[0], "part"), drill.GetProperty("parts")[0].GetProperty("cost").GetDecimal()));
    }

    [Fact]
    public void Timeline_SmallJournal_HasTheShape()
    {
        using var journal = JournalOnDisk.Small();

        var builds = journal.Ask("timeline", "--format", "json").Json.GetProperty("builds");

        var drill = builds[0];
        Assert.Equal(("2025-09-06", "2025-09-30"), (Text(drill, "first"), Text(drill, "last")));
        var head = drill.GetProperty("parts")[0];
        Assert.Equal(("head", "2025-09-06", "2025-09-30", 3, 1, 472), (Text(head, "part"), Text(head, "first"), Text(head, "last"), Number(head, "daysWorked"), Number(head, "setUps"), Number(head, "minutes")));
        var idle = drill.GetProperty("idle")[0];
        Assert.Equal(("2025-09-08", "2025-09-29", 22), (Text(idle, "from"), Text(idle, "to"), Number(idle, "days")));
        var milestone = drill.GetProperty("milestones")[0];
        Assert.Equal(("2025-09-06", "The first bore", "2025-09-06-head"), (Text(milestone, "date"), Text(milestone, "text"), Text(milestone, "entry")));
        Assert.Equal(JsonValueKind.Null, builds[1].GetProperty("first").ValueKind);
    }

    [Fact]
    public void Next_SmallJournal_HasTheShape()
    {
        using var journal = JournalOnDisk.Small();

        var json = journal.Ask("next", "--format", "json").Json;

        Assert.Equal(
            ("drill", "2025-09-30-head-again", "Face the back of the boss.", "face plate, packed on three jacks"),
            (Text(json, "build"), Text(json, "entry"), Text(json, "next"), Text(json, "held")));
        var snag = json.GetProperty("snags")[0];
        Assert.Equal(("chatter", "It still sings at 300 rpm.", "2025-09-30-head-again"), (Text(snag, "id"), Text(snag, "text"), Text(snag, "entry")));
        Assert.Equal(["head", "gib-screw"], json.GetProperty("partsToGo").EnumerateArray().Select(part => part.GetString()!));
        Assert.Equal(["indicate-both-ends"], json.GetProperty("lessons").EnumerateArray().Select(lesson => Text(lesson, "id")));
    }

    [Fact]
    public void Next_NothingUnderWay_IsNullAndEmpty()
    {
        using var journal = JournalOnDisk.Empty();

        var json = journal.Ask("next", "--format", "json").Json;

        Assert.Equal(JsonValueKind.Null, json.GetProperty("build").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("held").ValueKind);
        Assert.Equal(0, json.GetProperty("snags").GetArrayLength());
        Assert.Equal(0, json.GetProperty("partsToGo").GetArrayLength());
    }

    [Fact]
    public void Check_FlawedEntry_HasTheShape()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-slip.md", "---\npart: head\noperation: borring\nhours: 1h\n---\n");

        var problem = Assert.Single(journal.Ask("check", "--format", "json").Json.GetProperty("problems").EnumerateArray());

        Assert.Equal(
            ("error", "unknown-operation", "drill/2025-10-01-slip.md", 3, 12),
            (Text(problem, "severity"), Text(problem, "code"), Text(problem, "file"), Number(problem, "line"), Number(problem, "column")));
        Assert.Contains("borring", Text(problem, "message"), StringComparison.Ordinal);
        Assert.Contains("`boring`", Text(problem, "remedy"), StringComparison.Ordinal);
    }

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private static int Number(JsonElement element, string name) => element.GetProperty(name).GetInt32();

    private static int Sum(JsonElement element, string list) => element.GetProperty(list).EnumerateArray().Sum(item => Number(item, "minutes"));
}
