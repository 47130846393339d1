using Journal.Core.Model;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Tests.Parsing;

/// <summary>Forms held against what others published; the source stands beside the numbers.</summary>
public sealed class PublishedExamplesTests
{
    // RFC 9562 (May 2024), appendix A.4: UUIDv5 of "www.example.com" in the DNS namespace of section 6.6.
    [Fact]
    public void NameBasedUuid_ExampleOfTheRfc_IsTheSame()
    {
        var dns = Guid.Parse("6ba7b810-9dad-11d1-80b4-00c04fd430c8");

        Assert.Equal(Guid.Parse("2ed6657d-e927-568b-95e1-2665a8aea6a2"), NameBasedUuid.Of(dns, "www.example.com"));
    }

    // RFC 3339 (July 2002), appendix A and section 5.6: full-date of ISO 8601 has four, two and two digits;
    // 5.7: February has 29 days in leap years alone, centuries are none unless 400 divides them.
    [Theory]
    [InlineData("1985-04-12", true)]
    [InlineData("1996-12-19", true)]
    [InlineData("2000-02-29", true)]
    [InlineData("2024-02-29", true)]
    [InlineData("1900-02-29", false)]
    [InlineData("2025-02-29", false)]
    [InlineData("2025-13-01", false)]
    [InlineData("2025-04-31", false)]
    [InlineData("2025-10-3", false)]
    [InlineData("20251003", false)]
    [InlineData("2025-10-03T19:10", false)]
    [InlineData("3/10/2025", false)]
    [InlineData("2025-W40-5", false)]
    [InlineData("２０２５-10-03", false)]
    public void Date_OfIso8601_IsReadInTheExtendedFormAlone(string written, bool isDate)
    {
        Assert.Equal(isDate, Dates.TryParse(written, out var date));
        Assert.True(!isDate || Dates.Write(date) == written);
    }

    [Theory]
    [InlineData("2026-12-20/2027-01-03", 15)]
    [InlineData("2026-12-20", 1)]
    [InlineData("2026-12-20/2026-12-19", 0)]
    [InlineData("2026-12-20/", 0)]
    [InlineData("2026-12-20/P2W", 0)]
    [InlineData("2026-12-20/2026-12-22/2026-12-24", 0)]
    public void Range_OfIso8601_HasItsDaysWithBothEnds(string written, int days)
    {
        Assert.Equal(days > 0, Dates.TryParseRange(written, out var range));
        Assert.Equal(days, range?.Days ?? 0);
    }

    // Damerau, Communications of the ACM 7 (1964), 171: one letter wrong, missing, too many, or two swapped are the
    // slips that make up four in five misspellings. The words here are ours.
    [Theory]
    [InlineData("boreing", "boring")]
    [InlineData("borng", "boring")]
    [InlineData("boting", "boring")]
    [InlineData("broing", "boring")]
    [InlineData("BORING", "boring")]
    [InlineData("reeming", "reaming")]
    [InlineData("mill", "milling")]
    [InlineData("plumbing", null)]
    [InlineData("x", null)]
    public void Nearest_OneSlip_IsFound(string written, string? meant)
    {
        Assert.Equal(meant, Suggestion.Nearest(written, ["boring", "reaming", "milling", "turning"]));
    }

    // "kitten" to "sitting" is three edits: the textbook example of the edit distance, from memory. "ca" to "abc" is
    // three in the optimal string alignment and two in the unrestricted form; from memory too.
    [Fact]
    public void Nearest_OfSeveral_IsTheOneWithFewestEdits()
    {
        Assert.Equal("kitchen", Suggestion.Nearest("kitten", ["sitting", "kitchen"]));
        Assert.Null(Suggestion.Nearest("kitten", ["sitting"]));
        Assert.Null(Suggestion.Nearest("ca", ["abc"]));
    }

    [Fact]
    public void Suggestion_NothingNear_ListsWhatThereIs()
    {
        Assert.Equal("Did you mean `quill`?", Suggestion.For("qull", ["head", "quill"], "parts"));
        Assert.Equal("Known parts: head, quill.", Suggestion.For("spindle", ["head", "quill"], "parts"));
        Assert.Equal("There are no parts yet.", Suggestion.For("spindle", [], "parts"));
        Assert.Equal("Known parts: a, b, c, d, e, f, g, h, …", Suggestion.For("spindle", ["a", "b", "c", "d", "e", "f", "g", "h", "i"], "parts"));
    }
}
