using System.Text;
using Journal.Core.Writing.Bench;

namespace Journal.Core.Tests.Writing;

public sealed class SlateFileTests : IDisposable
{
    private readonly string journal = Directory.CreateTempSubdirectory("journal-slate-").FullName;

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"stint": {"began": "2025-03-01T19:00:00+00:00", "build": "drill"}}""")]
    public void Peek_KeysLeftOut_AreEmptyAndNotMissing(string text)
    {
        Write(text);

        var slate = SlateFile.Peek(journal);

        Assert.Empty(slate.Jots);
        Assert.Empty(slate.Stint?.Pauses ?? []);
        Assert.False(slate.Stint?.IsPaused ?? false);
    }

    [Theory]
    [InlineData("""{"jots": 3}""")]
    [InlineData("""{"jots": [null]}""")]
    [InlineData("""{"jots": [{"at": "2025-03-01T19:00:00+00:00", "evening": "2025-03-01", "text": null}]}""")]
    [InlineData("""{"stint": {"began": "2025-03-01T19:00:00+00:00", "build": null}}""")]
    [InlineData("""{"stint": {"began": "0001-01-01T00:00:00+00:00", "build": "drill"}}""")]
    [InlineData("""{"stint": {"began": "2025-03-01T19:00:00+00:00", "build": "drill", "pauses": [null]}}""")]
    [InlineData("""{"handover": {"file": null, "sha256": "", "takesStint": true}}""")]
    [InlineData("""{"unwritten": {"file": null, "evening": "2025-03-01"}}""")]
    public void Peek_WhatCannotBeRead_SaysWhichFileAndWhatToDo(string text)
    {
        Write(text);

        var fault = Assert.Throws<IOException>(() => SlateFile.Peek(journal));

        Assert.Contains("slate.json cannot be read", fault.Message, StringComparison.Ordinal);
        Assert.Contains("then delete it", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Keep_Slate_ComesBackAsItWas()
    {
        var began = new DateTimeOffset(2025, 3, 1, 19, 0, 0, TimeSpan.Zero);
        var slate = new Slate
        {
            Stint = new Stint { Began = began, Build = "drill", Part = "head", Pauses = [new Pause(began.AddMinutes(5), null)] },
            Jots =
            [
                new Jot(began, new DateOnly(2025, 3, 1), "Größe — “thirds”"),
                new Jot(began, new DateOnly(2025, 3, 1), "bore 12.02 mm") { Id = "a1", Build = "drill", Kind = JotKind.Reading, Keys = new Dictionary<string, string> { ["feature"] = "bore", ["actual"] = "12.02 mm" } },
            ],
            Unwritten = new StintEntry("drill/2025-03-01-head.md", new DateOnly(2025, 3, 1)),
        };
        using (var hands = SlateFile.Take(journal))
        {
            hands.Keep(slate);
        }

        var kept = SlateFile.Peek(journal);

        Assert.Equal(slate.Stint.Pauses, kept.Stint!.Pauses);
        Assert.Equal(slate.Jots.Select(AllOf), kept.Jots.Select(AllOf));
        Assert.Equal((slate.Unwritten, "head", null), (kept.Unwritten, kept.Stint.Part, kept.Stint.Operation));
    }

    private static string AllOf(Jot jot) => $"{jot.At:O} {jot.Evening:O} {jot.Text} {jot.Id} {jot.Build} {jot.Kind} {string.Join(' ', jot.Keys)}";

    [Fact]
    public async Task Take_HeldByAnother_WaitsAndSaysForWhom()
    {
        var told = new List<string>();
        var held = SlateFile.Take(journal);

        var waiting = Task.Run(() => SlateFile.Take(journal, told.Add));
        while (told.Count == 0)
        {
            await Task.Delay(10);
        }

        held.Dispose();
        (await waiting).Dispose();

        var process = OperatingSystem.IsWindows() ? "" : $" (process {Environment.ProcessId})";
        Assert.Equal([$"Waiting for another command{process}, which is writing to the journal."], told);
    }

    [Fact]
    public async Task Peek_APipeInItsPlace_IsToldAndNotWaitedFor()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Directory.CreateDirectory(Path.Combine(journal, SlateFile.Folder));
        using (var made = System.Diagnostics.Process.Start("mkfifo", Path.Combine(journal, SlateFile.Folder, "slate.json")))
        {
            await made.WaitForExitAsync();
        }

        var refused = await Assert.ThrowsAsync<IOException>(() => Task.Run(() => SlateFile.Peek(journal)).WaitAsync(TimeSpan.FromSeconds(20)));

        Assert.Contains("a pipe, not a file", refused.Message, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(journal, recursive: true);

    private void Write(string text)
    {
        Directory.CreateDirectory(Path.Combine(journal, SlateFile.Folder));
        File.WriteAllText(Path.Combine(journal, SlateFile.Folder, "slate.json"), text, new UTF8Encoding(false));
    }
}
