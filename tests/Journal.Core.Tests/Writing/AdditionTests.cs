using CsCheck;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using Journal.Core.Parsing.Yaml;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Tests.Writing;

public class AdditionTests
{
    private static readonly Gen<string> Comment = OneOf("", "", "  # a remark", " # [not, a, list] é 🔧");

    private static readonly Gen<string> Value = OneOf(
        "photos/a.jpg", "\"quoted, with ] in it\"", "'single ''quoted'''", "{file: b.jpg, caption: \"what # it: shows\"}", "{ file: c.jpg , alt: ' ]' }", "ünï-🔧");

    private static readonly Gen<string[]> OtherKeys = OneOf(
        "title: Boring the head", "hours:   2h45", "next: \"Face: the back\"", "tools: [boring-head,  gauges]", "# a line of remarks", "",
        "mistakes:\n  - what: It came out off.\n    lost: 1h15\n  # between\n  - Another.", "held: face plate,\n  packed on jacks",
        "story: >\n  Folded\n  text.\n", "datum: |+\n  kept\n\n", "snags:\n- one\n- two", "part: {head: 2, cap: 1}").Array[0, 5]
        .Select(keys => keys.Distinct().ToArray());

    private static readonly Gen<string> List = Gen.Select(Value.Array[1, 3], Comment.Array[4], Gen.Int[0, 9], Comment).Select((items, remarks, shape, first) => shape switch
    {
        0 => "",
        1 => $"photos:{first}",
        2 => "photos: []" + first,
        3 => "photos: [ ]" + first,
        4 => $"photos: [{string.Join(", ", items)}]{first}",
        5 => $"photos:   [ {string.Join(" ,", items)} ,]{first}",
        6 => $"photos: [{first}\n  {string.Join($",{first}\n  ", items)}{first}\n  ]{remarks[0]}",
        7 => $"photos:{first}\n" + string.Join("\n", items.Select((item, i) => $"- {item}{remarks[i]}")),
        8 => $"photos:{first}\n" + string.Join("\n\n", items.Select((item, i) => $"    -   {item}{remarks[i]}\n    # below")),
        _ => $"photos:{first}\n" + string.Join("\n", items.Select((item, i) => $"  - file: d{i}.jpg{remarks[i]}\n    caption: |\n      Two\n      lines")),
    });

    /// <summary>An entry as makers write them, with its byte-order mark and line ends.</summary>
    private static readonly Gen<string> Entry = Gen.Select(OtherKeys, OtherKeys, List, OneOf("\n", "\r\n"), OneOf("", "\n", "Text.\n---\n[a]: b\n", "No line end"))
        .Select((before, after, list, lineEnd, body) =>
            string.Join("\n", ["---", "date: 2025-10-03", .. before, list, .. after.Except(before), "---", body]).Replace("\n", lineEnd, StringComparison.Ordinal))
        .Where(IsGood);

    [Fact]
    public void Items_CommentsOfTheLastItem_StayWithIt() => Assert.Equal(
        "parts:\n  - id: head\n    # not the first casting:\n    # it had a blow-hole\n  - id: quill\n  # of the list\nnext: Face it\n",
        Addition.To("parts:\n  - id: head\n    # not the first casting:\n    # it had a blow-hole\n  # of the list\nnext: Face it\n").Items("parts", ["id: quill"]).Text);

    [Fact]
    public void Items_GeneratedEntries_OnlyInsertsAndHoldsTheAddition() => Gen.Select(Entry, OneOf(1, 2)).Sample(
        (entry, count) =>
        {
            string[] items = count == 1 ? ["photos/new.jpg"] : ["photos/new.jpg", "{file: photos/2.jpg, caption: \"it: is, new\"}"];

            var added = new EntryText(entry).Items("photos", items);

            Assert.Equal("", added.WhyNot);
            OnlyInserted(entry, added.Text!, items);
            var (old, read) = (Photos(entry), Photos(added.Text!));
            Assert.Equal(old.Count + count, read.Count);
            Assert.Equal("photos/new.jpg", ((TextNode)read[old.Count]).Text);
            Assert.True(IsGood(added.Text!));
        },
        iter: 20_000);

    [Fact]
    public void Keys_GeneratedEntries_AddsWholeLinesBeforeTheFence() => Entry.Sample(
        entry =>
        {
            var added = new EntryText(entry).Keys([("milestone", "First bore"), ("date", "2001-01-01")]);

            Assert.Equal("", added.WhyNot);
            var line = entry.Contains("\r\n", StringComparison.Ordinal) ? "milestone: First bore\r\n" : "milestone: First bore\n";
            Assert.Equal(entry, Removed(added.Text!, line));
        },
        iter: 5_000);

    [Theory]
    [InlineData("photos:\n  file: a.jpg", "single value")]
    [InlineData("photos: |\n  a.jpg", "single value")]
    [InlineData("photos: ~", "single value")]
    [InlineData("photos: [a]\nphotos: [b]", "twice")]
    [InlineData("photos: [a", "cannot be read")]
    [InlineData("photos: &x [a]\ntools: *x", "cannot be read")]
    public void Items_WhereNothingCanBeInserted_SaysWhyAndChangesNothing(string list, string why)
    {
        var added = new EntryText($"---\ndate: 2025-10-03\n{list}\n---\n").Items("photos", ["b.jpg"]);

        Assert.Null(added.Text);
        Assert.Contains(why, added.WhyNot, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("photos: a.jpg # the bore", "photos: \n  - a.jpg # the bore\n  - b.jpg")]
    [InlineData("photos:   {file: a.jpg}", "photos:   \n  - {file: a.jpg}\n  - b.jpg")]
    [InlineData("photos: \"a, b.jpg\"", "photos: \n  - \"a, b.jpg\"\n  - b.jpg")]
    public void Items_OneThingAlone_BecomesTheFirstOfAList(string one, string list)
    {
        var added = new EntryText($"---\ndate: 2025-10-03\n{one}\nhours: 1h\n---\n").Items("photos", ["b.jpg"]);

        Assert.Equal($"---\ndate: 2025-10-03\n{list}\nhours: 1h\n---\n", added.Text);
    }

    [Fact]
    public void Items_KeysInBraces_AreLeftAlone()
    {
        Assert.Null(new EntryText("---\n{date: 2025-10-03, hours: 2h}\n---\n").Items("photos", ["b.jpg"]).Text);
        Assert.Equal("---\n{date: 2025-10-03, photos: [a, b]}\n---\n", new EntryText("---\n{date: 2025-10-03, photos: [a, b]}\n---\n").Text);
    }

    [Theory]
    [InlineData("- {id: lathe}", "- {id: lathe}\n- {id: new}")]
    [InlineData("- {id: lathe}\n# the end\n", "- {id: lathe}\n- {id: new}\n# the end\n")]
    [InlineData("", "- {id: new}\n")]
    [InlineData("# only remarks\n", "# only remarks\n- {id: new}\n")]
    [InlineData("[{id: lathe}, ]\n", "[{id: lathe}, {id: new}, ]\n")]
    public void Items_FileThatIsAList_GetsOneMore(string crib, string expected) =>
        Assert.Equal(expected, Addition.To(crib).Items(["{id: new}"]).Text);

    [Fact]
    public void YamlText_AnyText_ReadsBackTheSameInFlowAndBlock() => Gen.String.Sample(
        text =>
        {
            var clean = string.Concat(text.Where(letter => !char.IsSurrogate(letter)));
            var log = new ProblemLog();

            var read = YamlReader.ReadAny($"[{YamlText.Of(clean)}, b]", log);

            Assert.Empty(log.Problems);
            Assert.Equal(clean, ((TextNode)((ListNode)read!).Nodes[0]).Text);
        },
        iter: 20_000);

    // Undoing the insertion by what the rule allows: whole lines, or an item before a bracket.
    private static void OnlyInserted(string before, string after, string[] items)
    {
        var lineEnd = before.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var joined = string.Join(", ", items);
        foreach (var flow in new[] { $", {joined}", joined })
        {
            for (var at = after.IndexOf(flow, StringComparison.Ordinal); at >= 0; at = after.IndexOf(flow, at + 1, StringComparison.Ordinal))
            {
                if (after.Remove(at, flow.Length) == before)
                {
                    return;
                }
            }
        }

        var lines = after.Split(lineEnd).ToList();
        var first = lines.FindIndex(line => line.TrimStart(' ', '-') == items[0]);
        Assert.True(first > 0, after);
        lines.RemoveRange(first, items.Length);
        if (lines[first - 1] == "photos:" && !before.Split(lineEnd).Contains("photos:"))
        {
            lines.RemoveAt(first - 1);
        }

        Assert.Equal(before, string.Join(lineEnd, lines));
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static string Removed(string text, string line)
    {
        var at = text.IndexOf(line, StringComparison.Ordinal);
        Assert.True(at > 0 && text[at - 1] == '\n');
        return text.Remove(at, line.Length);
    }

    private static IReadOnlyList<Node> Photos(string entry) =>
        Map(entry)!.Pairs.Where(pair => pair.Key.Text == "photos").Select(pair => pair.Value.Items).FirstOrDefault() ?? [];

    private static bool IsGood(string entry) => Map(entry) is { } map && map.Pairs.DistinctBy(pair => pair.Key.Text).Count() == map.Pairs.Count;

    private static MapNode? Map(string entry)
    {
        var log = new ProblemLog();
        return FrontMatter.Split(entry, "", log) is { } halves && YamlReader.Read(halves.Yaml, "", 2, log) is { } map && log.Problems.Count == 0 ? map : null;
    }
}
