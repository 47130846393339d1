using Journal.Core.Model;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Bench.Slates;

/// <summary>
/// The slate in our hands, for several deeds one after the other: what they change is written once, at the end, and none of them is
/// acknowledged before that.
/// </summary>
/// <param name="journal">The journal.</param>
/// <param name="file">The slate on disk, locked.</param>
/// <param name="now">The instant.</param>
internal sealed class Hands(JournalNow journal, SlateFile file, DateTimeOffset now)
{
    private readonly List<Action> afterwards = [];
    private bool isWritten = true;

    /// <summary>The slate as it will be.</summary>
    public Slate Slate { get; private set; } = file.Slate;

    /// <summary>The instant.</summary>
    public DateTimeOffset Now => now;

    /// <summary>The journal's folder.</summary>
    public string Folder => journal.Folder;

    /// <summary>The journal.</summary>
    public MakerJournal Journal => journal.Journal;

    /// <summary>The clock over the bench.</summary>
    public BenchClock Clock { get; } = BenchClock.Of(journal.Journal);

    /// <summary>Changes the slate.</summary>
    public void Put(Slate slate) => (Slate, isWritten) = (slate, false);

    /// <summary>Ends the running stint and puts its job into its evening's entry.</summary>
    /// <param name="build">The build that it was for.</param>
    /// <param name="job">Its job.</param>
    /// <param name="end">When it ended.</param>
    /// <param name="action">The deed that is done with this; null where more is to come.</param>
    public EndedStint EndStint(Build build, NewJob job, DateTimeOffset end, string? action)
    {
        Flush();
        var ended = new EveningEntry(Folder, build, file).EndStint(job, end, Clock, action);
        Slate = file.Slate;
        journal.Forget();
        return ended;
    }

    /// <summary>Does something with the slate's file itself, such as to write an entry up.</summary>
    public T With<T>(Func<SlateFile, T> write)
    {
        Flush();
        var written = write(file);
        Slate = file.Slate;
        journal.Forget();
        return written;
    }

    /// <summary>Has something done when what was changed is on the disk.</summary>
    public void Afterwards(Action action) => afterwards.Add(action);

    /// <summary>Writes what was changed.</summary>
    public void Flush()
    {
        if (!isWritten)
        {
            file.Keep(Slate);
            isWritten = true;
        }

        afterwards.ForEach(action => action());
        afterwards.Clear();
    }
}
