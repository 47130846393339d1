using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing;

namespace Journal.Core.Tests.Parsing;

/// <summary>Reading a journal again where only some of its files were saved: the others are not read, and nothing is missed.</summary>
public sealed class FilesReadTests : IDisposable
{
    private readonly JournalOnDisk journal = JournalOnDisk.WithDrill().WriteEntry("2025-10-01-one", body: "One.").WriteEntry("2025-10-02-two", body: "Two.");
    private readonly FilesRead files = new();
    private int minutes;

    [Fact]
    public void Read_OneEntrySaved_ReadsThatOneAlone()
    {
        var before = Read();
        Save("drill/2025-10-02-two.md", "Two.", "Too.");

        var now = Read();

        Assert.Same(Entry(before, "2025-10-01-one").Body.Document, Entry(now, "2025-10-01-one").Body.Document);
        Assert.NotSame(Entry(before, "2025-10-02-two").Body.Document, Entry(now, "2025-10-02-two").Body.Document);
        Assert.Equal("Too.", Entry(now, "2025-10-02-two").Body.Text.Trim());
    }

    [Fact]
    public void Read_NothingKept_ReadsAll() =>
        Assert.NotSame(Entry(Read(), "2025-10-01-one").Body.Document, Entry(JournalReader.Read(journal.Root, JournalOnDisk.Today), "2025-10-01-one").Body.Document);

    [Fact]
    public void Read_AnotherDay_ReadsAllAnew()
    {
        var before = Read();

        Assert.NotSame(Entry(before, "2025-10-01-one").Body.Document, Entry(JournalReader.Read(journal.Root, new DateOnly(2025, 10, 1), files), "2025-10-01-one").Body.Document);
        Assert.Contains(JournalReader.Read(journal.Root, new DateOnly(2025, 10, 1), files).Problems, problem => problem.Kind.Code == "date-in-future");
    }

    // As a copy put back has it: the same size and the same time.
    [Fact]
    public void Read_SavedWithItsOldTimeAndSize_IsSeenWhenItIsSaidToBeTouched()
    {
        Read();
        var time = File.GetLastWriteTimeUtc(journal.PathOf("drill/2025-10-02-two.md"));
        journal.WriteEntry("2025-10-02-two", body: "Six.");
        File.SetLastWriteTimeUtc(journal.PathOf("drill/2025-10-02-two.md"), time);
        Assert.Equal("Two.", Entry(JournalReader.Read(journal.Root, JournalOnDisk.Today, files), "2025-10-02-two").Body.Text.Trim());

        files.Forget(["drill/2025-10-02-two.md"]);

        Assert.Equal("Six.", Entry(JournalReader.Read(journal.Root, JournalOnDisk.Today, files), "2025-10-02-two").Body.Text.Trim());
    }

    [Fact]
    public void Read_AfterAFolderWasTouched_ReadsWhatLiesInIt()
    {
        var before = Read();
        files.Forget(["drill"]);

        Assert.NotSame(Entry(before, "2025-10-01-one").Body.Document, Entry(Read(), "2025-10-01-one").Body.Document);
    }

    [Fact]
    public void Read_SecondsOld_IsReadAgain()
    {
        Read();
        journal.WriteEntry("2025-10-02-two", body: "Two.");
        var first = JournalReader.Read(journal.Root, JournalOnDisk.Today, files);

        Assert.NotSame(Entry(first, "2025-10-02-two").Body.Document, Entry(JournalReader.Read(journal.Root, JournalOnDisk.Today, files), "2025-10-02-two").Body.Document);
    }

    // What one file says of others is asked of all of them each time.
    [Theory]
    [InlineData("drill/build.yaml", "{id: head}", "{id: haed}", "unknown-part")]
    [InlineData("drill/2025-10-01-one.md", "hours: 1h", "hours: 1h\nheeded: nobody-knows", "unknown-lesson")]
    [InlineData("drill/2025-10-02-two.md", "Two.", "See [one](entry:2025-10-09).", "unknown-link-target")]
    [InlineData("drill/2025-10-02-two.md", "hours: 1h", "hours: 23h\nphotos: {file: no.jpg, caption: A}", "picture-missing")]
    public void Read_AnyFileSaved_GivesWhatReadingAllGives(string file, string from, string to, string code)
    {
        Read();
        Save(file, from, to);

        var now = Read();

        Assert.Equal(JournalReader.Read(journal.Root, JournalOnDisk.Today).Problems, now.Problems);
        Assert.Contains(now.Problems, problem => problem.Kind.Code == code);
        Save(file, to, from);
        Assert.Empty(Read().Problems);
    }

    [Fact]
    public void Read_WordAddedToTheVocabulary_IsKnownInFilesThatWereNotSaved()
    {
        Save("drill/2025-10-01-one.md", "operation: boring", "operation: gilding");
        Assert.NotEmpty(Read().Problems);

        Save("journal.yaml", "The Lean-to", "The Lean-to\noperations: [gilding]");

        Assert.Empty(Read().Problems);
    }

    [Fact]
    public void Read_PictureThatComesAndGoes_IsMissedOnlyWhileItIsGone()
    {
        journal.WriteEntry("2025-10-03-three", "photos: {file: photos/a.gif, caption: A}");
        Assert.Contains(Read().Problems, problem => problem.Kind.Code == "picture-missing");

        journal.WritePicture("drill/photos/a.gif");
        Assert.Empty(Read().Problems);
        Assert.Equal("drill/photos/a.gif", Assert.Single(Entry(Read(), "2025-10-03-three").Photos).File);

        journal.Write("drill/photos/a.gif", []);
        Assert.Contains(Read().Problems, problem => problem.Kind.Code == "picture-broken");
        File.Delete(journal.PathOf("drill/photos/a.gif"));
        Assert.Contains(Read().Problems, problem => problem.Kind.Code == "picture-missing");
    }

    [Fact]
    public void Read_EntryGoneAndAnotherAdded_HasTheOneAndNotTheOther()
    {
        Read();
        File.Move(journal.PathOf("drill/2025-10-01-one.md"), journal.PathOf("drill/2025-10-04-four.md"));

        Assert.Equal(["2025-10-02-two", "2025-10-04-four"], Read().Journal!.Entries.Select(entry => entry.Id.Value));
    }

    [Fact]
    public void Read_EntryThatCannotBeRead_KeepsWhatPointsToItQuietEachTime()
    {
        journal.WriteEntry("2025-10-03-three", "heeded: lost");
        Save("drill/2025-10-02-two.md", "part: head", "lessons: {id: lost, text: A}\npart: [");

        Assert.DoesNotContain(Read().Problems, problem => problem.Kind.Code == "unknown-lesson");
        Assert.DoesNotContain(Read().Problems, problem => problem.Kind.Code == "unknown-lesson");
    }

    public void Dispose() => journal.Dispose();

    private static Entry Entry(JournalReading reading, string id) => reading.Journal!.Entries.Single(entry => entry.Id.Value == id);

    private void Save(string file, string from, string to)
    {
        var text = File.ReadAllText(journal.PathOf(file));
        Assert.Contains(from, text, StringComparison.Ordinal);
        journal.Write(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    // Files that were written just now are not trusted, and a test will not wait for them to grow older.
    private JournalReading Read()
    {
        minutes++;
        foreach (var path in Directory.EnumerateFiles(journal.Root, "*", SearchOption.AllDirectories).Where(path => File.GetLastWriteTimeUtc(path) > DateTime.UtcNow.AddHours(-1)))
        {
            File.SetLastWriteTimeUtc(path, DateTime.UtcNow.AddHours(-12).AddMinutes(minutes));
        }

        return JournalReader.Read(journal.Root, JournalOnDisk.Today, files);
    }
}
