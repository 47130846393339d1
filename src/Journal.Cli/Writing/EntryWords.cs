using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.Writing;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Cli.Writing;

/// <summary>Puts words into entries, with the slate in one's hands.</summary>
/// <param name="open">The journal.</param>
/// <param name="build">The build of the entries.</param>
/// <param name="slate">The slate.</param>
/// <param name="terminal">Whom to tell what was kept.</param>
internal sealed class EntryWords(OpenJournal open, Build build, SlateFile slate, Terminal terminal)
{
    /// <summary>Adds words to an entry; one that has words already gets these below them.</summary>
    /// <returns>The entry's file.</returns>
    /// <exception cref="UsageException">They cannot be added.</exception>
    public string Add(StintEntry entry, WriteUp words, DateOnly evening)
    {
        var noted = ToldTonight.Of(slate.Slate.JotsOf(evening, build.Id.Value), EveningEntry.JobsIn(open.Folder, entry.File));
        var written = new EveningEntry(open.Folder, build, slate).WriteUp(entry, words.With(noted), evening);
        foreach (var (key, value) in written.LeftOut)
        {
            terminal.Complain($"{entry.File} already has `{key}`, which is kept. Not written: {value}");
        }

        return written.File ?? throw new UsageException(written.WhyNot);
    }

    /// <summary>Writes an entry of its own, after the lines for new tools and parts that it may name.</summary>
    /// <returns>The entry's file.</returns>
    /// <exception cref="UsageException">A line cannot be added; the entry was not written.</exception>
    public string Write(ToldEvening told, WriteUp words, DateOnly evening, bool takesStint = false)
    {
        AddLines(told);
        var noted = ToldTonight.Of(slate.Slate.JotsOf(evening, build.Id.Value), told.Jobs);
        return new EveningEntry(open.Folder, build, slate).Write(evening, told.Jobs, (words with { Tools = [] }).With(noted), evening, takesStint);
    }

    /// <summary>
    /// The remarks of an evening for a build, in words; of those that go under keys of their own, nothing is read again. Those that
    /// are there when the entry is written count, for more may have been made while the questions were answered.
    /// </summary>
    public static List<string> Remarks(Slate slate, Build build, DateOnly evening) => [.. ToldTonight.Of(slate.JotsOf(evening, build.Id.Value), []).Remarks];

    /// <summary>Adds the lines for new tools and parts.</summary>
    /// <exception cref="UsageException">One cannot be added.</exception>
    public void AddLines(ToldEvening told)
    {
        var lines = new Lines(open.Folder);
        foreach (var tool in told.NewTools)
        {
            Added(lines.AddTool([("id", tool.Id), ("title", tool.Title)]), $"Added to the crib: `{tool.Id}`.");
        }

        foreach (var (id, title) in told.NewParts)
        {
            Added(lines.AddPart(build, [("id", id), ("title", title)]), $"Added to {build.Title}: the part `{id}`.");
        }
    }

    private void Added(Core.Writing.Entries.Written written, string told) =>
        terminal.Complain(written.File is null ? throw new UsageException(written.WhyNot) : told);
}
