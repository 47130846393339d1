using Journal.Bench.Doors;
using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing;

namespace Journal.Bench.Slates;

/// <summary>The journal as it stands now, read again when it may have changed: by a save in the editor, another command, or us.</summary>
/// <param name="folder">The journal's folder.</param>
/// <param name="clock">The clock.</param>
internal sealed class JournalNow(string folder, TimeProvider clock)
{
    /// <summary>For so long nobody waits who saved a file and looks up.</summary>
    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(1);

    private readonly Lock guard = new();
    private readonly FilesRead files = new();
    private JournalReading? reading;
    private MakerJournal? last;
    private long readAt;

    /// <summary>The journal's folder.</summary>
    public string Folder => folder;

    /// <summary>The journal; where <c>journal.yaml</c> cannot be read at the moment, as it last could be.</summary>
    /// <exception cref="BenchException">It could never be read.</exception>
    public MakerJournal Journal => Read().Journal ?? last ?? throw new BenchException("journal.yaml cannot be read. See `journal check`.");

    /// <summary>What reading the journal gave.</summary>
    public JournalReading Read()
    {
        lock (guard)
        {
            if (reading is null || clock.GetElapsedTime(readAt) > Fresh)
            {
                reading = JournalReader.Read(folder, DateOnly.MaxValue, files);
                readAt = clock.GetTimestamp();
                last = reading.Journal ?? last;
            }

            return reading;
        }
    }

    /// <summary>Has the journal read again when it is next asked for.</summary>
    public void Forget()
    {
        lock (guard)
        {
            reading = null;
        }
    }
}
