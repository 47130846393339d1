using Journal.Core.Model;
using Journal.Core.Tests.Parsing;
using Journal.Core.Writing.Entries;

namespace Journal.Core.Tests.Writing;

public sealed class PhotoEditingTests
{
    private const string File = "drill/2025-10-03.md";
    private const string Lines = "---\r\npart: head   # the head\r\nhours: 1h\r\nphotos:\r\n  - photos/a.jpg # plain\r\n  - {file: photos/b.jpg, caption: \"Old, words\", publish: never} # braces\r\n  - file: photos/c.jpg\r\n    caption: Third\r\n    alt: Of it\r\n---\r\nText ![x](photos/a.jpg)\r\n";

    [Theory]
    [InlineData("photos/a.jpg", "New: words", "  - photos/a.jpg #", "  - {file: photos/a.jpg, caption: \"New: words\"} #")]
    [InlineData("photos/b.jpg", "New words", "caption: \"Old, words\"", "caption: New words")]
    [InlineData("photos/c.jpg", "New words", "caption: Third", "caption: New words")]
    [InlineData("photos/c.jpg", null, "    caption: Third\r\n", "")]
    [InlineData("photos/b.jpg", null, ", caption: \"Old, words\"", "")]
    [InlineData("photos/a.jpg", null, "", "")]
    public void Change_OfACaption_TouchesNothingElse(string photo, string? words, string before, string after) =>
        Assert.Equal(before.Length == 0 ? Lines : Lines.Replace(before, after, StringComparison.Ordinal), Changed(Lines, PhotoValue.Caption(photo, words)));

    [Fact]
    public void Change_OfSeveralValues_IsOneStep()
    {
        var changed = Changed(
            Lines,
            PhotoValue.Alt("photos/a.jpg", "A bore"),
            PhotoValue.Marks("photos/a.jpg", [new PhotoMark(40, 62.5m, "The bore"), new PhotoMark(1, 2, "A, b")]),
            PhotoValue.Never("photos/b.jpg", isNever: false),
            PhotoValue.Never("photos/c.jpg", isNever: true));

        Assert.Equal(
            Lines.Replace("  - photos/a.jpg #", "  - {file: photos/a.jpg, alt: A bore, marks: [{at: [40, 62.5], text: The bore}, {at: [1, 2], text: \"A, b\"}]} #", StringComparison.Ordinal)
                .Replace(", publish: never", "", StringComparison.Ordinal)
                .Replace("  - file: photos/c.jpg\r\n", "  - file: photos/c.jpg\r\n    publish: never\r\n", StringComparison.Ordinal),
            changed);
    }

    [Theory]
    [InlineData("photos: [photos/a.jpg, {file: photos/b.jpg}, photos/c.jpg]", "photos: [photos/c.jpg, photos/a.jpg, {file: photos/b.jpg}]")]
    [InlineData("photos:\n- photos/a.jpg # one\n-   file: photos/b.jpg\n    caption: B\n- photos/c.jpg", "photos:\n- photos/c.jpg # one\n-   photos/a.jpg\n- file: photos/b.jpg\n    caption: B")]
    public void Change_OfTheOrder_MovesThePicturesOrRefuses(string before, string after)
    {
        using var journal = With($"---\nhours: 1h\n{before}\n---\n");

        var written = new PhotoEditing(journal.Root).Change(File, [], ["photos/c.jpg", "photos/a.jpg", "photos/b.jpg"]);

        // Lines that would not fit where they go are refused, and nothing is changed.
        var text = System.IO.File.ReadAllText(Path.Combine(journal.Root, File));
        Assert.Equal(written.File is null ? $"---\nhours: 1h\n{before}\n---\n" : $"---\nhours: 1h\n{after}\n---\n", text);
    }

    [Fact]
    public void Change_OfAPictureInTheTextAlone_ListsIt() =>
        Assert.Equal("---\nhours: 1h\nphotos:\n  - {file: photos/a.jpg, caption: The bore}\n---\n![](photos/a.jpg)\n", Changed("---\nhours: 1h\n---\n![](photos/a.jpg)\n", PhotoValue.Caption("photos/a.jpg", "The bore")));

    [Theory]
    [InlineData("photos/a.jpg", "  - photos/a.jpg # plain\r\n")]
    [InlineData("photos/c.jpg", "  - file: photos/c.jpg\r\n    caption: Third\r\n    alt: Of it\r\n")]
    public void Move_IntoAnotherEntry_TakesItsLinesAndKeepsItsWords(string photo, string lines)
    {
        using var journal = With(Lines);
        journal.Write("drill/2025-10-04.md", "---\nhours: 1h\n---\n");

        var written = new PhotoEditing(journal.Root).Move(File, "drill/2025-10-04.md", new Photo { File = photo, Caption = "Third", Alt = "Of it", Publish = Publication.After(new(2026, 1, 10)), Marks = [new(1, 2, "x")] });

        Assert.Equal((File, Lines.Replace(lines, "", StringComparison.Ordinal)), (written.File, System.IO.File.ReadAllText(Path.Combine(journal.Root, File))));
        Assert.Equal($"---\nhours: 1h\nphotos:\n  - {{file: {photo}, caption: Third, alt: Of it, marks: [{{at: [1, 2], text: x}}], publish: after 2026-01-10}}\n---\n", System.IO.File.ReadAllText(Path.Combine(journal.Root, "drill/2025-10-04.md")));
    }

    [Fact]
    public void Move_OfTheOnlyPicture_TakesTheKeyOut()
    {
        using var journal = With("---\nphotos: photos/a.jpg\nhours: 1h\n---\n");
        journal.Write("drill/2025-10-04.md", "---\nhours: 1h\n---\n");

        new PhotoEditing(journal.Root).Move(File, "drill/2025-10-04.md", new Photo { File = "photos/a.jpg" });

        Assert.Equal("---\nhours: 1h\n---\n", System.IO.File.ReadAllText(Path.Combine(journal.Root, File)));
    }

    private static string Changed(string text, params PhotoValue[] values)
    {
        using var journal = With(text);
        var written = new PhotoEditing(journal.Root).Change(File, values);
        Assert.Equal((File, ""), (written.File, written.WhyNot));
        return System.IO.File.ReadAllText(Path.Combine(journal.Root, File));
    }

    private static JournalOnDisk With(string text)
    {
        var journal = JournalOnDisk.WithDrill();
        journal.Write(File, text);
        return journal;
    }
}
